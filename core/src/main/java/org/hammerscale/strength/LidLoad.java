package org.hammerscale.strength;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * What a chest's lid or a hatch does to its hinges, all of them together. Shut, the front edge
 * bears its part. Held up by a {@index stay} ({@index prop}), it is {@link OnStay}: the stay
 * presses the lid up close to the pin, and the hinges must hold it down, far more than the lid
 * weighs.
 *
 * <pre>{@code
 * LidLoad lid = LidLoad.pressing(newtons(200), millimetres(600));
 * lid.shut()                             // 100 N    half on the hinges, half on the front edge
 * LidLoad.OnStay held = lid.raisedTo(degrees(0)).onStay(millimetres(250), degrees(30));
 * held.stay()                            // 480 N    a stay so flat is pressed hard
 * held.hinges()                          // 417.6 N  and the hinges with it
 * }</pre>
 *
 * <p>Exact for a stiff lid that turns without friction. Hinges share it unequally unless they are
 * well fitted. Source: statics.
 */
public final class LidLoad {
  private static final Source STATICS = Source.computed("balance of forces and moments on the lid");

  private final Measure<Force> weight;
  private final Measure<Length> depth;
  private final Measure<Length> middle;
  private final Measure<Angle> raised;

  private LidLoad(
      Measure<Force> weight, Measure<Length> depth, Measure<Length> middle, Measure<Angle> raised) {
    this.weight = weight;
    this.depth = depth;
    this.middle = middle;
    this.raised = raised;
  }

  /**
   * A lid that lies shut, with its middle at half its depth.
   *
   * @param lid its mass, more than zero
   * @param depth from the pin to the front edge, more than zero
   * @return the load
   * @throws IllegalArgumentException if either is not more than zero
   */
  public static LidLoad weighing(Quantity<Mass> lid, Quantity<Length> depth) {
    return pressing(StressUnits.weight("lid", lid), depth);
  }

  /**
   * The same by its weight.
   *
   * @param lid how it presses down, more than zero
   * @param depth from the pin to the front edge, more than zero
   * @return the load
   * @throws IllegalArgumentException if either is not more than zero
   */
  public static LidLoad pressing(Quantity<Force> lid, Quantity<Length> depth) {
    Measure<Length> front = Arguments.positive("depth", depth);
    return new LidLoad(
        Arguments.positiveForce("lid", lid),
        front,
        front.divide(2),
        Measure.of(0, ShopUnits.DEGREE));
  }

  /**
   * The same with its middle elsewhere than at half its depth.
   *
   * @param fromPin how far the middle of its weight lies from the pin, from zero to the depth
   * @return the load
   * @throws IllegalArgumentException if it is out of range
   */
  public LidLoad withMiddleAt(Quantity<Length> fromPin) {
    return new LidLoad(weight, depth, within("fromPin", fromPin), raised);
  }

  /**
   * The same raised.
   *
   * @param angle how far above level, 0° to 180°
   * @return the load
   * @throws IllegalArgumentException if the angle is out of range
   */
  public LidLoad raisedTo(Quantity<Angle> angle) {
    return new LidLoad(weight, depth, middle, Arguments.angle("angle", angle, 180));
  }

  /**
   * This lid held by a stay.
   *
   * @param fromPin where along the lid the stay holds it, more than zero, up to the depth
   * @param toLid the angle between the stay's push and the lid, seen from the front edge: less than
   *     90° pushes the lid away from the pin, more pushes it on the pin; more than 0°, below 180°
   * @return the lid on its stay
   * @throws IllegalArgumentException if either is out of range
   */
  public OnStay onStay(Quantity<Length> fromPin, Quantity<Angle> toLid) {
    Measure<Length> at = Arguments.positive("fromPin", within("fromPin", fromPin));
    Measure<Angle> angle = Arguments.angle("toLid", toLid, 180);
    double sine = Math.sin(angle.in(ShopUnits.RADIAN));
    if (!(sine > 1e-9)) {
      throw new IllegalArgumentException(
          "toLid must lie between 0° and 180°, was "
              + angle
              + "; a stay along the lid cannot hold it, set its foot elsewhere");
    }
    return new OnStay(this, at, angle);
  }

  /**
   * What the hinges bear of a level lid that rests on its front edge: W (1 − e / b); half the
   * weight if the middle lies at half the depth.
   *
   * @return the force, exact
   */
  public Measure<Force> shut() {
    return Measure.of(resting(Notes.NONE), unit());
  }

  /** {@return how {@link #shut} was found} */
  public Working shutWorking() {
    return taken("hinges of a lid that rests on its front edge", this::resting);
  }

  /** {@return who has to check} */
  public List<Caution> cautions() {
    return LoadCautions.ALL;
  }

  private Working taken(String title, Notes.Calculation calculation) {
    return Notes.taken(title, depth.getUnit(), calculation)
        .withSource(STATICS)
        .withCautions(cautions());
  }

  private double resting(Notes n) {
    double w = n.value("W", "weight of the lid", "", weight.in(unit()), unit());
    double e = n.given("e", "its middle from the pin", middle.in(depth.getUnit()));
    double b = n.given("b", "front edge from the pin", depth.in(depth.getUnit()));
    return n.value("V", "borne by the hinges", "W (1 − e / b)", w * (1 - e / b), unit());
  }

  private Unit<Force> unit() {
    return weight.getUnit();
  }

  private Measure<Length> within(String name, Quantity<Length> fromPin) {
    return Arguments.atMost(
        name,
        Arguments.notNegative(name, fromPin),
        "the lid's depth",
        depth,
        "measure it from the pin");
  }

  /** Weight, depth, how far it is raised and on what. */
  @Override
  public String toString() {
    return "lid of " + weight + ", " + depth + " deep, raised " + raised;
  }

  /**
   * What a lid that is held up by a stay (prop) does to the stay and to its hinges, all of them
   * together: made by {@link LidLoad#onStay}.
   *
   * <p>Exact for a stiff lid that turns without friction. Hinges share it unequally unless they are
   * well fitted. Source: statics.
   */
  public static final class OnStay {
    private final LidLoad lid;
    private final Measure<Length> stayAt;
    private final Measure<Angle> slope;
    private final Unit<Length> length;

    private OnStay(LidLoad lid, Measure<Length> stayAt, Measure<Angle> slope) {
      this.lid = lid;
      this.stayAt = stayAt;
      this.slope = slope;
      this.length = lid.depth.getUnit();
    }

    /**
     * What the stay pushes with: S = W e cos φ / (s sin β); negative if it must pull, as it must
     * past upright.
     *
     * @return the force, exact
     */
    public Measure<Force> stay() {
      return Measure.of(push(Notes.NONE), unit());
    }

    /**
     * What all hinges together bear: the weight and the stay's push added as arrows.
     *
     * @return the force, exact
     */
    public Measure<Force> hinges() {
      return Measure.of(held(Notes.NONE), unit());
    }

    /** {@return how {@link #hinges} was found, {@link #stay} on the way} */
    public Working working() {
      return Notes.taken("hinges of a lid on its stay", length, this::held)
          .withSource(STATICS)
          .withCautions(cautions());
    }

    /** {@return a warning if the stay loads the hinges beyond the weight; who has to check} */
    public List<Caution> cautions() {
      if (!hinges().isGreaterThan(lid.weight)) {
        return LoadCautions.ALL;
      }
      return List.of(
          Caution.limit(
              "the stay loads the hinges with "
                  + hinges()
                  + ", more than the lid's "
                  + lid.weight
                  + "; hold the lid farther from the pin, or squarer to it",
              STATICS),
          LoadCautions.ALL.get(0));
    }

    private double push(Notes n) {
      double w = n.value("W", "weight of the lid", "", lid.weight.in(unit()), unit());
      double e = n.given("e", "its middle from the pin", lid.middle.in(length));
      double p = n.value("φ", "raised by", "", lid.raised.in(ShopUnits.RADIAN), ShopUnits.RADIAN);
      double s = n.given("s", "stay from the pin", stayAt.in(length));
      double b = n.value("β", "stay to lid", "", slope.in(ShopUnits.RADIAN), ShopUnits.RADIAN);
      double push = w * e * Math.cos(p) / (s * Math.sin(b));
      return n.value("S", "push of the stay", "W e cos(φ) / (s sin(β))", push, unit());
    }

    private double held(Notes n) {
      double push = push(n);
      double w = lid.weight.in(unit());
      double p = lid.raised.in(ShopUnits.RADIAN);
      double b = slope.in(ShopUnits.RADIAN);
      double along = push * Math.cos(b) - w * Math.sin(p);
      n.value("X", "along the lid", "S cos(β) − W sin(φ)", along, unit());
      double across = push * Math.sin(b) - w * Math.cos(p);
      n.value("Y", "across the lid", "S sin(β) − W cos(φ)", across, unit());
      double both = Math.sqrt(along * along + across * across);
      return n.value("F", "borne by the hinges", "√(X² + Y²)", both, unit());
    }

    private Unit<Force> unit() {
      return lid.weight.getUnit();
    }

    /** The lid, and the stay that holds it. */
    @Override
    public String toString() {
      return lid + ", on a stay " + stayAt + " from the pin at " + slope;
    }
  }
}
