package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleFunction;
import javax.measure.quantity.Length;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** The laws of a swing, and its closed forms against polygons that collide. */
class SwingPropertyTest {
  private static final double INCH = 25.4;
  private static final double MOST = 359;
  private static final double FINE = 1e-7;

  /** What an overlap of 1e-12 mm is in degrees where a corner slides on the face. */
  private static final double GRAZING = 1e-4;

  /**
   * A pair of leaves drawn from a seed, in millimetres: everything about them differs or nothing.
   */
  private static final class Pair {
    final Random random;
    final double gap;
    final double depth;
    LeafProfile fixed;
    LeafProfile moving;

    Pair(long seed, boolean equal, double gap) {
      this.random = new Random(seed);
      this.gap = gap;
      this.fixed = leaf();
      this.moving = equal ? fixed : leaf();
      double least = Math.max(barrelNotch(fixed, moving), barrelNotch(moving, fixed));
      this.depth = least * (1.001 + 2 * random.nextDouble() * random.nextDouble());
      fixed = notched(fixed, moving, equal ? depth : 0);
      moving = equal ? fixed : notched(moving, fixed, 0);
      double corner = Math.max(corner(fixed), corner(moving)) * (1.01 + 4 * random.nextDouble());
      fixed = fixed.reaching(millimetres(corner * 1.2));
      moving = equal ? fixed : moving.reaching(millimetres(corner * (1 + random.nextDouble())));
    }

    private LeafProfile leaf() {
      double t = 1 + 9 * random.nextDouble();
      double bore = 3 + 17 * random.nextDouble();
      double radius = bore / 2 + t;
      Barrel barrel = barrel(bore, t);
      return switch (random.nextInt(4)) {
        case 0 -> LeafProfile.tangent(barrel);
        case 1 -> LeafProfile.tangent(barrel).turnedOver();
        case 2 -> LeafProfile.centred(barrel);
        default ->
            LeafProfile.offset(
                barrel, millimetres(t - radius + (2 * radius - t) * random.nextDouble()));
      };
    }

    private LeafProfile notched(LeafProfile leaf, LeafProfile other, double wanted) {
      double least = Math.max(barrelNotch(leaf, other), 0.5);
      double drawn = least * (1.001 + 2 * random.nextDouble() * random.nextDouble());
      return leaf.notchedBehindPin(millimetres(wanted > 0 ? wanted : drawn));
    }

    /** The notch that the other's barrel needs, by Pythagoras. */
    double barrelNotch(LeafProfile leaf, LeafProfile other) {
      double radius = mm(other.outsideDiameter()) / 2 + gap;
      double face = mm(leaf.faceAbovePin());
      double back = mm(leaf.backAbovePin());
      double level = face * back <= 0 ? 0 : Math.min(Math.abs(face), Math.abs(back));
      return Math.sqrt(Math.max(radius * radius - level * level, 0));
    }

    private static double corner(LeafProfile leaf) {
      return Math.hypot(
          mm(leaf.notch().orElseThrow()),
          Math.max(Math.abs(mm(leaf.faceAbovePin())), Math.abs(mm(leaf.backAbovePin()))));
    }

    Swing swing() {
      Swing swing = fixed == moving ? Swing.of(fixed) : Swing.between(fixed, moving);
      return swing.withGap(millimetres(gap));
    }

    /** The sum that tells whether the faces meet; the leaves fold flat if it is not positive. */
    double faces() {
      return mm(fixed.faceAbovePin()) + mm(moving.faceAbovePin()) + gap;
    }
  }

  private static double mm(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  private static Barrel barrel(double bore, double t) {
    return Barrel.around(millimetres(bore), Section.flat(millimetres(t + 10), millimetres(t)));
  }

  @Property(tries = 300)
  void opensAsFarAsPolygonsDo(@ForAll long seed, @ForAll boolean equal) {
    Pair pair = new Pair(seed, equal, 0);
    Swing swing = pair.swing();
    double found = Collision.opening(pair.fixed, pair.moving, 0, MOST, ShopUnits.MILLIMETRE);
    assertEquals(found, swing.opening().in(ShopUnits.DEGREE), GRAZING, swing::toString);
    double back =
        Collision.opening(
            pair.fixed.turnedOver(), pair.moving.turnedOver(), 0, MOST, ShopUnits.MILLIMETRE);
    assertEquals(back, swing.backSwing().in(ShopUnits.DEGREE), GRAZING, swing::toString);
    assertEquals(swing.opening().getValue(), swing.exchanged().opening().getValue(), 1e-10);
  }

  @Property(tries = 1500)
  void keepsItsGapAsPolygonsDo(
      @ForAll long seed,
      @ForAll boolean equal,
      @ForAll @DoubleRange(min = 0.001, max = 6) @Scale(4) double gap) {
    Pair pair = new Pair(seed, equal, gap);
    Swing swing = pair.swing();
    double found = Collision.opening(pair.fixed, pair.moving, gap, MOST, ShopUnits.MILLIMETRE);
    double opening = swing.opening().in(ShopUnits.DEGREE);
    assertEquals(found, opening, GRAZING, swing::toString);
    double back =
        Collision.opening(
            pair.fixed.turnedOver(), pair.moving.turnedOver(), gap, MOST, ShopUnits.MILLIMETRE);
    assertEquals(back, swing.backSwing().in(ShopUnits.DEGREE), GRAZING, swing::toString);
    assertTrue(swing.clears(degrees(Math.max(opening - GRAZING, 0))), swing::toString);
    assertFalse(swing.clears(degrees(Math.min(opening + GRAZING, 360))), swing::toString);
  }

  @Property(tries = 200)
  void leastNotchIsEnoughAndNoMore(
      @ForAll long seed,
      @ForAll boolean equal,
      @ForAll @DoubleRange(min = 1, max = 178) @Scale(4) double angle,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(4) double gap) {
    Pair pair = new Pair(seed, equal, gap);
    Assume.that(pair.faces() > 0.01);
    Swing swing = pair.swing();
    double one = mm(swing.leastNotch(degrees(angle)));
    double other = mm(swing.exchanged().leastNotch(degrees(angle)));
    Measure<Length> length = millimetres(300 * (one + other + 1));
    LeafProfile fixed = cut(pair.fixed.reaching(length), one);
    LeafProfile moving = cut(pair.moving.reaching(length), other);
    assertTrue(isFree(fixed, moving, angle, gap), swing::toString);
    Swing opened = Swing.between(fixed, moving).withGap(millimetres(gap));
    assertTrue(opened.clears(degrees(angle)), swing::toString);
    // A little less collides with the plate, or with the barrel.
    double less = 1 - 2e-4;
    for (boolean first : new boolean[] {true, false}) {
      double depth = first ? one : other;
      LeafProfile leaf = first ? pair.fixed : pair.moving;
      LeafProfile beside = first ? pair.moving : pair.fixed;
      if (depth > 0) {
        boolean hitsBarrel = depth * less < pair.barrelNotch(leaf, beside);
        LeafProfile shallow = cut(leaf.reaching(length), depth * less);
        boolean free =
            first ? isFree(shallow, moving, angle, gap) : isFree(fixed, shallow, angle, gap);
        assertTrue(hitsBarrel || !free, swing::toString);
      }
    }
  }

  private static LeafProfile cut(LeafProfile leaf, double depth) {
    return leaf.notchedBehindPin(millimetres(Math.max(depth, 1e-9)));
  }

  /** Whether polygons turn all the way to an angle. */
  private static boolean isFree(LeafProfile fixed, LeafProfile moving, double angle, double gap) {
    double reached = Collision.opening(fixed, moving, gap, angle + 1, ShopUnits.MILLIMETRE);
    return reached >= angle - GRAZING;
  }

  @Property(tries = 200)
  void boardsStopItAsPolygonsDo(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 5, max = 40) @Scale(3) double thickness,
      @ForAll @DoubleRange(min = 0, max = 30) @Scale(3) double edge,
      @ForAll @DoubleRange(min = 0, max = 30) @Scale(3) double otherEdge,
      @ForAll boolean oneOnly) {
    Pair pair = new Pair(seed, false, 0);
    Measure<Length> long1 = millimetres(4000);
    Board board = Board.of(millimetres(thickness)).edgeFromPin(millimetres(edge));
    Board other = Board.of(millimetres(thickness * 0.7)).edgeFromPin(millimetres(otherEdge));
    LeafProfile fixed = pair.fixed.reaching(long1).onBoard(board);
    LeafProfile moving =
        oneOnly ? pair.moving.reaching(long1) : pair.moving.reaching(long1).onBoard(other);
    Swing swing = Swing.between(fixed, moving);
    Assume.that(mm(fixed.faceAbovePin()) + mm(moving.faceAbovePin()) > 0.01);
    double found = Collision.opening(fixed, moving, 0, MOST, ShopUnits.MILLIMETRE);
    assertEquals(found, swing.opening().in(ShopUnits.DEGREE), GRAZING, swing::toString);
  }

  @Property(tries = 500)
  void openingGrowsWithTheNotch(
      @ForAll long seed, @ForAll @DoubleRange(min = 1, max = 2) @Scale(6) double more) {
    Pair pair = new Pair(seed, true, 0);
    LeafProfile deeper =
        pair.fixed.reaching(millimetres(900)).notchedBehindPin(millimetres(pair.depth * more));
    LeafProfile leaf = pair.fixed.reaching(millimetres(900));
    assertTrue(
        Swing.of(deeper).opening().getValue() >= Swing.of(leaf).opening().getValue() - 1e-12);
  }

  @Property(tries = 500)
  void leastNotchLeadsBackToTheOpening(
      @ForAll @DoubleRange(min = 2, max = 20) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 1, max = 12) @Scale(6) double t,
      @ForAll @DoubleRange(min = 1, max = 179) @Scale(6) double angle,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double gap,
      @ForAll boolean tangent) {
    Barrel barrel = barrel(bore, t);
    LeafProfile leaf = tangent ? LeafProfile.tangent(barrel) : LeafProfile.centred(barrel);
    Swing swing = Swing.of(leaf).withGap(millimetres(gap));
    Measure<Length> least = swing.leastNotch(degrees(angle));
    Swing cut = Swing.of(leaf.notchedBehindPin(least)).withGap(millimetres(gap));
    assertTrue(cut.clears(degrees(angle)));
    double opening = cut.opening().in(ShopUnits.DEGREE);
    double barrelNotch = mm(swing.barrelNotch());
    if (mm(least) > barrelNotch * 1.0001) {
      // The opening is that asked for, but for what rounding of the notch makes of it.
      assertEquals(angle, opening, 1e-9);
      assertFalse(cut.clears(degrees(angle + 1e-4)));
    } else {
      assertTrue(opening >= angle - FINE, () -> opening + " for " + angle);
    }
  }

  @Property(tries = 300)
  void metricAndInchInputAndScaleMakeNoDifference(
      @ForAll @DoubleRange(min = 0.2, max = 2) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.1, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 1.01, max = 3) @Scale(6) double depth,
      @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(6) double scale,
      @ForAll boolean tangent) {
    Swing inch = sized(x -> inches(x), bore, t, depth, tangent);
    Swing metric = sized(x -> millimetres(x * INCH), bore, t, depth, tangent);
    Swing larger = sized(x -> inches(x * scale), bore, t, depth, tangent);
    for (Swing other : new Swing[] {metric, larger}) {
      near(inch.opening().in(ShopUnits.DEGREE), other.opening().in(ShopUnits.DEGREE));
      near(inch.backSwing().in(ShopUnits.DEGREE), other.backSwing().in(ShopUnits.DEGREE));
      assertEquals(inch.contact(), other.contact());
    }
    near(
        inch.leastNotch(degrees(100)).in(ShopUnits.MILLIMETRE),
        metric.leastNotch(degrees(100)).in(ShopUnits.MILLIMETRE));
    near(
        inch.leastNotch(degrees(70)).getValue() * scale, larger.leastNotch(degrees(70)).getValue());
    assertEquals(ShopUnits.MILLIMETRE, metric.barrelNotch().getUnit());
    assertEquals(ShopUnits.INCH, inch.roomWhenFolded().getUnit());
  }

  private static Swing sized(
      DoubleFunction<Measure<Length>> of, double bore, double t, double depth, boolean tangent) {
    Barrel barrel = Barrel.around(of.apply(bore), Section.flat(of.apply(9), of.apply(t)));
    LeafProfile leaf = tangent ? LeafProfile.tangent(barrel) : LeafProfile.centred(barrel);
    double radius = bore / 2 + t;
    return Swing.of(
        leaf.notchedBehindPin(of.apply(radius * depth)).reaching(of.apply(20 * radius)));
  }

  private static void near(double one, double other) {
    assertEquals(one, other, 1e-11 * Math.max(Math.abs(one), 1));
  }

  @Property(tries = 200)
  void shallowNotchesAreRefused(
      @ForAll long seed, @ForAll @DoubleRange(min = 0.1, max = 0.999) @Scale(4) double less) {
    Pair pair = new Pair(seed, true, 0);
    double least = pair.barrelNotch(pair.fixed, pair.fixed);
    LeafProfile shallow = pair.fixed.notchedBehindPin(millimetres(least * less));
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> Swing.of(shallow));
    assertTrue(
        refused.getMessage().startsWith("depth of notch must be at least " + millimetres(least)),
        refused::getMessage);
  }
}
