package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** Any pair that is made fits: its leaves interleave, and turn without meeting. */
class HingePairPropertyTest {
  private static final double INCH = 25.4;

  /** Any description that can be made, drawn from a seed, in a unit of the caller's. */
  private static HingePair drawn(long seed, DoubleFunction<Measure<Length>> unit) {
    Random random = new Random(seed);
    double width = 20 + 60 * random.nextDouble();
    double thickness = 2 + 8 * random.nextDouble();
    double pin = thickness * (1 + 2 * random.nextDouble());
    int count = 2 + random.nextInt(6);
    Section section = Section.flat(unit.apply(width), unit.apply(thickness));
    Knuckles knuckles =
        Knuckles.across(unit.apply(width)).into(count).withGap(unit.apply(random.nextDouble()));
    HingePairBuilder asked =
        HingePair.of(Bar.of(section, Material.MILD_STEEL), Bore.forPin(unit.apply(pin)))
            .knuckles(random.nextBoolean() ? knuckles : knuckles.bearingEqually())
            .runningGap(unit.apply(random.nextInt(3) * 0.4))
            .leaf(Leaf.FIRST, Plain.of(section, unit.apply(400 + 400 * random.nextDouble())))
            .leaf(Leaf.SECOND, Plain.of(section, unit.apply(400 + 400 * random.nextDouble())));
    boolean centred = random.nextInt(3) == 0;
    if (centred) {
      asked.centred();
    }
    switch (random.nextInt(3)) {
      case 0 -> asked.opening(degrees(150 * random.nextDouble()), Hanging.FACE);
      case 1 -> asked.facesFlush().opening(degrees(150 * random.nextDouble()), Hanging.FACE);
      default ->
          asked.opening(degrees(330 * random.nextDouble()), centred ? Hanging.FACE : Hanging.JOINT);
    }
    try {
      return asked.pair();
    } catch (IllegalArgumentException tooWide) {
      return asked.opening(degrees(100), Hanging.FACE).pair();
    }
  }

  @Property(tries = 300)
  void turnsWithoutMeetingUpToItsLimitAndNoFarther(@ForAll long seed) {
    HingePair pair = drawn(seed, org.hammerscale.units.Measures::millimetres);
    LeafProfile[] leaves = profiles(pair);
    // Tips meet iron on iron; the gap is kept at the floors of the notches.
    boolean tips = pair.swing().contact() == Contact.TIPS;
    double gap = tips ? 0 : mm(pair.runningGap());
    double limit = pair.swing().opening().in(ShopUnits.DEGREE);
    List<Collision.Section> sections =
        Collision.sections(leaves[0], leaves[1], ShopUnits.MILLIMETRE);
    for (Collision.Section section : sections) {
      for (int i = 0; i <= 40; i++) {
        double angle = limit * i / 40 * (1 - 1e-9);
        assertTrue(section.isFree(angle, Math.max(0, gap - 1e-9)), () -> angle + "° of " + pair);
      }
    }
    assertTrue(
        sections.stream().anyMatch(section -> !section.isFree(limit + 1e-3, gap)), pair::toString);
  }

  @Property(tries = 300)
  void opensAsFarAsItWasAskedTo(@ForAll long seed) {
    HingePair pair = drawn(seed, org.hammerscale.units.Measures::millimetres);
    double wanted = pair.wantedOpening().in(ShopUnits.DEGREE);
    assertTrue(pair.opening().in(ShopUnits.DEGREE) >= wanted - 1e-8, pair::toString);
  }

  @Property(tries = 300)
  void knucklesOfEachLeafStandInTheSlotsOfTheOther(@ForAll long seed) {
    HingePair pair = drawn(seed, org.hammerscale.units.Measures::millimetres);
    double width = mm(pair.knuckles().width());
    double gap = mm(pair.knuckles().gap());
    for (Leaf leaf : Leaf.values()) {
      List<KnuckleSlot> slots = pair.slotsOf(leaf);
      List<Knuckle> facing = pair.knuckles().knucklesOf(leaf.other());
      assertEquals(facing.size(), slots.size());
      double covered = 0;
      for (int i = 0; i < slots.size(); i++) {
        double start = mm(slots.get(i).start());
        double end = mm(slots.get(i).end());
        double from = mm(facing.get(i).start());
        double to = mm(facing.get(i).end());
        boolean first = from < 1e-9;
        boolean last = to > width - 1e-9;
        assertEquals(first ? 0 : gap, from - start, 1e-9);
        assertEquals(last ? 0 : gap, end - to, 1e-9);
        assertEquals(first || last, slots.get(i).isEndNotch());
        covered += end - start;
      }
      double own = mm(pair.knuckles().bearingLength(leaf));
      assertEquals(width, own + covered, 1e-9, "knuckles and slots make the width");
    }
  }

  @Property(tries = 100)
  void isTheSameInInches(@ForAll long seed) {
    HingePair metric = drawn(seed, org.hammerscale.units.Measures::millimetres);
    HingePair inch = drawn(seed, value -> inches(value / INCH));
    assertEquals(ShopUnits.INCH, inch.notchDepth().getUnit());
    assertEquals(mm(metric.notchDepth()), mm(inch.notchDepth()), 1e-9);
    assertEquals(metric.opening().in(ShopUnits.DEGREE), inch.opening().in(ShopUnits.DEGREE), 1e-6);
    for (Leaf leaf : Leaf.values()) {
      assertEquals(mm(metric.lengthFromPin(leaf)), mm(inch.lengthFromPin(leaf)), 1e-9);
      assertEquals(
          mm(metric.leaf(leaf).layout().cutLength().likely()),
          mm(inch.leaf(leaf).layout().cutLength().likely()),
          1e-9);
    }
  }

  /** The leaves as the test sees them, built anew from the pair's plain answers. */
  private static LeafProfile[] profiles(HingePair pair) {
    LeafProfile lying =
        pair.barrel().isCentred()
            ? LeafProfile.centred(pair.barrel())
            : LeafProfile.tangent(pair.barrel());
    LeafProfile cut =
        (pair.hasProudBarrels() ? lying.turnedOver() : lying).notchedBehindPin(pair.notchDepth());
    return new LeafProfile[] {
      cut.reaching(pair.lengthFromPin(Leaf.FIRST)), cut.reaching(pair.lengthFromPin(Leaf.SECOND))
    };
  }

  private static double mm(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }
}
