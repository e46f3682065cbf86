package org.hammerscale.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.jspecify.annotations.Nullable;

/**
 * The pencil in a calculation's hand. A calculation is written once, with each value passed through
 * a note of it; with {@link #NONE} nothing is kept and nothing is paid, with {@link #taken} the
 * notes become a {@link Working} whose numbers are those of the answer, to the last bit.
 *
 * <pre>{@code
 * Measure<Length> bore = inches("1/2");
 * double developed(Notes n) {
 *   double d = n.given("d", "bore", bore.in(ShopUnits.INCH));
 *   double t = n.given("t", "strap thickness", 0.25);
 *   return n.length("L", "developed length", "π (d + t)", Math.PI * (d + t));
 * }
 * inches(developed(Notes.NONE))                                           // 2.3562 in
 * Notes.taken("an eye", ShopUnits.INCH, n -> developed(n)).result()       // 2.3562 in
 * }</pre>
 *
 * <p>The calculation works in one unit of length, its square and its cube. The formula texts follow
 * the small grammar of {@link Step}.
 */
public final class Notes {
  /** Takes no notes. */
  public static final Notes NONE = new Notes(null, ShopUnits.METRE);

  private final @Nullable List<Step> steps;
  private final Unit<Length> unit;

  private Notes(@Nullable List<Step> steps, Unit<Length> unit) {
    this.steps = steps;
    this.unit = unit;
  }

  /** A calculation that can be noted down. */
  @FunctionalInterface
  public interface Calculation {
    /**
     * Calculates, telling each value to the notes.
     *
     * @param notes where the values go
     * @return the result, in the unit that the calculation works in
     */
    double calculate(Notes notes);
  }

  /**
   * Runs a calculation and keeps its notes.
   *
   * @param title what is calculated
   * @param unit the unit of length that the calculation works in
   * @param calculation the calculation
   * @return its working
   */
  public static Working taken(String title, Unit<Length> unit, Calculation calculation) {
    Objects.requireNonNull(calculation, "calculation");
    List<Step> steps = new ArrayList<>();
    calculation.calculate(new Notes(steps, Objects.requireNonNull(unit, "unit")));
    return Working.of(title, steps);
  }

  /**
   * Notes a given length.
   *
   * @param symbol its symbol
   * @param meaning what it is
   * @param value its value in the unit of length
   * @return the value
   */
  public double given(String symbol, String meaning, double value) {
    return isNone(symbol, meaning, "") ? value : add(symbol, meaning, "", value, unit);
  }

  /**
   * Notes a given area.
   *
   * @param symbol its symbol
   * @param meaning what it is
   * @param value its value in the square of the unit of length
   * @return the value
   */
  public double givenArea(String symbol, String meaning, double value) {
    return area(symbol, meaning, "", value);
  }

  /**
   * Notes a calculated length.
   *
   * @param symbol its symbol
   * @param meaning what it is
   * @param formula how it was found, in earlier symbols
   * @param value its value in the unit of length
   * @return the value
   */
  public double length(String symbol, String meaning, String formula, double value) {
    return isNone(symbol, meaning, formula) ? value : add(symbol, meaning, formula, value, unit);
  }

  /**
   * Notes a calculated area.
   *
   * @param symbol its symbol
   * @param meaning what it is
   * @param formula how it was found, in earlier symbols
   * @param value its value in the square of the unit of length
   * @return the value
   */
  public double area(String symbol, String meaning, String formula, double value) {
    return isNone(symbol, meaning, formula)
        ? value
        : add(symbol, meaning, formula, value, square().getUnit());
  }

  /**
   * Notes a calculated volume.
   *
   * @param symbol its symbol
   * @param meaning what it is
   * @param formula how it was found, in earlier symbols
   * @param value its value in the cube of the unit of length
   * @return the value
   */
  public double volume(String symbol, String meaning, String formula, double value) {
    return isNone(symbol, meaning, formula)
        ? value
        : add(symbol, meaning, formula, value, Measures.volume(one(), square()).getUnit());
  }

  /**
   * Notes a calculated plain number.
   *
   * @param symbol its symbol
   * @param meaning what it is
   * @param formula how it was found, in earlier symbols
   * @param value its value
   * @return the value
   */
  public double number(String symbol, String meaning, String formula, double value) {
    return isNone(symbol, meaning, formula)
        ? value
        : add(symbol, meaning, formula, value, ShopUnits.ONE);
  }

  /**
   * Notes a value of any other unit, given or calculated.
   *
   * @param symbol its symbol
   * @param meaning what it is
   * @param formula how it was found, in earlier symbols; empty if it was given
   * @param value its value in the unit
   * @param in the unit that the formula is evaluated in
   * @return the value
   */
  public double value(String symbol, String meaning, String formula, double value, Unit<?> in) {
    Objects.requireNonNull(in, "in");
    return isNone(symbol, meaning, formula) ? value : add(symbol, meaning, formula, value, in);
  }

  /** Whether notes are kept. */
  @Override
  public String toString() {
    return steps == null ? "no notes" : "notes of " + steps.size() + " steps";
  }

  /** Whether nothing is kept; null is refused all the same. */
  private boolean isNone(String symbol, String meaning, String formula) {
    Objects.requireNonNull(symbol, "symbol");
    Objects.requireNonNull(meaning, "meaning");
    Objects.requireNonNull(formula, "formula");
    return steps == null;
  }

  private double add(String symbol, String meaning, String formula, double value, Unit<?> in) {
    if (steps != null) {
      steps.add(new Step(symbol, meaning, formula, Measure.of(value, in)));
    }
    return value;
  }

  private Measure<Length> one() {
    return Measure.of(1, unit);
  }

  private Measure<javax.measure.quantity.Area> square() {
    return Measures.area(one(), one());
  }
}
