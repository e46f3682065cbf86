package org.hammerscale.forging;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * Spreading: width gained for thickness lost, by hammer, {@index fuller} or {@index flatter}. Other
 * names: {@index flattening}, {@index "fullering out"}. By a {@link SpreadLaw} with the coefficient
 * S, w₁ = w₀ (h₀ / h₁) up to the power S, and the bar gets (h₀ / h₁) up to the power 1 − S times
 * longer: no metal is lost.
 *
 * <pre>{@code
 * Section bar = Section.square(millimetres(25));
 * SpreadLaw law = SpreadLaw.tomlinsonStringer(millimetres(12.5));
 * Spread.thinning(bar, millimetres(20), law).width()  // 26.77 mm (26.18 mm to 27.37 mm)  under bites of 12.5 mm
 * Spread.thinning(bar, millimetres(20), SpreadLaw.NONE).width()  // 25 mm  if all of it went into length
 * }</pre>
 *
 * <p>The width is exact for {@link SpreadLaw#NONE} and a measured coefficient, else an estimate.
 *
 * <p>Source: conservation of volume, and that of the law.
 */
public final class Spread {
  private static final double MOST_SQUEEZE = 1.3;
  private static final Source SQUEEZE =
      Source.fromMemory("Wistreich and Shutt, practice of open-die forging", "");

  private final Section bar;
  private final Measure<Length> thickness;
  private final SpreadLaw law;
  private final Unit<Length> unit;

  private Spread(Section bar, Measure<Length> thickness, SpreadLaw law) {
    this.bar = bar;
    this.thickness = thickness;
    this.law = law;
    this.unit = bar.width().getUnit();
  }

  /**
   * Spreading a bar.
   *
   * @param bar the flat or square before
   * @param thickness its thickness after, more than zero and less than that of the bar
   * @param law how the metal divides between width and length
   * @return the spreading
   * @throws IllegalArgumentException if the bar is neither flat nor square, or the thickness is out
   *     of range
   */
  public static Spread thinning(Section bar, Quantity<Length> thickness, SpreadLaw law) {
    Section.requireArea("bar", bar);
    bar.edge();
    Measure<Length> thin = Arguments.positive("thickness", thickness);
    if (!thin.isLessThan(bar.thickness())) {
      throw new IllegalArgumentException(
          "thickness must be less than the "
              + bar.thickness()
              + " of the bar, was "
              + thin
              + "; spreading makes a bar thinner");
    }
    return new Spread(bar, thin, Objects.requireNonNull(law, "law"));
  }

  /**
   * The width after: w₁ = w₀ (h₀ / h₁) up to the power S.
   *
   * @return the width, exact if the coefficient is, in the unit of the bar's width
   */
  public Estimate<Length> width() {
    return Estimate.of(
        Measure.of(width(Notes.NONE, -law.doubt()), unit),
        Measure.of(width(Notes.NONE, 0), unit),
        Measure.of(width(Notes.NONE, law.doubt()), unit));
  }

  /** {@return the section after, with the likely width} */
  public Section section() {
    return Flats.of(width().likely(), thickness);
  }

  /** {@return how many times longer the bar gets, (h₀ / h₁) up to the power 1 − S, likely} */
  public double timesLonger() {
    return longer(Notes.NONE);
  }

  /**
   * How often the hammer must go along the bar, each time making it at most so many times thinner:
   * ln(h₀ / h₁) / ln q, rounded up. The piece is turned, or the width dressed back, between them.
   *
   * @param squeeze the squeeze limit q, thickness before ÷ after of one pass, more than 1; 1.3 is
   *     usual
   * @return the number of passes
   * @throws IllegalArgumentException if the limit is not more than 1
   */
  public int passes(double squeeze) {
    if (!(squeeze > 1)) {
      throw new IllegalArgumentException(
          "squeeze must be more than 1, was " + squeeze + "; give thickness before ÷ after a pass");
    }
    double exact = Math.log(bar.thickness().ratio(thickness)) / Math.log(squeeze);
    return (int) Math.max(1, Math.ceil(exact - 1e-9));
  }

  /**
   * The spread stretch as a feature of a piece, with its likely width.
   *
   * @param length its finished length, not negative
   * @return the stretch
   * @throws IllegalArgumentException if the length is negative
   */
  public Plain over(Quantity<Length> length) {
    return Plain.of(section(), length);
  }

  /** {@return cautions of the law, and one if it takes more than one pass} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(law.cautions(bar));
    int passes = passes(MOST_SQUEEZE);
    if (passes > 1) {
      cautions.add(
          Caution.limit(
              "from "
                  + bar.thickness()
                  + " to "
                  + thickness
                  + " is more than 1.3 times thinner: take about "
                  + passes
                  + " passes, or laps may close in the sides",
              SQUEEZE));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the likely width was found} */
  public Working widthWorking() {
    return taken("width after spreading", n -> width(n, 0));
  }

  /** {@return how the gain in length was found} */
  public Working longerWorking() {
    return taken("length gained in spreading", this::longer);
  }

  private Working taken(String title, Notes.Calculation calculation) {
    return Notes.taken(title + ", " + law, unit, calculation)
        .withSource(law.source())
        .withSource(Source.computed("conservation of volume"))
        .withCautions(cautions());
  }

  /** Kept within the physical limits: neither narrower than before, nor shorter. */
  private double width(Notes n, double off) {
    double w = n.given("w₀", "width before", bar.width().in(unit));
    double r = thinning(n);
    double s = Math.max(0, Math.min(1, law.coefficient(n, bar, unit) + off));
    return n.length("w₁", "width after", "w₀ pow(r, S)", w * Math.pow(r, s));
  }

  private double longer(Notes n) {
    n.given("w₀", "width before", bar.width().in(unit));
    double r = thinning(n);
    double s = law.coefficient(n, bar, unit);
    return n.number("e", "times longer", "pow(r, 1 − S)", Math.pow(r, 1 - s));
  }

  private double thinning(Notes n) {
    double h0 = n.given("h₀", "thickness before", bar.thickness().in(unit));
    double h1 = n.given("h₁", "thickness after", thickness.in(unit));
    return n.number("r", "times thinner", "h₀ / h₁", h0 / h1);
  }

  /** Bar, thickness and law. */
  @Override
  public String toString() {
    return bar + " spread to a thickness of " + thickness + ", " + law;
  }
}
