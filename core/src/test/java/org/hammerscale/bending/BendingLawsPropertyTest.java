package org.hammerscale.bending;

import static org.hammerscale.units.Measures.degrees;
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
import net.jqwik.api.constraints.Scale;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for every bent stretch, whatever its sizes and units. */
class BendingLawsPropertyTest {
  private static final double INCH = 25.4;
  private static final Section THIN = Section.round(inches(0.01));

  /** One of each, of sizes that all of them can have, made by one maker of lengths from inches. */
  private static List<BentBar> all(DoubleFunction<Measure<Length>> of, double size, double t) {
    Section bar = Section.flat(of.apply(3 * t), of.apply(t));
    Measure<Length> one = of.apply(size);
    Measure<Length> two = of.apply(2 * size);
    return List.of(
        Bend.of(degrees(70), one, bar),
        Bend.of(degrees(70), one, bar).with(NeutralLine.HANDBOOK_BRONZE),
        SquareCorner.of(bar),
        UBend.inside(one, bar),
        UBend.inside(one, bar).withSquareCorners().withLegs(of.apply(9), of.apply(9)),
        Ring.inside(one, bar),
        Ring.inside(one, bar).welded(WeldAllowance.ONE_THICKNESS),
        Ring.inside(one, bar).lapped(two),
        Eye.turned(one, bar),
        Eye.scarfed(one, bar),
        Link.inside(two, one, bar).welded(WeldAllowance.LINK),
        Oval.inside(two, one, bar),
        Hook.open(one, bar).withTip(two),
        Joggle.by(two, degrees(20), one, bar),
        Coil.around(one, 3, two, bar),
        Scroll.archimedean(one, two, 2, bar),
        Scroll.logarithmic(one, two, 2, bar),
        Scroll.involute(one, 2, bar),
        Course.from(one, two, bar).to(two, two).to(two, one),
        Twist.of(2, two, bar));
  }

  @Property(tries = 200)
  void metricAndInchInputGiveTheSameAnswer(
      @ForAll @DoubleRange(min = 0.1, max = 4) @Scale(6) double size,
      @ForAll @DoubleRange(min = 0.02, max = 1) @Scale(6) double t) {
    List<BentBar> inch = all(x -> inches(x), size, t);
    List<BentBar> metric = all(x -> millimetres(x * INCH), size, t);
    for (int i = 0; i < inch.size(); i++) {
      BentBar one = inch.get(i);
      BentBar other = metric.get(i);
      assertEquals(ShopUnits.MILLIMETRE, other.developedLength().getUnit());
      near(one.developedLength(), other.developedLength());
      near(one.reach(), other.reach());
      near(one.stock(one.section()).high(), other.stock(other.section()).high());
      assertEquals(one.cautions().size(), other.cautions().size());
    }
  }

  @Property(tries = 200)
  void volumeInIsVolumeOut(
      @ForAll @DoubleRange(min = 0.1, max = 4) @Scale(6) double size,
      @ForAll @DoubleRange(min = 0.02, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0.1, max = 4) @Scale(6) double parent) {
    Section bar = Section.square(inches(parent));
    for (BentBar feature : all(x -> inches(x), size, t)) {
      double used = feature.stock(bar).likely().in(ShopUnits.INCH) * parent * parent;
      double metal =
          feature.metalLost().addedTo(feature.metalKept()).likely().in(ShopUnits.CUBIC_INCH);
      assertEquals(metal, used, 1e-12 * metal, feature::toString);
      Estimate<Length> own = feature.stock(feature.section());
      double area = feature.section().area().in(ShopUnits.SQUARE_INCH);
      assertEquals(metal, own.likely().in(ShopUnits.INCH) * area, 1e-12 * metal);
    }
  }

  @Property
  void aBendInvertsAndGrowsWithItsAngle(
      @ForAll @DoubleRange(min = 0, max = 359) @Scale(3) double angle,
      @ForAll @DoubleRange(min = 0.1, max = 4) @Scale(6) double radius,
      @ForAll @DoubleRange(min = 0.02, max = 1) @Scale(6) double t) {
    Bend bend = Bend.of(degrees(angle), inches(radius), Section.square(inches(t)));
    assertEquals(angle, bend.using(bend.developedLength()).angle().getValue(), 1e-11);
    Bend more = Bend.of(degrees(angle + 1), inches(radius), Section.square(inches(t)));
    assertTrue(more.developedLength().isGreaterThan(bend.developedLength()));
    // Cold rules use less bar than the mean line, and thin the bend.
    Bend cold = bend.with(NeutralLine.HANDBOOK_SOFT_COPPER);
    assertTrue(cold.developedLength().compareTo(bend.developedLength()) <= 0);
    assertTrue(cold.bentThickness().isLessThan(inches(t)));
  }

  @Property
  void theDeductionIsThatOfTheLegs(
      @ForAll @DoubleRange(min = 1, max = 180) @Scale(3) double angle,
      @ForAll @DoubleRange(min = 0, max = 2) @Scale(6) double radius,
      @ForAll @DoubleRange(min = 0.02, max = 1) @Scale(6) double t) {
    Bend bend = Bend.of(degrees(angle), inches(radius), Section.square(inches(t)));
    Measure<Length> leg = inches(3);
    Measure<Length> over = bend.outsideDimension(leg);
    double cut = bend.cutLength(over, over).getValue();
    assertEquals(6 + bend.developedLength().getValue(), cut, 1e-12 * (1 + over.getValue()));
    assertEquals(3, bend.straightLeg(over).getValue(), 1e-12 * (1 + over.getValue()));
  }

  @Property(tries = 100)
  void anEvenScrollIsAsLongAsQuadratureSays(
      @ForAll @DoubleRange(min = 0, max = 5) @Scale(6) double inner,
      @ForAll @DoubleRange(min = 0.01, max = 20) @Scale(6) double growth,
      @ForAll @DoubleRange(min = 0.05, max = 8) @Scale(6) double turns) {
    Scroll scroll = Scroll.archimedean(inches(inner), inches(inner + growth), turns, THIN);
    double b = growth / (2 * Math.PI * turns);
    double length =
        new IterativeLegendreGaussIntegrator(20, 1e-13, 1e-13)
            .integrate(1_000_000, x -> Math.hypot(inner + b * x, b), 0, 2 * Math.PI * turns);
    assertEquals(length, scroll.developedLength().getValue(), 1e-10 * length);
    assertTrue(scroll.meanRadiusLength().isLessThan(scroll.developedLength()));
  }

  @Property(tries = 200)
  void scrollsInvert(
      @ForAll @DoubleRange(min = 0.01, max = 5) @Scale(6) double inner,
      @ForAll @DoubleRange(min = 0.01, max = 20) @Scale(6) double growth,
      @ForAll @DoubleRange(min = 0.05, max = 8) @Scale(6) double turns,
      @ForAll @DoubleRange(min = 0.05, max = 500) @Scale(6) double bar) {
    Measure<Length> r0 = inches(inner);
    Measure<Length> r1 = inches(inner + growth);
    Scroll even = Scroll.archimedean(r0, r1, turns, THIN);
    Scroll open = Scroll.logarithmic(r0, r1, turns, THIN);
    for (Scroll scroll : List.of(even, open, Scroll.involute(r0, turns, THIN))) {
      Scroll followed = scroll.using(inches(bar));
      // A radius is kept to its last place, which counts where the way outwards is very short.
      double last = 2 * Math.ulp(followed.outerRadius().getValue());
      double outwards = followed.outerRadius().getValue() - followed.innerRadius().getValue();
      double slack = 1e-10 + last / outwards;
      assertEquals(bar, followed.developedLength().getValue(), slack * bar);
    }
    double enough = growth * 1.001 + bar;
    for (Scroll scroll : List.of(even, open)) {
      Scroll tight = scroll.tightenedTo(inches(enough));
      assertEquals(enough, tight.developedLength().getValue(), 1e-9 * enough);
    }
  }

  @Property
  void anOvalLiesBetweenItsCircles(
      @ForAll @DoubleRange(min = 1, max = 50) @Scale(6) double width,
      @ForAll @DoubleRange(min = 0, max = 50) @Scale(6) double more) {
    Oval oval = Oval.inside(inches(width + more), inches(width), THIN);
    double length = oval.developedLength().getValue();
    double small = Ring.inside(inches(width), THIN).developedLength().getValue();
    double large = Ring.inside(inches(width + more), THIN).developedLength().getValue();
    assertTrue(length >= small * (1 - 1e-14) && length <= large * (1 + 1e-14));
    // Between the rhomb in it and the box around it, too.
    assertTrue(length >= 2 * Math.hypot(width + more, width));
    Link link = Link.inside(inches(width + more), inches(width), THIN);
    assertTrue(length <= link.developedLength().getValue() * (1 + 1e-14));
  }

  @Property
  void jogglesInvert(
      @ForAll @DoubleRange(min = 0.05, max = 5) @Scale(6) double offset,
      @ForAll @DoubleRange(min = 0, max = 2) @Scale(6) double radius,
      @ForAll @DoubleRange(min = 0.01, max = 50) @Scale(6) double more) {
    Section bar = Section.square(inches(0.25));
    double rho = radius + 0.125;
    double least = offset < 2 * rho ? Math.sqrt(offset * (4 * rho - offset)) : 2 * rho;
    Joggle any = Joggle.by(inches(offset), degrees(0.1), inches(radius), bar);
    Joggle joggle = any.over(inches(least + more));
    assertEquals(least + more, joggle.reach().getValue(), 1e-9 * (least + more));
    // No shorter than the straight way, no longer than round the corner.
    double length = joggle.developedLength().getValue();
    assertTrue(length > Math.hypot(least + more, offset) * (1 - 1e-9));
    assertTrue(length < least + more + offset);
  }

  private static void near(Measure<Length> one, Measure<Length> other) {
    double inch = one.in(ShopUnits.INCH);
    assertEquals(inch, other.in(ShopUnits.INCH), 1e-12 * inch);
  }
}
