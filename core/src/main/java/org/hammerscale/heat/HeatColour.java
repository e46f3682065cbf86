package org.hammerscale.heat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/**
 * The colour of hot iron, as one published table names it: {@index "black heat"}, {@index "blood
 * red"}, {@index cherry}, orange, yellow, {@index "white heat"}. The tables stand side by side and
 * are never averaged: the same word differs by up to 200 °C from one to the next.
 *
 * <pre>{@code
 * HeatColour.named("orange").get(0).from()    // 982 °C         "forge it at an orange": from here
 * HeatColour.named("orange").get(0).to()      // 1092 °C        to here, by the first table
 * HeatColour.at(celsius(1150)).get(0).name()  // "yellow"       what to look for at 1150 °C
 * HeatColour.at(celsius(1150)).get(1).name()  // "deep orange"  what another table calls the same heat
 * }</pre>
 *
 * <p>Judged by eye in shop light, a colour is good to 50 to 100 °C at best. Iron and steel only:
 * aluminium melts before it glows. No colour codes are given, since a screen shows no heat.
 *
 * <p>Source: Chapman 1972; Stirling 1905; Dooley; Machinery's Handbook, 12th ed.; White and Taylor
 * 1899.
 */
public final class HeatColour {
  /** Further than this from a table's next point the table has no name for a heat, in kelvins. */
  private static final double NEAREST = 100;

  /** Tables of ranges leave a degree between one colour and the next, in kelvins. */
  private static final double GAP = 0.5;

  private static final Caution BY_EYE =
      Caution.limit(
          "a heat judged by its colour may be 50 to 100 °C off: eyes, daylight and the tables"
              + " differ; look at it in the same shade every time",
          Source.computed("comparison of the published tables"));

  private final Source source;
  private final String name;
  private final Measure<Temperature> from;
  private final Measure<Temperature> to;
  private final boolean open;

  HeatColour(
      Source source,
      String name,
      Measure<Temperature> from,
      Measure<Temperature> to,
      boolean open) {
    this.source = source;
    this.name = name;
    this.from = from;
    this.to = to;
    this.open = open;
  }

  /** {@return every row of every table, table by table, each from the coolest} */
  public static List<HeatColour> all() {
    return HeatColourTables.ALL;
  }

  /**
   * What the tables mean by a word.
   *
   * @param word a colour or a part of its name, such as {@code cherry}; capitals do not matter
   * @return the rows whose name has it, table by table; none if no table uses the word
   * @throws IllegalArgumentException if the word is blank
   */
  public static List<HeatColour> named(String word) {
    Pattern wanted =
        Pattern.compile(
            Pattern.quote(Arguments.text("word", word).strip()), Pattern.CASE_INSENSITIVE);
    return all().stream().filter(row -> wanted.matcher(row.name).find()).toList();
  }

  /**
   * What the tables call a heat: of a table of ranges the row that holds it, of a table of points
   * the nearest within 100 °C.
   *
   * @param heat the temperature
   * @return at most one row of each table
   */
  public static List<HeatColour> at(Quantity<Temperature> heat) {
    double celsius = Arguments.temperature("heat", heat).in(ShopUnits.CELSIUS);
    Map<Source, HeatColour> nearest = new LinkedHashMap<>();
    for (HeatColour row : all()) {
      nearest.merge(row.source, row, (a, b) -> b.distance(celsius) < a.distance(celsius) ? b : a);
    }
    List<HeatColour> rows = new ArrayList<>(nearest.values());
    rows.removeIf(row -> row.distance(celsius) > (row.isPoint() ? NEAREST : GAP));
    return List.copyOf(rows);
  }

  /** {@return that the eye and the tables differ} */
  public static Caution caution() {
    return BY_EYE;
  }

  /** {@return what the table calls it} */
  public String name() {
    return name;
  }

  /** {@return the coolest that the table calls so} */
  public Measure<Temperature> from() {
    return from;
  }

  /**
   * {@return the hottest that the table calls so; the same as the coolest for a point, and for
   * white heat without an end}
   */
  public Measure<Temperature> to() {
    return to;
  }

  /** {@return whether the table gives a single point for it, not a range} */
  public boolean isPoint() {
    return !open && from.equals(to);
  }

  /** {@return the table} */
  public Source source() {
    return source;
  }

  /** How far a temperature lies outside this row, in kelvins. */
  private double distance(double celsius) {
    double low = from.in(ShopUnits.CELSIUS);
    double high = open ? Double.MAX_VALUE : to.in(ShopUnits.CELSIUS);
    return Math.max(0, Math.max(low - celsius, celsius - high));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatColour row
        && name.equals(row.name)
        && source.equals(row.source)
        && from.equals(row.from)
        && to.equals(row.to);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, source, from, to);
  }

  /** Name, temperatures and table. */
  @Override
  public String toString() {
    String range = open ? from + " and more" : isPoint() ? from + "" : from + " to " + to;
    return name + ", " + range + ", " + source.title();
  }
}
