package org.hammerscale.bending;

import java.util.ArrayList;
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
import org.hammerscale.working.Working;

/**
 * A scroll: a bar wound to a spiral in its plane. Its coils are evenly spaced ({@linkplain
 * #archimedean Archimedean}), open with the radius ({@linkplain #logarithmic logarithmic}), or
 * follow a string unwound from a peg ({@linkplain #involute involute}). Other names: {@index
 * volute}, {@index spiral}, {@index snail}. For a line drawn by hand and measured, see {@link
 * Course}; a volute of quarter rounds is a row of {@link Bend bends}.
 *
 * <pre>{@code
 * Section bar = Section.flat(inches("1/2"), inches("1/4"));
 * Scroll scroll = Scroll.archimedean(inches("1/2"), inches(2), 1.5, bar);
 * scroll.developedLength()                // 11.8904 in  bar that it winds up
 * scroll.meanRadiusLength()               // 11.781 in   by the bench: turns round the mean radius
 * scroll.using(inches(18)).outerRadius()  // 2.4372 in   how wide 18 in winds, its coils as far apart
 * }</pre>
 *
 * <p>Radii are those of the middle of the bar, from the spiral's centre; lengths come out in the
 * inner radius' unit. Exact as geometry of the mean line: the lengths are closed forms.
 *
 * <p>Source: arc lengths of plane curves, standard mathematics; Ilgen, <cite>Forge Work</cite>,
 * 1912, sec. 111 for the mean line.
 */
public final class Scroll extends BentBar {
  private static final double MOST_TURNS = 1000;
  private static final int POINTS = 144; // in a turn
  private static final int LEAST_POINTS = 24;
  private static final int MOST_POINTS = 20_000;
  private static final Source ARC_LENGTH = Source.computed("arc length of the spiral");
  private static final String COUNT = "count the turns from the centre outwards";

  private final Spiral spiral;

  private Scroll(Spiral spiral, Section section, Unit<Length> unit) {
    super(section, unit);
    this.spiral = spiral;
  }

  /**
   * A scroll with evenly spaced coils: L = ½ b [(r/b) √(1 + (r/b)²) + asinh(r/b)] between its
   * radii, with the growth b = (r₁ − r₀) / (2 π N).
   *
   * @param inner radius where it begins, not negative
   * @param outer radius where it ends, more than zero and at least the inner one
   * @param turns how many turns, more than 0 and at most 1000; parts of a turn count
   * @param section the bar, its thickness across the bend
   * @return the scroll
   * @throws IllegalArgumentException if a value lies outside its range or the radii are swapped
   */
  public static Scroll archimedean(
      Quantity<Length> inner, Quantity<Length> outer, double turns, Section section) {
    Measure<Length> from = Arguments.notNegative("inner radius", inner);
    Measure<Length> to = Arguments.positive("outer radius", outer);
    Unit<Length> unit = from.getUnit();
    if (to.isLessThan(from)) {
      throw swapped("at least", from, to);
    }
    return new Scroll(
        new Spiral.Archimedean(
            from.in(unit), to.in(unit), Arguments.number("turns", turns, MOST_TURNS, COUNT)),
        section,
        unit);
  }

  /**
   * A scroll whose coils open in proportion to the radius: L = (r₁ − r₀) √(1 + 1/k²), with the
   * growth k = ln(r₁/r₀) / (2 π N). Other names: equiangular spiral; with 0.3063 for k, golden.
   *
   * @param inner radius where it begins, more than zero
   * @param outer radius where it ends, more than the inner one
   * @param turns how many turns, more than 0 and at most 1000; parts of a turn count
   * @param section the bar, its thickness across the bend
   * @return the scroll
   * @throws IllegalArgumentException if a value lies outside its range or the radii are swapped
   */
  public static Scroll logarithmic(
      Quantity<Length> inner, Quantity<Length> outer, double turns, Section section) {
    Measure<Length> from = Arguments.positive("inner radius", inner);
    Measure<Length> to = Arguments.positive("outer radius", outer);
    Unit<Length> unit = from.getUnit();
    if (!to.isGreaterThan(from)) {
      throw swapped("more than", from, to);
    }
    return new Scroll(
        new Spiral.Logarithmic(
            from.in(unit), to.in(unit), Arguments.number("turns", turns, MOST_TURNS, COUNT)),
        section,
        unit);
  }

  /**
   * A scroll drawn by the end of a string unwound from a round peg: L = a θ²/2, ending at the
   * radius a √(1 + θ²).
   *
   * @param peg the radius a of the peg, where it begins, more than zero
   * @param turns how many turns of string are unwound, θ = 2 π N; more than 0 and at most 1000
   * @param section the bar, its thickness across the bend
   * @return the scroll
   * @throws IllegalArgumentException if a value lies outside its range
   */
  public static Scroll involute(Quantity<Length> peg, double turns, Section section) {
    Measure<Length> from = Arguments.positive("peg radius", peg);
    return new Scroll(
        new Spiral.Involute(
            from.in(from.getUnit()), Arguments.number("turns", turns, MOST_TURNS, COUNT)),
        section,
        from.getUnit());
  }

  private static IllegalArgumentException swapped(
      String rule, Measure<Length> from, Measure<Length> to) {
    return new IllegalArgumentException(
        "outer radius must be "
            + rule
            + " the inner one of "
            + from
            + ", was "
            + to
            + "; name the inner radius first, and take a Ring for a circle");
  }

  /**
   * The longest scroll from an offcut: the same spiral from the same start, followed as far as the
   * bar goes, be it shorter or longer than now.
   *
   * @param length the length of bar, more than zero
   * @return the scroll, with its own turns and outer radius
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Scroll using(Quantity<Length> length) {
    return with(spiral.followed(Arguments.positive("length", length).in(unit())));
  }

  /**
   * A scroll between the same radii, with the turns that a length of bar gives.
   *
   * @param length the length of bar, more than the radii differ
   * @return the scroll, with its own turns
   * @throws IllegalArgumentException if the length is too short to lead from one radius to the
   *     other, or the scroll is an involute, whose turns fix its outer radius
   */
  public Scroll tightenedTo(Quantity<Length> length) {
    double used = Arguments.positive("length", length).in(unit());
    double straight = spiral.outer - spiral.inner;
    if (!(used > straight)) {
      throw new IllegalArgumentException(
          "length must be more than the "
              + measure(straight)
              + " from the inner to the outer radius, was "
              + measure(used)
              + "; take a longer bar, or follow the spiral with using(length)");
    }
    return with(spiral.wound(used));
  }

  /**
   * The same scroll drawn larger or smaller, so that it uses a length of bar.
   *
   * @param length the length of bar, more than zero
   * @return the scroll, with the same turns
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Scroll scaledTo(Quantity<Length> length) {
    double used = Arguments.positive("length", length).in(unit());
    return with(spiral.scaled(used / developed(Notes.NONE)));
  }

  private Scroll with(Spiral other) {
    return new Scroll(other, section(), unit());
  }

  /** {@return the radius where it begins, at the middle of the bar; the peg of an involute} */
  public Measure<Length> innerRadius() {
    return measure(spiral.inner);
  }

  /** {@return the radius where it ends, at the middle of the bar} */
  public Measure<Length> outerRadius() {
    return measure(spiral.outer);
  }

  /** {@return how many turns; those of the string for an involute} */
  public double turns() {
    return spiral.turns;
  }

  /**
   * The quick reckoning by the mean radius: π N (r₀ + r₁). It leaves the way outwards out, so an
   * evenly spaced scroll always comes out short by it, by 7 % for one turn from the centre and by
   * less than 1 % for several; for the other kinds it is no rule.
   *
   * @return the length, in the inner radius' unit
   */
  public Measure<Length> meanRadiusLength() {
    return measure(meanRadius(Notes.NONE));
  }

  /** {@return the spiral, from its heart outwards} */
  @Override
  public MeanLine meanLine() {
    int parts = (int) Math.min(MOST_POINTS, Math.max(LEAST_POINTS, spiral.turns * POINTS));
    List<double[]> points = new ArrayList<>(parts + 1);
    for (int i = 0; i <= parts; i++) {
      points.add(spiral.point((double) i / parts));
    }
    return new MeanLine(unit(), points, List.of(), 0, developed(Notes.NONE), false);
  }

  /** {@return {@code scroll}} */
  @Override
  public String name() {
    return "scroll";
  }

  /** {@return the diameter of the circle round its centre that holds it: 2 r₁ + t} */
  @Override
  public Measure<Length> reach() {
    return measure(2 * spiral.outer + thickness());
  }

  /** {@return cautions if its coils lie in one another, or its heart is very tight} */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    double apart = spiral.closestCoils();
    if (spiral.turns > 1 && apart < thickness() * (1 - 1e-12)) {
      cautions.add(
          Caution.limit(
              "its closest coils are "
                  + measure(apart)
                  + " apart from middle to middle, less than the bar is thick ("
                  + section().thickness()
                  + "): they would lie in one another; take fewer turns or a larger radius",
              ARC_LENGTH));
    }
    if (spiral.inner > 0) {
      cautions.addAll(tightCurl(measure(Math.max(2 * spiral.inner - thickness(), 0))));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the length of bar was found} */
  @Override
  public Working working() {
    return Notes.taken(toString(), unit(), this::developed)
        .withSource(ARC_LENGTH)
        .withSource(MEAN_LINE)
        .withCautions(cautions());
  }

  /** {@return how the quick reckoning by the mean radius comes to its length} */
  public Working meanRadiusWorking() {
    return Notes.taken("scroll by its mean radius", unit(), this::meanRadius)
        .withSource(Source.commonPractice("turns × circumference of the mean radius"));
  }

  @Override
  double developed(Notes n) {
    return spiral.length(n);
  }

  private double meanRadius(Notes n) {
    double r0 = n.given("r₀", "inner radius, middle of the bar", spiral.inner);
    double r1 = n.given("r₁", "outer radius, middle of the bar", spiral.outer);
    double count = n.number("N", "turns", "", spiral.turns);
    return n.length("L", "length by the mean radius", "π N (r₀ + r₁)", Math.PI * count * (r0 + r1));
  }

  /** Kind, radii, turns and bar. */
  @Override
  public String toString() {
    return spiral.word()
        + " scroll from "
        + innerRadius()
        + " to "
        + outerRadius()
        + " radius in "
        + count(spiral.turns)
        + " turns, of "
        + section();
  }
}
