package org.hammerscale.units;

import static javax.measure.MetricPrefix.CENTI;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.ShopUnits.FOOT;
import static org.hammerscale.units.ShopUnits.INCH;
import static org.hammerscale.units.ShopUnits.METRE;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Quantity.Scale;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;

/** Equality between our measures and other people's quantities: the same seen from either side. */
class ForeignEqualityTest {
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1.5, -2.25, 0.1, 1e-9, 123456.789})
  void isEqualToTheReferenceQuantityBothWays(double value) {
    for (Unit<Length> unit : List.of(INCH, MILLIMETRE, METRE, FOOT, USCustomary.INCH)) {
      Measure<Length> ours = Measure.of(value, unit);
      Quantity<Length> theirs = Quantities.getQuantity(value, unit);

      // Asked of each in turn: assertEquals would ask one side only.
      assertTrue(ours.equals(theirs), () -> ours + " equals " + theirs);
      assertTrue(theirs.equals(ours), () -> theirs + " equals " + ours);
      assertEquals(theirs.hashCode(), ours.hashCode());
    }
  }

  @Test
  void isFoundInASetOfTheOtherKind() {
    Set<Quantity<Length>> theirs = new HashSet<>(List.of(Quantities.getQuantity(0.5, INCH)));
    Set<Quantity<Length>> ours = new HashSet<>(List.of(inches(0.5)));

    assertTrue(theirs.contains(inches(0.5)));
    assertTrue(ours.contains(Quantities.getQuantity(0.5, INCH)));
  }

  static Stream<Quantity<Length>> all() {
    List<Quantity<Length>> all = new ArrayList<>();
    for (Unit<Length> unit :
        List.of(INCH, FOOT, MILLIMETRE, METRE, USCustomary.INCH, METRE.multiply(0.0254))) {
      for (double value : new double[] {0.0, -0.0, 1.0, 1.5, -1.5, 25.4}) {
        all.add(Measure.of(value, unit));
        all.add(Quantities.getQuantity(value, unit));
        all.add(Quantities.getQuantity(BigDecimal.valueOf(value), unit));
        all.add(Quantities.getQuantity(value, unit, Scale.RELATIVE));
        all.add(new OtherQuantity(value, unit));
      }
      all.add(Quantities.getQuantity(1, unit));
      all.add(Quantities.getQuantity(BigInteger.TWO, unit));
      all.add(Quantities.getQuantity(RationalNumber.of(3, 2), unit));
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("all")
  void equalityIsSymmetricAndAgreesWithTheHash(Quantity<Length> first) {
    for (Quantity<Length> second : (Iterable<Quantity<Length>>) all()::iterator) {
      boolean equal = first.equals(second);
      assertEquals(equal, second.equals(first), () -> first + " and " + second);
      if (equal) {
        assertEquals(first.hashCode(), second.hashCode(), () -> first + " and " + second);
      }
    }
  }

  @Test
  void isNotEqualOnTheRelativeScale() {
    Quantity<Length> relative = Quantities.getQuantity(1.5, INCH, Scale.RELATIVE);
    assertNotEquals(inches(1.5), relative);
    assertNotEquals(relative, inches(1.5));
  }

  @Test
  void isNotEqualUnderAUnitThatIsOnlyEquivalent() {
    Measure<Length> theirInch = Measure.of(1.5, CENTI(METRE).multiply(2.54));
    assertFalse(inches(1.5).equals(theirInch));
    assertFalse(theirInch.equals(inches(1.5)));
    assertTrue(inches(1.5).isEquivalentTo(theirInch));
  }
}
