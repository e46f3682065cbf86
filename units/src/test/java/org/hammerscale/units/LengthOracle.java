package org.hammerscale.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Unit;
import javax.measure.quantity.Length;

/**
 * A second reader of lengths, made from the written grammar of {@link LengthFormat} by other means:
 * one regular expression, and decimals of forty digits. It is slow, and shares nothing with the
 * reader that it judges.
 */
final class LengthOracle {
  private static final MathContext DIGITS = new MathContext(40);

  /** Where the grammar writes a space, a reader may take several, or none at the ends. */
  private static final String SPACE = "[ \t\u00a0]";

  private static final String VULGAR = "[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]";
  private static final String FRACTION = "\\d+[/⁄]\\d+";
  private static final String AMOUNT =
      String.join(
          "|",
          "\\d+(?:" + SPACE + "+|-)" + FRACTION,
          "\\d+(?:" + SPACE + "*|-)" + VULGAR,
          FRACTION,
          VULGAR,
          "\\d*\\.\\d+",
          "\\d+");
  private static final String INCH = "(?:inches|inch|in|[\"″”])";
  private static final String FOOT = "(?:foot|feet|ft|['′’])";
  private static final Map<String, String> UNITS =
      Map.of(
          "inch", INCH,
          "foot", FOOT,
          "thou", "thou",
          "mm", "(?:mm|millimet(?:re|er)s?)",
          "cm", "(?:cm|centimet(?:re|er)s?)",
          "m", "(?:m|met(?:re|er)s?)");
  private static final Map<String, Unit<Length>> MEANINGS =
      Map.of(
          "inch", ShopUnits.INCH,
          "foot", ShopUnits.FOOT,
          "thou", ShopUnits.THOU,
          "mm", ShopUnits.MILLIMETRE,
          "cm", ShopUnits.CENTIMETRE,
          "m", ShopUnits.METRE);

  private static final String SIGN = SPACE + "*(?<sign>[-+−]?)" + SPACE + "*";
  private static final String REMAINDER =
      "(?:" + SPACE + "+(?<over>[-+−])" + SPACE + "+(?<remainder>\\d*\\.\\d+|\\d+))?" + SPACE + "*";
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          SIGN
              + group("feet", AMOUNT)
              + (SPACE + "*" + FOOT + "(?:" + SPACE + "*|-)")
              + group("inches", AMOUNT)
              + (SPACE + "*" + INCH + REMAINDER));
  private static final Pattern SINGLE =
      Pattern.compile(SIGN + group("amount", AMOUNT) + SPACE + "*" + units() + REMAINDER);

  private static final Pattern PARTS =
      Pattern.compile(
          "(?:(?<whole>\\d+)(?:[- \t\u00a0]*)(?=\\d|" + VULGAR + "))?(?<rest>.*)", Pattern.DOTALL);

  private static final String VULGARS = "½12⅓13⅔23¼14¾34⅕15⅖25⅗35⅘45⅙16⅚56⅛18⅜38⅝58⅞78";

  private LengthOracle() {}

  private static String group(String name, String expression) {
    return "(?<" + name + ">" + expression + ")";
  }

  private static String units() {
    return "(?:"
        + String.join("|", UNITS.keySet().stream().map(u -> group(u, UNITS.get(u))).toList())
        + ")";
  }

  /** The length that the whole text is, if it is one. */
  static Optional<Measure<Length>> read(String text) {
    Matcher feet = FEET_AND_INCHES.matcher(text);
    if (feet.matches()) {
      return amount(feet.group("feet"))
          .flatMap(
              first ->
                  amount(feet.group("inches"))
                      .map(then -> first.multiply(BigDecimal.valueOf(12)).add(then)))
          .map(sum -> signed(feet, sum, ShopUnits.INCH));
    }
    Matcher single = SINGLE.matcher(text);
    if (!single.matches()) {
      return Optional.empty();
    }
    String name = UNITS.keySet().stream().filter(u -> single.group(u) != null).findFirst().get();
    return amount(single.group("amount")).map(value -> signed(single, value, MEANINGS.get(name)));
  }

  private static Measure<Length> signed(Matcher read, BigDecimal amount, Unit<Length> unit) {
    BigDecimal value = sign(read.group("sign"), amount);
    if (read.group("over") != null) {
      value = value.add(sign(read.group("over"), new BigDecimal(read.group("remainder"))));
    }
    return Measure.of(value.doubleValue(), unit);
  }

  private static BigDecimal sign(String sign, BigDecimal value) {
    return List.of("-", "−").contains(sign) ? value.negate() : value;
  }

  /** An amount; none if its fraction has a zero below, or is no fraction behind a whole number. */
  private static Optional<BigDecimal> amount(String text) {
    if (text.matches("\\d*\\.\\d+|\\d+")) {
      return Optional.of(new BigDecimal(text));
    }
    Matcher parts = PARTS.matcher(text);
    if (text.matches(FRACTION) || text.matches(VULGAR)) {
      return fraction(text);
    }
    if (!parts.matches() || parts.group("whole") == null) {
      throw new AssertionError("no amount: " + text);
    }
    BigDecimal whole = new BigDecimal(parts.group("whole"));
    return fraction(parts.group("rest"))
        .filter(fraction -> fraction.compareTo(BigDecimal.ONE) < 0)
        .map(whole::add);
  }

  private static Optional<BigDecimal> fraction(String text) {
    int vulgar = VULGARS.indexOf(text.charAt(0));
    String[] halves =
        text.matches(VULGAR)
            ? VULGARS.substring(vulgar + 1, vulgar + 3).split("")
            : text.split("[/⁄]");
    BigDecimal below = new BigDecimal(halves[1]);
    return below.signum() == 0
        ? Optional.empty()
        : Optional.of(new BigDecimal(halves[0]).divide(below, DIGITS));
  }
}
