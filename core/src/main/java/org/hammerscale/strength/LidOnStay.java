package org.hammerscale.strength;

import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * What a lid that is held up by a stay (prop) does to the stay and to its hinges, all of them
 * together: made by {@link LidLoad#onStay}.
 *
 * <pre>{@code
 * LidOnStay held = LidLoad.pressing(newtons(200), millimetres(600)).onStay(millimetres(250), degrees(30));
 * held.stay()               // 480 N
 * held.hinges()             // 417.6 N
 * held.working().result()   // 417.6 N
 * held.cautions().size()    // 2
 * }</pre>
 *
 * <p>Exact for a stiff lid that turns without friction. Hinges share it unequally unless they are
 * well fitted. Source: statics.
 */
public final class LidOnStay {
  private static final Source STATICS = Source.computed("balance of forces and moments on the lid");

  private final LidLoad lid;
  private final Measure<Length> stayAt;
  private final Measure<Angle> slope;
  private final Unit<Length> length;

  LidOnStay(LidLoad lid, Measure<Length> stayAt, Measure<Angle> slope) {
    this.lid = lid;
    this.stayAt = stayAt;
    this.slope = slope;
    this.length = lid.depth.getUnit();
  }

  /**
   * What the stay pushes with: S = W e cos φ / (s sin β); negative if it must pull, as it must past
   * upright.
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
