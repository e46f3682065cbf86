package org.hammerscale.bending;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A collar bent hot round one bar or several that lie side by side, which it draws together when it
 * shrinks. Its ends butt, lap or are scarfed. Other names: {@index "banding collar"}, {@index
 * "wrapped collar"}. Stock by the bench: P + 2 t butted, P + 2.5 t lapped or scarfed, with the way
 * P round the bundle and the collar's thickness t. {@link BandingClip} is the rule that does not
 * ask for t.
 *
 * <pre>{@code
 * Collar collar = Collar.aroundBars(2, Section.square(millimetres(12)), millimetres(3));
 * collar.cutLength()           // 78 mm
 * collar.meanLine()            // 81.42 mm  the line of its middle, with corners as round as it is thick
 * BentDrawing.of(collar.line(), Section.flat(millimetres(10), millimetres(3))).drawing()   // bent bar of 10 mm × 3 mm flat, scale 1 : 1
 * collar.closingError()        // -3.425 mm  what sharp corners must stretch for it to close
 * collar.scarfed().cutLength() // 79.5 mm (79.5 mm to 81 mm)
 * }</pre>
 *
 * <p>The rules are shorter than the collar's middle since its corners, bent sharp round the bars,
 * stretch; try one, and cut the others after it. Exact as the rules state them. Sources: rule of
 * <cite>The Blacksmith's Craft</cite> as two pages quote it, and a demonstrated rule (read); the
 * others are geometry.
 */
public final class Collar {
  /** How the ends of a collar meet. */
  private enum Ends {
    BUTTED("butted"),
    LAPPED("lapped"),
    SCARFED("scarfed");

    private final String word;

    Ends(String word) {
      this.word = word;
    }
  }

  private static final Source BUTTED =
      Source.read("The Blacksmith's Craft, as two smithing pages quote it", "collars, P + 2 t");
  private static final Source LAPPED =
      Source.read("smithing pages", "collars with scarfed ends, P + 2.5 t; another has 2.5 to 3 t");
  private static final Source LINE = Source.computed("mean line round corners of radius t");

  /**
   * What it goes round, in the unit of the collar.
   *
   * @param perimeter the way round it
   * @param width of it over all; 0 if its outline is not known
   * @param height of it
   * @param round whether its ends are half round
   * @param words what it is
   */
  private record Bundle(
      double perimeter, double width, double height, boolean round, String words) {}

  private final Bundle bundle;
  private final double thickness;
  private final Unit<Length> unit;
  private final Ends ends;

  private Collar(Bundle bundle, double thickness, Unit<Length> unit, Ends ends) {
    this.bundle = bundle;
    this.thickness = thickness;
    this.unit = unit;
    this.ends = ends;
  }

  /**
   * A butted collar round the outline of a bundle.
   *
   * @param bundle the outline: two bars of 1/2 in square side by side are a flat of 1 × 1/2 in
   * @param thickness of the collar, more than zero
   * @return the collar
   * @throws IllegalArgumentException if the outline has no area, or the thickness is not more than
   *     zero
   */
  public static Collar around(Section bundle, Quantity<Length> thickness) {
    Section.requireArea("bundle", bundle);
    Measure<Length> thick = Arguments.positive("thickness", thickness);
    Unit<Length> unit = thick.getUnit();
    boolean known = bundle.isRound() || isRectangular(bundle);
    Bundle outline =
        new Bundle(
            bundle.perimeter().in(unit),
            known ? bundle.width().in(unit) : 0,
            bundle.thickness().in(unit),
            bundle.isRound(),
            bundle.toString());
    return new Collar(outline, thick.getValue(), unit, Ends.BUTTED);
  }

  /**
   * A butted collar round bars that lie side by side, width beside width; round bars as a string
   * would run round them.
   *
   * @param count how many, 1 to 100
   * @param bar one of them, round, square or flat
   * @param thickness of the collar, more than zero
   * @return the collar
   * @throws IllegalArgumentException if an argument lies outside its range
   */
  public static Collar aroundBars(int count, Section bar, Quantity<Length> thickness) {
    Section.requireArea("bar", bar);
    Arguments.count("count", count, 1, 100, "count the bars that the collar holds");
    Measure<Length> thick = Arguments.positive("thickness", thickness);
    Unit<Length> unit = thick.getUnit();
    double wide = count * bar.width().in(unit);
    double high = bar.thickness().in(unit);
    double round = bar.perimeter().in(unit) + 2 * (count - 1) * bar.width().in(unit);
    if (!bar.isRound() && !isRectangular(bar)) {
      throw new IllegalArgumentException(
          "bar must be round, square or flat, was "
              + bar
              + "; give the outline of the bundle to around(…)");
    }
    double perimeter = bar.isRound() ? round : 2 * (wide + high);
    Bundle side = new Bundle(perimeter, wide, high, bar.isRound(), count + " × " + bar);
    return new Collar(side, thick.getValue(), unit, Ends.BUTTED);
  }

  private static boolean isRectangular(Section bar) {
    return !bar.isTube() && bar.area().isEquivalentTo(Measures.area(bar.width(), bar.thickness()));
  }

  /** {@return the same with lapped ends} */
  public Collar lapped() {
    return new Collar(bundle, thickness, unit, Ends.LAPPED);
  }

  /** {@return the same with scarfed ends, which lap as thin as one thickness} */
  public Collar scarfed() {
    return new Collar(bundle, thickness, unit, Ends.SCARFED);
  }

  /**
   * The strip to cut by the bench rule: P + 2 t butted; lapped or scarfed P + 2.5 t, up to P + 3 t.
   *
   * @return the length, in the unit of the thickness; exact as a rule if butted
   */
  public Estimate<Length> cutLength() {
    Measure<Length> likely = Measure.of(cut(Notes.NONE), unit);
    return ends == Ends.BUTTED
        ? Estimate.exact(likely)
        : Estimate.of(likely, likely, Measure.of(bundle.perimeter + 3 * thickness, unit));
  }

  /**
   * The line of its middle round corners as round outside as it is thick: P + π t. So much metal it
   * has if nothing stretches.
   *
   * @return the length, exact as geometry
   */
  public Measure<Length> meanLine() {
    return Measure.of(mean(Notes.NONE), unit);
  }

  /**
   * The line itself, from the joint in the middle of a long side, to lay the collar on; what laps
   * is not in it.
   *
   * @return the line, as long as {@link #meanLine}
   * @throws IllegalArgumentException if the outline of the bundle is neither round, square nor flat
   */
  public MeanLine line() {
    if (!(bundle.width > 0)) {
      throw new IllegalArgumentException(
          "bundle must be round, square or flat to have its line laid out, was "
              + bundle.words
              + "; give its bars to aroundBars(…), or try the collar on the bundle");
    }
    double half = (bundle.width - (bundle.round ? bundle.height : 0)) / 2;
    double radius = thickness / 2 + (bundle.round ? bundle.height / 2 : 0);
    double up = bundle.round ? 0 : bundle.height;
    double corner = Math.PI / 2;
    return MeanLine.from(unit)
        .on(half)
        .arc(radius, corner)
        .on(up)
        .arc(radius, corner)
        .on(2 * half)
        .arc(radius, corner)
        .on(up)
        .arc(radius, corner)
        .on(half);
  }

  /**
   * The strip by volume for corners that are forged full and square outside: P + 4 t, the most.
   *
   * @return the length, exact as geometry
   */
  public Measure<Length> fullCorners() {
    return Measure.of(bundle.perimeter + 4 * thickness, unit);
  }

  /**
   * What the bench rule gives more than the mean line; negative where corners must stretch for the
   * ends to meet.
   *
   * @return the difference, exact
   */
  public Measure<Length> closingError() {
    return Measure.of(error(Notes.NONE), unit);
  }

  /** {@return what to do about the corners, and that the fire hides the heat} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (bundle.round) {
      cautions.add(
          Caution.limit(
              "the rules are for square corners, which stretch: round bars stretch nothing, so cut to"
                  + " the mean line and what the ends lap",
              LINE));
    }
    cautions.add(
        Caution.limit(
            "the rule holds for corners bent sharp: bend one collar for trial on the bundle itself,"
                + " and cut the others after it",
            ends == Ends.BUTTED ? BUTTED : LAPPED));
    cautions.add(
        Caution.danger(
            "a collar is closed hot on cold bars and burns long after its colour is gone; wear eye"
                + " protection"));
    return List.copyOf(cautions);
  }

  /** {@return how the strip to cut was found} */
  public Working working() {
    return Notes.taken(toString(), unit, this::cut)
        .withSource(ends == Ends.BUTTED ? BUTTED : LAPPED)
        .withCautions(cautions());
  }

  /** {@return how the closing error was found} */
  public Working closingWorking() {
    return Notes.taken("closing error of a " + this, unit, this::error)
        .withSource(ends == Ends.BUTTED ? BUTTED : LAPPED)
        .withSource(LINE)
        .withCautions(cautions());
  }

  private double cut(Notes n) {
    double p = n.given("P", "way round the bundle", bundle.perimeter);
    double t = n.given("t", "thickness of the collar", thickness);
    return ends == Ends.BUTTED
        ? n.length("L", "strip to cut", "P + 2 t", p + 2 * t)
        : n.length("L", "strip to cut", "P + 2.5 t", p + 2.5 * t);
  }

  private double mean(Notes n) {
    return n.length("m", "mean line", "P + π t", bundle.perimeter + Math.PI * thickness);
  }

  private double error(Notes n) {
    double cut = cut(n);
    return n.length("c", "more than the mean line", "L − m", cut - mean(n));
  }

  /** Ends, thickness and bundle. */
  @Override
  public String toString() {
    return ends.word + " collar, " + Measure.of(thickness, unit) + " thick, around " + bundle.words;
  }
}
