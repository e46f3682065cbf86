package org.hammerscale.hinge;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The bore that a pin wants: the bare pin, its running clearance, and four coats of finish, since
 * oil, wax, paint or zinc lies on both sides of the pin and on both sides of the bore. Other names:
 * hole for the pin, eye size, paint clearance.
 *
 * <pre>{@code
 * Bore bore = Bore.forPin(inches("3/8")).clearing(inches("1/64")).coated(inches(0.002));
 * bore.diameter()                                                 // 0.3986 in
 * Bore.forPin(millimetres(12)).clearing(millimetres(0.4)).diameter()    // 12.4 mm
 * bore.working().result()                                         // 0.3986 in
 * bore.pin()   // 3/8 in
 * bore.clearance()   // 1/64 in
 * bore.coat()   // 0.002 in
 * }</pre>
 *
 * <p>B = p + s + 4 f, exact, cold and before the finish is laid on, in the pin's unit. Source:
 * plane geometry; how much clearance and how thick a coat, the caller says.
 */
public final class Bore {
  private final Measure<Length> pin;
  private final Measure<Length> clearance;
  private final Measure<Length> coat;
  private final Unit<Length> unit;

  private Bore(Measure<Length> pin, Measure<Length> clearance, Measure<Length> coat) {
    this.pin = pin;
    this.clearance = clearance;
    this.coat = coat;
    this.unit = pin.getUnit();
  }

  /**
   * A bore as tight as the bare pin, until it is told more.
   *
   * @param pin the diameter of the bare pin, cold; more than zero
   * @return the bore
   * @throws IllegalArgumentException if the pin is not more than zero
   */
  public static Bore forPin(Quantity<Length> pin) {
    Measure<Length> bare = Arguments.positive("pin", pin);
    return new Bore(bare, bare.withValue(0), bare.withValue(0));
  }

  /**
   * The same with a running clearance.
   *
   * @param clearance how much wider than the pin, across, once both are finished; not negative
   * @return the bore
   * @throws IllegalArgumentException if the clearance is negative
   */
  public Bore clearing(Quantity<Length> clearance) {
    return new Bore(pin, Arguments.notNegative("clearance", clearance), coat);
  }

  /**
   * The same with room for a finish on pin and bore.
   *
   * @param coat the thickness of one coat; not negative, zero if both stay bare
   * @return the bore
   * @throws IllegalArgumentException if the thickness is negative
   */
  public Bore coated(Quantity<Length> coat) {
    return new Bore(pin, clearance, Arguments.notNegative("coat", coat));
  }

  /** {@return the diameter of the bare pin} */
  public Measure<Length> pin() {
    return pin;
  }

  /** {@return the running clearance, across} */
  public Measure<Length> clearance() {
    return clearance;
  }

  /** {@return the thickness of one coat of finish} */
  public Measure<Length> coat() {
    return coat;
  }

  /**
   * The diameter of the bare bore: p + s + 4 f.
   *
   * @return the diameter, exact, cold, in the pin's unit
   */
  public Measure<Length> diameter() {
    return Measure.of(diameter(Notes.NONE), unit);
  }

  /** {@return how the diameter was found} */
  public Working working() {
    return Notes.taken("bore for a pin", unit, this::diameter)
        .withSource(Source.computed("a coat lies on both sides of the pin and of the bore"));
  }

  private double diameter(Notes n) {
    double p = n.given("p", "bare pin", pin.in(unit));
    double s = n.given("s", "running clearance", clearance.in(unit));
    double f = n.given("f", "one coat of finish", coat.in(unit));
    return n.length("B", "bare bore", "p + s + 4 f", p + s + 4 * f);
  }

  /** Its diameter and the pin. */
  @Override
  public String toString() {
    return "bore of " + diameter() + " for a pin of " + pin;
  }
}
