package org.hammerscale.units;

import static org.hammerscale.units.Close.assertWithinUlps;
import static org.hammerscale.units.Measures.area;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.pounds;
import static org.hammerscale.units.ShopUnits.INCH;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.hammerscale.units.ShopUnits.SQUARE_INCH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The same length gives the same answer, whoever made its unit and whatever number it is in. */
class ForeignUnitsPropertyTest {
  @Provide
  Arbitrary<Map.Entry<String, Unit<Length>>> foreignInches() {
    return Arbitraries.of(ForeignUnits.INCHES.entrySet());
  }

  @Provide
  Arbitrary<Map.Entry<String, Function<Integer, Number>>> numbers() {
    return Arbitraries.of(ForeignUnits.NUMBERS.entrySet());
  }

  @Provide
  Arbitrary<Map.Entry<String, Function<Integer, Number>>> wholeNumbers() {
    return Arbitraries.of(ForeignUnits.WHOLE_NUMBERS.entrySet());
  }

  @Property
  void sixtyFourthsAreTheSameLengthInEveryForm(
      @ForAll @IntRange(min = -6400, max = 6400) int sixtyFourths,
      @ForAll("foreignInches") Map.Entry<String, Unit<Length>> unit,
      @ForAll("numbers") Map.Entry<String, Function<Integer, Number>> number) {
    Number value = number.getValue().apply(sixtyFourths);
    assertSameLength(inches(sixtyFourths / 64.0), Quantities.getQuantity(value, unit.getValue()));
    assertSameLength(
        inches(sixtyFourths / 64.0), new OtherQuantity(value.doubleValue(), unit.getValue()));
  }

  @Property
  void wholeInchesAreTheSameLengthInEveryForm(
      @ForAll @IntRange(min = -1000, max = 1000) int inches,
      @ForAll("foreignInches") Map.Entry<String, Unit<Length>> unit,
      @ForAll("wholeNumbers") Map.Entry<String, Function<Integer, Number>> number) {
    Number value = number.getValue().apply(inches);
    assertSameLength(inches(inches), Quantities.getQuantity(value, unit.getValue()));
  }

  /** Nothing here is allowed a rounding: all of these units are the inch itself. */
  private static void assertSameLength(Measure<Length> ours, Quantity<Length> theirs) {
    Measure<Length> one = inches(1);
    assertEquals(ours.getValue(), Measure.from(theirs).in(INCH));
    assertEquals(ours.in(MILLIMETRE), Measure.from(theirs).in(MILLIMETRE));
    assertEquals(one.add(ours), one.add(theirs));
    assertEquals(one.subtract(ours), one.subtract(theirs));
    assertEquals(millimetres(1).add(ours), millimetres(1).add(theirs));
    assertEquals(area(one, ours), area(one, theirs));
    assertEquals(0, ours.compareTo(theirs));
    assertTrue(ours.isEquivalentTo(theirs));
    assertTrue(Measure.from(theirs).isEquivalentTo(ours));
    assertEquals(ours.isGreaterThan(one), Measure.from(theirs).isGreaterThan(one));
    assertEquals(ours.toString(), Measure.from(theirs).toString());
    assertSame(theirs.getUnit(), Measure.from(theirs).upTo(Graduation.EIGHTH).getUnit());
    assertEquals(Graduation.EIGHTH.upTo(ours).in(INCH), Graduation.EIGHTH.upTo(theirs).in(INCH));
    assertEquals(LengthFormat.standard().format(ours), LengthFormat.standard().format(theirs));
  }

  @Property
  void areasOfForeignInchesAreSquareInches(
      @ForAll("foreignInches") Map.Entry<String, Unit<Length>> unit) {
    Measure<Length> two = Measure.of(2, unit.getValue());

    assertEquals(6.0, area(two, inches(3)).in(SQUARE_INCH));
    assertTrue(area(two, inches(3)).getUnit().isEquivalentTo(SQUARE_INCH));
  }

  @Property
  void anyMultipleOfTheMetreConvertsAsItsFactorSays(
      @ForAll @IntRange(min = 1, max = 1_000_000) int millionths,
      @ForAll @IntRange(min = -1000, max = 1000) int count) {
    double factor = millionths / 1e6;
    Unit<Length> unit = Units.METRE.multiply(factor);

    assertWithinUlps(count * factor, Measure.of(count, unit).in(ShopUnits.METRE), 2);
    assertWithinUlps(count, Measure.of(count * factor, ShopUnits.METRE).in(unit), 2);
  }

  @Example
  void usCustomaryUnitsAreTheShopsOwn() {
    assertEquals(12.0, Measure.of(1, USCustomary.FOOT).in(INCH));
    assertEquals(36.0, Measure.of(1, USCustomary.YARD).in(INCH));
    Quantity<Mass> foreign = Quantities.getQuantity(3, USCustomary.POUND);
    assertEquals(pounds(5), pounds(2).add(foreign));
    assertEquals(16.0, Measure.of(1, USCustomary.POUND).in(ShopUnits.OUNCE));
  }

  @Example
  void degreesFahrenheitOfOtherMakersAreAsGoodAsTheShopsOwn() {
    // A rounding or two of the absolute temperature, 671.67 of these degrees, and no more.
    double slack = 2 * Math.ulp(671.67);
    Measure<Temperature> boiling = Measure.of(212, USCustomary.FAHRENHEIT);

    assertEquals(100, boiling.in(ShopUnits.CELSIUS), slack);
    assertEquals(373.15, boiling.in(ShopUnits.KELVIN), slack);
    assertEquals(212, Measures.celsius(100).in(USCustomary.FAHRENHEIT), slack);
    assertEquals(100, Measure.of(671.67, USCustomary.RANKINE).in(ShopUnits.CELSIUS), slack);
    // Réaumur: water boils at 80 of his degrees, 1.25 K each.
    Unit<Temperature> reaumur = Units.KELVIN.multiply(1.25).shift(218.52);
    assertEquals(100, Measure.of(80, reaumur).in(ShopUnits.CELSIUS), slack);
  }

  @Example
  void kelvinsShiftedByHandAreDegreesCelsius() {
    Unit<Temperature> shifted = Units.KELVIN.shift(273.15);

    assertEquals(212, Measure.of(100, shifted).in(ShopUnits.FAHRENHEIT));
    assertEquals(100, Measures.fahrenheit(212).in(shifted));
    assertEquals("100 °C", Measure.of(100, shifted).toString());
    assertThrows(UnsupportedOperationException.class, () -> Measure.of(100, shifted).multiply(2));
  }

  @Example
  void theSurveyFootIsNotTakenForTheFoot() {
    // 1200/3937 m: two parts in a million longer, so a foot survives no careless comparison.
    Measure<Length> survey = Measure.of(1, USCustomary.FOOT_SURVEY);

    assertWithinUlps(1200 / 3937.0, survey.in(ShopUnits.METRE), 2);
    assertFalse(survey.isEquivalentTo(Measures.feet(1)));
    assertTrue(survey.isGreaterThan(Measures.feet(1)));
  }
}
