package org.hammerscale.piece;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleFunction;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for every leaf, whatever its sizes and units. Sizes are drawn in inches. */
class LawsPropertyTest {
  private static final double INCH = 25.4;

  /** A leaf with its lengths made by one maker of lengths, from inches. */
  private static Piece leaf(
      DoubleFunction<Measure<Length>> length, double bore, double t, double plain, double taper) {
    Section strap = Section.flat(length.apply(4 * t), length.apply(t));
    Section tip = Section.flat(length.apply(t), length.apply(t / 2));
    return Piece.of(
        Bar.of(strap, Material.MILD_STEEL),
        Barrel.around(length.apply(bore), strap),
        Plain.of(strap, length.apply(plain)),
        Taper.between(strap, tip, length.apply(taper)));
  }

  @Property
  void metricAndInchInputGiveTheSameAnswer(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0, max = 100) @Scale(6) double plain,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double taper) {
    Layout inch = leaf(x -> inches(x), bore, t, plain, taper).layout();
    Layout metric = leaf(x -> millimetres(x * INCH), bore, t, plain, taper).layout();
    assertEquals(ShopUnits.MILLIMETRE, metric.cutLength().likely().getUnit());
    for (int i = 0; i < inch.marks().size(); i++) {
      assertTrue(
          inch.marks()
              .get(i)
              .position()
              .likely()
              .isEquivalentTo(metric.marks().get(i).position().likely()));
    }
    assertTrue(inch.mass().isEquivalentTo(metric.mass()));
    assertTrue(inch.finishedLength().isEquivalentTo(metric.finishedLength()));
  }

  @Property
  void marksAscendAndEndAtTheCutLength(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0, max = 100) @Scale(6) double plain,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double taper) {
    Layout layout = leaf(x -> inches(x), bore, t, plain, taper).layout();
    Measure<Length> before = inches(0);
    for (Mark mark : layout.marks()) {
      assertTrue(mark.position().likely().compareTo(before) >= 0);
      before = mark.position().likely();
    }
    assertEquals(layout.cutLength().likely(), before);
  }

  @Property
  void scalingAllLengthsScalesTheStock(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double length,
      @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(6) double k) {
    Layout once = leaf(x -> inches(x), bore, t, length, length).layout();
    Layout scaled = leaf(x -> inches(x * k), bore, t, length, length).layout();
    assertTrue(scaled.cutLength().likely().isEquivalentTo(once.cutLength().likely().multiply(k)));
    assertTrue(scaled.mass().isEquivalentTo(once.mass().multiply(k * k * k)));
  }

  @Property
  void volumeInIsVolumeOut(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0, max = 100) @Scale(6) double plain,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double taper) {
    Piece piece = leaf(x -> inches(x), bore, t, plain, taper);
    double kept =
        piece.features().stream()
            .mapToDouble(f -> f.metalKept().likely().in(ShopUnits.CUBIC_INCH))
            .sum();
    double used = piece.bar().volume(piece.layout().cutLength().likely()).in(ShopUnits.CUBIC_INCH);
    assertEquals(kept, used, 1e-12 * used);
  }

  @Property
  void aTaperHoldsMetalBetweenItsTwoEnds(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double wide,
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double other,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double length) {
    Section from = Section.square(inches(wide));
    Section to = Section.square(inches(other));
    double metal = metal(Taper.between(from, to, inches(length)));
    double a = length * wide * wide;
    double b = length * other * other;
    assertTrue(metal >= Math.min(a, b) * (1 - 1e-12) && metal <= Math.max(a, b) * (1 + 1e-12));
    assertEquals(metal, metal(Taper.between(to, from, inches(length))), 1e-12 * metal);
  }

  @Property
  void aTaperBetweenEqualSectionsIsPlain(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double side,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double length) {
    Section section = Section.round(millimetres(side));
    assertTrue(
        Taper.between(section, section, millimetres(length))
            .stock(section)
            .likely()
            .isEquivalentTo(millimetres(length)));
  }

  private static double metal(Taper taper) {
    return taper.metalKept().likely().in(ShopUnits.CUBIC_INCH);
  }
}
