package org.hammerscale.latch;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.jspecify.annotations.Nullable;

/**
 * Asks for a {@link ThumbLatch}, one demand after the other; what is not said stays usual: the
 * lever's pivot at the door's outer face, the thumb as far out of it as the door is thick, 10 mm of
 * travel, the contact a third and the catch nine tenths along the bar, the bar's pivot in its
 * middle, a nose as high as the bar with a quarter of it free below, 1 mm of room in its guide, and
 * 45 mm for fingers behind the handle. Each method gives back this builder.
 *
 * <pre>{@code
 * Bar bar = Bar.of(Section.flat(inches("3/4"), inches("1/4")), Material.MILD_STEEL);
 * ThumbLatchBuilder asked = ThumbLatch.through(inches("1 1/2"), bar, inches(8));
 * asked.thumbAt(inches("1 1/4"), inches("3/8")).latch().lift()   // 1.4998 in
 * asked.closing(Closing.LEFT).latch().places().get(2)            // -7.2 in  the catch, to the left
 * }</pre>
 */
public final class ThumbLatchBuilder {
  private static final Measure<Length> TRAVEL = Measures.millimetres(10);
  private static final Measure<Length> FINGERS = Measures.millimetres(45);
  private static final Measure<Length> GRIP = Measures.millimetres(110);

  final Measure<Length> door;
  final Bar bar;
  final Measure<Length> length;
  final Unit<Length> unit;
  Measure<Length> pivotOut;
  Measure<Length> thumb;
  Measure<Length> travel;
  Measure<Length> contact;
  Measure<Length> catchAt;
  Measure<Length> edgeBelow;
  Measure<Length> drop;
  Measure<Length> rise;
  Measure<Length> over;
  Measure<Length> room;
  Measure<Length> fingers;
  Measure<Length> grip;
  LatchCatch nose;
  Bar lever;
  Bar handle;
  Bar guide;
  boolean backPlate;
  Closing closing = Closing.RIGHT;

  @Nullable Graduation<Length> rule;

  ThumbLatchBuilder(Quantity<Length> door, Bar bar, Quantity<Length> length) {
    this.door = Arguments.positive("door", door);
    this.unit = this.door.getUnit();
    this.length = Arguments.positive("length", length).to(unit);
    this.bar = Objects.requireNonNull(bar, "bar");
    Measure<Length> none = this.door.withValue(0);
    Measure<Length> deep = bar.section().width().to(unit);
    this.pivotOut = none;
    this.thumb = this.door;
    this.travel = TRAVEL.to(unit);
    this.contact = this.length.divide(3);
    this.catchAt = this.length.multiply(0.9);
    this.edgeBelow = deep.divide(2);
    this.drop = none;
    this.rise = none;
    this.over = none;
    this.room = Measures.millimetres(1).to(unit);
    this.fingers = FINGERS.to(unit);
    this.grip = GRIP.to(unit);
    this.nose = LatchCatch.standing(deep).under(deep.divide(4));
    this.lever = bar;
    this.handle = bar;
    this.guide = bar;
  }

  /**
   * The thumb piece.
   *
   * @param fromPivot from its pivot out to where the thumb presses, more than zero
   * @param travel how far the thumb goes down there, more than zero and less than that
   * @return this builder
   * @throws IllegalArgumentException if one of them is not more than zero
   */
  public ThumbLatchBuilder thumbAt(Quantity<Length> fromPivot, Quantity<Length> travel) {
    Objects.requireNonNull(travel, "travel");
    Measure<Length> out = Arguments.positive("fromPivot", fromPivot).to(unit);
    this.travel = Arguments.positive("travel", travel).to(unit);
    this.thumb = out;
    return this;
  }

  /**
   * Where the lever's pivot lies.
   *
   * @param out in front of the door's outer face, as in the cheeks of a handle; negative in the
   *     door
   * @return this builder
   */
  public ThumbLatchBuilder pivotOut(Quantity<Length> out) {
    this.pivotOut = Arguments.length("out", out).to(unit);
    return this;
  }

  /**
   * What happens along the bar, from its pivot: where the lever lifts it, and where the catch's
   * inner face is.
   *
   * @param contact more than zero
   * @param catchAt more than zero
   * @return this builder
   * @throws IllegalArgumentException if one of them is not more than zero
   */
  public ThumbLatchBuilder lifting(Quantity<Length> contact, Quantity<Length> catchAt) {
    Objects.requireNonNull(catchAt, "catchAt");
    Measure<Length> at = Arguments.positive("contact", contact).to(unit);
    this.catchAt = Arguments.positive("catchAt", catchAt).to(unit);
    this.contact = at;
    return this;
  }

  /**
   * How far the bar's lower edge lies below its pivot.
   *
   * @param below zero or more; half the bar's depth with the pivot in its middle
   * @return this builder
   * @throws IllegalArgumentException if it is negative
   */
  public ThumbLatchBuilder pivotAboveEdge(Quantity<Length> below) {
    this.edgeBelow = Arguments.notNegative("below", below).to(unit);
    return this;
  }

  /**
   * The catch on the frame.
   *
   * @param nose the catch
   * @param over the room in which the lifted bar passes over its nose, zero or more
   * @return this builder
   * @throws IllegalArgumentException if the room is negative
   */
  public ThumbLatchBuilder into(LatchCatch nose, Quantity<Length> over) {
    LatchCatch told = Objects.requireNonNull(nose, "nose");
    this.over = Arguments.notNegative("over", over).to(unit);
    this.nose = told;
    return this;
  }

  /**
   * What the latch must bear with: it still opens when the door has dropped, and still catches when
   * it has risen. See {@link DoorMovement}.
   *
   * @param drop zero or more
   * @param rise zero or more
   * @return this builder
   * @throws IllegalArgumentException if either is negative
   */
  public ThumbLatchBuilder allowing(Quantity<Length> drop, Quantity<Length> rise) {
    Measure<Length> down = Arguments.notNegative("drop", drop).to(unit);
    this.rise = Arguments.notNegative("rise", rise).to(unit);
    this.drop = down;
    return this;
  }

  /**
   * The handle below the thumb piece.
   *
   * @param handle what it is forged from
   * @param grip the clear length of it, more than zero
   * @param fingers the clear room behind it, more than zero
   * @return this builder
   * @throws IllegalArgumentException if a length is not more than zero
   */
  public ThumbLatchBuilder withHandle(Bar handle, Quantity<Length> grip, Quantity<Length> fingers) {
    Bar told = Objects.requireNonNull(handle, "handle");
    Objects.requireNonNull(fingers, "fingers");
    Measure<Length> clear = Arguments.positive("grip", grip).to(unit);
    this.fingers = Arguments.positive("fingers", fingers).to(unit);
    this.grip = clear;
    this.handle = told;
    return this;
  }

  /**
   * The handle on a plate (the Norfolk pattern); else its feet lie on the wood (the Suffolk one).
   *
   * @return this builder
   */
  public ThumbLatchBuilder withBackPlate() {
    this.backPlate = true;
    return this;
  }

  /**
   * What the lever and the guide are made of, if not of the latch bar's own stock.
   *
   * @param lever of the thumb piece
   * @param guide of the staple that the bar runs in
   * @return this builder
   */
  public ThumbLatchBuilder madeOf(Bar lever, Bar guide) {
    Bar told = Objects.requireNonNull(lever, "lever");
    this.guide = Objects.requireNonNull(guide, "guide");
    this.lever = told;
    return this;
  }

  /**
   * The room of the bar in its guide, above and below and before it, once all is finished.
   *
   * @param room zero or more; with the coats of a finish in it
   * @return this builder
   * @throws IllegalArgumentException if it is negative
   */
  public ThumbLatchBuilder clearing(Quantity<Length> room) {
    this.room = Arguments.notNegative("room", room).to(unit);
    return this;
  }

  /**
   * Which way the door's closing edge lies, seen from the bar.
   *
   * @param closing left or right
   * @return this builder
   */
  public ThumbLatchBuilder closing(Closing closing) {
    this.closing = Objects.requireNonNull(closing, "closing");
    return this;
  }

  /**
   * Guide and slot through the door on the marks of a rule, up, so that all still passes.
   *
   * @param rule the rule
   * @return this builder
   */
  public ThumbLatchBuilder on(Graduation<Length> rule) {
    this.rule = Objects.requireNonNull(rule, "rule");
    return this;
  }

  /**
   * The latch that all of this describes.
   *
   * @return the latch, whose parts fit each other
   * @throws IllegalArgumentException if the bar does not clear the nose, does not catch, or the
   *     lever does not reach it
   */
  public ThumbLatch latch() {
    return new ThumbLatch(this);
  }

  /** Bar and door. */
  @Override
  public String toString() {
    return "description of a thumb latch, its bar "
        + length
        + " of "
        + bar.section()
        + ", through a door of "
        + door;
  }
}
