package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * Screws or bolts through a plate that a load pushes down in its own plane, beside their middle, as
 * on the side of a post: each bears its share of the load, and turns with the plate besides. Other
 * name: {@index "eccentric load"}.
 *
 * <pre>{@code
 * FastenerGroup group = FastenerGroup.at(millimetres(0), millimetres(0)).and(millimetres(0), millimetres(60));
 * FastenerGroup four = group.and(millimetres(80), millimetres(0)).and(millimetres(80), millimetres(60));
 * four.mostLoaded(newtons(10000), millimetres(100))   // 7159 N  of the load, 100 mm from the middle
 * }</pre>
 *
 * <p>R² = (W / n + M x / J)² + (M y / J)², with M = W e, places x and y from the middle of the
 * group and J = Σ (x² + y²). Exact as statics of a stiff plate on fasteners that are equally stiff.
 * Source: statics.
 */
public final class FastenerGroup {
  private static final Source STATICS =
      Source.computed("equal shares, and turning in proportion to the distance from the middle");
  private static final int MOST = 100;

  /** A fastener's place. */
  private record Place(double across, double up) {}

  private final Unit<Length> unit;
  private final List<Place> places;

  private FastenerGroup(Unit<Length> unit, List<Place> places) {
    this.unit = unit;
    this.places = places;
  }

  /**
   * A group of one so far.
   *
   * @param across from anywhere, towards the load
   * @param up from anywhere, against the load
   * @return the group
   * @throws IllegalArgumentException if a place is no length
   */
  public static FastenerGroup at(Quantity<Length> across, Quantity<Length> up) {
    Measure<Length> first = Arguments.length("across", across);
    return new FastenerGroup(first.getUnit(), List.of()).and(across, up);
  }

  /**
   * The same with one more, measured from the same corner.
   *
   * @param across towards the load
   * @param up against the load
   * @return the group
   * @throws IllegalArgumentException if there are more than 100
   */
  public FastenerGroup and(Quantity<Length> across, Quantity<Length> up) {
    double x = Arguments.length("across", across).in(unit);
    double y = Arguments.length("up", up).in(unit);
    Arguments.count("number of fasteners", places.size() + 1, 1, MOST, "divide the plate");
    List<Place> more = new ArrayList<>(places);
    more.add(new Place(x, y));
    return new FastenerGroup(unit, List.copyOf(more));
  }

  /** {@return how many there are} */
  public int count() {
    return places.size();
  }

  /**
   * What the fastener bears that bears most.
   *
   * @param load W, in the plane of the plate, more than zero
   * @param distance e, from the middle of the group to the load's line, not negative
   * @return the force across it, exact, in the load's unit
   * @throws IllegalArgumentException if an argument lies outside its range, or all fasteners are at
   *     one place that the load is beside
   */
  public Measure<Force> mostLoaded(Quantity<Force> load, Quantity<Length> distance) {
    Measure<Force> down = Arguments.positiveForce("load", load);
    return down.withValue(most(Notes.NONE, down, checked(distance)));
  }

  /**
   * How that was found.
   *
   * @param load W, more than zero
   * @param distance e, not negative
   * @return the working of {@link #mostLoaded}
   * @throws IllegalArgumentException as {@link #mostLoaded} does
   */
  public Working working(Quantity<Force> load, Quantity<Length> distance) {
    Measure<Force> down = Arguments.positiveForce("load", load);
    Measure<Length> beside = checked(distance);
    return Notes.taken("most loaded of " + this, unit, n -> most(n, down, beside))
        .withSource(STATICS)
        .withCautions(cautions());
  }

  /** {@return that holes share unequally, and what belongs beside every load} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        Caution.limit(
            "the tightest hole bears first: drill plate and wood to fit, or reckon one fastener less",
            STATICS));
    cautions.addAll(HoldCautions.REFERENCE);
    return List.copyOf(cautions);
  }

  private Measure<Length> checked(Quantity<Length> distance) {
    Measure<Length> beside = Arguments.notNegative("distance", distance);
    if (beside.getValue() > 0 && !(spread(middle()) > 0)) {
      throw new IllegalArgumentException(
          "distance must be zero for fasteners at one place, was "
              + beside
              + "; set them apart, so that they keep the plate from turning");
    }
    return beside;
  }

  private Place middle() {
    double across = 0;
    double up = 0;
    for (Place place : places) {
      across += place.across;
      up += place.up;
    }
    return new Place(across / places.size(), up / places.size());
  }

  private double spread(Place middle) {
    double sum = 0;
    for (Place place : places) {
      double x = place.across - middle.across;
      double y = place.up - middle.up;
      sum += x * x + y * y;
    }
    return sum;
  }

  private double most(Notes n, Measure<Force> load, Measure<Length> distance) {
    Place middle = middle();
    double j = spread(middle);
    double w = load.getValue();
    double e = distance.in(unit);
    double turn = e == 0 ? 0 : w * e / j;
    int worst = 0;
    double most = -1;
    for (int i = 0; i < places.size(); i++) {
      double x = places.get(i).across - middle.across;
      double y = places.get(i).up - middle.up;
      double bears = Math.hypot(w / places.size() + turn * x, turn * y);
      if (bears > most) {
        most = bears;
        worst = i;
      }
    }
    return noted(n, load, distance, places.get(worst), worst);
  }

  /** The same once more for the one that bears most, with its steps. */
  private double noted(
      Notes n, Measure<Force> load, Measure<Length> distance, Place place, int index) {
    Place middle = middle();
    double w = n.value("W", "load", "", load.getValue(), load.getUnit());
    String which = "of fastener " + (index + 1) + " from the middle";
    double x = n.given("x", "place towards the load " + which, place.across - middle.across);
    double y = n.given("y", "place upwards " + which, place.up - middle.up);
    double v =
        n.value("V", "equal share", "W / " + places.size(), w / places.size(), load.getUnit());
    double e = n.given("e", "load from the middle", distance.in(unit));
    if (e == 0) {
      return n.value("R", "force on it", "V", v, load.getUnit());
    }
    StringBuilder formula = new StringBuilder();
    double j = 0;
    for (int i = 0; i < places.size(); i++) {
      double px = places.get(i).across - middle.across;
      double py = places.get(i).up - middle.up;
      String symbol = "r" + Subscripts.of(i + 1);
      double square =
          n.givenArea(symbol, "square of its distance from the middle", px * px + py * py);
      j += square;
      formula.append(i == 0 ? "" : " + ").append(symbol);
    }
    j = n.area("J", "all of them", formula.toString(), j);
    double down = n.value("D", "down", "V + W e x / J", v + w * e * x / j, load.getUnit());
    double side = n.value("H", "sideways", "W e y / J", w * e * y / j, load.getUnit());
    return n.value(
        "R", "force on it", "√(D² + H²)", Math.sqrt(down * down + side * side), load.getUnit());
  }

  /** How many. */
  @Override
  public String toString() {
    return "group of " + places.size() + (places.size() == 1 ? " fastener" : " fasteners");
  }
}
