package org.hammerscale.checking;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.units.Tolerance;
import org.hammerscale.working.Source;

/**
 * One value to check a program by ({@index "expected value"}, {@index "test case"}): a question,
 * what goes in, what somebody else says comes out, and how near one must come.
 *
 * <pre>{@code
 * CheckValue ring = CheckTopic.named("hinge/barrels").values().findFirst().get();
 * ring.question()                                        // "developed length"
 * ring.inputs()                                          // [bore, thickness]
 * Measure<Length> bore = ring.input("bore", Length.class);
 * Measure<Length> theirs = bore.multiply(22 / 5.0);  // 22 in  what the program under test says
 * ring.tolerance(Length.class).check(ring.expected(Length.class), theirs).isMet()  // false
 * ring.source()                                          // "Ilgen, Forge Work, 1912"  ask there who is right
 * }</pre>
 *
 * <p>Numbers are also given bare, with the unit as text, for programs that know no units. Take
 * those for temperatures, whose differences are none, and for the few values in units that are not
 * the shop's.
 */
public final class CheckValue {
  private final String topic;
  private final List<String> fields;

  CheckValue(String topic, List<String> fields) {
    this.topic = topic;
    this.fields = fields;
  }

  /** {@return the name of its topic, such as {@code hinge/swing}} */
  public String topic() {
    return topic;
  }

  /** {@return what is looked at, and what is asked of it, in words; no two of a topic are alike} */
  public String id() {
    return fields.get(0);
  }

  /** {@return what is asked, in words that all questions of the kind share} */
  public String question() {
    return fields.get(1);
  }

  /** {@return the names of what goes in} */
  public List<String> inputs() {
    return pairs().map(pair -> pair[0]).toList();
  }

  /**
   * Whether something of a name goes in.
   *
   * @param name the name
   * @return whether it is one of {@link #inputs()}
   */
  public boolean has(String name) {
    return inputs().contains(Objects.requireNonNull(name, "name"));
  }

  /**
   * An input as it is written.
   *
   * @param name one of {@link #inputs()}
   * @return words, a number, or a number and its unit, such as {@code 0.5 in}
   * @throws IllegalArgumentException if there is no input of that name
   */
  public String text(String name) {
    Objects.requireNonNull(name, "name");
    return pairs()
        .filter(pair -> pair[0].equals(name))
        .map(pair -> pair[1])
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "name must be that of an input, was " + name + "; give one of " + inputs()));
  }

  /**
   * An input as a bare number.
   *
   * @param name one of {@link #inputs()}
   * @return the number, in the unit that stands behind it in {@link #text}
   * @throws IllegalArgumentException if there is no input of that name, or it is words
   */
  public double number(String name) {
    String text = text(name);
    try {
      return Double.parseDouble(text.split(" ", 2)[0]);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "name must be that of a number, was " + name + " = " + text + "; take its text", e);
    }
  }

  /**
   * An input as a measure, in the unit that it is written in.
   *
   * @param name one of {@link #inputs()}
   * @param type what it measures, such as {@code Length.class}
   * @param <Q> what it measures
   * @return the measure
   * @throws IllegalArgumentException if there is no input of that name, it is words, measures
   *     something else, or its unit is none of the shop's
   */
  public <Q extends Quantity<Q>> Measure<Q> input(String name, Class<Q> type) {
    double number = number(name);
    String text = text(name);
    int end = text.indexOf(' ');
    return measure(number, end < 0 ? "1" : text.substring(end + 1), type);
  }

  /** {@return what the source says comes out, as a bare number in {@link #unit()}} */
  public double expected() {
    return Double.parseDouble(fields.get(3));
  }

  /**
   * What the source says comes out.
   *
   * @param type what it measures, such as {@code Length.class}
   * @param <Q> what it measures
   * @return the measure, in {@link #unit()}
   * @throws IllegalArgumentException if it measures something else, or its unit is none of the
   *     shop's
   */
  public <Q extends Quantity<Q>> Measure<Q> expected(Class<Q> type) {
    return measure(expected(), unit(), type);
  }

  /** {@return the symbol of the unit of what is expected; {@code 1} for a plain number} */
  public String unit() {
    return fields.get(4);
  }

  /**
   * How far an answer may lie from what is expected, as a bare number in {@link #unit()}: what the
   * printed digits leave open, unless the {@link #note()} says why it is more.
   *
   * @return the greatest difference, not negative
   */
  public double tolerance() {
    return Double.parseDouble(fields.get(5));
  }

  /**
   * How far an answer may lie from what is expected.
   *
   * @param type what it measures, such as {@code Length.class}
   * @param <Q> what it measures
   * @return the tolerance
   * @throws IllegalArgumentException if it measures something else, or its unit is none of the
   *     shop's
   * @throws UnsupportedOperationException for temperatures
   */
  public <Q extends Quantity<Q>> Tolerance<Q> tolerance(Class<Q> type) {
    return Tolerance.absolute(measure(tolerance(), unit(), type));
  }

  /** {@return who says so: a publication, or the law that it was computed by} */
  public String source() {
    return fields.get(6);
  }

  /** {@return page, section, table or equation in the source; empty if there is none} */
  public String locator() {
    return fields.get(7);
  }

  /** {@return how it is known} */
  public Source.Kind kind() {
    return Stream.of(Source.Kind.values())
        .filter(kind -> kind.toString().equals(fields.get(8)))
        .findFirst()
        .orElseThrow();
  }

  /** {@return what else there is to say, such as why the tolerance is wide; empty if nothing} */
  public String note() {
    return fields.get(9);
  }

  /** What is asked and what is expected, as the name of a test. */
  @Override
  public String toString() {
    String behind = unit().equals("1") ? "" : " " + unit();
    return id() + ": " + fields.get(3) + behind + " ± " + fields.get(5);
  }

  private Stream<String[]> pairs() {
    return fields.get(2).isEmpty()
        ? Stream.empty()
        : Stream.of(fields.get(2).split("; ", -1)).map(pair -> pair.split(" = ", 2));
  }

  private <Q extends Quantity<Q>> Measure<Q> measure(double number, String symbol, Class<Q> type) {
    Objects.requireNonNull(type, "type");
    Unit<?> unit = symbol.equals("1") ? ShopUnits.ONE : ShopUnits.system().getUnit(symbol);
    if (unit == null) {
      throw new IllegalArgumentException(
          "type must have a unit of the shop, was "
              + type.getSimpleName()
              + " in "
              + symbol
              + "; take the bare number");
    }
    try {
      return of(number, unit).asType(type);
    } catch (ClassCastException e) {
      throw new IllegalArgumentException(
          "type must be that of a value in "
              + symbol
              + ", was "
              + type.getSimpleName()
              + "; give what it measures",
          e);
    }
  }

  private static <Q extends Quantity<Q>> Measure<Q> of(double number, Unit<Q> unit) {
    return Measure.of(number, unit);
  }
}
