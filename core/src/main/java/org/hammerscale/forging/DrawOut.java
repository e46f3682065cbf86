package org.hammerscale.forging;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * Drawing out: a bar made thinner and longer, from any section to any smaller one. Other names:
 * {@index "drawing down"}, {@index "swaging down"}; {@index edging} where only the width is dressed
 * back. What is lost in section is gained in length: L₁ = L₀ A₀ / A₁.
 *
 * <pre>{@code
 * Section bar = Section.square(inches("3/4"));
 * DrawOut draw = DrawOut.between(bar, Section.round(inches("1/2")));
 * draw.stockFor(inches(6))    // 2.0944 in  bar that 6 in of rod takes
 * draw.lengthFrom(inches(2))  // 5.7296 in  rod that an offcut of 2 in gives
 * }</pre>
 *
 * <p>Exact as geometry; {@link HandAllowance#lengthFrom} tells what the hand makes of it. In a
 * piece the drawn stretch is a {@link org.hammerscale.stock.Plain} one, or a {@link Shoulder} where
 * it begins with a step.
 *
 * <p>Source: conservation of volume.
 */
public final class DrawOut {
  private final Section bar;
  private final Section finished;

  private DrawOut(Section bar, Section finished) {
    this.bar = bar;
    this.finished = finished;
  }

  /**
   * Drawing a bar out.
   *
   * @param bar the section before
   * @param finished the section after, of no more area
   * @return the drawing out
   * @throws IllegalArgumentException if the finished section has more area, which needs upsetting,
   *     or none at all
   */
  public static DrawOut between(Section bar, Section finished) {
    Section.requireArea("finished", finished);
    Section.requireArea("bar", bar);
    checkSmaller("finished section", bar, finished);
    return new DrawOut(bar, finished);
  }

  /**
   * Edging: a flat bar's width dressed back on the anvil, its thickness kept. The metal goes into
   * length.
   *
   * @param bar the flat before
   * @param width its width after, more than zero and at most that of the bar
   * @return the drawing out
   * @throws IllegalArgumentException if the bar is not flat or square, or the width out of range
   */
  public static DrawOut edging(Section bar, Quantity<Length> width) {
    Section.requireArea("bar", bar);
    bar.edge();
    return between(bar, Flats.of(Arguments.positive("width", width), bar.thickness()));
  }

  static void checkSmaller(String name, Section bar, Section finished) {
    if (finished.area().isGreaterThan(bar.area()) && !finished.meets(bar)) {
      throw new IllegalArgumentException(
          name
              + " must have no more area than the "
              + bar
              + " it is drawn from, was "
              + finished
              + "; jump the bar up first, or start from a larger one");
    }
  }

  /** {@return the section after} */
  public Section finished() {
    return finished;
  }

  /** {@return how many times longer it gets, A₀ / A₁, exact} */
  public double timesLonger() {
    return bar.area().ratio(finished.area());
  }

  /**
   * The finished length that a length of bar gives: L₁ = L₀ A₀ / A₁.
   *
   * @param stock the length of bar, not negative
   * @return the finished length, exact as geometry, in the stock's unit
   * @throws IllegalArgumentException if the stock is negative
   */
  public Measure<Length> lengthFrom(Quantity<Length> stock) {
    Measure<Length> given = Arguments.notNegative("stock", stock);
    return given.withValue(length(Notes.NONE, given));
  }

  /**
   * The length of bar for a finished length: L₀ = L₁ A₁ / A₀.
   *
   * @param length the finished length, not negative
   * @return the length of bar, exact as geometry, in the length's unit
   * @throws IllegalArgumentException if the length is negative
   */
  public Measure<Length> stockFor(Quantity<Length> length) {
    Measure<Length> given = Arguments.notNegative("length", length);
    return given.withValue(stock(Notes.NONE, given));
  }

  /**
   * How the finished length follows from a length of bar.
   *
   * @param stock the length of bar, not negative
   * @return the working of {@link #lengthFrom}
   * @throws IllegalArgumentException if the stock is negative
   */
  public Working lengthWorking(Quantity<Length> stock) {
    Measure<Length> given = Arguments.notNegative("stock", stock);
    return taken(given.getUnit(), n -> length(n, given));
  }

  /**
   * How the length of bar follows from a finished length.
   *
   * @param length the finished length, not negative
   * @return the working of {@link #stockFor}
   * @throws IllegalArgumentException if the length is negative
   */
  public Working stockWorking(Quantity<Length> length) {
    Measure<Length> given = Arguments.notNegative("length", length);
    return taken(given.getUnit(), n -> stock(n, given));
  }

  private double length(Notes n, Measure<Length> stock) {
    double a0 = area(n, "A₀", "section of the bar", bar, stock);
    double a1 = area(n, "A₁", "finished section", finished, stock);
    double l0 = n.given("L₀", "length of bar", stock.in(stock.getUnit()));
    return n.length("L₁", "finished length", "L₀ A₀ / A₁", l0 * a0 / a1);
  }

  private double stock(Notes n, Measure<Length> length) {
    double a0 = area(n, "A₀", "section of the bar", bar, length);
    double a1 = area(n, "A₁", "finished section", finished, length);
    double l1 = n.given("L₁", "finished length", length.in(length.getUnit()));
    return n.length("L₀", "length of bar", "L₁ A₁ / A₀", l1 * a1 / a0);
  }

  private static double area(
      Notes n, String symbol, String meaning, Section section, Measure<Length> length) {
    Unit<Area> square = Measures.area(length, length).getUnit();
    return n.givenArea(symbol, meaning, section.area().in(square));
  }

  private Working taken(Unit<Length> unit, Notes.Calculation calculation) {
    return Notes.taken(toString(), unit, calculation)
        .withSource(Source.computed("conservation of volume"));
  }

  /** The two sections. */
  @Override
  public String toString() {
    return bar + " drawn out to " + finished;
  }
}
