package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;

/**
 * How hard a pull on the leaf opens its barrel: the curl unrolls when its inside yields. Only an
 * {@index "open curl"}, rolled and not welded, can be reckoned so.
 *
 * <pre>{@code
 * Barrel eye = Barrel.around(millimetres(10), Section.flat(millimetres(30), millimetres(6)));
 * BarrelOpening opening = BarrelOpening.of(eye);
 * opening.curvedStress(newtons(2000))               // 130 MPa  at the inside of the curl, under the door's pull
 * opening.firstYield(megapascals(235))              // 3615 N   where it begins to open
 * PermissibleStress iron = PermissibleStress.of(megapascals(235), 3);
 * opening.safePull(iron)                            // 1205 N   to design for
 * opening.withKnuckles(millimetres(15)).safePull(iron)    // 602.5 N  if half the width is slots
 * opening.plasticLimit(megapascals(235))            // 7931 N   the last reserve
 * }</pre>
 *
 * <p><strong>Statics.</strong> The pin is taken without friction, so that its force F on the curl
 * goes through its centre. In the section of the curl that lies square to that force the force
 * stands rₘ = (d + t) / 2 away, and the section carries the moment F rₘ together with F along the
 * strap. Which section that is depends on the {@link Direction}:
 *
 * <ul>
 *   <li>a pull in the plane of the leaf bears at the far side of the bore; the section is the one
 *       where the leaf runs into the curl;
 *   <li>a push in that plane bears at the near side, so that nearly the whole curl carries it: the
 *       moment is the same there, and half a turn further on, where it opens the curl;
 *   <li>a pull square to the leaf, off the face that the barrel does not hang on, bears at the side
 *       of the bore that lies farthest from the leaf; a quarter turn into the curl the moment is
 *       the same again, and the leaf is bent besides, see {@link #leafBending};
 *   <li>a pull square to the leaf towards its barrel presses the leaf itself on to the pin where
 *       the curl begins: a barrel rolled to one face is not opened, and is not reckoned here.
 * </ul>
 *
 * <p>For a direction in between, take the whole force; only of a pull that points towards the side
 * of the barrel take just its part in the plane of the leaf. In a barrel that is centred on the
 * leaf by a joggle the moment is F rₘ as well.
 *
 * <p>Design on first yield of the curved beam; the plastic limit is the last reserve, at which the
 * curl has long opened for good. The straight beam is what spring makers reckon with: it is too low
 * for a tight curl. Forces come out in newtons, or in pounds-force for a strength in psi or ksi;
 * stresses in MPa, or in psi for a force in pounds-force. All are exact for the beam named.
 *
 * <p>Source: spring-eye formula, SAE manual on leaf springs (from memory); curved beam of Winkler
 * and Bach (read); statics.
 */
public final class BarrelOpening {
  /** How the leaf is pulled. */
  public enum Direction {
    /** A pull in the plane of the leaf, away from its barrel. */
    PULL("pull in the plane of the leaf"),
    /** A push in the plane of the leaf, on to its barrel: the same moment, of the other sign. */
    PUSH("push in the plane of the leaf"),
    /** A pull square to the leaf, off the face that the barrel does not hang on. */
    OFF_THE_FACE("pull square to the leaf, off its face"),
    /** A pull square to the leaf, towards the side that the barrel hangs on. */
    TOWARDS_THE_BARREL("pull square to the leaf, towards its barrel");

    private final String words;

    Direction(String words) {
      this.words = words;
    }

    /** The direction in words. */
    @Override
    public String toString() {
      return words;
    }
  }

  private final Barrel barrel;
  private final OpenCurl curl;
  private final Direction direction;

  private BarrelOpening(Barrel barrel, Measure<Length> width, Direction direction) {
    this.barrel = barrel;
    this.curl = new OpenCurl(barrel.insideDiameter(), barrel.section().thickness(), width);
    this.direction = direction;
  }

  /**
   * A barrel as wide as its strap, under a pull in the plane of the leaf.
   *
   * @param barrel an open curl
   * @return its opening
   * @throws IllegalArgumentException if its end is forge-welded, or it is rolled to more than 1000
   *     times the thickness of the strap
   */
  public static BarrelOpening of(Barrel barrel) {
    Objects.requireNonNull(barrel, "barrel");
    if (barrel.closing().end().isWelded()) {
      throw new IllegalArgumentException(
          "barrel must be an open curl, was forge-welded; a weld's strength cannot be reckoned, so"
              + " proof-test it");
    }
    OpenCurl.requireBent(
        "inside radius of the barrel",
        barrel.insideDiameter().divide(2),
        barrel.section().thickness());
    return new BarrelOpening(barrel, barrel.section().width(), Direction.PULL);
  }

  /**
   * The same where the barrel is divided into knuckles.
   *
   * @param summedWidth the widths of the knuckles on the leaf in question, added up; more than zero
   *     and at most the width of the strap
   * @return the opening
   * @throws IllegalArgumentException if the width lies outside that range
   */
  public BarrelOpening withKnuckles(Quantity<Length> summedWidth) {
    Measure<Length> sum = Arguments.positive("summed width", summedWidth);
    Measure<Length> strap = barrel.section().width();
    if (sum.isGreaterThan(strap) && !sum.isEquivalentTo(strap)) {
      throw new IllegalArgumentException(
          "summed width must be at most the strap's "
              + strap
              + ", was "
              + sum
              + "; add up the knuckles of one leaf only");
    }
    return new BarrelOpening(barrel, sum, direction);
  }

  /**
   * The same under a pull in another direction.
   *
   * @param pull how the leaf is pulled; {@link Direction#TOWARDS_THE_BARREL} only on a centred
   *     barrel
   * @return the opening
   * @throws IllegalArgumentException if the pull does not open the curl
   */
  public BarrelOpening under(Direction pull) {
    if (Objects.requireNonNull(pull, "pull") == Direction.TOWARDS_THE_BARREL
        && !barrel.isCentred()) {
      throw new IllegalArgumentException(
          "pull must load the curl, was a "
              + pull
              + "; there the pin bears on the leaf itself: reckon leafBending, and the part of the"
              + " pull in the plane of the leaf");
    }
    return new BarrelOpening(barrel, curl.width(), pull);
  }

  /** {@return the barrel} */
  public Barrel barrel() {
    return barrel;
  }

  /** {@return how the leaf is pulled} */
  public Direction direction() {
    return direction;
  }

  /**
   * The stress at the inside of the curl, taken for a straight beam: σ = 3 F (d + t) / (w t²) + F /
   * (w t). It is the spring makers' formula, too low for a tight curl.
   *
   * @param force the pull on the leaf, more than zero
   * @return the stress, exact for that beam
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public Measure<Pressure> straightStress(Quantity<Force> force) {
    return StressUnits.stress("force", force, curl::straight);
  }

  /**
   * The stress at the inside of the curl as a curved beam: σ = F rₘ (r₀ − r₁) / (w t e r₁) + F / (w
   * t), with r₁ the inside radius, r₀ = t / ln(r₂ / r₁) that of the neutral line and e = rₘ − r₀.
   * It is tension, or for a push compression where the leaf begins.
   *
   * @param force the pull on the leaf, more than zero
   * @return the stress, exact for that beam
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public Measure<Pressure> curvedStress(Quantity<Force> force) {
    return StressUnits.stress("force", force, curl::curved);
  }

  /**
   * The stress at the outside of the curl in the same section as a curved beam: σ = F / (w t) − F
   * rₘ (r₂ − r₀) / (w t e r₂). It is less than that of the {@linkplain #curvedStress inside}, and
   * of the other sign: negative, compression, under a pull. A push exchanges the signs of both.
   *
   * @param force the pull on the leaf, more than zero
   * @return the stress, exact for that beam
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public Measure<Pressure> outsideStress(Quantity<Force> force) {
    return StressUnits.stress("force", force, curl::curvedOutside);
  }

  /**
   * How the stress at the outside was found.
   *
   * @param force the pull on the leaf, more than zero
   * @return the working of {@link #outsideStress}
   */
  public Working outsideWorking(Quantity<Force> force) {
    return told(StressUnits.working(
            under("outside of the curved beam"), "force", force, curl::curvedOutside))
        .withSource(OpenCurl.CURVED);
  }

  /**
   * The pull at which the inside of the curl begins to yield, as a curved beam. It grows with the
   * strength in proportion.
   *
   * @param yieldStrength of the soft or hot-worked metal, more than zero
   * @return the force, exact for that strength
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Measure<Force> firstYield(Quantity<Pressure> yieldStrength) {
    return StressUnits.force("yield strength", yieldStrength, curl::firstYield);
  }

  /**
   * The pull that the curl may be designed for: first yield ÷ the safety factor.
   *
   * @param permissible strength and safety factor
   * @return the force, exact for that strength and factor
   */
  public Measure<Force> safePull(PermissibleStress permissible) {
    return StressUnits.force(permissible, curl::safe);
  }

  /**
   * The pull at which the whole thickness yields in bending: Y w t² / (4 rₘ). It is the last
   * reserve, not to be designed on.
   *
   * @param yieldStrength of the soft or hot-worked metal, more than zero
   * @return the force, exact for that strength
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Measure<Force> plasticLimit(Quantity<Pressure> yieldStrength) {
    return StressUnits.force("yield strength", yieldStrength, curl::plastic);
  }

  /**
   * The same with the pull along the strap taken into account: the F of F rₘ / Mₚ + (F / Nₚ)² = 1.
   *
   * @param yieldStrength of the soft or hot-worked metal, more than zero
   * @return the force, exact for that strength
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Measure<Force> plasticLimitWithPull(Quantity<Pressure> yieldStrength) {
    return StressUnits.force("yield strength", yieldStrength, curl::plasticWithPull);
  }

  /**
   * How a pull square to the leaf bends the leaf itself, between the pin and its first fixing: σ =
   * 6 F x / (b t²) in a leaf of width b.
   *
   * @param force the part of the pull square to the leaf, either way; more than zero
   * @param fixing how far the first fixing lies from the pin's centre, x; more than zero
   * @return the stress at the first fixing, exact for a straight cantilever without holes
   * @throws IllegalArgumentException if an argument is not more than zero
   */
  public Measure<Pressure> leafBending(Quantity<Force> force, Quantity<Length> fixing) {
    Measure<Length> arm = Arguments.positive("fixing", fixing);
    return StressUnits.stress("force", force, (n, units, pull) -> leaf(n, units, pull, arm));
  }

  /** {@return what it does not hold for, and that no design is certified} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(List.of(OpenCurl.OPEN_CURL));
    if (direction == Direction.OFF_THE_FACE) {
      cautions.add(OpenCurl.OFF_FACE);
    }
    cautions.addAll(LoadCautions.OF_STRENGTH);
    return List.copyOf(cautions);
  }

  /**
   * How the stress of the straight beam was found.
   *
   * @param force the pull on the leaf, more than zero
   * @return the working of {@link #straightStress}
   */
  public Working straightWorking(Quantity<Force> force) {
    return told(StressUnits.working(under("straight beam"), "force", force, curl::straight))
        .withSource(OpenCurl.SPRING_EYE);
  }

  /**
   * How the stress of the curved beam was found.
   *
   * @param force the pull on the leaf, more than zero
   * @return the working of {@link #curvedStress}
   */
  public Working curvedWorking(Quantity<Force> force) {
    return told(StressUnits.working(under("curved beam"), "force", force, curl::curved))
        .withSource(OpenCurl.CURVED);
  }

  /**
   * How the first yield was found.
   *
   * @param yieldStrength of the soft or hot-worked metal, more than zero
   * @return the working of {@link #firstYield}
   */
  public Working firstYieldWorking(Quantity<Pressure> yieldStrength) {
    return told(StressUnits.workingFrom(
            under("first yield"), "yield strength", yieldStrength, curl::firstYield))
        .withSource(OpenCurl.CURVED);
  }

  /**
   * How the pull to design for was found.
   *
   * @param permissible strength and safety factor
   * @return the working of {@link #safePull}
   */
  public Working safePullWorking(PermissibleStress permissible) {
    return told(StressUnits.working(under("safe pull"), permissible, curl::safe))
        .withSource(OpenCurl.CURVED)
        .withSource(permissible.source());
  }

  /**
   * How the plastic limit was found.
   *
   * @param yieldStrength of the soft or hot-worked metal, more than zero
   * @return the working of {@link #plasticLimit}
   */
  public Working plasticWorking(Quantity<Pressure> yieldStrength) {
    return told(StressUnits.workingFrom(
            under("plastic limit"), "yield strength", yieldStrength, curl::plastic))
        .withSource(OpenCurl.PLASTIC)
        .withCautions(List.of(OpenCurl.RESERVE));
  }

  /**
   * How the plastic limit with the pull along the strap was found.
   *
   * @param yieldStrength of the soft or hot-worked metal, more than zero
   * @return the working of {@link #plasticLimitWithPull}
   */
  public Working plasticWithPullWorking(Quantity<Pressure> yieldStrength) {
    return told(StressUnits.workingFrom(
            under("plastic limit with the pull along the strap"),
            "yield strength",
            yieldStrength,
            curl::plasticWithPull))
        .withSource(OpenCurl.PLASTIC)
        .withCautions(List.of(OpenCurl.RESERVE));
  }

  /**
   * How the bending of the leaf was found.
   *
   * @param force the part of the pull square to the leaf, more than zero
   * @param fixing how far the first fixing lies from the pin's centre, more than zero
   * @return the working of {@link #leafBending}
   */
  public Working leafBendingWorking(Quantity<Force> force, Quantity<Length> fixing) {
    Measure<Length> arm = Arguments.positive("fixing", fixing);
    return StressUnits.working(
            "leaf under a pull square to it",
            "force",
            force,
            (n, units, pull) -> leaf(n, units, pull, arm))
        .withSource(OpenCurl.CANTILEVER)
        .withCautions(LoadCautions.OF_STRENGTH);
  }

  private String under(String answer) {
    return "barrel under a " + direction + ", " + answer;
  }

  private Working told(Working working) {
    return working.withCautions(cautions());
  }

  private double leaf(Notes n, StressUnits units, Measure<Force> force, Measure<Length> fixing) {
    double f = units.givenForce(n, "pull square to the leaf", force);
    double x = units.given(n, "x", "first fixing from the pin's centre", fixing);
    double b = units.given(n, "b", "width of the leaf", barrel.section().width());
    double t = units.given(n, "t", "thickness of the leaf", barrel.section().thickness());
    String formula = "6 F x / (b t²)";
    return units.pressure(n, "σ", "bending stress", formula, 6 * f * x / (b * (t * t)));
  }

  /** The barrel, its knuckles and the direction. */
  @Override
  public String toString() {
    return direction
        + ": bore "
        + barrel.insideDiameter()
        + ", strap "
        + barrel.section().thickness()
        + ", knuckles "
        + curl.width();
  }
}
