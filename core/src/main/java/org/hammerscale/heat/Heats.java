package org.hammerscale.heat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Time;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * How many heats a piece takes: how often it goes into the fire, the {@index "number of heats"}.
 * Each stay there, with the work after it, is one {@index heat}. Of each feature the smith says how
 * long it is worked at the anvil; N = up(w₁ / W, 1) + up(w₂ / W, 1) + …, where W is the {@linkplain
 * Cooling#window window} of one heat.
 *
 * <pre>{@code
 * Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
 * Cooling cooling = Cooling.from(celsius(1150), bar);
 * Heats heats = Heats.forWork(minutes(2), cooling).and(seconds(40));
 * heats.count()  // 4 (3 to 7)  a taper of two minutes, then an end of forty seconds
 * Heats.forStretches(3, cooling).count()  // 3 (2 to 6)  or by what is done: three operations
 * heats.cooling().window()  // 40.2 s (25.32 s to 67.86 s)  the work that one heat allows
 * heats.setBy()  // "the bar, 20 mm round, at 800 °C, the coldest that mild steel is forged at"  what ends it
 * }</pre>
 *
 * <p>An estimate: the likely count begins each feature with a fresh heat of the likely window, as
 * the counted heats of named pieces do; the low one lets features share heats of the longest
 * window; the high one takes the shortest. Counts from print stand beside ours in {@code
 * core/VALIDATION.md}. How long the fire takes to bring the piece to heat again is not computed,
 * for want of a sourced model.
 */
public final class Heats {
  /** As in {@code up(x, 1)} of a {@link org.hammerscale.working.Step}. */
  private static final double SLACK = 1e-9;

  /**
   * On bars of about an inch, with a window of 51 s at 1150 °C, operations that were counted filled
   * a heat each, and two did not share one: each takes 25 to 51 s, 36 s in the middle.
   */
  private static final double SECONDS_A_STRETCH = 36;

  private static final Source COUNTED =
      Source.read(
          "Lineham, A Text-book of Mechanical Engineering",
          "counted heats: a fresh one for each operation");

  private static final int MOST_STRETCHES = 100;

  private static final Source REHEATING =
      Source.commonPractice("thin parts burn while the thick ones come to heat");

  private final Cooling cooling;
  private final Estimate<Time> window;
  private final List<Measure<Time>> works;

  private Heats(Cooling cooling, Estimate<Time> window, List<Measure<Time>> works) {
    this.cooling = cooling;
    this.window = window;
    this.works = works;
  }

  /**
   * The heats for a feature.
   *
   * @param work how long the smith works on it at the anvil, more than zero; the time in the fire
   *     is not counted
   * @param cooling from which heat, and to what, the piece cools while he does
   * @return the heats
   * @throws IllegalArgumentException if the time is not more than zero, or the window of a heat is
   *     not known or may be nothing
   */
  public static Heats forWork(Quantity<Time> work, Cooling cooling) {
    Objects.requireNonNull(cooling, "cooling");
    Estimate<Time> window = cooling.window();
    if (!(window.low().getValue() > 0)) {
      throw new IllegalArgumentException(
          "cooling must leave a window in every case, was "
              + window
              + " from "
              + cooling.heat()
              + " to "
              + cooling.finish()
              + "; heat it hotter");
    }
    return new Heats(cooling, window, List.of(Arguments.positiveTime("work", work)));
  }

  /**
   * The heats for operations on about a hand's breadth of the bar each: an end set down, three
   * inches (75 mm) drawn, a bend, an eye opened. Each is taken to need 36 s at the anvil, which is
   * what counted heats of named pieces come to, most of them of a smith with a striker; who works
   * alone tells his own time with {@link #forWork}.
   *
   * @param stretches how many operations, 1 to 100
   * @param cooling from which heat, and to what, the piece cools while he works
   * @return the heats
   * @throws IllegalArgumentException if the number is out of range, or the window of a heat is not
   *     known or may be nothing
   */
  public static Heats forStretches(int stretches, Cooling cooling) {
    if (stretches < 1 || stretches > MOST_STRETCHES) {
      throw new IllegalArgumentException(
          "stretches must be from 1 to "
              + MOST_STRETCHES
              + ", was "
              + stretches
              + "; count what is done to each hand's breadth of the bar");
    }
    Measure<Time> each = Measure.of(SECONDS_A_STRETCH, ShopUnits.SECOND);
    Heats one = forWork(each, cooling);
    return new Heats(cooling, one.window, Collections.nCopies(stretches, each));
  }

  /**
   * These heats and those of one more feature, worked after the others.
   *
   * @param work how long the smith works on it at the anvil, more than zero
   * @return the heats of all
   * @throws IllegalArgumentException if the time is not more than zero
   */
  public Heats and(Quantity<Time> work) {
    List<Measure<Time>> all = new ArrayList<>(works);
    all.add(Arguments.positiveTime("work", work));
    return new Heats(cooling, window, List.copyOf(all));
  }

  /**
   * The number of heats: N = up(w₁ / W, 1) + up(w₂ / W, 1) + …
   *
   * @return the number, at least one; its spread is that of the window, and whether features share
   *     a heat
   */
  public Estimate<Dimensionless> count() {
    double likely = count(Notes.NONE, window.likely().in(ShopUnits.SECOND));
    double shared = up(work().in(ShopUnits.SECOND) / window.high().in(ShopUnits.SECOND));
    double most = count(Notes.NONE, window.low().in(ShopUnits.SECOND));
    return Estimate.of(
        Measure.of(Math.min(shared, likely), ShopUnits.ONE),
        Measure.of(likely, ShopUnits.ONE),
        Measure.of(most, ShopUnits.ONE));
  }

  /** {@return all the work at the anvil, in the unit of the first} */
  public Measure<Time> work() {
    return works.stream().reduce(Measure::add).orElseThrow();
  }

  /** {@return how the piece cools in each heat} */
  public Cooling cooling() {
    return cooling;
  }

  /**
   * What ends each heat: the part of the piece that is cold first, at the temperature that it may
   * not fall below.
   *
   * @return both in words, as they stand in a sentence
   */
  public String setBy() {
    return (cooling.isRuledByThinnest() ? "the thinnest part, " : "the bar, ")
        + cooling.ruling().section()
        + ", at "
        + cooling.finish().to(cooling.heat().getUnit())
        + ", "
        + cooling.given().finishMeaning();
  }

  /** {@return the cautions of the cooling, and one if a thin part goes into the fire again} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(cooling.cautions());
    if (cooling.isRuledByThinnest() && count().high().getValue() > 1) {
      cautions.add(
          Caution.limit(
              "the thinnest part, "
                  + cooling.ruling().section()
                  + ", is at heat before the bar is, and burns if it waits for it: in every further"
                  + " heat keep it out of the hottest of the fire, or draw it last",
              REHEATING));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the likely {@link #count} was found} */
  public Working working() {
    return cooling
        .worked("heats for " + work() + " of work", n -> count(n, cooling.windowSeconds(n)))
        .withSource(COUNTED)
        .withCautions(cautions());
  }

  private double count(Notes n, double window) {
    double sum = 0;
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < works.size(); i++) {
      String at = Subscripts.of(i + 1);
      double w = works.get(i).in(ShopUnits.SECOND);
      n.value("w" + at, "work at the anvil", "", w, ShopUnits.SECOND);
      sum += n.number("N" + at, "heats for it", "up(w" + at + " / W, 1)", up(w / window));
      formula.append(i == 0 ? "N" : " + N").append(at);
    }
    return n.number("N", "heats", formula.toString(), sum);
  }

  private static double up(double heats) {
    return Math.ceil(heats - SLACK);
  }

  /** Work and count. */
  @Override
  public String toString() {
    return "heats for " + work() + " of work from " + cooling.heat() + ": " + count();
  }
}
