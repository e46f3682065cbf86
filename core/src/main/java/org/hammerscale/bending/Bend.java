package org.hammerscale.bending;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A bend of any angle round an inside radius, with its {@index setback} and its {@index "bend
 * deduction"}. It uses L = ρ α, where α is the angle bent through and ρ the radius of the line that
 * keeps its length: R + t/2 for hot work. The section's thickness is across the bend; take {@link
 * Section#onEdge} for a flat bent the hard way.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches(1), inches("1/4"));
 * Bend bend = Bend.of(degrees(90), inches("1/4"), strap);
 * bend.setback()  // 1/2 in  from the sharp outside corner back to where the bend begins
 * bend.developedLength()  // 0.589 in  bar in the bend itself
 * bend.cutLength(inches(6), inches(4))  // 9.589 in  bar for legs of 6 in and 4 in, measured outside
 * bend.with(NeutralLine.HANDBOOK_SOFT_STEEL).bentThickness()  // 0.2382 in  cold sheet would thin to this
 * }</pre>
 *
 * <p>Lengths come out in the radius' unit. Outside dimensions are measured over the bar: to the
 * sharp corner where the outside faces would meet for bends up to 90°, and to the outermost point
 * of the bend beyond. For a U see {@link UBend}, for a corner forged sharp {@link SquareCorner}.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 111; the {@link NeutralLine} for others.
 */
public final class Bend extends BentBar {
  private static final double FULL_TURN = 360;

  private final Measure<Angle> angle;
  private final Measure<Length> radius;
  private final NeutralLine line;

  private Bend(Measure<Angle> angle, Measure<Length> radius, Section section, NeutralLine line) {
    super(section, radius.getUnit());
    this.angle = angle;
    this.radius = radius;
    this.line = line;
  }

  /**
   * A bend on the mean line, as hot bending makes it.
   *
   * @param angle the angle bent through, 0° (straight) to 360°; not the angle left between the legs
   * @param insideRadius the finished radius of the inside face, not negative
   * @param section the bar where it is bent
   * @return the bend
   * @throws IllegalArgumentException if the angle lies outside 0° to 360° or the radius is negative
   */
  public static Bend of(Quantity<Angle> angle, Quantity<Length> insideRadius, Section section) {
    return new Bend(
        Arguments.angle("angle", angle, FULL_TURN),
        Arguments.notNegative("inside radius", insideRadius),
        section,
        NeutralLine.MEAN_LINE);
  }

  /**
   * The same bend by another rule.
   *
   * @param neutralLine which line keeps its length
   * @return the bend
   * @throws IllegalArgumentException if the radius is too small for the rule
   */
  public Bend with(NeutralLine neutralLine) {
    Objects.requireNonNull(neutralLine, "neutralLine").fraction(radius, section());
    return new Bend(angle, radius, section(), neutralLine);
  }

  /**
   * The same bend taken as far as a length of bar allows: α = L / ρ.
   *
   * @param length the length to be used up in the bend, not negative
   * @return the bend, with the angle that uses it
   * @throws IllegalArgumentException if the length is negative or more than a full turn uses
   */
  public Bend using(Quantity<Length> length) {
    double used = Arguments.notNegative("length", length).in(unit());
    double degrees = used / (Math.PI * neutralRadius(Notes.NONE)) * 180;
    if (degrees > FULL_TURN) {
      throw new IllegalArgumentException(
          "length must be at most "
              + measure(2 * Math.PI * neutralRadius(Notes.NONE))
              + ", a full turn, was "
              + measure(used)
              + "; wind more turns as a Scroll or a Coil");
    }
    Measure<Angle> turned = Measure.of(degrees, ShopUnits.DEGREE).to(angle.getUnit());
    return new Bend(turned, radius, section(), line);
  }

  /** {@return the angle bent through} */
  public Measure<Angle> angle() {
    return angle;
  }

  /** {@return the radius of the inside face} */
  public Measure<Length> insideRadius() {
    return radius;
  }

  /** {@return which line in the thickness keeps its length} */
  public NeutralLine neutralLine() {
    return line;
  }

  /**
   * How far the sharp outside corner, or from 90° on the outermost point, lies beyond the end of
   * the straight leg: (R + t) tan(α/2) up to 90°, R + t beyond.
   *
   * @return the setback, exact, in the radius' unit
   */
  public Measure<Length> setback() {
    return measure(setback(Notes.NONE, inside(), thickness()));
  }

  /**
   * What to take off the sum of the two outside dimensions to get the bar: 2 × setback − developed
   * length. It is negative where the bend needs more. DIN 6935 neglects it up to 15°. The German
   * correction v is its negative.
   *
   * @return the deduction, exact as geometry of its rule, in the radius' unit
   */
  public Measure<Length> deduction() {
    return measure(deduction(Notes.NONE));
  }

  /**
   * The bar for two legs with this bend between them.
   *
   * @param oneOutside outside dimension of one leg, at least the {@link #setback}
   * @param otherOutside outside dimension of the other leg, at least the setback
   * @return the length of bar, in the radius' unit
   * @throws IllegalArgumentException if a leg is shorter than the setback
   */
  public Measure<Length> cutLength(Quantity<Length> oneOutside, Quantity<Length> otherOutside) {
    straightLeg(oneOutside);
    straightLeg(otherOutside);
    return measure(0).add(oneOutside).add(otherOutside).subtract(deduction());
  }

  /**
   * The straight part of a leg, by its outside dimension.
   *
   * @param outside outside dimension of the leg, at least the {@link #setback}
   * @return outside dimension − setback, exact, in the radius' unit
   * @throws IllegalArgumentException if the leg is shorter than the setback
   */
  public Measure<Length> straightLeg(Quantity<Length> outside) {
    Measure<Length> over = Arguments.notNegative("outside dimension", outside).to(unit());
    Arguments.atLeast(
        "outside dimension",
        over,
        "the setback",
        setback(),
        "make the leg longer or the radius smaller");
    return over.subtract(setback());
  }

  /**
   * The outside dimension of a leg, by its straight part.
   *
   * @param straightLeg length of the straight part, not negative
   * @return straight part + setback, exact, in the radius' unit
   * @throws IllegalArgumentException if the length is negative
   */
  public Measure<Length> outsideDimension(Quantity<Length> straightLeg) {
    return setback().add(Arguments.notNegative("straight leg", straightLeg));
  }

  /**
   * The thickness left in the bend, which the rule implies: t₁ of (R + t₁/2) t₁ = ρ t, by Pappus'
   * theorem at constant width. The mean line keeps the thickness.
   *
   * @return the thickness, exact as geometry of its rule, in the radius' unit
   */
  public Measure<Length> bentThickness() {
    return measure(bentThickness(Notes.NONE));
  }

  /** {@return {@code bend}} */
  @Override
  public String name() {
    return "bend";
  }

  /** {@return an arc, no thicker or thinner than it is in the bend} */
  @Override
  public MeanLine meanLine() {
    double middle = inside() + bentThickness(Notes.NONE) / 2;
    return MeanLine.from(unit()).arc(middle, Math.toRadians(degrees()));
  }

  /** {@return its finished length round the bend, along the middle of the bar} */
  @Override
  public Measure<Length> reach() {
    double middle = inside() + bentThickness(Notes.NONE) / 2;
    return line.keepsSection() ? developedLength() : measure(Math.PI * middle * degrees() / 180);
  }

  /** {@return cautions if a cold rule is used on thick bar, or if the bend is very tight} */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(line.cautions(section()));
    if (degrees() > 0) {
      cautions.addAll(tightCurl(radius.multiply(2)));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the developed length was found} */
  @Override
  public Working working() {
    return Notes.taken("bend by the " + line, unit(), this::developed)
        .withSource(line.source())
        .withCautions(cautions());
  }

  /** {@return how the deduction from the outside dimensions was found} */
  public Working deductionWorking() {
    return Notes.taken("deduction from outside dimensions", unit(), this::deduction)
        .withSource(line.source())
        .withCautions(cautions());
  }

  /** {@return how the thickness left in the bend was found} */
  public Working thicknessWorking() {
    return Notes.taken("thickness left in the bend", unit(), this::bentThickness)
        .withSource(Source.computed("Pappus' theorem at constant width"))
        .withCautions(cautions());
  }

  @Override
  double developed(Notes n) {
    double rho = neutralRadius(n);
    double a = n.number("α", "angle bent through, in degrees", "", degrees());
    return n.length("L", "bar used by the bend", "π ρ α / 180", Math.PI * rho * a / 180);
  }

  private double neutralRadius(Notes n) {
    double r = n.given("R", "inside radius", inside());
    return line.radius(n, r, t(n), radius);
  }

  private double setback(Notes n, double r, double t) {
    double a = degrees();
    return a < 90
        ? n.length("s", "setback", "(R + t) tan(π α / 360)", (r + t) * Math.tan(Math.PI * a / 360))
        : n.length("s", "setback", "R + t", r + t);
  }

  private double deduction(Notes n) {
    if (line.neglectsDeductionOf(degrees())) {
      return n.given("D", "deduction, neglected by the standard up to 15°", 0);
    }
    double l = developed(n);
    double s = setback(n, inside(), thickness());
    return n.length("D", "deduction from the outside dimensions", "2 s − L", 2 * s - l);
  }

  private double bentThickness(Notes n) {
    double rho = neutralRadius(n);
    double r = inside();
    double t = thickness();
    return line.keepsSection()
        ? n.length("t₁", "thickness in the bend, kept", "t", t)
        : n.length(
            "t₁",
            "thickness in the bend",
            "2 ρ t / (R + √(R² + 2 ρ t))",
            2 * rho * t / (r + Math.sqrt(r * r + 2 * rho * t)));
  }

  private double degrees() {
    return angle.in(ShopUnits.DEGREE);
  }

  private double inside() {
    return radius.in(unit());
  }

  /** Angle, radius, bar and rule. */
  @Override
  public String toString() {
    return angle + " bend, " + radius + " inside radius, in " + section() + ", " + line;
  }
}
