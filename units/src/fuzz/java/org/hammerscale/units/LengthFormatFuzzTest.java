package org.hammerscale.units;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Length;

/**
 * Looks for a text that the length format reads wrongly, or refuses in any other way than it says.
 * Run on demand; see DEVELOPERS.md.
 */
class LengthFormatFuzzTest {
  @FuzzTest(maxDuration = "60s")
  void readsOrRefuses(FuzzedDataProvider data) {
    String text = data.consumeRemainingAsString();
    Measure<Length> read;
    try {
      read = LengthFormat.standard().withDefaultUnit(ShopUnits.INCH).parse(text);
    } catch (MeasurementParseException e) {
      if (e.getPosition() < 0 || e.getPosition() > text.length()) {
        throw new AssertionError("position " + e.getPosition() + " is outside of " + text, e);
      }
      return;
    }
    Measure<Length> again = LengthFormat.standard().parse(read.toString());
    // Printing keeps a hundredth of a millimetre or better, or four significant digits.
    double off = Math.abs(again.in(ShopUnits.METRE) - read.in(ShopUnits.METRE));
    if (off > 1e-5 && off > 1e-3 * Math.abs(read.in(ShopUnits.METRE))) {
      throw new AssertionError(text + " was read as " + read + " and that as " + again);
    }
  }
}
