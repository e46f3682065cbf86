package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.hinge.Pin;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The upright pin of a hook, held at its shoulder alone, with a barrel that turns on it: how high
 * it stands and what bends it. With its shank it is a {@link HingeHook}; a pin held on both sides
 * of its knuckles is a {@link PinLoad}.
 *
 * <pre>{@code
 * HookPin pin = HookPin.of(Pin.of(millimetres(12)), millimetres(40));
 * pin.height()                                     // 40 mm
 * pin.bending(newtons(300))                        // 35.37 MPa
 * pin.onWashers(millimetres(3)).bending(newtons(300))    // 40.67 MPa
 * }</pre>
 *
 * <p>The stress is that of a cantilever, exact for one level force at the middle of the barrel; it
 * comes out in MPa, or in psi for a force in pounds-force. Source: bending of a cantilever.
 */
public final class HookPin {
  static final Source CANTILEVER = Source.computed("bending of a cantilever");

  private final Pin pin;
  private final Measure<Length> barrelWidth;
  private final Measure<Length> lift;

  private HookPin(Pin pin, Measure<Length> barrelWidth, Measure<Length> lift) {
    this.pin = pin;
    this.barrelWidth = barrelWidth;
    this.lift = lift;
  }

  /**
   * A pin whose barrel rests on the shoulder.
   *
   * @param pin its pin
   * @param barrelWidth the width of the barrel that turns on it, more than zero
   * @return the pin on its shoulder, without washers
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static HookPin of(Pin pin, Quantity<Length> barrelWidth) {
    Measure<Length> width = Arguments.positive("barrel width", barrelWidth);
    return new HookPin(Objects.requireNonNull(pin, "pin"), width, width.withValue(0));
  }

  /**
   * The same with washers under the barrel, which lift it off the shoulder.
   *
   * @param stack the thickness of all of them, not negative
   * @return the pin
   * @throws IllegalArgumentException if the thickness is negative
   */
  public HookPin onWashers(Quantity<Length> stack) {
    return new HookPin(pin, barrelWidth, Arguments.notNegative("stack", stack));
  }

  /** {@return the round pin itself} */
  public Pin pin() {
    return pin;
  }

  /** {@return its diameter} */
  public Measure<Length> diameter() {
    return pin.diameter();
  }

  /** {@return the width of the barrel on it} */
  public Measure<Length> barrelWidth() {
    return barrelWidth;
  }

  /** {@return how far washers lift the barrel off the shoulder; zero without any} */
  public Measure<Length> lift() {
    return lift;
  }

  /**
   * The height of the pin above its shoulder that the barrel and its washers take.
   *
   * @return the height, exact, in the barrel width's unit; add what shall stand out above
   */
  public Measure<Length> height() {
    return barrelWidth.add(lift);
  }

  /**
   * The bending stress of the pin where it leaves the shoulder, under a level force at the middle
   * of the barrel: σ = 32 F (g + w/2) / (π d³).
   *
   * @param force the level force, more than zero
   * @return the stress, exact for that cantilever
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public Measure<Pressure> bending(Quantity<Force> force) {
    return StressUnits.stress("force", force, this::bending);
  }

  /** {@return against quenching; no certified design} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(pin.cautions());
    cautions.addAll(LoadCautions.OF_STRENGTH);
    return List.copyOf(cautions);
  }

  /**
   * How the bending stress was found.
   *
   * @param force the level force, more than zero
   * @return the working of {@link #bending}
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public Working bendingWorking(Quantity<Force> force) {
    return StressUnits.working("pin of a hook", "force", force, this::bending)
        .withSource(CANTILEVER)
        .withCautions(cautions());
  }

  private double bending(Notes n, StressUnits units, Measure<Force> force) {
    double f = units.givenForce(n, "level force", force);
    double w = units.given(n, "w", "width of the barrel", barrelWidth);
    double g = units.given(n, "g", "washers under it", lift);
    double d = units.given(n, "d", "diameter of the pin", pin.diameter());
    double m = units.moment(n, "M", "bending moment", "F (g + w / 2)", f * (g + w / 2));
    String formula = "32 M / (π d³)";
    return units.pressure(n, "σ", "bending stress", formula, 32 * m / (Math.PI * (d * d * d)));
  }

  /** The pin and what turns on it. */
  @Override
  public String toString() {
    return pin
        + " under a barrel of "
        + barrelWidth
        + (lift.getValue() == 0 ? "" : ", lifted " + lift);
  }
}
