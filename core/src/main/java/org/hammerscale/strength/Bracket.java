package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A bracket on a wall or a post, as of a shelf or a sign: what its load asks of each screw. The
 * stiff plate turns about its foot, so that a screw at height y is pulled with T = W e y / Σ y²,
 * and the foot presses with as much as all of them.
 *
 * <pre>{@code
 * Bracket screwed = Bracket.carrying(newtons(200), millimetres(150)).screwedAt(millimetres(40), millimetres(200));
 * screwed.pull(2)                        // 144.2 N  out of the wall, on the top screw
 * screwed.shear()                        // 100 N    down, on each
 * screwed.resultant(2)                   // 175.5 N  both together
 * screwed.turningOnLowest().pull(2)      // 187.5 N  if the plate bends or the wall is soft
 * }</pre>
 *
 * <p>Exact as statics of a stiff plate on a hard wall; with a thin plate or a soft wall the foot
 * moves up, {@link #turningOnLowest} is a safe bound. Forces are in the load's unit. Source:
 * statics.
 */
public final class Bracket {
  private static final Source STATICS =
      Source.computed("moments about the foot, pulls grow with the height above it");
  private static final Caution GUSTS =
      Caution.danger(
          "a sign swings and tugs in gusts: take the wind's pressure that the local code asks for, and"
              + " have what hangs over people checked by a licensed engineer");
  private static final int MOST = 100;

  private final Measure<Force> load;
  private final Measure<Length> distance;
  private final List<Measure<Length>> heights;
  private final boolean onLowest;

  /** Whether wind pushes it along the wall, so that its heights are distances from its side. */
  private final boolean blown;

  private Bracket(
      Measure<Force> load,
      Measure<Length> distance,
      List<Measure<Length>> heights,
      boolean onLowest,
      boolean blown) {
    this.load = load;
    this.distance = distance;
    this.heights = heights;
    this.onLowest = onLowest;
    this.blown = blown;
  }

  /** A bracket under its load, to be screwed to the wall. */
  public static final class Unscrewed {
    private final Measure<Force> load;
    private final Measure<Length> distance;
    private final boolean blown;

    private Unscrewed(Measure<Force> load, Measure<Length> distance, boolean blown) {
      this.load = load;
      this.distance = distance;
      this.blown = blown;
    }

    /**
     * The bracket with its screws.
     *
     * @param heights each screw's above the foot, 1 to 100, more than zero; two side by side are
     *     told twice
     * @return the bracket
     * @throws IllegalArgumentException if there is none, or a height is not more than zero
     */
    @SafeVarargs
    @SuppressWarnings("varargs")
    public final Bracket screwedAt(Quantity<Length>... heights) {
      Objects.requireNonNull(heights, "heights");
      Arguments.count("number of heights", heights.length, 1, MOST, "tell that of each screw");
      List<Measure<Length>> all = new ArrayList<>();
      for (Quantity<Length> height : heights) {
        all.add(Arguments.positive("height", height));
      }
      return new Bracket(load, distance, List.copyOf(all), false, blown);
    }

    /** Load and distance. */
    @Override
    public String toString() {
      return "bracket "
          + (blown ? "blown on by " : "under ")
          + load
          + " at "
          + distance
          + ", not screwed yet";
    }
  }

  /**
   * A bracket under a load.
   *
   * @param load W, what presses down on it, more than zero
   * @param distance e, from the wall to the load, more than zero
   * @return the bracket, to be screwed to the wall
   * @throws IllegalArgumentException if an argument is not more than zero
   */
  public static Unscrewed carrying(Quantity<Force> load, Quantity<Length> distance) {
    return unscrewed(load, distance, false);
  }

  /**
   * A bracket whose hanging sign the wind blows on, square to it: the same, sideways. Heights are
   * then the distances of the screws from the side that the plate turns about.
   *
   * @param wind its pressure, more than zero
   * @param sign the area that it blows on, more than zero
   * @param distance from the wall to the middle of the sign, more than zero
   * @return the bracket under q A at that distance
   * @throws IllegalArgumentException if an argument is not more than zero
   */
  public static Unscrewed blownOn(
      Quantity<Pressure> wind, Quantity<Area> sign, Quantity<Length> distance) {
    double pascals = Arguments.positivePressure("wind", wind).in(ShopUnits.PASCAL);
    double metres = Arguments.positiveArea("sign", sign).in(ShopUnits.SQUARE_METRE);
    Measure<Force> force = Measure.of(pascals * metres, ShopUnits.NEWTON);
    boolean customary = StressUnits.ofPressure(Measure.from(wind)).equals(StressUnits.CUSTOMARY);
    return unscrewed(customary ? force.to(ShopUnits.POUND_FORCE) : force, distance, true);
  }

  private static Unscrewed unscrewed(
      Quantity<Force> load, Quantity<Length> distance, boolean blown) {
    return new Unscrewed(
        Arguments.positiveForce("load", load), Arguments.positive("distance", distance), blown);
  }

  /**
   * The same where the plate turns about its lowest screw instead of its foot.
   *
   * @return the bracket
   * @throws IllegalArgumentException if all screws are at one height
   */
  public Bracket turningOnLowest() {
    Measure<Length> lowest = lowest();
    if (heights.stream().noneMatch(height -> height.isGreaterThan(lowest))) {
      throw new IllegalArgumentException(
          "heights must differ for a plate that turns on its lowest screw, was all at "
              + lowest
              + "; set a screw higher");
    }
    return new Bracket(load, distance, heights, true, blown);
  }

  /** {@return what presses down on it} */
  public Measure<Force> load() {
    return load;
  }

  /** {@return from the wall to the load} */
  public Measure<Length> distance() {
    return distance;
  }

  /** {@return each screw's height above the foot, as they were told} */
  public List<Measure<Length>> heights() {
    return heights;
  }

  /** {@return how high above the foot the plate turns: not at all, or at its lowest screw} */
  public Measure<Length> turningHeight() {
    return onLowest ? lowest() : distance.withValue(0);
  }

  /**
   * How a screw is pulled out of the wall.
   *
   * @param screw which one, 1 for the first told
   * @return the force, exact for a stiff plate
   * @throws IllegalArgumentException if there is no such screw
   */
  public Measure<Force> pull(int screw) {
    checked(screw);
    return load.withValue(pull(Notes.NONE, screw));
  }

  /**
   * How the foot presses on the wall: as all screws together are pulled.
   *
   * @return the force, exact for a stiff plate
   */
  public Measure<Force> footPush() {
    double sum = 0;
    for (int i = 1; i <= heights.size(); i++) {
      sum += pull(Notes.NONE, i);
    }
    return load.withValue(sum);
  }

  /**
   * What each screw bears down the wall, if they share alike.
   *
   * @return W / n, exact
   */
  public Measure<Force> shear() {
    return load.divide(heights.size());
  }

  /**
   * Pull and shear of a screw together.
   *
   * @param screw which one, 1 for the first told
   * @return √(T² + V²), exact
   * @throws IllegalArgumentException if there is no such screw
   */
  public Measure<Force> resultant(int screw) {
    checked(screw);
    return load.withValue(resultant(Notes.NONE, screw));
  }

  /** {@return that plate and wall give, of gusts, and that no design is certified} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (blown) {
      cautions.add(GUSTS);
    }
    cautions.add(
        Caution.limit(
            "a thin plate bends and a soft wall gives, so that the foot moves up and the top screw is"
                + " pulled more: reckon it turning on its lowest screw as well; screws share the load"
                + " down the wall unequally",
            STATICS));
    cautions.addAll(LoadCautions.OF_STRENGTH);
    return List.copyOf(cautions);
  }

  /**
   * How the pull of a screw was found.
   *
   * @param screw which one, 1 for the first told
   * @return the working of {@link #pull}
   * @throws IllegalArgumentException if there is no such screw
   */
  public Working working(int screw) {
    checked(screw);
    return taken("pull " + by() + "on screw " + screw + turning(), n -> pull(n, screw));
  }

  /**
   * How pull and shear of a screw together were found.
   *
   * @param screw which one, 1 for the first told
   * @return the working of {@link #resultant}
   * @throws IllegalArgumentException if there is no such screw
   */
  public Working resultantWorking(int screw) {
    checked(screw);
    return taken(
        "pull and shear " + by() + "of screw " + screw + turning(), n -> resultant(n, screw));
  }

  private String by() {
    return blown ? "by the wind " : "";
  }

  private String turning() {
    return onLowest ? ", the plate turning on its lowest" : "";
  }

  private Working taken(String title, Notes.Calculation calculation) {
    return Notes.taken(title, distance.getUnit(), calculation)
        .withSource(STATICS)
        .withCautions(cautions());
  }

  private double pull(Notes n, int screw) {
    Unit<Length> unit = distance.getUnit();
    double w = n.value("W", blown ? "wind" : "load", "", load.getValue(), load.getUnit());
    double e = n.given("e", (blown ? "wind" : "load") + " from the wall", distance.getValue());
    double foot = onLowest ? lowest().in(unit) : 0;
    double squares = 0;
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < heights.size(); i++) {
      String symbol = "y" + Subscripts.of(i + 1);
      String place = (blown ? "from its side, screw " : "height of screw ") + (i + 1);
      double y = n.given(symbol, place, heights.get(i).in(unit) - foot);
      squares += y * y;
      formula.append(i == 0 ? "" : " + ").append(symbol).append("²");
    }
    double q = n.area("q", "squares added up", formula.toString(), squares);
    double y = heights.get(screw - 1).in(unit) - foot;
    String pulled = "W e y" + Subscripts.of(screw) + " / q";
    return n.value("T", "pull out of the wall", pulled, w * e * y / q, load.getUnit());
  }

  private double resultant(Notes n, int screw) {
    double t = pull(n, screw);
    double w = load.getValue();
    double v =
        n.value(
            "V",
            blown ? "share along the wall" : "share down",
            "W / " + heights.size(),
            w / heights.size(),
            load.getUnit());
    return n.value("R", "both together", "√(T² + V²)", Math.sqrt(t * t + v * v), load.getUnit());
  }

  private Measure<Length> lowest() {
    Measure<Length> lowest = heights.get(0);
    for (Measure<Length> height : heights) {
      lowest = height.isLessThan(lowest) ? height : lowest;
    }
    return lowest;
  }

  private void checked(int screw) {
    Arguments.count("screw", screw, 1, heights.size(), "1 is the first that was told");
  }

  /** Load, distance and screws. */
  @Override
  public String toString() {
    return (blown ? "bracket blown on by " : "bracket under ")
        + load
        + " at "
        + distance
        + ", "
        + heights.size()
        + (heights.size() == 1 ? " screw" : " screws");
  }
}
