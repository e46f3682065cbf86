package org.hammerscale.stock;

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
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for a section of any shape and size. */
class SectionPropertyTest {
  /** One section of every shape, {@code share} of the size being its thickness or wall. */
  private static List<Section> shapes(
      DoubleFunction<Measure<Length>> length, double size, double share) {
    Measure<Length> s = length.apply(size);
    Measure<Length> thin = length.apply(size * share);
    return List.of(
        Section.flat(s, thin),
        Section.onEdge(thin, s),
        Section.square(s),
        Section.round(s),
        Section.hexagon(s),
        Section.octagon(s),
        Section.halfRound(s),
        Section.roundTube(s, thin),
        Section.squareTube(s, thin));
  }

  private static double area(Section section) {
    return section.area().in(ShopUnits.SQUARE_INCH);
  }

  @Property
  void aTubeIsTheOuterLessTheInner(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double outside,
      @ForAll @DoubleRange(min = 0.01, max = 0.49) @Scale(6) double share) {
    double wall = outside * share;
    Measure<Length> bore = inches(outside - 2 * wall);
    double whole = outside * outside;
    assertEquals(
        area(Section.round(inches(outside))) - area(Section.round(bore)),
        area(Section.roundTube(inches(outside), inches(wall))),
        1e-14 * whole);
    assertEquals(
        area(Section.square(inches(outside))) - area(Section.square(bore)),
        area(Section.squareTube(inches(outside), inches(wall))),
        1e-14 * whole);
  }

  @Property
  void metricAndInchSizesGiveTheSameSection(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double size,
      @ForAll @DoubleRange(min = 0.01, max = 0.49) @Scale(6) double share) {
    List<Section> inch = shapes(x -> inches(x), size, share);
    List<Section> metric = shapes(x -> millimetres(x * 25.4), size, share);
    for (int i = 0; i < inch.size(); i++) {
      assertTrue(inch.get(i).area().isEquivalentTo(metric.get(i).area()));
      assertTrue(inch.get(i).perimeter().isEquivalentTo(metric.get(i).perimeter()));
      assertTrue(inch.get(i).width().isEquivalentTo(metric.get(i).width()));
      assertTrue(inch.get(i).toCentre().isEquivalentTo(metric.get(i).toCentre()));
      assertTrue(inch.get(i).meets(metric.get(i)));
      assertEquals(ShopUnits.SQUARE_MILLIMETRE, metric.get(i).area().getUnit());
    }
  }

  /** A circle has the least perimeter of all plane figures of its area: P² ≥ 4 π A. */
  @Property
  void noPerimeterIsShorterThanThatOfTheRoundOfItsArea(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double size,
      @ForAll @DoubleRange(min = 0.01, max = 0.49) @Scale(6) double share) {
    for (Section section : shapes(x -> inches(x), size, share)) {
      double perimeter = section.perimeter().in(ShopUnits.INCH);
      assertTrue(
          perimeter * perimeter >= 4 * Math.PI * area(section) * (1 - 1e-12), section::toString);
    }
  }

  @Property
  void theAreaFitsIntoWidthTimesThickness(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double size,
      @ForAll @DoubleRange(min = 0.01, max = 0.49) @Scale(6) double share) {
    for (Section section : shapes(x -> inches(x), size, share)) {
      double box = section.width().in(ShopUnits.INCH) * section.thickness().in(ShopUnits.INCH);
      assertTrue(area(section) <= box * (1 + 1e-12), section::toString);
      assertTrue(section.toCentre().isLessThan(section.thickness()), section::toString);
    }
  }

  @Property
  void moreSidesAcrossTheSameFlatsComeNearerTheRound(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double size) {
    Measure<Length> s = inches(size);
    assertTrue(area(Section.square(s)) > area(Section.hexagon(s)));
    assertTrue(area(Section.hexagon(s)) > area(Section.octagon(s)));
    assertTrue(area(Section.octagon(s)) > area(Section.round(s)));
  }

  @Property
  void twiceTheSizeHasFourTimesTheArea(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double size,
      @ForAll @DoubleRange(min = 0.01, max = 0.49) @Scale(6) double share,
      @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(6) double k) {
    List<Section> once = shapes(x -> inches(x), size, share);
    List<Section> scaled = shapes(x -> inches(x * k), size, share);
    for (int i = 0; i < once.size(); i++) {
      assertTrue(scaled.get(i).area().isEquivalentTo(once.get(i).area().multiply(k * k)));
      assertTrue(scaled.get(i).perimeter().isEquivalentTo(once.get(i).perimeter().multiply(k)));
    }
  }

  /** Between two sections in proportion the root of the area grows in a straight line. */
  @Property
  void halfwayIsTheMeanSizeFromBothSides(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double size,
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double other,
      @ForAll @DoubleRange(min = 0.01, max = 0.49) @Scale(6) double share) {
    List<Section> from = shapes(x -> inches(x), size, share);
    List<Section> to = shapes(x -> inches(x), other, share);
    for (int i = 0; i < from.size(); i++) {
      Section middle = from.get(i).halfwayTo(to.get(i));
      assertEquals(middle, to.get(i).halfwayTo(from.get(i)));
      double root = (Math.sqrt(area(from.get(i))) + Math.sqrt(area(to.get(i)))) / 2;
      assertEquals(root * root, area(middle), 1e-12 * root * root, middle::toString);
    }
  }
}
