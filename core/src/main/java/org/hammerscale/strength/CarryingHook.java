package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.bending.Hook;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Inverse;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * An open hook that something hangs from, a pot or a lantern: the stress where it is bent hardest,
 * half way round, and the loads at which it begins to open and has opened. A {@index "curved beam"}
 * after Winkler and Bach. It is <strong>not for lifting</strong>, least of all people or over
 * people: that wants rated gear, and a licensed engineer.
 *
 * <pre>{@code
 * Hook bent = Hook.open(millimetres(50), Section.round(millimetres(12)));
 * CarryingHook hook = CarryingHook.of(bent);
 * hook.innerStress(newtons(500))                                    // 111.2 MPa  tension, with 500 N on it
 * hook.outerStress(newtons(500))                                    // -75.11 MPa
 * hook.firstYield(megapascals(235))                                 // 1057 N   where it begins to open
 * hook.plasticLimit(megapascals(235))                               // 2170 N   the last reserve
 * hook.safeLoad(PermissibleStress.of(Material.WROUGHT_IRON, 5))     // 143 N  to design for
 * }</pre>
 *
 * <p>The section carries the load F and the moment M = F a, with a from the line of the load to the
 * centroid: σ = F / A + M (r₀ − r₁) / (A e r₁) inside, F / A − M (r₂ − r₀) / (A e r₂) outside, e =
 * r − r₀. The load goes through the centre of the bend unless told otherwise. Forces come out in
 * newtons, or in pounds-force for a strength in psi or ksi; stresses in MPa, or in psi for a force
 * in pounds-force. Exact for that beam and a steady load.
 *
 * <p>Source: Shigley, <cite>Mechanical Engineering Design</cite>, 9th ed., table 3-4; tests of the
 * National Bureau of Standards (Technologic Paper 260, 1924) found stresses no more than 20 %
 * below.
 */
public final class CarryingHook {
  static final Caution NO_LIFTING =
      Caution.danger(
          "not for lifting people or over people, nor as lifting gear at all: that is rated, marked and"
              + " proof-tested by those who are licensed to; ask a licensed engineer");
  private static final Caution OPENS =
      Caution.danger(
          "do not quench a hook that carries: an overloaded soft hook opens and can be seen to, a hard"
              + " one breaks without warning. Measure its throat when new, and scrap it when that has"
              + " grown");
  private static final Source CURVED =
      Source.read("Shigley, Mechanical Engineering Design, 9th ed.", "table 3-4, curved beams");
  private static final Source PLASTIC =
      Source.computed("tension inside and compression outside balance F and F a");
  private static final Caution RESERVE =
      Caution.limit(
          "the plastic limit is the last reserve: the hook has opened for good before; design on first"
              + " yield",
          PLASTIC);

  private final HookSection section;
  private final Measure<Length> inside;
  private final Measure<Length> beyond;

  private CarryingHook(HookSection section, Measure<Length> inside, Measure<Length> beyond) {
    this.section = section;
    this.inside = inside;
    this.beyond = beyond;
  }

  /**
   * A hook bent from a bar as it comes.
   *
   * @param hook the bent end, its inside radius more than zero
   * @return the hook under a load through the centre of its bend
   * @throws IllegalArgumentException if the bar is neither round, square nor flat, or bent sharply,
   *     or wider than 1000 times its thickness
   */
  public static CarryingHook of(Hook hook) {
    Objects.requireNonNull(hook, "hook");
    return of(HookSection.of(hook.section()), hook.insideRadius());
  }

  /**
   * A hook of a section that may be drawn for it.
   *
   * @param section the section half way round
   * @param insideRadius of the bend there, more than zero
   * @return the hook under a load through the centre of its bend
   * @throws IllegalArgumentException if the radius is not more than zero, or more than 1000 times
   *     the depth of the section
   */
  public static CarryingHook of(HookSection section, Quantity<Length> insideRadius) {
    Objects.requireNonNull(section, "section");
    Measure<Length> inside = Arguments.positive("insideRadius", insideRadius);
    OpenCurl.requireBent("insideRadius", inside, section.depth());
    return new CarryingHook(section, inside, inside.withValue(0));
  }

  /**
   * The same under a load that hangs farther out than the centre of the bend, as on a tip.
   *
   * @param distance from the centre of the bend, away from the section; not negative
   * @return the hook
   * @throws IllegalArgumentException if the distance is negative
   */
  public CarryingHook withLoadBeyondCentre(Quantity<Length> distance) {
    return new CarryingHook(section, inside, Arguments.notNegative("distance", distance));
  }

  /** {@return its section} */
  public HookSection section() {
    return section;
  }

  /** {@return the inside radius of its bend} */
  public Measure<Length> insideRadius() {
    return inside;
  }

  /** {@return how far beyond the centre of the bend the load hangs, away from the section} */
  public Measure<Length> loadBeyondCentre() {
    return beyond;
  }

  /** {@return r, from the centre of the bend to the middle of the metal, in the radius's unit} */
  public Measure<Length> centroidRadius() {
    return length(section.radii(Notes.NONE, units(), inside).centroid());
  }

  /** {@return r₀, from the centre of the bend to where bending leaves no stress} */
  public Measure<Length> neutralRadius() {
    return length(section.radii(Notes.NONE, units(), inside).neutral());
  }

  /**
   * The stress at the inside of the bend, tension where the load opens the hook.
   *
   * @param load what hangs on it, more than zero
   * @return the stress, exact for that beam
   * @throws IllegalArgumentException if the load is not more than zero
   */
  public Measure<Pressure> innerStress(Quantity<Force> load) {
    return StressUnits.stress("load", load, this::innerStress);
  }

  /**
   * The stress at the outside of the bend; negative, compression.
   *
   * @param load what hangs on it, more than zero
   * @return the stress, exact for that beam
   * @throws IllegalArgumentException if the load is not more than zero
   */
  public Measure<Pressure> outerStress(Quantity<Force> load) {
    return StressUnits.stress("load", load, this::outerStress);
  }

  /**
   * The stress at the inside under a couple alone, without a load along the section.
   *
   * @param force one of two equal and opposite forces, more than zero
   * @param arm the distance between them, more than zero
   * @return the stress, exact for that beam; tension if the couple opens the bend
   * @throws IllegalArgumentException if an argument is not more than zero
   */
  public Measure<Pressure> innerStressOfCouple(Quantity<Force> force, Quantity<Length> arm) {
    Measure<Length> lever = Arguments.positive("arm", arm);
    return StressUnits.stress("force", force, (n, units, f) -> couple(n, units, f, lever));
  }

  /**
   * The load at which the metal begins to yield, inside or outside.
   *
   * @param yieldStrength of the soft or hot-worked metal, more than zero
   * @return the force, exact for that strength
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Measure<Force> firstYield(Quantity<Pressure> yieldStrength) {
    return StressUnits.force("yield strength", yieldStrength, this::firstYield);
  }

  /**
   * The load that the hook may be designed for: first yield ÷ the safety factor. What hangs is
   * jerked, and swings: five is little.
   *
   * @param permissible strength and safety factor
   * @return the force, exact for that strength and factor
   */
  public Measure<Force> safeLoad(PermissibleStress permissible) {
    return StressUnits.force(permissible, this::safe);
  }

  /**
   * The load at which the whole section yields, tension inside and compression outside. It is the
   * last reserve, not to be designed on.
   *
   * @param yieldStrength of the soft or hot-worked metal, more than zero
   * @return the force, exact for that strength and the form it had
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Measure<Force> plasticLimit(Quantity<Pressure> yieldStrength) {
    return StressUnits.force("yield strength", yieldStrength, this::plastic);
  }

  /**
   * {@return that it is not for lifting, is not to be quenched, and that no design is certified}
   */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(List.of(NO_LIFTING, OPENS));
    cautions.addAll(LoadCautions.OF_STRENGTH);
    return List.copyOf(cautions);
  }

  /**
   * How the stress at the inside was found.
   *
   * @param load what hangs on it, more than zero
   * @return the working of {@link #innerStress}
   */
  public Working innerWorking(Quantity<Force> load) {
    return told(StressUnits.working("hook, stress inside", "load", load, this::innerStress));
  }

  /**
   * How the stress at the outside was found.
   *
   * @param load what hangs on it, more than zero
   * @return the working of {@link #outerStress}
   */
  public Working outerWorking(Quantity<Force> load) {
    return told(StressUnits.working("hook, stress outside", "load", load, this::outerStress));
  }

  /**
   * How the first yield was found.
   *
   * @param yieldStrength of the metal, more than zero
   * @return the working of {@link #firstYield}
   */
  public Working firstYieldWorking(Quantity<Pressure> yieldStrength) {
    return told(
        StressUnits.workingFrom(
            "hook, first yield", "yield strength", yieldStrength, this::firstYield));
  }

  /**
   * How the load to design for was found.
   *
   * @param permissible strength and safety factor
   * @return the working of {@link #safeLoad}
   */
  public Working safeWorking(PermissibleStress permissible) {
    return told(StressUnits.working("hook, safe load", permissible, this::safe))
        .withSource(permissible.source());
  }

  /**
   * How the plastic limit was found.
   *
   * @param yieldStrength of the metal, more than zero
   * @return the working of {@link #plasticLimit}
   */
  public Working plasticWorking(Quantity<Pressure> yieldStrength) {
    return told(StressUnits.workingFrom(
            "hook, plastic limit", "yield strength", yieldStrength, this::plastic))
        .withSource(PLASTIC)
        .withCautions(List.of(RESERVE));
  }

  private double innerStress(Notes n, StressUnits units, Measure<Force> load) {
    double q = perForce(n, units, true);
    double f = units.givenForce(n, "load", load);
    return units.pressure(n, "σ", "stress inside", "F q", f * q);
  }

  private double outerStress(Notes n, StressUnits units, Measure<Force> load) {
    double q = perForce(n, units, false);
    double f = units.givenForce(n, "load", load);
    return units.pressure(n, "σ", "stress outside", "F q", f * q);
  }

  private double couple(Notes n, StressUnits units, Measure<Force> force, Measure<Length> arm) {
    HookSection.Radii at = section.radii(n, units, inside);
    double moment = force.in(units.force()) * arm.in(units.length());
    double e = at.centroid() - at.neutral();
    return moment * (at.neutral() - at.inner()) / (at.area() * e * at.inner());
  }

  private double firstYield(Notes n, StressUnits units, Measure<Pressure> strength) {
    double q = most(n, units);
    double y = units.givenStress(n, "Y", "yield strength", strength);
    return units.force(n, "F₁", "load at first yield", "Y / p", y / q);
  }

  private double safe(Notes n, StressUnits units, PermissibleStress permissible) {
    double q = most(n, units);
    double sigma = permissible.noted(n, units);
    return units.force(n, "F", "load to design for", "σ / p", sigma / q);
  }

  /** The greater of the two, as a size. */
  private double most(Notes n, StressUnits units) {
    double outer = -perForce(Notes.NONE, units, false);
    boolean outside = outer > perForce(Notes.NONE, units, true);
    double q = perForce(n, units, !outside);
    return units.stressPerForce(
        n, "p", "size of the greatest", outside ? "0 − q" : "q", Math.abs(q));
  }

  /** The stress for each unit of force, inside or outside. */
  private double perForce(Notes n, StressUnits units, boolean within) {
    HookSection.Radii at = section.radii(n, units, inside);
    double a = arm(n, units, at);
    double e =
        n.length("e", "centroid from the neutral line", "r − r₀", at.centroid() - at.neutral());
    double direct = 1 / at.area();
    return within
        ? units.stressPerForce(
            n,
            "q",
            "stress inside for each unit of force",
            "1 / A + a (r₀ − r₁) / (A e r₁)",
            direct + a * (at.neutral() - at.inner()) / (at.area() * e * at.inner()))
        : units.stressPerForce(
            n,
            "q",
            "stress outside for each unit of force",
            "1 / A − a (r₂ − r₀) / (A e r₂)",
            direct - a * (at.outer() - at.neutral()) / (at.area() * e * at.outer()));
  }

  private double arm(Notes n, StressUnits units, HookSection.Radii at) {
    double x = units.given(n, "x", "load beyond the centre of the bend", beyond);
    return n.length("a", "line of the load to the centroid", "r + x", at.centroid() + x);
  }

  private double plastic(Notes n, StressUnits units, Measure<Pressure> strength) {
    HookSection.Radii at = section.radii(n, units, inside);
    double a = arm(n, units, at);
    double y = units.givenStress(n, "Y", "yield strength", strength);
    // Load and moment balance where 2 S / a = 2 T − A: S and T to the radius that is looked for.
    // They
    // always do somewhere, so that no refusal is ever printed.
    double turn =
        Inverse.solve(
            "balance of the hook",
            x ->
                2 * section.momentTo(units, at, x) / a
                    - 2 * section.areaTo(units, at, x)
                    + at.area(),
            at.inner(),
            at.outer(),
            0,
            units::length);
    n.given("z", "radius at which tension turns, that balances F and F a", turn);
    double tension =
        n.givenArea("T", "section in tension, inside it", section.areaTo(units, at, turn));
    return units.force(n, "F₂", "plastic limit", "Y (2 T − A)", y * (2 * tension - at.area()));
  }

  private StressUnits units() {
    double thousandths = Measure.of(1, inside.getUnit()).in(ShopUnits.INCH) * 1000;
    return Math.abs(thousandths - Math.rint(thousandths)) < 1e-6
        ? StressUnits.CUSTOMARY
        : StressUnits.METRIC;
  }

  private Measure<Length> length(double value) {
    return units().length(value).to(inside.getUnit());
  }

  private Working told(Working working) {
    return working.withSource(CURVED).withCautions(cautions());
  }

  /** Section and radius. */
  @Override
  public String toString() {
    return "hook of "
        + section
        + ", "
        + inside
        + " inside radius"
        + (beyond.getValue() == 0 ? "" : ", loaded " + beyond + " beyond its centre");
  }
}
