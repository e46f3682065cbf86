package org.hammerscale.stock;

import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.kilogramsPerCubicMetre;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.poundsPerCubicFoot;
import static org.hammerscale.units.Measures.volume;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;
import org.junit.jupiter.api.Test;

class BarTest {
  private static final Bar METRIC =
      Bar.of(Section.flat(millimetres(40), millimetres(5)), Material.MILD_STEEL);
  private static final Bar INCH = Bar.of(Section.square(inches(1)), Material.WROUGHT_IRON);

  @Test
  void inchBarsWeighInPoundsAndMetricOnesInKilograms() {
    assertEquals(ShopUnits.POUND_PER_FOOT, INCH.massPerLength().getUnit());
    assertEquals(ShopUnits.POUND, INCH.mass(metres(1)).getUnit());
    assertEquals(ShopUnits.KILOGRAM_PER_METRE, METRIC.massPerLength().getUnit());
    assertEquals(1.57, METRIC.mass(metres(1)).in(ShopUnits.KILOGRAM), 1e-12);
    assertEquals(10, INCH.mass(feet(3)).in(ShopUnits.POUND), 1e-12);
  }

  @Test
  void metalInALength() {
    assertEquals(200_000, METRIC.volume(metres(1)).in(ShopUnits.CUBIC_MILLIMETRE), 1e-6);
    assertEquals(
        "length must not be negative, was -1 in; give zero if there is none",
        assertThrows(IllegalArgumentException.class, () -> INCH.mass(inches(-1))).getMessage());
  }

  @Test
  void lengthForAMassOrAVolume() {
    assertEquals(36, INCH.lengthWeighing(kilograms(4.5359237)).in(ShopUnits.INCH), 1e-12);
    assertEquals(ShopUnits.INCH, INCH.lengthWeighing(kilograms(1)).getUnit());
    assertEquals(millimetres(1000), METRIC.lengthHolding(METRIC.volume(metres(1))));
    assertEquals(inches(7), INCH.lengthHolding(INCH.volume(inches(7))));
    assertEquals(
        "mass must not be negative, was -1 kg; give zero if there is none",
        assertThrows(IllegalArgumentException.class, () -> INCH.lengthWeighing(kilograms(-1)))
            .getMessage());
    assertEquals(
        "volume must not be negative, was -1 in³; give zero if there is none",
        assertThrows(
                IllegalArgumentException.class,
                () -> INCH.lengthHolding(volume(inches(-1), INCH.section().area())))
            .getMessage());
  }

  @Test
  void theCallerChoosesTheConvention() {
    Material table = Material.MILD_STEEL.withDensity(poundsPerCubicFoot(489.6));
    assertEquals("mild steel", table.name());
    assertEquals(
        3.4,
        Bar.of(Section.square(inches(1)), table).massPerLength().in(ShopUnits.POUND_PER_FOOT),
        1e-12);
    assertEquals("mild steel, 7850 kg/m³", Material.MILD_STEEL.toString());
    assertEquals(Source.Kind.READ, Material.MILD_STEEL.source(Material.Property.DENSITY).kind());
  }

  @Test
  void aMaterialOfTheCallersOwn() {
    Source weighed = Source.commonPractice("weighed in the shop");
    Material bronze = Material.of("bell bronze", kilogramsPerCubicMetre(8700), weighed);
    assertEquals(bronze, Material.of("bell bronze", kilogramsPerCubicMetre(8700), weighed));
    assertEquals(
        bronze.hashCode(),
        Material.of("bell bronze", kilogramsPerCubicMetre(8700), weighed).hashCode());
    assertEquals(
        "density must be more than zero, was 0 kg/m³; give the finished cold value",
        assertThrows(
                IllegalArgumentException.class,
                () -> Material.of("x", kilogramsPerCubicMetre(0), weighed))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> Material.of(" ", kilogramsPerCubicMetre(1), weighed));
  }

  @Test
  void equalsBySectionAndMaterial() {
    assertEquals(INCH, Bar.of(Section.square(inches(1)), Material.WROUGHT_IRON));
    assertEquals(
        INCH.hashCode(), Bar.of(Section.square(inches(1)), Material.WROUGHT_IRON).hashCode());
    assertNotEquals(INCH, METRIC);
    assertEquals("1 in square, wrought iron", INCH.toString());
    assertEquals(Section.square(inches(1)), INCH.section());
    assertEquals(Material.WROUGHT_IRON, INCH.material());
  }
}
