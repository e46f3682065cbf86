package org.hammerscale.hinge;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The barrel of a hinge leaf, also called its eye: the end of the strap rolled round the pin from
 * one face. Hot bending keeps the section, so the length on the middle of the thickness stays what
 * it was: L = π (d + t), the circumference of the mean diameter.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches("1 1/2"), inches("1/4"));
 * Barrel eye = Barrel.around(inches("1/2"), strap);
 * eye.outsideDiameter()                      // 1 in
 * eye.developedLength()                      // 2.3562 in
 * eye.developedLength().upTo(SIXTEENTH)      // 2 3/8 in
 * }</pre>
 *
 * <p>Lengths come out in the bore's unit. They are exact as geometry of a full turn on the mean
 * line. A square-cut end meets the leaf before the turn is full, so some of this length is there to
 * be trimmed or tucked under.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 111; American Technical Society,
 * <cite>Modern Shop Practice</cite>, vol. 1, "Eye bolt".
 */
public final class Barrel implements Feature {
  private static final Source MEAN_LINE = Source.read("Ilgen, Forge Work, 1912", "sec. 111");
  private static final Source BENCH_RULE =
      Source.commonPractice("three times the mean diameter, up to the next eighth of an inch");
  private static final Measure<Length> EIGHTH = Measures.inches(1 / 8d);

  private final Measure<Length> bore;
  private final Section section;
  private final Unit<Length> unit;

  private Barrel(Measure<Length> bore, Section section) {
    this.bore = bore;
    this.section = section;
    this.unit = bore.getUnit();
  }

  /**
   * A barrel rolled round a bore.
   *
   * @param bore the finished inside diameter, cold: the pin and its running clearance; more than
   *     zero
   * @param section the strap where it is rolled
   * @return the barrel
   * @throws IllegalArgumentException if the bore is not more than zero
   */
  public static Barrel around(Quantity<Length> bore, Section section) {
    return new Barrel(Arguments.positive("bore", bore), Objects.requireNonNull(section));
  }

  /** {@return the strap where it is rolled} */
  public Section section() {
    return section;
  }

  /** {@return the bore d, the diameter of the hole for the pin} */
  public Measure<Length> insideDiameter() {
    return bore;
  }

  /**
   * The diameter of the middle of the strap's thickness: d + t.
   *
   * @return the mean diameter, exact, in the bore's unit
   */
  public Measure<Length> meanDiameter() {
    return bore.add(section.thickness());
  }

  /**
   * The diameter over the barrel: d + 2 t. A bottom swage of this size trues it.
   *
   * @return the outside diameter, exact, in the bore's unit
   */
  public Measure<Length> outsideDiameter() {
    return meanDiameter().add(section.thickness());
  }

  /**
   * The strap rolled up in a full turn: L = π (d + t).
   *
   * @return the length on the mean line, exact as geometry, in the bore's unit
   */
  public Measure<Length> developedLength() {
    return Measure.of(developed(Notes.NONE), unit);
  }

  /**
   * The length that smiths reckon at the bench: three times the mean diameter, rounded up to the
   * next eighth of an inch. {@link #benchError} tells how far it is off.
   *
   * @return the rule's length, in the bore's unit
   */
  public Measure<Length> benchLength() {
    return Measure.of(bench(Notes.NONE), unit);
  }

  /**
   * How much the {@linkplain #benchLength bench rule} gives beyond the {@linkplain #developedLength
   * full turn}.
   *
   * @return the difference, in the bore's unit; negative where the rule leaves the barrel short
   */
  public Measure<Length> benchError() {
    return benchLength().subtract(developedLength());
  }

  /** {@return {@code rolled barrel}} */
  @Override
  public String name() {
    return "rolled barrel";
  }

  @Override
  public Section start() {
    return section;
  }

  @Override
  public Section end() {
    return section;
  }

  /** {@return developed length × area of the strap, exact as geometry} */
  @Override
  public Estimate<Volume> metalKept() {
    return Estimate.exact(Measures.volume(developedLength(), section.area()));
  }

  /**
   * What it adds to the length over all: half its outside diameter, since the leaf is measured from
   * the pin's centre, where it leaves the barrel.
   *
   * @return the outside radius, exact, in the bore's unit
   */
  @Override
  public Measure<Length> reach() {
    return outsideDiameter().divide(2);
  }

  /** {@return a caution if the curl is tighter than the strap is thick; else none} */
  @Override
  public List<Caution> cautions() {
    return bore.isLessThan(section.thickness())
        ? List.of(
            Caution.limit(
                "the bore of "
                    + bore
                    + " is less than the strap is thick ("
                    + section.thickness()
                    + "): so tight a curl thickens inside and may crack outside; bend it hot, and"
                    + " thin the strap or take a thicker pin if you can",
                Source.commonPractice("mean line holds for curls of a thickness inside or more")))
        : List.of();
  }

  /** {@return how the developed length was found} */
  @Override
  public Working working() {
    return Notes.taken("rolled barrel, full turn on the mean line", unit, this::developed)
        .withSource(MEAN_LINE)
        .withCautions(cautions());
  }

  /** {@return how the bench rule comes to its length} */
  public Working benchWorking() {
    return Notes.taken("rolled barrel by the bench rule", unit, this::bench)
        .withSource(BENCH_RULE)
        .withCautions(benchCautions());
  }

  private List<Caution> benchCautions() {
    Measure<Length> error = benchError();
    return error.getValue() < 0
        ? List.of(
            Caution.limit(
                "the bench rule is "
                    + error.negate()
                    + " short of a full turn here; take the developed length",
                MEAN_LINE))
        : List.of();
  }

  private double mean(Notes n) {
    double d = n.given("d", "bore", bore.in(unit));
    double t = n.given("t", "strap thickness", section.thickness().in(unit));
    return n.length("m", "mean diameter", "d + t", d + t);
  }

  private double developed(Notes n) {
    double m = mean(n);
    return n.length("L", "developed length", "π m", Math.PI * m);
  }

  private double bench(Notes n) {
    double m = mean(n);
    double e = n.given("e", "an eighth of an inch", EIGHTH.in(unit));
    double steps = Math.ceil(3 * m / e - 1e-9);
    return n.length("B", "three mean diameters, up to the next eighth", "up(3 m, e)", steps * e);
  }

  /** Bore and strap. */
  @Override
  public String toString() {
    return "barrel with a bore of " + bore + " in " + section;
  }
}
