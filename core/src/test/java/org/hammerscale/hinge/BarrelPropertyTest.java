package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleFunction;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for every barrel and its knuckles. Sizes are drawn in inches. */
class BarrelPropertyTest {
  private static final double INCH = 25.4;

  private static List<Barrel> all(DoubleFunction<Measure<Length>> of, double bore, double t) {
    Section strap = Section.flat(of.apply(3 * t), of.apply(t));
    Barrel barrel = Barrel.around(of.apply(bore), strap);
    Barrel weld = barrel.endedWith(BarrelEnd.forgeWelded(WeldAllowance.LINK));
    BarrelEnd scarf = BarrelEnd.scarfedTo(of.apply(t / 2));
    return List.of(
        barrel,
        barrel.endedWith(BarrelEnd.tucked()),
        barrel.endedWith(scarf),
        barrel.endedWith(scarf.over(of.apply(t))),
        weld,
        barrel.centred(),
        weld.centred());
  }

  @Property
  void metricAndInchInputGiveTheSameAnswer(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t) {
    List<Barrel> inch = all(x -> inches(x), bore, t);
    List<Barrel> metric = all(x -> millimetres(x * INCH), bore, t);
    for (int i = 0; i < inch.size(); i++) {
      Estimate<Length> a = inch.get(i).stock(inch.get(i).section());
      Estimate<Length> b = metric.get(i).stock(metric.get(i).section());
      assertEquals(ShopUnits.MILLIMETRE, b.likely().getUnit());
      assertTrue(a.low().isEquivalentTo(b.low()) && a.likely().isEquivalentTo(b.likely()));
      assertTrue(a.high().isEquivalentTo(b.high()));
      assertTrue(inch.get(i).reach().isEquivalentTo(metric.get(i).reach()));
    }
  }

  @Property
  void everyEndClosesWithLessThanAFullTurnAndTuckedTakesMoreThanSquare(
      @ForAll @DoubleRange(min = 0.001, max = 3) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t) {
    Barrel barrel = all(x -> inches(x), bore, t).get(0);
    double full = barrel.developedLength().getValue();
    double square = barrel.closing().stripLength().getValue();
    double tucked = barrel.endedWith(BarrelEnd.tucked()).closing().stripLength().getValue();
    double centred = barrel.centred().closing().stripLength().getValue();
    assertTrue(square < tucked && tucked < full, square + " " + tucked + " " + full);
    assertTrue(square < centred && centred < full, square + " " + centred + " " + full);
    assertTrue(barrel.closing().leastThinned().getValue() <= full - square + 1e-12 * full);
  }

  @Property
  void aScarfOfTheLeastLengthJustSeats(
      @ForAll @DoubleRange(min = 0.2, max = 3) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 0.2) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0.3, max = 0.9) @Scale(6) double part) {
    Barrel barrel = all(x -> inches(x), bore, t).get(0);
    double r = bore / 2;
    double e = part * t;
    double scarf = barrel.closing().leastScarf(inches(e)).getValue();
    double turn = scarf / (r + (t + e) / 4);
    // The outside of the scarf nowhere rises over the leaf's face, and a shorter one does.
    double tip = Math.acos(r / (r + e));
    for (int i = 1; i <= 100; i++) {
      double back = Math.min(turn, Math.PI / 2 - tip - 1e-6) * i / 100;
      double face = r / Math.cos(tip + back);
      assertTrue(r + e + (t - e) * back / turn <= face * (1 + 1e-12));
    }
    double near = 1e-4;
    assertTrue(r + e + (t - e) * near / (0.99 * turn) > r / Math.cos(tip + near));
    BarrelEnd end = BarrelEnd.scarfedTo(inches(e));
    assertEquals(
        barrel.endedWith(end).closing().stripLength(),
        barrel.endedWith(end.over(inches(scarf))).closing().stripLength());
  }

  @Property
  void volumeInIsVolumeOut(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 1, max = 5) @Scale(6) double times) {
    // From a wider bar, drawn narrower first, it takes as much less of the bar's length.
    Section parent = Section.flat(inches(3 * t * times), inches(t));
    for (Barrel barrel : all(x -> inches(x), bore, t)) {
      double own = barrel.stock(barrel.section()).likely().getValue();
      assertEquals(own, barrel.stock(parent).likely().getValue() * times, 1e-12 * own);
      double used =
          barrel.metalLost().addedTo(barrel.metalKept()).likely().in(ShopUnits.CUBIC_INCH);
      assertEquals(own * 3 * t * t, used, 1e-12 * used);
    }
  }

  @Property
  void usingInvertsTheStock(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t) {
    for (Barrel barrel : all(x -> inches(x), bore, t)) {
      Barrel back = barrel.using(barrel.stock(barrel.section()).likely());
      assertEquals(bore, back.insideDiameter().getValue(), 1e-10 * (bore + t));
    }
  }

  @Property
  void knucklesAndGapsMakeUpTheWidthAndInterleave(
      @ForAll @DoubleRange(min = 1, max = 12) @Scale(6) double width,
      @ForAll @IntRange(min = 2, max = 15) int count,
      @ForAll @DoubleRange(min = 0, max = 0.06) @Scale(6) double gap) {
    Knuckles equal = Knuckles.across(inches(width)).into(count).withGap(inches(gap));
    Knuckles metric = Knuckles.across(millimetres(width * INCH)).into(count).withGap(inches(gap));
    for (Knuckles knuckles : List.of(equal, equal.bearingEqually())) {
      List<Knuckle> all = knuckles.all();
      double sum = all.stream().mapToDouble(k -> k.length().getValue()).sum() + (count - 1) * gap;
      assertEquals(width, sum, 1e-12 * width);
      assertEquals(width, all.get(count - 1).end().getValue(), 1e-12 * width);
      assertTrue(knuckles.interleavesWith(knuckles));
      assertEquals(gap, knuckles.tightestJointWith(knuckles).getValue(), 1e-12 * width);
      assertEquals(
          sum - (count - 1) * gap,
          knuckles.bearingLength(Leaf.FIRST).add(knuckles.bearingLength(Leaf.SECOND)).getValue(),
          1e-12 * width);
      for (Leaf leaf : Leaf.values()) {
        // Slots and knuckles of one leaf fill its width.
        double slots = knuckles.slotsOf(leaf).stream().mapToDouble(s -> s.width().getValue()).sum();
        assertEquals(width, slots + knuckles.bearingLength(leaf).getValue(), 1e-12 * width);
      }
    }
    assertTrue(metric.length(2).isEquivalentTo(equal.length(2)));
    Knuckles fair = equal.bearingEqually();
    assertTrue(fair.bearingLength(Leaf.FIRST).isEquivalentTo(fair.bearingLength(Leaf.SECOND)));
  }
}
