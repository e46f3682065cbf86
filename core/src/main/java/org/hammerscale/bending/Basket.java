package org.hammerscale.bending;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Inverse;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A basket twist: four rods welded at both ends, twisted together as a bundle, then untwisted and
 * pushed up until they open. Other names: {@index "basket handle"}, {@index "birdcage"}.
 *
 * <pre>{@code
 * Basket basket = Basket.ofFour(Section.round(millimetres(8)), millimetres(120), 1);
 * basket.rodLength(millimetres(30))         // 191.23 mm  of each rod between the welds, to bulge so far
 * basket.bulge(millimetres(180))            // 26.92 mm   what rods of 180 mm give, axis to middle of a rod
 * basket.opening(millimetres(30))           // 34.43 mm   clear between two neighbours at the belly
 * Basket.inBundle(Section.square(millimetres(8)), millimetres(150), 1.5)   // 159.19 mm  a rod of the twisted bundle
 * }</pre>
 *
 * <p>The middle of a rod is taken to run at r = r₀ + (rₘ − r₀) sin(π z / H) from the axis while it
 * turns evenly: a shape assumed, no rule of the trade. Its length is found by quadrature, exact for
 * that shape. Unless told otherwise the welds hold the rods as four lie together, r₀ = a / √2.
 */
public final class Basket {
  private static final double MOST_TURNS = 100;
  private static final int STEPS = 400;
  private static final Source SHAPE =
      Source.computed("length of the curve by quadrature; the sine of the bulge is an assumption");
  private static final Source BUNDLE = Source.computed("helix at a / √2 from the axis");

  private final Section rod;
  private final Measure<Length> height;
  private final double turns;
  private final double weld;

  private Basket(Section rod, Measure<Length> height, double turns, double weld) {
    this.rod = rod;
    this.height = height;
    this.turns = turns;
    this.weld = weld;
  }

  /**
   * A basket of four rods.
   *
   * @param rod one of them, round or square
   * @param height from weld to weld when it is open, more than zero
   * @param turns full turns that the open rods still make, 0 to 100
   * @return the basket
   * @throws IllegalArgumentException if the rod is not as thick as wide, or an argument lies
   *     outside its range
   */
  public static Basket ofFour(Section rod, Quantity<Length> height, double turns) {
    checkRod(rod);
    Measure<Length> high = Arguments.positive("height", height);
    return new Basket(rod, high, checked(turns), rod.width().in(high.getUnit()) / Math.sqrt(2));
  }

  /**
   * A rod's length in the twisted bundle before it is opened: √(L² + (2 π N a / √2)²).
   *
   * @param rod one of the four, round or square
   * @param length of the bundle between the welds, more than zero
   * @param turns full turns, 0 to 100
   * @return the length, exact as a helix, in the unit of the bundle's length
   * @throws IllegalArgumentException if an argument lies outside its range
   */
  public static Measure<Length> inBundle(Section rod, Quantity<Length> length, double turns) {
    checkRod(rod);
    Measure<Length> bundle = Arguments.positive("length", length);
    double round = 2 * Math.PI * checked(turns) * rod.width().in(bundle.getUnit()) / Math.sqrt(2);
    return bundle.withValue(Math.hypot(bundle.getValue(), round));
  }

  private static void checkRod(Section rod) {
    Section.requireArea("rod", rod);
    if (rod.isTube() || !rod.width().isEquivalentTo(rod.thickness())) {
      throw new IllegalArgumentException(
          "rod must be round or square, was " + rod + "; take rods as thick as they are wide");
    }
  }

  private static double checked(double turns) {
    if (!(turns >= 0 && turns <= MOST_TURNS)) {
      throw new IllegalArgumentException(
          "turns must be from 0 to "
              + MOST_TURNS
              + ", was "
              + turns
              + "; count the full turns left");
    }
    return turns;
  }

  /**
   * The same with rods that the welds hold at another distance from the axis.
   *
   * @param radius from the axis to the middle of a rod at the weld, not negative
   * @return the basket
   * @throws IllegalArgumentException if the radius is negative
   */
  public Basket withWeldRadius(Quantity<Length> radius) {
    double r = Arguments.notNegative("radius", radius).in(height.getUnit());
    return new Basket(rod, height, turns, r);
  }

  /**
   * How long each rod must be between the welds.
   *
   * @param bulge from the axis to the middle of a rod at the belly, at least as at the welds
   * @return the length, exact for that shape, in the unit of the height
   * @throws IllegalArgumentException if the bulge is less than at the welds
   */
  public Measure<Length> rodLength(Quantity<Length> bulge) {
    return measure(length(belly(bulge)));
  }

  /**
   * How far rods of a length bulge, from the axis to the middle of a rod at the belly.
   *
   * @param rodLength of each between the welds
   * @return the radius, exact for that shape, in the unit of the height
   * @throws IllegalArgumentException if rods of that length do not reach, or bulge more than ten
   *     times the height
   */
  public Measure<Length> bulge(Quantity<Length> rodLength) {
    double wanted = Arguments.positive("rodLength", rodLength).in(height.getUnit());
    double most = weld + 10 * height.getValue();
    return measure(Inverse.solve("rodLength", this::length, weld, most, wanted, this::measure));
  }

  /**
   * How far two neighbours stand apart at the belly, clear: √2 rₘ − a.
   *
   * @param bulge from the axis to the middle of a rod at the belly, at least as at the welds
   * @return the opening, exact; negative would be a basket that is still shut
   * @throws IllegalArgumentException if the bulge is less than at the welds
   */
  public Measure<Length> opening(Quantity<Length> bulge) {
    return measure(Math.sqrt(2) * belly(bulge) - rod.width().in(height.getUnit()));
  }

  /** {@return one of its four rods} */
  public Section rod() {
    return rod;
  }

  /** {@return from weld to weld when it is open} */
  public Measure<Length> height() {
    return height;
  }

  /** {@return full turns that the open rods still make} */
  public double turns() {
    return turns;
  }

  /**
   * How far the middle of a rod stands off the axis: r₀ + (rₘ − r₀) sin(π z / H).
   *
   * @param above the lower weld, not negative and at most the height
   * @param bulge the same at the belly, at least as at the welds
   * @return the radius, exact for that shape
   * @throws IllegalArgumentException if an argument lies outside its range
   */
  public Measure<Length> radiusAt(Quantity<Length> above, Quantity<Length> bulge) {
    Measure<Length> up = Arguments.notNegative("above", above).to(unit());
    Arguments.atMost("above", up, "the height", height, "count from the lower weld");
    return measure(radius(belly(bulge), up.getValue()));
  }

  /** {@return of the welds, and of the shape that is assumed} */
  public List<Caution> cautions() {
    return List.of(
        Caution.limit(
            "the shape is assumed: cut the rods alike, weld one basket for trial, open it, and cut the"
                + " others after it",
            SHAPE),
        Caution.danger(
            "a forge weld's strength cannot be computed: proof-test a basket that carries before it is"
                + " trusted"));
  }

  /**
   * How the length of a rod was found.
   *
   * @param bulge from the axis to the middle of a rod at the belly
   * @return the working of {@link #rodLength}
   * @throws IllegalArgumentException if the bulge is less than at the welds
   */
  public Working working(Quantity<Length> bulge) {
    double belly = belly(bulge);
    return Notes.taken("rod of a " + this, height.getUnit(), n -> noted(n, belly))
        .withSource(SHAPE)
        .withSource(BUNDLE)
        .withCautions(cautions());
  }

  private double noted(Notes n, double belly) {
    n.given("H", "height between the welds", height.getValue());
    n.number("N", "turns", "", turns);
    n.given("r₀", "radius at the welds", weld);
    n.given("rₘ", "radius at the belly", belly);
    return n.given("L", "rod, by quadrature along r₀ + (rₘ − r₀) sin(π z / H)", length(belly));
  }

  private double belly(Quantity<Length> bulge) {
    double belly = Arguments.positive("bulge", bulge).in(height.getUnit());
    if (belly < weld * (1 - 1e-12)) {
      throw new IllegalArgumentException(
          "bulge must be at least the "
              + measure(weld)
              + " at the welds, was "
              + measure(belly)
              + "; measure it from the axis to the middle of a rod");
    }
    return belly;
  }

  /** Simpson's rule over half the height: the belly mirrors it. */
  private double length(double belly) {
    double step = height.getValue() / 2 / STEPS;
    double sum = 0;
    for (int i = 0; i <= STEPS; i++) {
      sum += (i == 0 || i == STEPS ? 1 : i % 2 == 0 ? 2 : 4) * slant(belly, i * step);
    }
    return 2 * sum * step / 3;
  }

  /** Length of rod on each unit of height. */
  private double slant(double belly, double z) {
    double h = height.getValue();
    double out = (belly - weld) * Math.PI / h * Math.cos(Math.PI * z / h);
    double round = radius(belly, z) * 2 * Math.PI * turns / h;
    return Math.sqrt(1 + out * out + round * round);
  }

  private double radius(double belly, double z) {
    return weld + (belly - weld) * Math.sin(Math.PI * z / height.getValue());
  }

  private Measure<Length> measure(double value) {
    return Measure.of(value, unit());
  }

  private Unit<Length> unit() {
    return height.getUnit();
  }

  /** Rods, height and turns. */
  @Override
  public String toString() {
    return "basket of four rods of "
        + rod
        + ", "
        + height
        + " high, "
        + BentBar.count(turns)
        + (turns == 1 ? " turn" : " turns");
  }
}
