package org.hammerscale.units;

import java.io.IOException;
import java.math.BigDecimal;
import java.text.ParsePosition;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.format.QuantityFormat;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Reads and prints lengths as they are written in a forge, the same in every country: the default
 * locale is never asked.
 *
 * <h2>What it reads</h2>
 *
 * <pre>
 * length    = [sign] ( feet inches | amount unit ) [remainder]
 * feet      = amount foot [ "-" ]  inches = amount inch
 * amount    = decimal | whole | [whole [ "-" ]] fraction | [whole [ "-" ]] vulgar
 * fraction  = whole ("/" | "⁄") whole
 * vulgar    = ½ ⅓ ⅔ ¼ ¾ ⅕ ⅖ ⅗ ⅘ ⅙ ⅚ ⅛ ⅜ ⅝ ⅞
 * decimal   = digits ["." digits] | "." digits
 * sign      = "+" | "-" | "−"
 * remainder = space sign space decimal, with its point, in the last unit before it
 * inch      = in | inch | inches | " | ″ | ”       foot = ft | foot | feet | ' | ′ | ’
 * unit      = inch | foot | thou | mm | millimetre(s) | millimeter(s)
 *           | cm | centimetre(s) | centimeter(s) | m | metre(s) | meter(s)
 * </pre>
 *
 * <p>Blanks may stand before and after the whole, behind the sign, before a unit, and in place of
 * the hyphen between feet and inches or between a whole and its fraction; between whole and
 * fraction there must be one or the other. A text may be 400 characters long.
 *
 * <p>So {@code 1 1/4 in}, {@code 1-1/4"}, {@code 3' 6 1/2"}, {@code 1½ in}, {@code 0.375 in} and
 * {@code 32 mm} are lengths. A bare number is one only {@linkplain #withDefaultUnit with a default
 * unit}, and has no remainder. The whole text must be a length; a comma is refused, since it means
 * thousands to one reader and tenths to the next, and so is a range such as {@code 3 - 6}. Refusals
 * are {@link MeasurementParseException}s with the position and what was expected there.
 *
 * <pre>{@code
 * LengthFormat.standard().parse("3' 6 1/2\"")                        // 42 1/2 in  as it is written on the order
 * LengthFormat.to(SIXTEENTH).format(millimetres(100))                // "3 15/16 in"  as an inch rule reads it
 * LengthFormat.to(SIXTEENTH).withFeet().format(inches("11 63/64"))   // "1' 0\""  the inches carry
 * LengthFormat.to(SIXTEENTH).withRemainder().format(inches(1.7671))  // "1 3/4 in + 0.017"  nothing is hidden
 * }</pre>
 *
 * <h2>What it prints</h2>
 *
 * <p>Without a graduation: inches that lie on a sixty-fourth as a reduced fraction, all else as a
 * decimal. With one, {@linkplain #to to a graduation}: the nearest mark of an inch rule as a
 * reduced fraction, of a millimetre rule as a decimal; a length in any unit comes out in the rule's
 * unit. {@linkplain #withFeet With feet}, inches beyond twelve are carried: 11 63/64 in to
 * sixteenths is {@code 1' 0"}. It reads back all it prints.
 */
public final class LengthFormat implements QuantityFormat {
  private static final LengthFormat STANDARD = new LengthFormat(null, null, false, false);

  /** Larger counts of steps are no longer exact, nor of use. */
  private static final double MOST_COUNTED = 1e12;

  private final @Nullable Graduation<Length> graduation;
  private final @Nullable Unit<Length> defaultUnit;
  private final boolean feet;
  private final boolean remainder;

  private LengthFormat(
      @Nullable Graduation<Length> graduation,
      @Nullable Unit<Length> defaultUnit,
      boolean feet,
      boolean remainder) {
    this.graduation = graduation;
    this.defaultUnit = defaultUnit;
    this.feet = feet;
    this.remainder = remainder;
  }

  /**
   * The format without a graduation, a default unit or feet.
   *
   * @return the format
   */
  public static LengthFormat standard() {
    return STANDARD;
  }

  /**
   * A format that prints to the nearest mark of a rule.
   *
   * @param graduation the rule
   * @return the format
   */
  public static LengthFormat to(Graduation<Length> graduation) {
    return new LengthFormat(Objects.requireNonNull(graduation, "graduation"), null, false, false);
  }

  /**
   * This format, reading a bare number in a unit.
   *
   * @param unit the unit a bare number is in
   * @return the format
   * @throws IllegalArgumentException if it is no unit of length, which an unchecked cast can bring
   *     about
   */
  public LengthFormat withDefaultUnit(Unit<Length> unit) {
    if (!Measure.of(1, unit).hasDimensionOf(ShopUnits.METRE)) {
      throw new IllegalArgumentException(
          "unit must be one of length, was " + unit + "; give inches or millimetres");
    }
    return new LengthFormat(graduation, unit, feet, remainder);
  }

  /**
   * This format, printing feet and inches for lengths of a foot and more on an inch rule.
   *
   * @return the format
   * @throws IllegalStateException if it has no graduation in fractions of an inch to carry on
   */
  public LengthFormat withFeet() {
    if (graduation == null || !isFractional(graduation)) {
      throw new IllegalStateException(
          "feet are printed on a rule in fractions of an inch; start with LengthFormat.to(SIXTEENTH)");
    }
    return new LengthFormat(graduation, defaultUnit, true, remainder);
  }

  /**
   * This format, printing behind the mark what it leaves over: to a thousandth of an inch or a
   * hundredth of a millimetre, and nothing if that is zero.
   *
   * @return the format
   * @throws IllegalStateException if it has no graduation that could leave anything over
   */
  public LengthFormat withRemainder() {
    if (graduation == null) {
      throw new IllegalStateException(
          "a remainder is printed behind a mark; start with LengthFormat.to(SIXTEENTH)");
    }
    return new LengthFormat(graduation, defaultUnit, feet, true);
  }

  /**
   * Reads a length, the whole text or nothing.
   *
   * @param text the text
   * @return the length, in the unit written; inches for feet and inches together
   * @throws MeasurementParseException with the position of the fault and what was expected
   */
  @Override
  public Measure<Length> parse(CharSequence text) {
    Objects.requireNonNull(text, "text");
    return new LengthReader(text, defaultUnit).readAll();
  }

  /**
   * Reads the length that begins at a position and sets the position behind it.
   *
   * @param text the text
   * @param position where to begin; moved behind the length
   * @return the length
   * @throws MeasurementParseException with the position of the fault and what was expected
   */
  @Override
  public Measure<Length> parse(CharSequence text, ParsePosition position) {
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(text, "text");
    LengthReader reader = new LengthReader(text, defaultUnit);
    Measure<Length> read = reader.readFrom(position.getIndex());
    position.setIndex(reader.position());
    return read;
  }

  /**
   * Prints a length.
   *
   * @param quantity a length in any unit
   * @return the text
   * @throws IllegalArgumentException if the quantity is not a length
   */
  @Override
  public String format(Quantity<?> quantity) {
    Measure<Length> length = asLength(Measure.from("quantity", quantity));
    Graduation<Length> rule = graduation;
    if (rule == null) {
      // What has no name in the grammar could not be read back.
      return LengthReader.canRead(length.getUnit())
          ? length.toString()
          : length.to(ShopUnits.METRE).toString();
    }
    Measure<Length> mark = rule.nearest("quantity", length).to(rule.step().getUnit());
    double count = rule.nearestCount(length);
    String text =
        isFractional(rule) && Math.abs(count) < MOST_COUNTED
            ? fraction(count, rule.perUnit(), feet)
            : decimal(mark, rule);
    return remainder ? text + remainder(length.to(mark.getUnit()).subtract(mark)) : text;
  }

  /** A mark with as many decimals as the rule's step has. */
  private static String decimal(Measure<Length> mark, Graduation<Length> rule) {
    double value = mark.in(mark.getUnit());
    double step = rule.step().in(mark.getUnit());
    int decimals = Math.max(mark.scale().decimals, BigDecimal.valueOf(step).scale());
    return isFractional(mark.scale())
        ? inches(value, decimals)
        : mark.scale().label(Decimals.text(value, decimals));
  }

  private static String remainder(Measure<Length> over) {
    double value = over.in(over.getUnit());
    String size = Decimals.rounded(Math.abs(value), isFractional(over.scale()) ? 3 : 2);
    String pointed = size.contains(".") ? size : size + ".0"; // without a point it would be a count
    return size.equals("0") ? "" : (value < 0 ? " − " : " + ") + pointed;
  }

  @Override
  public Appendable format(Quantity<?> quantity, Appendable destination) throws IOException {
    Objects.requireNonNull(destination, "destination");
    return destination.append(format(quantity));
  }

  /** Same rule, unit of a bare number and way of printing. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LengthFormat format
        && Objects.equals(graduation, format.graduation)
        && Objects.equals(defaultUnit, format.defaultUnit)
        && feet == format.feet
        && remainder == format.remainder;
  }

  @Override
  public int hashCode() {
    return Objects.hash(graduation, defaultUnit, feet, remainder);
  }

  /** The format in words. */
  @Override
  public String toString() {
    return "lengths"
        + (graduation == null ? "" : " in " + graduation)
        + (feet ? " with feet" : "")
        + (remainder ? " with the remainder" : "")
        + (defaultUnit == null ? "" : ", a bare number in " + defaultUnit);
  }

  /** Whether a scale is one that prints as a fraction: inches, whoever defined them. */
  static boolean isFractional(UnitScale<?> scale) {
    return scale.dimension == Dimensions.LENGTH
        && scale.numerator == 127
        && scale.denominator == 5000;
  }

  /** An inch value: a fraction if it lies on a sixty-fourth, else a decimal. */
  static String inches(double value) {
    return inches(value, 4);
  }

  private static String inches(double value, int decimals) {
    double count = value * 64;
    double near = Math.rint(count);
    if (Math.abs(count - near) <= 1e-9 && Math.abs(near) < MOST_COUNTED) {
      return fraction(near, 64, false);
    }
    return Decimals.text(value, decimals) + " in";
  }

  private static boolean isFractional(Graduation<Length> rule) {
    return isFractional(rule.step().scale()) && Integer.bitCount(rule.perUnit()) == 1;
  }

  private static Measure<Length> asLength(Measure<?> quantity) {
    try {
      return quantity.asType(Length.class);
    } catch (ClassCastException e) {
      throw new IllegalArgumentException(
          "quantity must be a length, was " + quantity + "; print it by its toString", e);
    }
  }

  private static String fraction(double steps, int perInch, boolean feet) {
    long count = (long) Math.abs(steps);
    long whole = count / perInch;
    long numerator = count % perInch;
    StringBuilder text = new StringBuilder(16);
    if (steps < 0) {
      text.append('-');
    }
    boolean carried = feet && whole >= 12;
    if (carried) {
      text.append(whole / 12).append("' ");
      whole %= 12;
    }
    if (whole > 0 || numerator == 0 || carried) {
      text.append(whole);
      if (numerator > 0) {
        text.append(' ');
      }
    }
    if (numerator > 0) {
      // Denominators are powers of two, so the common factor is one too.
      int shift = Long.numberOfTrailingZeros(numerator | perInch);
      text.append(numerator >> shift).append('/').append(perInch >> shift);
    }
    return text.append(carried ? "\"" : " in").toString();
  }
}
