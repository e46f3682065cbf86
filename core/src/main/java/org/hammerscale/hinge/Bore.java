package org.hammerscale.hinge;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * The bore that a pin wants: the bare pin, its running clearance, and four coats of finish, since
 * oil, wax, paint or zinc lies on both sides of the pin and on both sides of the bore. Other names:
 * {@index "pin hole"}, {@index "eye size"}, {@index "paint clearance"}.
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
  private final @Nullable Measure<Length> least;
  private final @Nullable Measure<Length> most;
  private final Unit<Length> unit;

  private Bore(
      Measure<Length> pin,
      Measure<Length> clearance,
      Measure<Length> coat,
      @Nullable Measure<Length> least,
      @Nullable Measure<Length> most) {
    this.pin = pin;
    this.clearance = clearance;
    this.coat = coat;
    this.least = least;
    this.most = most;
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
    return new Bore(bare, bare.withValue(0), bare.withValue(0), null, null);
  }

  /**
   * The same with a running clearance.
   *
   * @param clearance how much wider than the pin, across, once both are finished; not negative
   * @return the bore
   * @throws IllegalArgumentException if the clearance is negative
   */
  public Bore clearing(Quantity<Length> clearance) {
    return new Bore(pin, Arguments.notNegative("clearance", clearance), coat, null, null);
  }

  /**
   * The same with room for a finish on pin and bore.
   *
   * @param coat the thickness of one coat; not negative, zero if both stay bare
   * @return the bore
   * @throws IllegalArgumentException if the thickness is negative
   */
  public Bore coated(Quantity<Length> coat) {
    return new Bore(pin, clearance, Arguments.notNegative("coat", coat), least, most);
  }

  /**
   * The same with the clearances that will still do, since a drift comes in sizes: unless they are
   * told, half and one and a half times the clearance asked for, which is our own judgement.
   *
   * @param least the tightest that still runs, at most the clearance
   * @return the bore; say the most with {@link #upToClearance}
   * @throws IllegalArgumentException if it is negative or more than the clearance
   */
  public Bore fromClearance(Quantity<Length> least) {
    Measure<Length> tight = Arguments.notNegative("least", least);
    Arguments.atMost("least", tight, "the clearance", clearance, "ask for a wider clearance");
    return new Bore(pin, clearance, coat, tight, most);
  }

  /**
   * The same with the loosest clearance that will still do.
   *
   * @param most at least the clearance
   * @return the bore
   * @throws IllegalArgumentException if it is less than the clearance
   */
  public Bore upToClearance(Quantity<Length> most) {
    Measure<Length> loose = Arguments.notNegative("most", most);
    Arguments.atLeast("most", loose, "the clearance", clearance, "ask for a tighter clearance");
    return new Bore(pin, clearance, coat, least, loose);
  }

  /** {@return the diameter of the bare pin} */
  public Measure<Length> pin() {
    return pin;
  }

  /** {@return the running clearance, across} */
  public Measure<Length> clearance() {
    return clearance;
  }

  /** {@return the tightest clearance that will do} */
  public Measure<Length> leastClearance() {
    return least == null ? clearance.divide(2) : least;
  }

  /** {@return the loosest clearance that will do} */
  public Measure<Length> mostClearance() {
    return most == null ? clearance.multiply(1.5) : most;
  }

  /**
   * The clearance that a bore leaves once both are finished: B − p − 4 f.
   *
   * @param bore the diameter that it came out at, bare and cold; more than zero
   * @return the clearance, exact, in the pin's unit; negative if the pin does not go in
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public Measure<Length> clearanceLeftBy(Quantity<Length> bore) {
    Measure<Length> wide = Arguments.positive("bore", bore).to(unit);
    return wide.subtract(pin).subtract(coat.multiply(4));
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
