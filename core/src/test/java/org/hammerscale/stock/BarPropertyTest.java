package org.hammerscale.stock;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** Length, volume and mass of a bar, there and back; and the choice among sizes. */
class BarPropertyTest {
  private static Section flat(double width, double share) {
    return Section.flat(inches(width), inches(width * share));
  }

  @Property
  void lengthWeighingUndoesMass(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double width,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double share,
      @ForAll @DoubleRange(min = 0, max = 1000) @Scale(6) double length) {
    for (Material material : List.of(Material.MILD_STEEL, Material.WROUGHT_IRON)) {
      Bar bar = Bar.of(flat(width, share), material);
      Measure<Length> back = bar.lengthWeighing(bar.mass(inches(length)));
      assertEquals(length, back.in(ShopUnits.INCH), 1e-14 * length);
      assertTrue(
          bar.lengthWeighing(bar.mass(millimetres(length))).isEquivalentTo(millimetres(length)));
      assertEquals(ShopUnits.INCH, back.getUnit());
    }
  }

  @Property
  void lengthHoldingUndoesVolume(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double width,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double share,
      @ForAll @DoubleRange(min = 0, max = 1000) @Scale(6) double length) {
    Bar bar = Bar.of(flat(width, share), Material.COPPER);
    assertEquals(
        length, bar.lengthHolding(bar.volume(inches(length))).in(ShopUnits.INCH), 1e-15 * length);
    Measure<Length> metric = bar.lengthHolding(bar.volume(millimetres(length)));
    assertTrue(metric.isEquivalentTo(millimetres(length)));
    assertEquals(ShopUnits.INCH, metric.getUnit());
  }

  @Property
  void metricAndInchBarsWeighTheSame(
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(6) double width,
      @ForAll @DoubleRange(min = 0.1, max = 1000) @Scale(6) double length) {
    Bar inch = Bar.of(Section.hexagon(inches(width)), Material.SILICON_BRONZE);
    Bar metric = Bar.of(Section.hexagon(millimetres(width * 25.4)), Material.SILICON_BRONZE);
    assertTrue(inch.mass(inches(length)).isEquivalentTo(metric.mass(millimetres(length * 25.4))));
    assertTrue(inch.massPerLength().isEquivalentTo(metric.massPerLength()));
  }

  @Property
  void whatHoldsAVolumeInALengthUsesNoMoreThanIt(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double one,
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double other,
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double wanted,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double length) {
    BarSizes sizes =
        BarSizes.of(Section.square(inches(one)), Section.round(millimetres(other * 25.4)));
    Bar needed = Bar.of(Section.square(inches(wanted)), Material.MILD_STEEL);
    List<Section> holding = sizes.holding(needed.volume(inches(length)), inches(length)).sections();
    assertEquals(sizes.atLeast(needed.section().area()).sections(), holding);
    for (Section section : sizes.sections()) {
      Measure<Length> used =
          Bar.of(section, Material.MILD_STEEL).lengthHolding(needed.volume(inches(length)));
      assertEquals(used.in(ShopUnits.INCH) <= length * (1 + 1e-12), holding.contains(section));
    }
  }

  @Property
  void theNearestSizeIsNoFurtherThanAnyOther(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double one,
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double other,
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double wanted) {
    BarSizes sizes = BarSizes.of(Section.octagon(inches(one)), Section.halfRound(inches(other)));
    Measure<Area> area = Section.square(inches(wanted)).area();
    List<Section> sorted = sizes.nearestTo(area).sections();
    assertEquals(2, sorted.size());
    double nearest = sorted.get(0).area().subtract(area).in(ShopUnits.SQUARE_INCH);
    double further = sorted.get(1).area().subtract(area).in(ShopUnits.SQUARE_INCH);
    assertTrue(Math.abs(nearest) <= Math.abs(further) + 1e-12);
  }
}
