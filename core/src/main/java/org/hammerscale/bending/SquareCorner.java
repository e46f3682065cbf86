package org.hammerscale.bending;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A right-angled corner forged sharp, outside and inside: the metal of its outer corner must come
 * from somewhere, so the bar is upset there first. By volume it uses one thickness between the two
 * inside faces. Other names: {@index "forged corner"}, {@index "mitred corner"}, {@index "upset
 * corner"}.
 *
 * <pre>{@code
 * SquareCorner corner = SquareCorner.of(Section.flat(millimetres(40), millimetres(12)));
 * corner.outsideDeduction()  // 12 mm  to take off the sum of both outside dimensions: the bar
 * corner.markAllowance()     // 3 mm   to add, for each corner, between the marks that it is bent on
 * corner.upsetThickness()    // 18 mm  how thick to jump up the bar at the mark first
 * corner.fullUpsetThickness()  // 21 mm  by the fuller of two published rules
 * }</pre>
 *
 * <p>Two rules answer two questions, and must not be mixed up. By volume: inside legs + t = outside
 * dimensions − t = bar. By the bench: the centre-punch marks on which the corners of a piece are
 * bent lie its outside dimension apart, and a quarter thickness more for each corner.
 *
 * <p>Source: conservation of volume; FAO, <cite>Basic Blacksmithing</cite>, AH635E, job 8.
 */
public final class SquareCorner extends BentBar {
  private static final Source BENCH =
      Source.read("FAO, Basic Blacksmithing, AH635E", "AH635E09, job 8");

  private static final Source FULL =
      Source.read("Ilgen, Forge Work, 1912", "sec. 75, fig. 55: 1/2 in bar is 7/8 in thick");

  private SquareCorner(Section section) {
    super(section, section.thickness().getUnit());
  }

  /**
   * A sharp corner.
   *
   * @param section the bar, its thickness across the bend
   * @return the corner
   */
  public static SquareCorner of(Section section) {
    Section.requireArea("section", section);
    return new SquareCorner(section);
  }

  /**
   * What to take off the sum of the two outside dimensions, by volume: one thickness.
   *
   * @return the deduction, exact, in the thickness' unit
   */
  public Measure<Length> outsideDeduction() {
    return measure(deduction(Notes.NONE));
  }

  /**
   * What to add, for each corner, to an outside dimension to get the distance between the marks
   * that the corners are bent on: a quarter thickness, by the published bench rule.
   *
   * @return the allowance, in the thickness' unit
   */
  public Measure<Length> markAllowance() {
    return measure(mark(Notes.NONE));
  }

  /**
   * How thick to upset the bar at the mark before bending: one and a half thicknesses, by the same
   * bench rule.
   *
   * @return the thickness, in the thickness' unit
   */
  public Measure<Length> upsetThickness() {
    return measure(upset(Notes.NONE));
  }

  /**
   * How thick to upset the bar by another author, who leaves more to hammer the corner out of: one
   * and three quarter thicknesses, 7/8 in on a bar of 1/2 in. The two rules are what is published;
   * take this one where the corner must come out sharp at the first trial.
   *
   * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 75; the ratio is computed from his sizes.
   *
   * @return the thickness, in the thickness' unit
   */
  public Measure<Length> fullUpsetThickness() {
    return measure(fullUpset(Notes.NONE));
  }

  /** {@return {@code square corner}} */
  @Override
  public String name() {
    return "square corner";
  }

  /** {@return half a thickness, a sharp corner, and half a thickness} */
  @Override
  public MeanLine meanLine() {
    double half = thickness() / 2;
    return MeanLine.from(unit()).on(half).arc(0, Math.PI / 2).on(half);
  }

  /** {@return one thickness: half of it on the middle of either leg} */
  @Override
  public Measure<Length> reach() {
    return measure(thickness());
  }

  /** {@return how the bar between the inside faces of the legs was found} */
  @Override
  public Working working() {
    return Notes.taken("square corner, between the inside faces", unit(), this::developed)
        .withSource(Source.computed("conservation of volume"));
  }

  /** {@return how the deduction from the outside dimensions was found} */
  public Working deductionWorking() {
    return Notes.taken("square corner, deduction from outside dimensions", unit(), this::deduction)
        .withSource(Source.computed("conservation of volume"));
  }

  /** {@return how the bench rule comes to its allowance between marks} */
  public Working markWorking() {
    return Notes.taken("square corner, allowance from mark to mark", unit(), this::mark)
        .withSource(BENCH);
  }

  /** {@return how the bench rule comes to its upset} */
  public Working upsetWorking() {
    return Notes.taken("square corner, upset before bending", unit(), this::upset)
        .withSource(BENCH);
  }

  /** {@return how the fuller rule comes to its upset} */
  public Working fullUpsetWorking() {
    return Notes.taken("square corner, fuller upset before bending", unit(), this::fullUpset)
        .withSource(FULL);
  }

  @Override
  double developed(Notes n) {
    double t = t(n);
    return n.length("L", "bar that fills the corner of t × t", "t", t);
  }

  private double deduction(Notes n) {
    double l = developed(n);
    double t = thickness();
    return n.length("D", "both outside dimensions hold the corner", "2 t − L", 2 * t - l);
  }

  private double mark(Notes n) {
    double t = t(n);
    return n.length("M", "to add between marks, for each corner", "t / 4", t / 4);
  }

  private double upset(Notes n) {
    double t = t(n);
    return n.length("U", "thickness to upset to", "1.5 t", 1.5 * t);
  }

  private double fullUpset(Notes n) {
    double t = t(n);
    return n.length("U", "thickness to upset to", "1.75 t", 1.75 * t);
  }

  /** The bar. */
  @Override
  public String toString() {
    return "square corner in " + section();
  }
}
