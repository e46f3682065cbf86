package org.hammerscale.hinge;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The hanging edge of a door whose pin lies inboard of it, as with strap hinges on boards. What
 * lies beyond the pin swings the other way when the door opens: the back corner digs behind the
 * door, on a circle about the pin, and binds on a stop or rebate that leaves it no room.
 *
 * <pre>{@code
 * DoorEdge edge = DoorEdge.of(inches(1)).pinInboard(inches("1 1/2")).pinProud(inches("1/2"));
 * edge.roomAtStop()                                    // 0.6213 in
 * edge.roomAtJamb()                                    // 0 in
 * DoorEdge sunk = DoorEdge.of(inches(2)).pinInboard(inches(1)).pinSunk(inches("3/4"));
 * sunk.roomAtStop()                                    // 0.3508 in
 * sunk.roomAtJamb()                                    // 1/4 in
 * edge.roomAtStopWorking().result()   // 0.6213 in
 * edge.roomAtJambWorking().result()   // 0 in
 * }</pre>
 *
 * <p>The pin is the centre, the back corner lies x beyond it and y behind it: y the door's
 * thickness and what the pin stands proud of the face. The corner reaches √(x² + y²) behind the pin
 * when the door is open by atan(x/y), most often a few degrees. Exact, in the thickness's unit, for
 * a door that opens that far or further. Source: plane geometry.
 */
public final class DoorEdge {
  private static final Source GEOMETRY =
      Source.computed("plane geometry: a corner of the door on a circle about the pin");

  private final Measure<Length> thickness;
  private final Measure<Length> inboard;
  private final Measure<Length> proud;
  private final Unit<Length> unit;

  private DoorEdge(Measure<Length> thickness, Measure<Length> inboard, Measure<Length> proud) {
    this.thickness = thickness;
    this.inboard = inboard;
    this.proud = proud;
    this.unit = thickness.getUnit();
  }

  /**
   * A door with the pin in line with its edge and its face.
   *
   * @param thickness of the door, more than zero
   * @return the edge
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public static DoorEdge of(Quantity<Length> thickness) {
    Measure<Length> thick = Arguments.positive("thickness of door", thickness);
    return new DoorEdge(thick, thick.withValue(0), thick.withValue(0));
  }

  /**
   * The same with the pin in from the edge.
   *
   * @param distance from the hanging edge to the pin's centre, along the face; zero or more
   * @return the edge
   * @throws IllegalArgumentException if the distance is negative
   */
  public DoorEdge pinInboard(Quantity<Length> distance) {
    Objects.requireNonNull(distance, "distance");
    return new DoorEdge(thickness, Arguments.notNegative("pin inboard", distance), proud);
  }

  /**
   * The same with the pin before the face.
   *
   * @param distance from the face that it opens toward to the pin's centre, zero or more
   * @return the edge
   * @throws IllegalArgumentException if the distance is negative
   */
  public DoorEdge pinProud(Quantity<Length> distance) {
    Objects.requireNonNull(distance, "distance");
    return new DoorEdge(thickness, inboard, Arguments.notNegative("pin proud", distance));
  }

  /**
   * The same with the pin within the thickness.
   *
   * @param depth from the face that it opens toward to the pin's centre, zero up to half the
   *     thickness
   * @return the edge
   * @throws IllegalArgumentException if the depth is negative or more than half the thickness
   */
  public DoorEdge pinSunk(Quantity<Length> depth) {
    Objects.requireNonNull(depth, "depth");
    Measure<Length> sunk = Arguments.notNegative("pin sunk", depth);
    Measure<Length> half = thickness.divide(2);
    if (sunk.isGreaterThan(half)) {
      throw new IllegalArgumentException(
          "pin sunk must be at most half the door's thickness, "
              + half
              + ", was "
              + sunk
              + "; measure it from the face that the door opens toward");
    }
    return new DoorEdge(thickness, inboard, sunk.negate());
  }

  /**
   * The room that the edge needs behind the shut door: √(x² + y²) − y.
   *
   * @return how far the back corner digs behind the door's back, exact, in the thickness's unit
   */
  public Measure<Length> roomAtStop() {
    return Measure.of(roomAtStop(Notes.NONE), unit);
  }

  /** {@return how the room at the stop was found} */
  public Working roomAtStopWorking() {
    return Notes.taken("room behind a door's hanging edge", unit, this::roomAtStop)
        .withSource(GEOMETRY);
  }

  /**
   * The room that the edge needs beside it: √(x² + s²) − x for a pin sunk by s below the face,
   * which the front corner turns about; none for a pin on the face or proud of it.
   *
   * @return how far the front corner comes out toward the jamb, exact, in the thickness's unit
   */
  public Measure<Length> roomAtJamb() {
    return Measure.of(roomAtJamb(Notes.NONE), unit);
  }

  /** {@return how the room at the jamb was found} */
  public Working roomAtJambWorking() {
    return Notes.taken("room beside a door's hanging edge", unit, this::roomAtJamb)
        .withSource(GEOMETRY);
  }

  private double roomAtStop(Notes n) {
    double x = n.given("x", "pin from the hanging edge", inboard.in(unit));
    double t = n.given("T", "thickness of the door", thickness.in(unit));
    double p = n.given("p", "pin before the face", proud.in(unit));
    double y = n.length("y", "pin from the door's back", "T + p", t + p);
    double r = n.length("r", "circle of the back corner", "√(x² + y²)", Math.sqrt(x * x + y * y));
    return n.length("k", "room behind the door", "r − y", r - y);
  }

  private double roomAtJamb(Notes n) {
    double x = n.given("x", "pin from the hanging edge", inboard.in(unit));
    double s = n.given("s", "pin below the face", Math.max(-proud.in(unit), 0));
    double r = n.length("r", "circle of the front corner", "√(x² + s²)", Math.sqrt(x * x + s * s));
    return n.length("k", "room beside the door", "r − x", r - x);
  }

  /** Thickness of the door and place of the pin. */
  @Override
  public String toString() {
    return "door of "
        + thickness
        + ", pin "
        + inboard
        + " inboard and "
        + (proud.getValue() < 0 ? proud.negate() + " below" : proud + " before")
        + " the face";
  }
}
