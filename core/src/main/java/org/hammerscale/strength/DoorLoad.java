package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * What a door, a gate or a shutter does to its hinges: it hangs from them, and its weight out from
 * the pin pulls the upper ones away from the post and pushes the lower ones against it. A stiff
 * leaf on n hinges pulls the one at height y with H = M (y − ȳ) / Σ (y − ȳ)², where M is each load
 * times its distance from the pin, added up, and ȳ the mean height.
 *
 * <pre>{@code
 * DoorLoad gate = DoorLoad.weighing(kilograms(27), metres(0.91)).hungAt(metres(0), metres(1.5));
 * gate.pull(2)                                  // 80.32 N   the upper hinge is pulled off the post
 * gate.pull(1)                                  // -80.32 N  the lower one is pressed on to it
 * gate.withPersonAtTip(kilograms(75)).pull(2)   // 526.5 N   and with somebody swinging on it
 * gate.bearing()                                // 132.4 N (0 N to 264.8 N)  the weight, shared as they fit
 * gate.worst(2)                                 // 276.7 N   if one hinge bears all of it
 * }</pre>
 *
 * <p>Exact for the loads that are counted ({@link #counted}); wind, slamming and friction are not.
 * Forces are in newtons if the mass is metric, in pounds-force if it is in pounds. Source: statics.
 */
public final class DoorLoad {
  private static final Source STATICS =
      Source.computed("balance of moments on a stiff leaf, hinges equally stiff");

  private final Measure<Length> width;
  private final List<Part> parts;
  private final List<Measure<Length>> heights;

  private DoorLoad(Measure<Length> width, List<Part> parts, List<Measure<Length>> heights) {
    this.width = width;
    this.parts = parts;
    this.heights = heights;
  }

  /** A load that is counted: what it is, how it presses down, and how far from the pin. */
  private record Part(String name, Measure<Force> weight, Measure<Length> distance) {}

  /**
   * A door with its middle at half its width.
   *
   * @param door its mass, hardware and all; more than zero
   * @param width its width from the pin to the closing edge, more than zero
   * @return the door, to be hung
   * @throws IllegalArgumentException if either is not more than zero
   */
  public static UnhungDoor weighing(Quantity<Mass> door, Quantity<Length> width) {
    return pressing(StressUnits.weight("door", door), width);
  }

  /**
   * The same by its weight.
   *
   * @param door how it presses down, more than zero
   * @param width its width from the pin to the closing edge, more than zero
   * @return the door, to be hung
   * @throws IllegalArgumentException if either is not more than zero
   */
  public static UnhungDoor pressing(Quantity<Force> door, Quantity<Length> width) {
    Measure<Length> whole = Arguments.positive("width", width);
    return new UnhungDoor(Arguments.positiveForce("door", door), whole);
  }

  static DoorLoad hung(
      Measure<Force> weight, Measure<Length> width, List<Measure<Length>> heights) {
    return new DoorLoad(width, List.of(new Part("the door", weight, width.divide(2))), heights);
  }

  /**
   * The same with its middle elsewhere than at half the width, as of a tapering gate.
   *
   * @param fromPin how far the middle of its weight lies from the pin, not negative
   * @return the load
   * @throws IllegalArgumentException if the distance is negative or more than the width
   */
  public DoorLoad withMiddleAt(Quantity<Length> fromPin) {
    Measure<Length> distance = within("fromPin", fromPin);
    List<Part> changed = new ArrayList<>(parts);
    changed.set(0, new Part(parts.get(0).name, parts.get(0).weight, distance));
    return new DoorLoad(width, List.copyOf(changed), heights);
  }

  /**
   * The same with somebody who stands or hangs on the closing edge: children swing on gates.
   *
   * @param person the mass, more than zero
   * @return the load
   * @throws IllegalArgumentException if the mass is not more than zero
   */
  public DoorLoad withPersonAtTip(Quantity<Mass> person) {
    return with("a person at the tip", StressUnits.weight("person", person), width);
  }

  /**
   * The same with something more on it.
   *
   * @param name what it is
   * @param down how it presses down, more than zero
   * @param fromPin how far from the pin, from zero to the width
   * @return the load
   * @throws IllegalArgumentException if the force is not more than zero or the distance out of
   *     range
   */
  public DoorLoad with(String name, Quantity<Force> down, Quantity<Length> fromPin) {
    List<Part> more = new ArrayList<>(parts);
    more.add(
        new Part(
            Arguments.text("name", name),
            Arguments.positiveForce("down", down),
            within("fromPin", fromPin)));
    return new DoorLoad(width, List.copyOf(more), heights);
  }

  /** {@return how many hinges it hangs on} */
  public int hinges() {
    return heights.size();
  }

  /**
   * All that presses down.
   *
   * @return the sum, exact
   */
  public Measure<Force> weight() {
    return Measure.of(down(Notes.NONE), unit());
  }

  /**
   * How a hinge is pulled away from the post, along the width of the door; negative where it is
   * pushed against it: H = Σ W a (y − ȳ) / Σ (y − ȳ)².
   *
   * @param hinge which one, 1 for the lowest
   * @return the force, exact
   * @throws IllegalArgumentException if there is no such hinge
   */
  public Measure<Force> pull(int hinge) {
    checked(hinge);
    return Measure.of(horizontal(Notes.NONE, hinge), unit());
  }

  /**
   * The part of a hinge's {@link #pull} that runs along the face of the post when the door stands
   * open: H cos θ. Shut or flat it is all of it; screws bear it sideways.
   *
   * @param hinge which one, 1 for the lowest
   * @param opening how far the door stands open from in line with the post's face, 0° to 180°
   * @return the force, exact; negative towards the post's far side
   * @throws IllegalArgumentException if there is no such hinge or the angle is out of range
   */
  public Measure<Force> pullAlongPost(int hinge, Quantity<Angle> opening) {
    double angle = Arguments.angle("opening", opening, 180).in(ShopUnits.RADIAN);
    return pull(hinge).multiply(Math.cos(angle));
  }

  /**
   * The part of a hinge's {@link #pull} that pulls straight out of the face of the post when the
   * door stands open: H sin θ. At a right angle it is all of it; screws bear it by their thread.
   *
   * @param hinge which one, 1 for the lowest
   * @param opening how far the door stands open from in line with the post's face, 0° to 180°
   * @return the force, exact
   * @throws IllegalArgumentException if there is no such hinge or the angle is out of range
   */
  public Measure<Force> pullFromPost(int hinge, Quantity<Angle> opening) {
    double angle = Arguments.angle("opening", opening, 180).in(ShopUnits.RADIAN);
    return pull(hinge).multiply(Math.sin(angle));
  }

  /**
   * What one hinge bears of the weight. Well fitted each bears its share; badly fitted one bears
   * all and the others none, so design each for the whole.
   *
   * @return from nothing, through the equal share, to the whole weight
   */
  public Estimate<Force> bearing() {
    Measure<Force> whole = weight();
    return Estimate.of(whole.withValue(0), whole.divide(hinges()), whole);
  }

  /**
   * What to design a hinge for: its {@link #pull} together with the whole weight, √(H² + W²).
   *
   * @param hinge which one, 1 for the lowest
   * @return the force, on the safe side
   * @throws IllegalArgumentException if there is no such hinge
   */
  public Measure<Force> worst(int hinge) {
    checked(hinge);
    return Measure.of(together(Notes.NONE, hinge), unit());
  }

  /**
   * What a well fitted hinge bears: its {@link #pull} together with its equal share of the weight,
   * √(H² + (W/n)²). Badly fitted it may bear all the weight, see {@link #worst}.
   *
   * @param hinge which one, 1 for the lowest
   * @return the force, exact if each bears its share
   * @throws IllegalArgumentException if there is no such hinge
   */
  public Measure<Force> reaction(int hinge) {
    checked(hinge);
    return Measure.of(shared(Notes.NONE, hinge), unit());
  }

  /**
   * How the force on a well fitted hinge was found.
   *
   * @param hinge which one, 1 for the lowest
   * @return the working of {@link #reaction}
   * @throws IllegalArgumentException if there is no such hinge
   */
  public Working reactionWorking(int hinge) {
    checked(hinge);
    return taken("pull and share of the weight on hinge " + hinge, n -> shared(n, hinge));
  }

  /** {@return which loads were counted, each with its distance from the pin} */
  public List<String> counted() {
    return parts.stream()
        .map(part -> part.name + ": " + part.weight + " at " + part.distance)
        .toList();
  }

  /**
   * How a hinge's pull was found.
   *
   * @param hinge which one, 1 for the lowest
   * @return the working of {@link #pull}
   * @throws IllegalArgumentException if there is no such hinge
   */
  public Working working(int hinge) {
    checked(hinge);
    return taken("pull on hinge " + hinge, n -> horizontal(n, hinge));
  }

  /**
   * How the force to design a hinge for was found.
   *
   * @param hinge which one, 1 for the lowest
   * @return the working of {@link #worst}
   * @throws IllegalArgumentException if there is no such hinge
   */
  public Working worstWorking(int hinge) {
    checked(hinge);
    return taken("pull and weight on hinge " + hinge, n -> together(n, hinge));
  }

  /** {@return what was not counted, and who has to check} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        Caution.limit(
            "counted: "
                + String.join("; ", counted())
                + ". Not counted: wind, slamming, and friction"
                + (parts.size() > 1 ? "" : "; nor a person or child on the gate"),
            STATICS));
    cautions.addAll(LoadCautions.ALL);
    return List.copyOf(cautions);
  }

  private Working taken(String title, Notes.Calculation calculation) {
    return Notes.taken(title, width.getUnit(), calculation)
        .withSource(STATICS)
        .withCautions(cautions());
  }

  private double down(Notes n) {
    double sum = 0;
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < parts.size(); i++) {
      String symbol = "W" + Subscripts.of(i + 1);
      sum += n.value(symbol, parts.get(i).name, "", parts.get(i).weight.in(unit()), unit());
      formula.append(i == 0 ? "" : " + ").append(symbol);
    }
    return n.value("W", "all that presses down", formula.toString(), sum, unit());
  }

  private double horizontal(Notes n, int hinge) {
    down(n);
    Unit<Length> length = width.getUnit();
    double turning = 0;
    StringBuilder moment = new StringBuilder();
    for (int i = 0; i < parts.size(); i++) {
      String index = Subscripts.of(i + 1);
      Part part = parts.get(i);
      double a = n.given("a" + index, part.name + " from the pin", part.distance.in(length));
      turning += part.weight.in(unit()) * a;
      moment.append(i == 0 ? "" : " + ").append("W").append(index).append(" a").append(index);
    }
    double sum = 0;
    StringBuilder total = new StringBuilder();
    StringBuilder squares = new StringBuilder();
    for (int i = 0; i < heights.size(); i++) {
      String symbol = "y" + Subscripts.of(i + 1);
      sum += n.given(symbol, "height of hinge " + (i + 1), heights.get(i).in(length));
      total.append(i == 0 ? "" : " + ").append(symbol);
      squares.append(i == 0 ? "" : " + ").append("(").append(symbol).append(" − m)²");
    }
    double mean =
        n.length("m", "mean height", "(" + total + ") / " + heights.size(), sum / heights.size());
    double spread = 0;
    for (Measure<Length> height : heights) {
      double out = height.in(length) - mean;
      spread += out * out;
    }
    n.area("q", "how far they spread", squares.toString(), spread);
    double out = heights.get(hinge - 1).in(length) - mean;
    String formula = "(" + moment + ") (y" + Subscripts.of(hinge) + " − m) / q";
    return n.value("H", "pull away from the post", formula, turning * out / spread, unit());
  }

  private double together(Notes n, int hinge) {
    double h = horizontal(n, hinge);
    double w = down(Notes.NONE);
    return n.value("F", "pull and all the weight", "√(H² + W²)", Math.sqrt(h * h + w * w), unit());
  }

  private double shared(Notes n, int hinge) {
    double h = horizontal(n, hinge);
    double w = down(Notes.NONE);
    double v = n.value("V", "equal share of it", "W / " + hinges(), w / hinges(), unit());
    return n.value("F", "pull and share", "√(H² + V²)", Math.sqrt(h * h + v * v), unit());
  }

  private Unit<Force> unit() {
    return parts.get(0).weight.getUnit();
  }

  private void checked(int hinge) {
    if (hinge < 1 || hinge > hinges()) {
      throw new IllegalArgumentException(
          "hinge must lie between 1 and "
              + heights.size()
              + ", was "
              + hinge
              + "; 1 is the lowest hinge");
    }
  }

  private Measure<Length> within(String name, Quantity<Length> fromPin) {
    return Arguments.atMost(
        name, Arguments.notNegative(name, fromPin), "the width", width, "measure it from the pin");
  }

  /** The loads, the width and the hinges. */
  @Override
  public String toString() {
    return String.join("; ", counted()) + ", on " + heights.size() + " hinges";
  }
}
