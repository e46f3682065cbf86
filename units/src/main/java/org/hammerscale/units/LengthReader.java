package org.hammerscale.units;

import java.util.Set;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * One reading of one text by the grammar of {@link LengthFormat}: a cursor that only moves forward,
 * so that the time is linear in the text.
 */
final class LengthReader {
  private static final int LONGEST = 400;

  private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
  private static final double[] VULGAR_VALUES = {
    1 / 2d, 1 / 3d, 2 / 3d, 1 / 4d, 3 / 4d, 1 / 5d, 2 / 5d, 3 / 5d, 4 / 5d, 1 / 6d, 5 / 6d, 1 / 8d,
    3 / 8d, 5 / 8d, 7 / 8d
  };

  private static final Set<String> READABLE = Set.of("in", "ft", "thou", "mm", "cm", "m");

  private final CharSequence text;
  private final @Nullable Unit<Length> defaultUnit;
  private int at;

  /** Whether the last unit stood in the text, rather than being the default. */
  private boolean unitWritten;

  LengthReader(CharSequence text, @Nullable Unit<Length> defaultUnit) {
    this.text = text;
    this.defaultUnit = defaultUnit;
    if (text.length() > LONGEST) {
      throw new MeasurementParseException(
          "a length must be at most "
              + LONGEST
              + " characters long, was "
              + text.length()
              + "; give one length at a time",
          text.subSequence(0, LONGEST),
          LONGEST);
    }
  }

  /** Whether the grammar has a name for a unit. */
  static boolean canRead(Unit<Length> unit) {
    return READABLE.contains(UnitScales.of(unit).symbol);
  }

  int position() {
    return at;
  }

  Measure<Length> readAll() {
    skipSpace();
    Measure<Length> length = readFrom(at);
    skipSpace();
    if (at < text.length()) {
      throw fault("the end of the length");
    }
    return length;
  }

  Measure<Length> readFrom(int start) {
    if (start < 0 || start > text.length()) {
      throw new IllegalArgumentException(
          "position must lie in the text of "
              + text.length()
              + " characters, was "
              + start
              + "; begin with 0");
    }
    at = start;
    boolean negative = peek() == '-' || peek() == '−';
    if (negative || peek() == '+') {
      at++;
      skipSpace();
    }
    double amount = amount();
    Unit<Length> unit = unit();
    if (unit == ShopUnits.FOOT && unitWritten && inchesFollow()) {
      amount = amount * 12 + amount();
      int mark = at;
      if (unit() != ShopUnits.INCH) {
        at = mark;
        skipSpace();
        throw fault("an inch mark after feet and inches");
      }
      unit = ShopUnits.INCH;
    }
    double value = (negative ? -amount : amount) + remainder();
    if (Double.isInfinite(value)) {
      throw fault("a number that a double can hold");
    }
    return Measure.of(value, unit);
  }

  private double amount() {
    double vulgar = vulgar();
    if (vulgar > 0) {
      return vulgar;
    }
    int start = at;
    boolean whole = number();
    double value = Double.parseDouble(text.subSequence(start, at).toString());
    if (!whole) {
      return value;
    }
    if (isSlash()) {
      return value / denominator();
    }
    vulgar = vulgar();
    if (vulgar > 0) {
      return value + vulgar;
    }
    return value + fractionBehindWhole();
  }

  /** The {@code − 0.017} of {@code 1 3/4 in − 0.017}; zero, and no move, if none follows. */
  private double remainder() {
    int mark = at;
    skipSpace();
    char sign = peek();
    boolean signed = at > mark && (sign == '+' || sign == '-' || sign == '−');
    if (signed) {
      at++;
    }
    int behindSign = at;
    skipSpace();
    int start = at;
    // Without a point it could be the end of a range, or the inches behind feet.
    boolean pointed = unitWritten && signed && at > behindSign && digits() >= 0 && isPoint();
    if (!pointed) {
      at = mark;
      return 0;
    }
    at = start;
    number();
    double size = Double.parseDouble(text.subSequence(start, at).toString());
    return sign == '+' ? size : -size;
  }

  /** Moves over a number; tells whether it is a whole one. */
  private boolean number() {
    int start = at;
    digits();
    boolean whole = peek() != '.';
    if (!whole) {
      at++;
      if (digits() == 0) {
        throw fault("a digit after the decimal point");
      }
    }
    if (at == start) {
      throw fault("a number");
    }
    if (peek() == ',') {
      throw fault("a decimal point instead of the comma");
    }
    return whole;
  }

  /** The {@code 1/2} of {@code 1 1/2} or {@code 1-1/2}; zero, and no move, if none follows. */
  private double fractionBehindWhole() {
    int mark = at;
    if (peek() == '-') {
      at++;
    } else {
      skipSpace();
    }
    double vulgar = at > mark ? vulgar() : 0;
    if (vulgar > 0) {
      return vulgar;
    }
    int start = at;
    if (at == mark || digits() == 0 || !isSlash()) {
      at = mark;
      return 0;
    }
    double numerator = Double.parseDouble(text.subSequence(start, at).toString());
    double fraction = numerator / denominator();
    if (fraction >= 1) {
      throw fault("a fraction less than one after the whole number", start);
    }
    return fraction;
  }

  private double denominator() {
    at++;
    int start = at;
    if (digits() == 0) {
      throw fault("the lower number of the fraction");
    }
    double denominator = Double.parseDouble(text.subSequence(start, at).toString());
    if (denominator == 0) {
      throw fault("a lower number of the fraction that is not zero", start);
    }
    if (peek() == '.' || peek() == ',' || isSlash()) {
      throw fault("a unit after the fraction");
    }
    return denominator;
  }

  private double vulgar() {
    int which = VULGAR.indexOf(peek());
    if (which < 0) {
      return 0;
    }
    at++;
    return VULGAR_VALUES[which];
  }

  private Unit<Length> unit() {
    int mark = at;
    skipSpace();
    int start = at;
    Unit<Length> quoted =
        switch (peek()) {
          case '"', '″', '”' -> ShopUnits.INCH;
          case '\'', '′', '’' -> ShopUnits.FOOT;
          default -> null;
        };
    unitWritten = true;
    if (quoted != null) {
      at++;
      return quoted;
    }
    while (Character.isLetter(peek())) {
      at++;
    }
    if (at == start) {
      at = mark;
      if (defaultUnit != null) {
        unitWritten = false;
        return defaultUnit;
      }
      throw fault("a unit such as in, ft or mm", start);
    }
    String word = text.subSequence(start, at).toString();
    return switch (word) {
      case "in", "inch", "inches" -> ShopUnits.INCH;
      case "ft", "foot", "feet" -> ShopUnits.FOOT;
      case "thou" -> ShopUnits.THOU;
      case "mm", "millimetre", "millimetres", "millimeter", "millimeters" -> ShopUnits.MILLIMETRE;
      case "cm", "centimetre", "centimetres", "centimeter", "centimeters" -> ShopUnits.CENTIMETRE;
      case "m", "metre", "metres", "meter", "meters" -> ShopUnits.METRE;
      default -> throw fault("one of the units in, ft, thou, mm, cm, m", start);
    };
  }

  /** After feet: moves to the inches if there are any. */
  private boolean inchesFollow() {
    int mark = at;
    skipSpace();
    if (at == mark && peek() == '-') {
      at++;
    }
    char next = peek();
    boolean follow = isDigit(next) || next == '.' || VULGAR.indexOf(next) >= 0;
    if (!follow) {
      at = mark;
    }
    return follow;
  }

  private int digits() {
    int start = at;
    while (isDigit(peek())) {
      at++;
    }
    return at - start;
  }

  /** Whether a decimal goes on here; the comma is no point, but is refused as one. */
  private boolean isPoint() {
    return peek() == '.' || peek() == ',';
  }

  private boolean isSlash() {
    return peek() == '/' || peek() == '⁄';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private void skipSpace() {
    while (peek() == ' ' || peek() == '\u00a0' || peek() == '\t') {
      at++;
    }
  }

  /** The character at the cursor; NUL at the end, which no rule of the grammar takes. */
  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private MeasurementParseException fault(String expected) {
    return fault(expected, at);
  }

  private MeasurementParseException fault(String expected, int where) {
    String found = where < text.length() ? "'" + text.charAt(where) + "'" : "the end";
    return new MeasurementParseException(
        "\""
            + text
            + "\" is not a length: expected "
            + expected
            + " at position "
            + where
            + ", found "
            + found,
        text,
        where);
  }
}
