package org.hammerscale.units;

import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.hammerscale.units.Tolerance.Verdict;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;

/** How far off is still right, and what is said if it is not. */
class ToleranceTest {
  private final Tolerance<Length> half = Tolerance.absolute(millimetres(0.5));

  @Test
  void allowsADifferenceUpToTheLimitOnEitherSide() {
    assertTrue(half.check(millimetres(40), millimetres(40.5)).isMet());
    assertTrue(half.check(millimetres(40), millimetres(39.5)).isMet());
    assertFalse(half.check(millimetres(40), millimetres(40.51)).isMet());
    assertFalse(half.check(millimetres(40), millimetres(39.49)).isMet());
    // 25.9 mm are half a millimetre more than an inch, but for floating-point noise.
    assertTrue(half.check(inches(1), millimetres(25.9)).isMet());
    assertTrue(half.check(inches(1), millimetres(24.9)).isMet());
    assertFalse(half.check(inches(1), millimetres(25.91)).isMet());
    assertTrue(half.check(inches(1), Quantities.getQuantity(1, ShopUnits.INCH)).isMet());
  }

  @Test
  void allowsAPartOfTheExpectedValue() {
    Tolerance<Length> percent = Tolerance.relative(0.01);
    assertTrue(percent.check(inches(10), inches(10.1)).isMet());
    assertTrue(percent.check(inches(10), inches(9.9)).isMet());
    assertFalse(percent.check(inches(10), inches(10.101)).isMet());
    assertFalse(percent.check(inches(10), inches(9.899)).isMet());
    assertTrue(percent.check(inches(-10), inches(-10.1)).isMet());
    assertTrue(percent.check(inches(0), inches(0)).isMet());
    assertFalse(percent.check(inches(0), inches(0.001)).isMet());
    assertTrue(Tolerance.<Length>relative(0).check(inches(1), millimetres(25.4)).isMet());
  }

  @Test
  void allowsWhatARuleCannotShow() {
    Tolerance<Length> rule = Tolerance.graduation(SIXTEENTH);
    assertTrue(rule.check(inches(2), inches(2.03125)).isMet());
    assertFalse(rule.check(inches(2), inches(2.032)).isMet());
  }

  @Test
  void showsBothValuesTheDifferenceAndTheAllowance() {
    // 26 mm are 0.6/25.4 in more than an inch; half a millimetre is 0.5/25.4 in.
    assertEquals(
        "expected 1 in, was 26 mm: 0.02362 in more, allowed 0.01969 in",
        half.check(inches(1), millimetres(26)).message());
    assertEquals(
        "expected 40 mm, was 39 mm: 1 mm less, allowed 0.5 mm",
        half.check(millimetres(40), millimetres(39)).message());
    assertEquals(
        "expected 40 mm, was 40 mm: no difference, allowed 0.5 mm",
        half.check(millimetres(40), millimetres(40)).message());
  }

  @Test
  void failsAsAnAssertionDoes() {
    Verdict bad = half.check(millimetres(40), millimetres(39));
    Verdict good = half.check(millimetres(40), millimetres(40));

    assertEquals(bad.message(), assertThrows(AssertionError.class, bad::orThrow).getMessage());
    assertDoesNotThrow(good::orThrow);
    assertEquals("not met: " + bad.message(), bad.toString());
    assertEquals("met: " + good.message(), good.toString());
  }

  @Test
  void isDescribedInWords() {
    assertEquals("± 0.5 mm", half.toString());
    assertEquals("± 1 %", Tolerance.<Length>relative(0.01).toString());
    assertEquals("± 1/32 in", Tolerance.graduation(SIXTEENTH).toString());
  }

  @Test
  void refusesAnAllowanceThatIsNone() {
    assertEquals(
        "allowance must not be negative, was -1/2 in; give the greatest difference",
        assertThrows(IllegalArgumentException.class, () -> Tolerance.absolute(inches(-0.5)))
            .getMessage());
    for (double fraction : new double[] {-0.01, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertEquals(
          "fraction must be a number of zero or more, was " + fraction + "; give 0.01 for 1 %",
          assertThrows(IllegalArgumentException.class, () -> Tolerance.relative(fraction))
              .getMessage());
    }
  }

  @Test
  void refusesTemperatures() {
    assertThrows(UnsupportedOperationException.class, () -> Tolerance.absolute(celsius(5)));
    Tolerance<Temperature> percent = Tolerance.relative(0.01);
    assertThrows(
        UnsupportedOperationException.class, () -> percent.check(celsius(900), celsius(905)));
  }

  @Test
  void tellsAnAllowanceThatIsTooSmallToPrint() {
    assertEquals(
        "expected 1 in, was 2 in: 1 in more, allowed 0.000000000001 in",
        Tolerance.absolute(inches(1e-12)).check(inches(1), inches(2)).message());
    assertEquals(
        "expected 0 in, was 0 in: 0.000000000001 in more, allowed 0 in",
        Tolerance.absolute(inches(0)).check(inches(0), inches(1e-12)).message());
  }

  @Test
  void equalByItsAllowance() {
    assertEquals(half, Tolerance.graduation(MILLIMETRE));
    assertEquals(half.hashCode(), Tolerance.graduation(MILLIMETRE).hashCode());
    assertNotEquals(half, Tolerance.absolute(millimetres(0.6)));
    assertNotEquals(half, Tolerance.<Length>relative(0.5));
    assertEquals(Tolerance.<Length>relative(0.5), Tolerance.<Length>relative(0.5));
    assertEquals(Tolerance.<Length>relative(0.0), Tolerance.<Length>relative(-0.0));
    assertNotEquals(Tolerance.<Length>relative(0.5), Tolerance.<Length>relative(0.4));
    assertFalse(half.equals(null));
  }
}
