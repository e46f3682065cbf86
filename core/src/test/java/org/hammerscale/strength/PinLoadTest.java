package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.hinge.Pin;
import org.hammerscale.stock.BarSizes;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Working;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class PinLoadTest {
  private static final Fork FORK =
      Fork.around(millimetres(30)).cheeks(millimetres(15)).gap(millimetres(1));

  private static final PermissibleStress STEEL = PermissibleStress.of(megapascals(235), 3);

  @Test
  void showsTheWorkingOfEveryStress() {
    PinLoad load = PinLoad.on(Pin.of(millimetres(10)), newtons(2000));
    for (PinLoad.Shear shear : PinLoad.Shear.values()) {
      Workings.check(load.meanShearWorking(shear), load.meanShear(shear));
      Workings.check(load.peakShearWorking(shear), load.peakShear(shear));
    }
    Workings.check(load.bearingWorking(inches(1)), load.bearing(inches(1)));
    Working bending = load.bendingWorking(FORK);
    Workings.check(bending, load.bending(FORK));
    assertTrue(bending.toString().contains("M = F (b + 4 c + 2 a) / 8"), bending::toString);
    assertTrue(
        bending.steps().stream()
            .anyMatch(s -> s.symbol().equals("M") && s.value().getValue() == 16000));
    assertTrue(bending.toString().contains("licensed engineer"));
  }

  @Test
  void handsOutThePinAndItsForce() {
    PinLoad load = PinLoad.on(Pin.of(millimetres(10)), newtons(2000));
    assertEquals(Pin.of(millimetres(10)), load.pin());
    assertEquals(newtons(2000), load.force());
  }

  @Test
  void speaksPsiForPoundsForce() {
    PinLoad load = PinLoad.on(Pin.of(millimetres(25.4)), poundsForce(1000));
    Measure<?> stress = load.meanShear(PinLoad.Shear.SINGLE);
    assertEquals(ShopUnits.PSI, stress.getUnit());
    // 1000 lbf on a 1 in round: 1000 ÷ 0.7854 in².
    assertEquals(1273.24, stress.getValue(), 0.005);
    assertEquals(
        ShopUnits.MEGAPASCAL,
        PinLoad.on(Pin.of(inches(1)), newtons(1)).bearing(inches(1)).getUnit());
  }

  @Test
  void takesTheNextSizeOfASeriesOrARule() {
    PinSize size = PinSize.inDoubleShear(newtons(6000), STEEL);
    assertEquals(Pin.of(millimetres(12)), size.from(PinSize.METRIC_SIZES));
    assertEquals(Pin.of(millimetres(11)), size.upTo(Graduation.HALF_MILLIMETRE));
    assertEquals(Pin.of(inches("7/16")), size.from(PinSize.INCH_SIZES));
    BarSizes rack = BarSizes.of(Section.square(millimetres(12)), Section.round(millimetres(16)));
    assertEquals(Pin.of(millimetres(16)), size.from(rack));
    assertEquals("shear", size.governedBy());
    Workings.check(size.working(), size.leastDiameter());
    assertTrue(size.working().toString().contains("yield strength given by the caller"));
  }

  @Test
  void tellsWhatDecidesInAFork() {
    PinSize bent = PinSize.inFork(newtons(6000), FORK, STEEL);
    assertEquals("bending", bent.governedBy());
    Workings.check(bent.working(), bent.leastDiameter());
    Fork thin = Fork.around(millimetres(3)).cheeks(millimetres(2));
    PinSize bearing = PinSize.inFork(newtons(40000), thin, STEEL);
    assertEquals("bearing", bearing.governedBy());
    Workings.check(bearing.working(), bearing.leastDiameter());
    Fork thinner = Fork.around(millimetres(4)).cheeks(millimetres(1));
    PinSize cheeks = PinSize.inFork(newtons(40000), thinner, STEEL);
    assertEquals("bearing", cheeks.governedBy());
    assertEquals(40000 / (2 * 235 / 3.0), cheeks.leastDiameter().getValue(), 1e-9);
    Fork close = Fork.around(millimetres(40)).cheeks(millimetres(0.001));
    assertEquals(millimetres(0), close.gap());
    assertEquals(millimetres(15), Fork.around(millimetres(30)).cheek());
  }

  @Test
  void restsOnTheLowStrengthOfAMaterial() {
    PermissibleStress iron = PermissibleStress.of(Material.WROUGHT_IRON, 2);
    assertEquals(megapascals(159), iron.strength());
    assertEquals(megapascals(79.5), iron.tension());
    assertEquals(79.5 / Math.sqrt(3), iron.shear().getValue(), 1e-12);
    assertEquals(2, iron.safety());
    Workings.check(iron.working(), iron.tension());
    Workings.check(iron.shearWorking(), iron.shear());
    assertTrue(iron.working().toString().contains("low yield strength of wrought iron"));
    assertEquals(Material.WROUGHT_IRON.source(Material.Property.YIELD_STRENGTH), iron.source());
    assertTrue(
        PermissibleStress.of(Material.MILD_STEEL, 2).toString().contains("yield strength of mild"));
    assertTrue(iron.cautions().get(0).isDanger());
  }

  @Test
  void areEqualByTheirValues() {
    assertEquals(STEEL, PermissibleStress.of(megapascals(235), 3));
    assertEquals(STEEL.hashCode(), PermissibleStress.of(megapascals(235), 3).hashCode());
    assertNotEquals(STEEL, PermissibleStress.of(megapascals(235), 2));
  }

  @Test
  void refusesWhatCannotBe() {
    Pin pin = Pin.of(inches("3/8"));
    assertTrue(refused(() -> PinLoad.on(pin, newtons(0))).startsWith("force must"));
    assertTrue(refused(() -> Fork.around(inches(0))).startsWith("middle must"));
    assertTrue(refused(() -> FORK.cheeks(inches(0))).startsWith("each cheek must"));
    assertTrue(refused(() -> FORK.gap(inches(-1))).startsWith("each gap must"));
    assertEquals(
        "safety must lie between 1 and 100.0, was 0.5; give the number that the yield strength is"
            + " divided by",
        refused(() -> PermissibleStress.of(megapascals(235), 0.5)));
    assertTrue(
        refused(() -> PermissibleStress.of(megapascals(235), Double.NaN)).startsWith("safety"));
    assertTrue(
        refused(() -> PermissibleStress.of(megapascals(0), 2)).startsWith("yield strength must"));
    String tooSmall =
        refused(
            () ->
                PinSize.inSingleShear(newtons(6000), STEEL)
                    .from(BarSizes.of(Section.round(millimetres(12)))));
    assertEquals(
        "sizes must hold a round bar of at least 15.01 mm, was 12 mm round; add thicker bar, or let"
            + " more knuckles carry the force",
        tooSmall);
    assertThrows(NullPointerException.class, () -> PinLoad.on(null, newtons(1)));
    assertThrows(NullPointerException.class, () -> PinSize.inFork(newtons(1), null, STEEL));
  }

  private static String refused(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
