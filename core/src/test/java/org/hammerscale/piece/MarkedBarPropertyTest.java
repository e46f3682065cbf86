package org.hammerscale.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** Laws of a layout on a rule. */
class MarkedBarPropertyTest {
  private static final double NOISE = 1e-9;

  /** A leaf: barrel, plain, shoulder (an estimate) and taper, in millimetres times a scale. */
  private static List<Feature> leaf(double plain, double shoulder, double taper, double scale) {
    Section bar = section(40, 6, scale);
    Section set = section(30, 6, scale);
    return List.of(
        Barrel.around(length(12, scale), bar),
        Plain.of(bar, length(plain, scale)),
        Shoulder.between(bar, set, length(shoulder, scale)),
        Taper.between(set, section(15, 3, scale), length(taper, scale)));
  }

  private static Section section(double width, double thickness, double scale) {
    return Section.flat(length(width, scale), length(thickness, scale));
  }

  private static Measure<Length> length(double millimetres, double scale) {
    return Measures.millimetres(millimetres * scale);
  }

  private static Piece piece(List<Feature> features) {
    return Piece.of(
        Bar.of(features.get(0).start(), Material.MILD_STEEL), features.toArray(new Feature[0]));
  }

  private static Piece marked(List<Feature> features) {
    return piece(features).withReferenceAfter(1).trimmedAt(PieceEnd.FIRST, PieceEnd.LAST);
  }

  @Property
  void theCutGrowsWithTheOddsAndIsEnoughByThem(
      @ForAll @DoubleRange(min = 20, max = 500) @Scale(2) double plain,
      @ForAll @DoubleRange(min = 5, max = 60) @Scale(2) double shoulder,
      @ForAll @DoubleRange(min = 0.5, max = 0.9999) @Scale(4) double odds,
      @ForAll @DoubleRange(min = 0.5, max = 0.9999) @Scale(4) double others) {
    Layout layout = marked(leaf(plain, shoulder, 90, 1)).layout();
    Graduation<Length> rule = Graduation.MILLIMETRE;
    MarkedBar less = layout.on(rule, Math.min(odds, others));
    MarkedBar more = layout.on(rule, Math.max(odds, others));
    assertTrue(less.cutLength().isLessThanOrEqualTo(more.cutLength()));
    assertTrue(rule.isOnMark(less.cutLength()));
    // Behind the mark only shoulder and taper err: the bound of their sum, on the rule.
    Measure<Length> behind = less.cutLength().subtract(less.reference());
    double stock = 0;
    for (Feature feature : layout.piece().features().subList(1, 4)) {
      stock +=
          feature.stock(layout.piece().bar().section()).bound(less.odds()).in(behind.getUnit());
    }
    assertTrue(behind.getValue() >= stock - NOISE, () -> behind + " of " + less);
    assertTrue(behind.getValue() < stock + 1 + NOISE);
    less.marks().forEach(mark -> assertTrue(rule.isOnMark(mark.fromReference())));
    less.marks().forEach(mark -> assertTrue(rule.isOnMark(mark.fromFirstEnd())));
  }

  @Property
  void aPieceToldFromItsOtherEndIsTheSame(
      @ForAll @DoubleRange(min = 20, max = 500) @Scale(2) double plain,
      @ForAll @DoubleRange(min = 5, max = 60) @Scale(2) double shoulder,
      @ForAll @DoubleRange(min = 10, max = 200) @Scale(2) double taper) {
    List<Feature> told = leaf(plain, shoulder, taper, 1).subList(1, 4);
    List<Feature> turned =
        List.of(told.get(2).reversed(), told.get(1).reversed(), told.get(0).reversed());
    MarkedBar one = piece(told).layout().on(Graduation.HALF_MILLIMETRE);
    Piece bar =
        Piece.of(piece(told).bar(), turned.toArray(new Feature[0]))
            .withReferenceAfter(3)
            .trimmedAt(PieceEnd.FIRST);
    MarkedBar other = bar.layout().on(Graduation.HALF_MILLIMETRE);
    assertEquals(one.cutLength().getValue(), other.cutLength().getValue(), NOISE);
    for (int i = 0; i < 2; i++) {
      assertEquals(
          one.marks().get(i).fromReference().getValue(),
          other.marks().get(1 - i).fromReference().getValue(),
          NOISE);
    }
    Trim mine = one.trims().get(0);
    Trim theirs = other.trims().get(0);
    assertEquals(mine.length().likely().getValue(), theirs.length().likely().getValue(), NOISE);
    assertEquals(mine.section(), theirs.section());
  }

  @Property
  void twiceTheSizesAreTwiceTheAnswers(
      @ForAll @DoubleRange(min = 20, max = 500) @Scale(2) double plain,
      @ForAll @DoubleRange(min = 10, max = 200) @Scale(2) double taper) {
    List<Feature> small = leaf(plain, 20, taper, 1);
    List<Feature> large = leaf(plain, 20, taper, 2);
    // The hand's shoulder scales too, and so does the rule.
    MarkedBar one = marked(small).layout().on(Graduation.MILLIMETRE);
    MarkedBar two = marked(large).layout().on(Graduation.of(Measures.millimetres(2)));
    assertEquals(2 * one.cutLength().getValue(), two.cutLength().getValue(), NOISE);
    assertEquals(2 * one.reference().getValue(), two.reference().getValue(), NOISE);
    assertEquals(
        2 * one.trims().get(1).length().likely().getValue(),
        two.trims().get(1).length().likely().getValue(),
        1e-7);
  }

  @Property
  void whatIsCutOffIsAsMuchMetalInEitherSection(
      @ForAll @DoubleRange(min = 20, max = 500) @Scale(2) double plain,
      @ForAll @DoubleRange(min = 10, max = 200) @Scale(2) double taper) {
    Piece leaf = marked(leaf(plain, 20, taper, 1));
    Section bar = leaf.bar().section();
    for (Trim trim : leaf.layout().on(Graduation.MILLIMETRE).trims()) {
      assertEquals(
          trim.inBar().high().getValue(),
          trim.section().lengthAs(bar, trim.length().high()).getValue(),
          NOISE);
      assertTrue(trim.length().low().getValue() >= 0);
    }
  }

  @Property
  void inchesAndMillimetresAgreeWithinTheirRules(
      @ForAll @DoubleRange(min = 1, max = 20) @Scale(3) double plain,
      @ForAll @DoubleRange(min = 0.5, max = 8) @Scale(3) double taper) {
    List<Feature> metric = leaf(plain, 20 / 25.4, taper, 25.4);
    MarkedBar sixteenths = marked(metric).layout().on(Graduation.SIXTEENTH);
    MarkedBar millimetres = marked(metric).layout().on(Graduation.MILLIMETRE);
    double apart = sixteenths.cutLength().getValue() - millimetres.cutLength().getValue();
    assertTrue(Math.abs(apart) <= 2 * 25.4 / 16 + NOISE, () -> apart + " mm");
  }
}
