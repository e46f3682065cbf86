package org.hammerscale.hinge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * Rounding never closes a joint: both leaves' slots on a rule still go together, with their gap.
 */
class KnuckleMarksPropertyTest {
  private static final double NOISE = 1e-9;

  /** A division and a rule, in inches or millimetres, the rule now and then of the other kind. */
  record Asked(Knuckles knuckles, Graduation<Length> rule) {}

  @Provide
  Arbitrary<Asked> asked() {
    Arbitrary<Double> width = Arbitraries.doubles().between(0.5, 4).ofScale(3);
    Arbitrary<Integer> count = Arbitraries.integers().between(2, 9);
    Arbitrary<Double> gap =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(1, Arbitraries.of(0d, 1 / 64d, 1 / 32d, 1 / 16d, 1 / 8d)),
            net.jqwik.api.Tuple.of(1, Arbitraries.doubles().between(0, 0.15).ofScale(4)));
    Arbitrary<Graduation<Length>> rule =
        Arbitraries.of(
            Graduation.EIGHTH,
            Graduation.SIXTEENTH,
            Graduation.THIRTY_SECOND,
            Graduation.SIXTY_FOURTH,
            Graduation.MILLIMETRE,
            Graduation.HALF_MILLIMETRE);
    Arbitrary<Boolean> inches = Arbitraries.of(true, false);
    Arbitrary<Integer> way = Arbitraries.integers().between(0, 2);
    return Combinators.combine(width, count, gap, rule, inches, way)
        .as(
            (w, n, g, r, inch, how) -> {
              Knuckles equal = Knuckles.across(length(w, inch)).into(n);
              Knuckles divided =
                  switch (how) {
                    case 0 -> equal;
                    case 1 -> equal.bearingEqually();
                    default -> equal.inRatios(ratios(n));
                  };
              double most = 0.8 * w / n;
              return new Asked(divided.withGap(length(Math.min(g, most), inch)), r);
            });
  }

  private static double[] ratios(int count) {
    double[] parts = new double[count];
    for (int i = 0; i < count; i++) {
      parts[i] = 1 + i % 3;
    }
    return parts;
  }

  private static Measure<Length> length(double inches, boolean inch) {
    return inch ? Measures.inches(inches) : Measures.millimetres(inches * 25.4);
  }

  @Property
  void noJointClosesAndTheirPlayIsTheLeastThatTheRuleCanShow(@ForAll("asked") Asked asked) {
    Knuckles marked;
    try {
      marked = asked.knuckles().on(asked.rule());
    } catch (IllegalArgumentException refused) {
      assertRefusalIsRight(asked, refused.getMessage());
      return;
    }
    Measure<Length> gap = asked.knuckles().gap();
    double step = asked.rule().step().in(gap.getUnit());
    double joint = marked.tightestJointWith(marked).getValue();
    assertTrue(joint >= gap.getValue() - NOISE, () -> marked + " of " + asked);
    assertTrue(joint < gap.getValue() + step - NOISE || joint <= gap.getValue() + NOISE);
    assertTrue(marked.interleavesWith(marked));
    assertEquals(joint - gap.getValue(), marked.playOver(asked.knuckles()).getValue(), NOISE);
    for (double edge : marksOn(marked)) {
      assertTrue(asked.rule().isOnMark(gap.withValue(edge)), () -> edge + " of " + marked.all());
    }
    double total = marked.gap().getValue() * (marked.count() - 1);
    for (Knuckle knuckle : marked.all()) {
      assertTrue(knuckle.length().getValue() >= step - NOISE);
      total += knuckle.length().getValue();
    }
    assertEquals(marked.width().getValue(), total, NOISE);
  }

  /** The edges that are marked with the rule, from the slots of both leaves. */
  private static List<Double> marksOn(Knuckles marked) {
    List<Double> edges = new ArrayList<>();
    for (Leaf leaf : Leaf.values()) {
      for (KnuckleSlot slot : marked.slotsOf(leaf)) {
        boolean last = slot.end().isEquivalentTo(marked.width());
        edges.add(slot.start().getValue());
        if (!last) {
          edges.add(slot.end().getValue());
        }
      }
    }
    return edges;
  }

  /**
   * A rule is refused only where some knuckle cannot have a mark; what is advised instead holds.
   */
  private static void assertRefusalIsRight(Asked asked, String message) {
    assertTrue(message.startsWith("rule must be fine enough for "), message);
    double step = asked.rule().step().in(asked.knuckles().width().getUnit());
    double shortest =
        asked.knuckles().all().stream().mapToDouble(k -> k.length().getValue()).min().orElseThrow();
    assertTrue(shortest < 3 * step, message);
    for (Graduation<Length> finer :
        List.of(
            Graduation.EIGHTH,
            Graduation.SIXTEENTH,
            Graduation.THIRTY_SECOND,
            Graduation.SIXTY_FOURTH,
            Graduation.HALF_MILLIMETRE,
            Graduation.TENTH_MILLIMETRE)) {
      if (message.contains("take " + finer + ",")) {
        asked.knuckles().on(finer);
        return;
      }
    }
    assertTrue(message.endsWith("make fewer knuckles, or close the gaps"), message);
  }

  @Property
  void aDivisionThatIsAlikeFromBothEdgesStaysSo(@ForAll("asked") Asked asked) {
    Knuckles equal =
        asked
            .knuckles()
            .into(asked.knuckles().count() / 2 * 2 + 1)
            .withGap(asked.knuckles().gap().withValue(0));
    Knuckles whole = Knuckles.across(asked.rule().upTo(equal.width())).into(equal.count());
    if (whole.length(1).isLessThan(asked.rule().step().multiply(2))) {
      return;
    }
    List<Knuckle> all = whole.on(asked.rule()).all();
    for (int i = 0; i < all.size(); i++) {
      assertEquals(
          all.get(i).length().getValue(),
          all.get(all.size() - 1 - i).length().getValue(),
          NOISE,
          all::toString);
    }
  }
}
