package org.hammerscale.forging;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * How much of the thickness that is hammered out of a bar goes into its width, and how much into
 * its length: the coefficient S of spread, from 0 (all into length) to 1 (all into width), as in w₁
 * = w₀ (h₀ / h₁) up to the power S. Bite, fuller, die and heat decide it; so a trial piece of the
 * shop's own, {@link #measured(Section, Section)}, is better than any law.
 *
 * <pre>{@code
 * Section bar = Section.square(millimetres(25));
 * SpreadLaw.tomlinsonStringer(millimetres(12.5)).coefficient(bar)  // 0.3065  half as long a bite as the bar is wide
 * SpreadLaw.NONE.coefficient(bar)  // 0.0  a bar that only grows longer
 * }</pre>
 */
public final class SpreadLaw {
  private static final Source TOMLINSON =
      Source.fromMemory(
          "Tomlinson and Stringer, Journal of the Iron and Steel Institute 193, 1959", "p. 157");
  private static final double WIDEST_BITE = 2;
  private static final double JUDGED = 0.1;

  /** Length takes all: the width is held, or dressed back on edge after each heat. */
  public static final SpreadLaw NONE =
      new SpreadLaw(
          "no spread",
          Source.computed("the width is held, so length takes all"),
          0,
          bar -> List.of(),
          (n, bar, unit) -> n.number("S", "coefficient of spread", "", 0));

  private final String name;
  private final Source source;
  private final double doubt;
  private final Warning warning;
  private final Kernel kernel;

  /** Calculates S for a bar whose width w₀ and thickness h₀ are already noted. */
  @FunctionalInterface
  private interface Kernel {
    double coefficient(Notes n, Section bar, Unit<Length> unit);
  }

  @FunctionalInterface
  private interface Warning {
    List<Caution> about(Section bar);
  }

  private SpreadLaw(String name, Source source, double doubt, Warning warning, Kernel kernel) {
    this.name = name;
    this.source = source;
    this.doubt = doubt;
    this.warning = warning;
    this.kernel = kernel;
  }

  /**
   * A coefficient that the shop has measured.
   *
   * @param coefficient S, from 0 to 1
   * @return the law
   * @throws IllegalArgumentException if it is out of range
   */
  public static SpreadLaw measured(double coefficient) {
    if (!(coefficient >= 0 && coefficient <= 1)) {
      throw new IllegalArgumentException(
          "coefficient must be from 0 (all into length) to 1 (all into width), was "
              + coefficient
              + "; measure a trial piece before and after");
    }
    return new SpreadLaw(
        "measured spread",
        Source.commonPractice("measured in the shop"),
        0,
        bar -> List.of(),
        (n, bar, unit) -> n.number("S", "coefficient of spread, measured", "", coefficient));
  }

  /**
   * The coefficient of a trial piece: S = ln(w₁ / w₀) / ln(h₀ / h₁).
   *
   * @param before its section before
   * @param after its section after, thinner and not narrower
   * @return the law
   * @throws IllegalArgumentException if it got no thinner, or narrower, or wider than it lost in
   *     thickness
   */
  public static SpreadLaw measured(Section before, Section after) {
    Section.requireArea("after", after);
    Section.requireArea("before", before);
    double thinning = before.thickness().ratio(after.thickness());
    if (!(thinning > 1)) {
      throw new IllegalArgumentException(
          "after must be thinner than the "
              + before
              + " before, was "
              + after
              + "; measure a piece that was hammered flat");
    }
    return measured(Math.log(after.width().ratio(before.width())) / Math.log(thinning));
  }

  /**
   * Tomlinson and Stringer's law for flat tools: S = 0.14 + 0.36 x − 0.054 x² with the bite ratio x
   * = b / w₀, of bites b along the bar. Beyond a ratio of 2 it is held at its value there, with a
   * caution; the parabola would turn down.
   *
   * <p>The coefficients are quoted from memory and not verified; S is taken as good to ± 0.1 for
   * hammer work, which is our own judgement.
   *
   * @param bite how far the hammer or fuller advances along the bar between blows, more than zero
   * @return the law
   * @throws IllegalArgumentException if the bite is not more than zero
   */
  public static SpreadLaw tomlinsonStringer(Quantity<Length> bite) {
    Measure<Length> b = Arguments.positive("bite", bite);
    return new SpreadLaw(
        "Tomlinson and Stringer's spread",
        TOMLINSON,
        JUDGED,
        bar -> biteCautions(b, bar),
        (n, bar, unit) -> tomlinson(n, b, bar, unit));
  }

  /**
   * Wusatowski's law of flat rolling, to compare with: S = 10 to the power −1.269 (w₀ / h₀) (h₀ / 2
   * R) to the power 0.56. A hammer's rounded face is not a roll; S is taken as good to ± 0.1 at
   * best, which is our own judgement.
   *
   * @param radius of the roll, more than zero
   * @return the law
   * @throws IllegalArgumentException if the radius is not more than zero
   */
  public static SpreadLaw wusatowski(Quantity<Length> radius) {
    Measure<Length> roll = Arguments.positive("radius", radius);
    return new SpreadLaw(
        "Wusatowski's spread",
        Source.read("Wusatowski's spread equation, as documented for flat rolling", ""),
        JUDGED,
        bar ->
            List.of(
                Caution.limit(
                    "Wusatowski's law is made for flat rolling; compare with it, but measure a"
                        + " trial piece for the hammer",
                    Source.computed("a hammer's face is not a roll"))),
        (n, bar, unit) -> wusatowski(n, roll, bar, unit));
  }

  /**
   * The coefficient S for a bar.
   *
   * @param bar the section before
   * @return S, from 0 to 1
   */
  public double coefficient(Section bar) {
    Section.requireArea("bar", bar);
    return coefficient(Notes.NONE, bar, bar.width().getUnit());
  }

  double coefficient(Notes n, Section bar, Unit<Length> unit) {
    return kernel.coefficient(n, bar, unit);
  }

  /** How far S may be off for nine of ten pieces. */
  double doubt() {
    return doubt;
  }

  List<Caution> cautions(Section bar) {
    return warning.about(bar);
  }

  Source source() {
    return source;
  }

  private static double tomlinson(Notes n, Measure<Length> bite, Section bar, Unit<Length> unit) {
    double w = bar.width().in(unit);
    double b = n.given("b", "bite along the bar", bite.in(unit));
    double ratio = n.number("x₀", "bite ratio", "b / w₀", b / w);
    double x =
        ratio > WIDEST_BITE
            ? n.number("x", "bite ratio, held at the law's limit", "2", WIDEST_BITE)
            : n.number("x", "bite ratio, within the law's limit", "x₀", ratio);
    return n.number(
        "S",
        "coefficient of spread",
        "0.14 + 0.36 x − 0.054 x²",
        0.14 + 0.36 * x - 0.054 * (x * x));
  }

  private static double wusatowski(Notes n, Measure<Length> roll, Section bar, Unit<Length> unit) {
    double w = bar.width().in(unit);
    double h = bar.thickness().in(unit);
    double r = n.given("R", "radius of the roll", roll.in(unit));
    return n.number(
        "S",
        "coefficient of spread",
        "1 / pow(10, 1.269 (w₀ / h₀) pow(h₀ / (2 R), 0.56))",
        1 / Math.pow(10, 1.269 * (w / h) * Math.pow(h / (2 * r), 0.56)));
  }

  private static List<Caution> biteCautions(Measure<Length> bite, Section bar) {
    if (bite.ratio(bar.width()) > WIDEST_BITE) {
      return List.of(
          Caution.limit(
              "the bite of "
                  + bite
                  + " is more than twice the width of "
                  + bar.width()
                  + ": the law of spread is held at its value for twice; measure a trial piece",
              TOMLINSON));
    }
    if (bite.ratio(bar.thickness()) < 1 / 3d) {
      return List.of(
          Caution.limit(
              "the bite of "
                  + bite
                  + " is less than a third of the thickness of "
                  + bar.thickness()
                  + ": so narrow a bite works only the skin; take a broader face",
              Source.fromMemory("Wistreich and Shutt, practice of open-die forging", "")));
    }
    return List.of();
  }

  /** Its name. */
  @Override
  public String toString() {
    return name;
  }
}
