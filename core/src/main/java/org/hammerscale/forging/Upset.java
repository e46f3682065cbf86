package org.hammerscale.forging;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Outlined;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A stretch jumped up: made thicker and shorter. Other names: {@index "jump up"}, {@index upset},
 * {@index "stave up"}, {@index bulge}. The bar it takes is its volume over the bar's area. {@link
 * Head} makes the heads of rivets, bolts and nails.
 *
 * <pre>{@code
 * Section bar = Section.round(inches("1/2"));
 * Upset upset = Upset.using(inches("2 1/2"), bar, Section.round(inches("3/4")));
 * upset.reach()        // 1.1111 in   how long the thick stretch is
 * upset.slenderness()  // 5.0         diameters that stand out: beyond three they buckle,
 * upset.heats()        // 4 (2 to 8)  so it is done a short heat at a time
 * }</pre>
 *
 * <p>The metal is exact as geometry. Bar that stands out more than three diameters buckles under
 * the hammer: it is then upset a short heat at a time, or in a die.
 *
 * <p>Source: conservation of volume; Forging Industry Association, design rules for upset forgings.
 */
public final class Upset implements Feature, Outlined {
  private final String name;
  private final Section bar;
  private final Section widest;
  private final Section end;
  private final Measure<Length> reach;
  private final Solid solid;
  private final Source source;
  private final double doubt;

  /** Its volume may be off by the doubt, as a share of it. */
  Upset(
      String name,
      Section bar,
      Section widest,
      Section end,
      Measure<Length> reach,
      Solid solid,
      Source source,
      double doubt) {
    if (widest.area().isLessThan(bar.area()) && !widest.meets(bar)) {
      throw new IllegalArgumentException(
          "widest section of the "
              + name
              + " must have at least the area of the "
              + bar
              + " it is jumped up from, was "
              + widest
              + "; draw it out instead, or start from a thinner bar");
    }
    this.name = name;
    this.bar = bar;
    this.widest = widest;
    this.end = end;
    this.reach = reach;
    this.solid = solid;
    this.source = source;
    this.doubt = doubt;
  }

  /**
   * A stretch jumped up to one section throughout: round, square, hexagonal, flat.
   *
   * @param bar the section before
   * @param section the section after, of no less area
   * @param length its finished length, more than zero
   * @return the stretch
   * @throws IllegalArgumentException if the section has less area than the bar, or the length is
   *     not more than zero
   */
  public static Upset to(Section bar, Section section, Quantity<Length> length) {
    Section.requireArea("section", section);
    Section.requireArea("bar", bar);
    Measure<Length> height = Arguments.positive("length", length);
    return exact("upset", bar, section, section, height, Solid.prism(section, height));
  }

  /**
   * The stretch that a length of bar at hand gives: h = s A₀ / A₁.
   *
   * @param stock the length of bar to jump up, more than zero
   * @param bar the section before
   * @param section the section after, of no less area
   * @return the stretch; its {@link #reach} is the finished length, in the stock's unit
   * @throws IllegalArgumentException if the section has less area than the bar, or the stock is not
   *     more than zero
   */
  public static Upset using(Quantity<Length> stock, Section bar, Section section) {
    Section.requireArea("section", section);
    Section.requireArea("bar", bar);
    Measure<Length> used = Arguments.positive("stock", stock);
    double height =
        Solid.jumpedHeight(
            Notes.NONE,
            used.getValue(),
            bar.area().in(Solid.square(used.getUnit())),
            section.area().in(Solid.square(used.getUnit())));
    return exact(
        "upset", bar, section, section, used.withValue(height), Solid.jumped(used, bar, section));
  }

  /**
   * A stretch that widens in straight lines from the bar to a larger end: a cone, a trumpet.
   *
   * @param bar the section before, where it begins
   * @param end the section where it ends, similar to the bar or one of the two a round; of no less
   *     area
   * @param length its finished length, more than zero
   * @return the stretch
   * @throws IllegalArgumentException if the end has less area than the bar, no straight lines lead
   *     to it, or the length is not more than zero
   */
  public static Upset flared(Section bar, Section end, Quantity<Length> length) {
    Section.requireArea("end", end);
    Section.requireArea("bar", bar);
    Measure<Length> height = Arguments.positive("length", length);
    Prismoid.between(bar, end, height.getUnit());
    return exact("flare", bar, end, end, height, Solid.between(bar, end, height));
  }

  /**
   * A swelling within a round bar, barrelled by a parabola: V = π h (2 D² + D d + 0.75 d²) / 15.
   *
   * @param bar the round bar on both sides
   * @param middle the round section at its thickest, of no less area
   * @param length its finished length, more than zero
   * @return the stretch
   * @throws IllegalArgumentException if a section is not round, the middle is thinner than the bar,
   *     or the length is not more than zero
   */
  public static Upset barrelled(Section bar, Section middle, Quantity<Length> length) {
    Section.requireArea("middle", middle);
    Section.requireArea("bar", bar);
    Measure<Length> height = Arguments.positive("length", length);
    Head.checkRound("bar", bar);
    Head.checkRound("middle", middle);
    return exact(
        "swelling", bar, middle, bar, height, Solid.barrel(middle.width(), bar.width(), height));
  }

  static Upset exact(
      String name, Section bar, Section widest, Section end, Measure<Length> reach, Solid solid) {
    Source source = Source.computed("solid geometry; conservation of volume");
    return new Upset(name, bar, widest, end, reach, solid, source, 0);
  }

  /** {@return what the smith calls it, such as {@code upset} or {@code snap head}} */
  @Override
  public String name() {
    return name;
  }

  @Override
  public Section start() {
    return bar;
  }

  @Override
  public Section end() {
    return end;
  }

  /** {@return the section where it is thickest} */
  public Section widest() {
    return widest;
  }

  /** {@return the volume, exact but for nail heads, in the cube of the unit of its reach} */
  @Override
  public Estimate<Volume> metalKept() {
    Measure<Volume> metal =
        Measures.volume(reach, Measures.area(reach, reach))
            .withValue(solid.volume(Notes.NONE, reach.getUnit()));
    return doubt == 0
        ? Estimate.exact(metal)
        : Estimate.of(metal.multiply(1 - doubt), metal, metal.multiply(1 + doubt));
  }

  /** {@return the step to its widest section, and its sides: straight, domed, a ball, barrelled} */
  @Override
  public Silhouette outline() {
    return ledOn(Silhouette.from(bar), reach.withValue(0));
  }

  /** How it looks on what lies before it. */
  Silhouette ledOn(Silhouette before, Measure<Length> at) {
    return solid.led(before, at, widest, end, reach);
  }

  /** {@return its finished length} */
  @Override
  public Measure<Length> reach() {
    return reach;
  }

  /**
   * The length of its own bar that it takes: V ÷ area of the bar. {@link #stock} gives it for
   * another bar, and with its spread.
   *
   * @return the likely length, in the unit of its reach
   */
  public Measure<Length> stockLength() {
    return reach.withValue(stock(Notes.NONE));
  }

  /**
   * How slender the bar is that it takes: its length over the bar's least thickness.
   *
   * @return the ratio
   */
  public double slenderness() {
    return buckling().slenderness();
  }

  /**
   * Rule 1: bar of up to three diameters can stand unsupported.
   *
   * @return whether it can be struck in one go without buckling
   */
  public boolean standsFree() {
    return buckling().standsFree();
  }

  /**
   * Rule 2: bar of more than three diameters can be upset in a die if the upset is not over one and
   * a half diameters thick (reckoned by area).
   *
   * @return whether it can be upset in one go in a die
   */
  public boolean standsInDie() {
    return buckling().standsInDie();
  }

  /**
   * The most bar that can stand unsupported: three diameters.
   *
   * @return the length, in the unit of the bar's thickness
   */
  public Measure<Length> longestFree() {
    return buckling().longestFree();
  }

  /**
   * Rule 3: the most bar that may stand out of the die where more than three diameters are upset in
   * it: one and a half diameters.
   *
   * @return the length, in the unit of the bar's thickness
   */
  public Measure<Length> longestBeyondDie() {
    return buckling().longestBeyondDie();
  }

  /**
   * How many heats it takes by hand: at least one for each three diameters of bar; twice that is
   * likely, four times is slow.
   *
   * <p>No published count is known to us: this is our own judgement, to plan a day by.
   *
   * @return the number of heats
   */
  public Estimate<Dimensionless> heats() {
    double least = buckling().leastHeats();
    return Estimate.of(heats(least), heats(2 * least), heats(4 * least));
  }

  private static Measure<Dimensionless> heats(double number) {
    return Measure.of(number, ShopUnits.ONE);
  }

  private Buckling buckling() {
    return Buckling.of(bar, stockLength(), widest);
  }

  /** {@return a caution if the bar would buckle unsupported; else none} */
  @Override
  public List<Caution> cautions() {
    return standsFree() ? List.of() : List.of(buckling().caution(name));
  }

  /** {@return how the volume was found} */
  @Override
  public Working working() {
    return taken(name + " from " + bar, n -> solid.volume(n, reach.getUnit()));
  }

  /** {@return how the length of bar was found} */
  public Working stockWorking() {
    return taken("bar for the " + name + " from " + bar, this::stock);
  }

  private Working taken(String title, Notes.Calculation calculation) {
    return Notes.taken(title, reach.getUnit(), calculation)
        .withSource(source)
        .withCautions(cautions());
  }

  private double stock(Notes n) {
    Unit<Length> unit = reach.getUnit();
    double v = solid.volume(n, unit);
    double b = n.givenArea("B", "section of the bar", bar.area().in(Solid.square(unit)));
    return n.length("L", "bar used", "V / B", v / b);
  }

  /** What it is, and what it takes of its bar. */
  @Override
  public String toString() {
    return name + " on " + bar + ", taking " + stockLength() + " of it";
  }
}
