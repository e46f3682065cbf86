package org.hammerscale.examples.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.fastening.Wood;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/**
 * How a cell is read.
 *
 * @param accepted what may stand there, in words
 * @param reader reads it, and refuses what is none
 * @param instead a harmless value where it was refused, so that reading goes on
 * @param <T> what it is
 */
public record Reading<T>(String accepted, Function<String, ? extends T> reader, T instead) {
  private static final double MOST_MINUTES = 60;
  private static final double MOST_METRES = 1000;
  private static final String NONE = "none";

  /** A text that {@link OrderColumn#name} looks at. */
  public static final Reading<String> TEXT =
      new Reading<>("any text that names the job", text -> text, "");

  public static final Reading<Measure<Length>> LENGTH =
      new Reading<>(
          "a length such as 1 1/2 in or 40 mm", text -> positive(length(text)), Measures.inches(1));

  public static final Reading<Measure<Length>> LENGTH_OR_ZERO =
      new Reading<>(LENGTH.accepted, Reading::notNegative, Measures.inches(0));

  /** On either side of something, or level with it. */
  public static final Reading<Measure<Length>> PLACE =
      new Reading<>(
          "a length such as 6 in, or -150 mm on the other side",
          Reading::length,
          Measures.inches(0));

  public static final Reading<Section> SECTION =
      new Reading<>(SectionText.ACCEPTED, Reading::section, Section.square(Measures.inches(1)));

  public static final Reading<Section> ROUND =
      new Reading<>(
          "a round rod, such as 5 mm round", Reading::round, Section.round(Measures.inches(1)));

  public static final Reading<Measure<Angle>> OPENING =
      new Reading<>(
          "degrees up to 360, such as 110°",
          text -> positive(Measures.degrees(number(text, "°", 360))),
          Measures.degrees(90));

  public static final Reading<Measure<Angle>> SLOPE =
      new Reading<>(
          "degrees up to 75, such as 35°, or 0°",
          text -> Measures.degrees(number(text, "°", 75)),
          Measures.degrees(0));

  public static final Reading<Measure<Temperature>> HEAT =
      new Reading<>(
          "a temperature with its unit, such as 1100 °C or 2000 °F",
          text ->
              text.endsWith("°F")
                  ? Measures.fahrenheit(number(text, "°F", 9999))
                  : Measures.celsius(number(text, "°C", 9999)),
          Measures.celsius(1100));

  /** What hangs or stands on something, as the force that it weighs. */
  public static final Reading<Measure<Force>> LOAD =
      new Reading<>(
          LoadText.ACCEPTED,
          text ->
              LoadText.weightOf(
                  positive(
                      text.endsWith("lb")
                          ? Measures.pounds(number(text, "lb", 9999))
                          : Measures.kilograms(number(text, "kg", 9999)))),
          Measures.newtons(1));

  /** Of a twist. */
  public static final Reading<Double> TURNS =
      new Reading<>("turns up to 20, such as 1.5", text -> number(text, "", 20), 1.0);

  /** What a metal may bear. */
  public static final Reading<Measure<Pressure>> STRESS =
      new Reading<>(
          "a stress such as 400 MPa or 60 ksi",
          text ->
              positive(
                  text.endsWith("ksi")
                      ? Measure.of(number(text, "ksi", 9999), ShopUnits.KSI)
                      : Measures.megapascals(number(text, "MPa", 9999))),
          Measures.megapascals(100));

  /** How the wind presses on what stands in its way, if that is asked. */
  public static final Reading<Optional<Measure<Pressure>>> WIND =
      new Reading<>(
          "the wind's pressure such as 500 Pa or 10 psf, or none",
          text -> text.equals(NONE) ? Optional.empty() : Optional.of(positive(wind(text))),
          Optional.empty());

  public static final Reading<Measure<Time>> MINUTES =
      new Reading<>(
          "minutes up to 60, such as 0.5 min",
          text -> positive(Measures.minutes(number(text, "min", MOST_MINUTES))),
          Measures.minutes(1));

  public static final Reading<Screw> SCREW =
      new Reading<>(
          "a size and a length, such as 10 × 1 1/4 in or 5 mm × 40 mm",
          Screw::parse,
          Screw.parse("8 × 1 in"));

  public static final Reading<Wood> WOOD =
      new Reading<>(
          "a timber, such as oak, white oak or Douglas fir", Wood::named, Wood.species().get(0));

  public static final Reading<Graduation<Length>> GRADUATION = oneOf(graduations());

  private static Map<String, Graduation<Length>> graduations() {
    Map<String, Graduation<Length>> all = new LinkedHashMap<>();
    all.put("1/8 in", Graduation.EIGHTH);
    all.put("1/16 in", Graduation.SIXTEENTH);
    all.put("1/32 in", Graduation.THIRTY_SECOND);
    all.put("1/64 in", Graduation.SIXTY_FOURTH);
    all.put("1 mm", Graduation.MILLIMETRE);
    all.put("0.5 mm", Graduation.HALF_MILLIMETRE);
    all.put("0.1 mm", Graduation.TENTH_MILLIMETRE);
    return all;
  }

  /** A whole number from the least to the most. */
  public static Reading<Integer> count(int least, int most) {
    return new Reading<>(
        "a whole number from " + least + " to " + most,
        text -> {
          // Four digits at most, so that the number cannot overflow.
          int count = text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : -1;
          if (count < least || count > most) {
            throw new IllegalArgumentException(Fault.echo(text) + " is no count");
          }
          return count;
        },
        least);
  }

  /** Several lengths, or none. */
  public static Reading<List<Measure<Length>>> lengths(String accepted) {
    return new Reading<>(
        accepted,
        text -> {
          List<Measure<Length>> all = new ArrayList<>();
          for (String one : text.equals(NONE) ? new String[0] : text.split(";", -1)) {
            all.add(positive(length(one.strip())));
          }
          return all;
        },
        List.of());
  }

  /** A length, or another word for something else. */
  public static Reading<Optional<Measure<Length>>> lengthOr(String word, String accepted) {
    return new Reading<>(
        accepted,
        text -> text.equals(word) ? Optional.empty() : Optional.of(positive(length(text))),
        Optional.empty());
  }

  /** One of a few words, in the order that they are told in. */
  public static <T> Reading<T> oneOf(Map<String, T> known) {
    List<String> words = List.copyOf(known.keySet());
    int last = words.size() - 1;
    return new Reading<>(
        String.join(", ", words.subList(0, last)) + " or " + words.get(last),
        text -> {
          T value = known.get(text);
          if (value == null) {
            throw new IllegalArgumentException(Fault.echo(text) + " is not known");
          }
          return value;
        },
        known.values().iterator().next());
  }

  /** Constants by their names. */
  public static <E extends Enum<E>> Reading<E> oneOf(E[] constants) {
    Map<String, E> known = new LinkedHashMap<>();
    for (E each : constants) {
      known.put(each.name().toLowerCase(Locale.ROOT), each);
    }
    return oneOf(known);
  }

  /** Pounds on the square foot are a hundred and forty-fourth on the square inch. */
  private static Measure<Pressure> wind(String text) {
    return text.endsWith("psf")
        ? Measure.of(number(text, "psf", 9999) / 144, ShopUnits.PSI)
        : Measure.of(number(text, "Pa", 99_999), ShopUnits.PASCAL);
  }

  private static Section section(String text) {
    Section section = SectionText.parse(text);
    length(section.width().toString());
    return section;
  }

  private static Section round(String text) {
    Section section = section(text);
    if (!section.isRound()) {
      throw new IllegalArgumentException(Fault.echo(text) + " is not round");
    }
    return section;
  }

  private static Measure<Length> length(String text) {
    Measure<Length> read = Measures.length(text);
    if (Math.abs(read.in(ShopUnits.METRE)) > MOST_METRES) {
      throw new IllegalArgumentException(read + " is too much, no piece of a forge is so long");
    }
    return read;
  }

  private static double number(String text, String unit, double most) {
    String digits = text.endsWith(unit) ? text.substring(0, text.length() - unit.length()) : "";
    if (!digits.strip().matches("[0-9]{1,12}(\\.[0-9]{1,12})?")) {
      throw new IllegalArgumentException(
          Fault.echo(text) + " is no number" + (unit.isEmpty() ? "" : " in " + unit));
    }
    double number = Double.parseDouble(digits.strip());
    if (number > most) {
      throw new IllegalArgumentException(Fault.echo(text) + " is too much");
    }
    return number;
  }

  private static <Q extends Quantity<Q>> Measure<Q> positive(Measure<Q> read) {
    if (!(read.getValue() > 0)) {
      throw new IllegalArgumentException(read + " is too little, it must be more than zero");
    }
    return read;
  }

  private static Measure<Length> notNegative(String text) {
    Measure<Length> read = length(text);
    if (read.getValue() < 0) {
      throw new IllegalArgumentException(read + " is too little, it must not be negative");
    }
    return read;
  }
}
