package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Pin;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.BarSizes;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * Which pin to take: the least diameter that bears a force, and the next one of a series or on a
 * rule. In shear d = √(16 F / (3 π k τ)); in a fork also d = ∛(32 M / (π σ)) for bending, and F /
 * (b σ) and F / (2 a σ) for bearing on its middle and its cheeks, with τ and σ the permissible
 * stresses.
 *
 * <pre>{@code
 * PermissibleStress iron = PermissibleStress.of(megapascals(235), 3);
 * PinSize sheared = PinSize.inDoubleShear(newtons(6000), iron);
 * sheared.leastDiameter()                 // 10.61 mm
 * sheared.from(PinSize.METRIC_SIZES)      // 12 mm pin  of the bar that one can buy
 * PinSize forked = PinSize.inFork(newtons(6000), Fork.around(millimetres(30)), iron);
 * forked.governedBy()                     // "bending"  long knuckles bend it first
 * forked.from(PinSize.METRIC_SIZES)       // 20 mm pin
 * }</pre>
 *
 * <p>The least diameter is exact for that force and strength, in millimetres, or in inches for a
 * force in pounds-force. It lets the skin or the middle of the pin just reach the permissible
 * stress. Worn pins get thinner: add for that. Source: as of {@link PinLoad}.
 */
public final class PinSize {
  /** Diameters of clevis pins, 3 to 50 mm, all of them bar sizes too. ISO 2341, from memory. */
  public static final BarSizes METRIC_SIZES =
      BarSizes.of(
          IntStream.of(3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 27, 30, 33, 36, 40, 45, 50)
              .mapToObj(d -> Section.round(Measures.millimetres(d)))
              .toArray(Section[]::new));

  /** Round bar from 1/8 in to 2 in, by sixteenths. Common practice. */
  public static final BarSizes INCH_SIZES =
      BarSizes.of(
          IntStream.rangeClosed(2, 32)
              .mapToObj(d -> Section.round(Measures.inches(d / 16d)))
              .toArray(Section[]::new));

  private final Measure<Force> force;
  private final PinLoad.Shear shear;
  private final @Nullable Fork fork;
  private final PermissibleStress permissible;
  private final StressUnits units;

  private PinSize(
      Quantity<Force> force,
      PinLoad.Shear shear,
      @Nullable Fork fork,
      PermissibleStress permissible) {
    this.force = Arguments.positiveForce("force", force);
    this.shear = shear;
    this.fork = fork;
    this.permissible = Objects.requireNonNull(permissible, "permissible");
    this.units = StressUnits.ofForce(this.force);
  }

  /**
   * A pin that is held at one side, by its shear alone.
   *
   * @param force the force across it, more than zero
   * @param permissible what its metal may bear
   * @return the size
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public static PinSize inSingleShear(Quantity<Force> force, PermissibleStress permissible) {
    return new PinSize(force, PinLoad.Shear.SINGLE, null, permissible);
  }

  /**
   * A pin that is held at both sides, by its shear alone: for knuckles that fit closely.
   *
   * @param force the force across it, more than zero
   * @param permissible what its metal may bear
   * @return the size
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public static PinSize inDoubleShear(Quantity<Force> force, PermissibleStress permissible) {
    return new PinSize(force, PinLoad.Shear.DOUBLE, null, permissible);
  }

  /**
   * A pin in a fork, by shear, bending and bearing.
   *
   * @param force the force across it, more than zero
   * @param fork the three bearings
   * @param permissible what its metal and that of the fork may bear
   * @return the size
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public static PinSize inFork(Quantity<Force> force, Fork fork, PermissibleStress permissible) {
    return new PinSize(
        force, PinLoad.Shear.DOUBLE, Objects.requireNonNull(fork, "fork"), permissible);
  }

  /**
   * The least diameter that bears the force: the largest of those for shear, bending and bearing.
   *
   * @return the diameter, exact for that strength
   */
  public Measure<Length> leastDiameter() {
    return units.length(least(Notes.NONE));
  }

  /**
   * {@return what decides the least diameter: {@code shear}, {@code bending} or {@code bearing}}
   */
  public String governedBy() {
    return governing(needed(Notes.NONE)).cause();
  }

  /**
   * The smallest round bar of a rack that bears the force.
   *
   * @param sizes what stands on the rack; other sections than round ones are passed over
   * @return the pin
   * @throws IllegalArgumentException if no round bar of them is thick enough
   */
  public Pin from(BarSizes sizes) {
    Objects.requireNonNull(sizes, "sizes");
    return sizes.covering(Section.round(leastDiameter())).sections().stream()
        .filter(Section::isRound)
        .map(Section::width)
        .min(Comparator.naturalOrder())
        .map(Pin::of)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "sizes must hold a round bar of at least "
                        + leastDiameter()
                        + ", was "
                        + sizes
                        + "; add thicker bar, or let more knuckles carry the force"));
  }

  /**
   * The pin on the next mark of a rule.
   *
   * @param graduation the rule
   * @return the pin, its diameter in the unit of {@link #leastDiameter}
   */
  public Pin upTo(Graduation<Length> graduation) {
    return Pin.of(leastDiameter().upTo(graduation));
  }

  /** {@return not to quench the pin, and that no design is certified} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(Pin.of(leastDiameter()).cautions());
    cautions.addAll(permissible.cautions());
    return List.copyOf(cautions);
  }

  /** {@return how the least diameter was found, with the strength and the safety factor chosen} */
  public Working working() {
    Working working =
        Notes.taken("least diameter of a pin", units.length(), this::least)
            .withSource(PinLoad.SHEAR)
            .withSource(permissible.source());
    if (fork != null) {
      working = working.withSource(PinLoad.BENDING).withSource(PinLoad.BEARING);
    }
    return working.withCautions(cautions());
  }

  /** A diameter that one kind of stress asks for. */
  private record Need(String cause, String symbol, double diameter) {}

  private double least(Notes n) {
    Need most = governing(needed(n));
    return n.length("d", "the largest, for " + most.cause, most.symbol, most.diameter);
  }

  private static Need governing(List<Need> needs) {
    Need most = needs.get(0);
    for (Need need : needs) {
      most = need.diameter > most.diameter ? need : most;
    }
    return most;
  }

  private List<Need> needed(Notes n) {
    List<Need> needs = new ArrayList<>();
    Fork bearings = fork;
    double m = 0;
    double f = force.in(units.force());
    if (bearings == null) {
      units.givenForce(n, "force across the pin", force);
    } else {
      m = PinLoad.moment(n, units, force, bearings);
    }
    double sigma = permissible.noted(n, units);
    double tau = units.pressure(n, "τ", "permissible in shear", "σ / √3", sigma / Math.sqrt(3));
    double k = n.number("k", "planes of shear", "", shear.planes());
    double square = 16 * f / (3 * Math.PI * k * tau);
    needs.add(need(n, "shear", "d₁", "√(16 F / (3 π k τ))", Math.sqrt(square)));
    if (bearings != null) {
      double cube = 32 * m / (Math.PI * sigma);
      needs.add(need(n, "bending", "d₂", "pow(32 M / (π σ), 1 / 3)", Math.pow(cube, 1 / 3d)));
      double b = bearings.middle().in(units.length());
      double a = bearings.cheek().in(units.length());
      needs.add(need(n, "bearing", "d₃", "F / (b σ)", f / (b * sigma)));
      needs.add(need(n, "bearing", "d₄", "F / (2 a σ)", f / (2 * a * sigma)));
    }
    return needs;
  }

  private static Need need(Notes n, String cause, String symbol, String formula, double value) {
    return new Need(cause, symbol, n.length(symbol, "least for " + cause, formula, value));
  }

  /** Force, case and what the metal may bear. */
  @Override
  public String toString() {
    return "pin for "
        + force
        + " in "
        + (fork == null ? shear.toString() : "a " + fork)
        + " at "
        + permissible.tension();
  }
}
