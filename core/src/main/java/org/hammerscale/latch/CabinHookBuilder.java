package org.hammerscale.latch;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.jspecify.annotations.Nullable;

/**
 * Asks for a {@link CabinHook}, one demand after the other; what is not said stays usual: held open
 * at a right angle, eyes of the hook's own rod that stand two of its thicknesses off the faces, a
 * quarter of a thickness of room in them, screw eyes with five thicknesses of shank. Each method
 * gives back this builder.
 *
 * <pre>{@code
 * Bar rod = Bar.of(Section.round(inches("3/8")), Material.MILD_STEEL);
 * CabinHookBuilder asked = CabinHook.betweenEyes(inches(28), inches(-10), rod).off(inches(1), inches(1));
 * asked.heldOpen(degrees(95)).hook().length()                 // 27.5981 in   as the places give it
 * asked.on(EIGHTH).hook().length()                            // 27 5/8 in  on a mark
 * asked.on(EIGHTH).hook().opening()                           // 94.85°    and what that costs
 * }</pre>
 */
public final class CabinHookBuilder {
  private static final double MOST = 270;

  final Bar rod;
  final Unit<Length> unit;
  final Measure<Length> doorAlong;
  final Measure<Length> wallAlong;
  Measure<Length> doorOut;
  Measure<Length> wallOut;
  Measure<Angle> opening = Measures.degrees(90);
  Measure<Length> standOff;
  Measure<Length> clearance;
  Measure<Length> shank;
  Bar eyes;
  boolean driven;

  @Nullable Graduation<Length> rule;

  CabinHookBuilder(Quantity<Length> onDoor, Quantity<Length> onWall, Bar rod) {
    this.doorAlong = Arguments.positive("onDoor", onDoor);
    this.unit = doorAlong.getUnit();
    this.wallAlong = Arguments.length("onWall", onWall).to(unit);
    this.rod = Objects.requireNonNull(rod, "rod");
    Measure<Length> t = rod.section().thickness().to(unit);
    this.doorOut = doorAlong.withValue(0);
    this.wallOut = doorOut;
    this.standOff = t.multiply(2);
    this.clearance = t.divide(4);
    this.shank = t.multiply(5);
    this.eyes = rod;
  }

  /**
   * How far the two seats lie off the pin's line, on the side that the door opens to.
   *
   * @param door of the eye on the door, measured while it is shut
   * @param wall of the eye on the wall
   * @return this builder
   */
  public CabinHookBuilder off(Quantity<Length> door, Quantity<Length> wall) {
    Measure<Length> out = Arguments.length("door", door).to(unit);
    this.wallOut = Arguments.length("wall", wall).to(unit);
    this.doorOut = out;
    return this;
  }

  /**
   * How far the door is held open.
   *
   * @param opening from shut, 0° to 270°
   * @return this builder
   * @throws IllegalArgumentException if it is out of range
   */
  public CabinHookBuilder heldOpen(Quantity<Angle> opening) {
    this.opening = Arguments.angle("opening", opening, MOST).to(ShopUnits.DEGREE);
    return this;
  }

  /**
   * Screw eyes of another rod.
   *
   * @param rod what they are turned from
   * @param shank how long the part is that goes into the wood, more than zero
   * @return this builder
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public CabinHookBuilder withScrewEyes(Bar rod, Quantity<Length> shank) {
    return eyes(rod, "shank", shank, false);
  }

  /**
   * Driven staples for eyes. Their loops can be riveted on plates instead, see {@link StaplePlate}:
   * the eyes then stand off by a plate's thickness more.
   *
   * @param rod what they are bent from
   * @param depth how deep their points reach, more than two thicknesses
   * @return this builder
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public CabinHookBuilder withStaples(Bar rod, Quantity<Length> depth) {
    return eyes(rod, "depth", depth, true);
  }

  private CabinHookBuilder eyes(Bar wire, String name, Quantity<Length> length, boolean asStaples) {
    Measure<Length> inWood = Arguments.positive(name, length).to(unit);
    this.eyes = Objects.requireNonNull(wire, "rod");
    this.shank = inWood;
    this.driven = asStaples;
    return this;
  }

  /**
   * How far the middle of the hook stands off door and wall.
   *
   * @param standOff more than zero
   * @return this builder
   * @throws IllegalArgumentException if it is not more than zero
   */
  public CabinHookBuilder standingOff(Quantity<Length> standOff) {
    this.standOff = Arguments.positive("standOff", standOff).to(unit);
    return this;
  }

  /**
   * The room of the hook in its eyes, and of the wall's eye in the hook's own.
   *
   * @param clearance across, zero or more
   * @return this builder
   * @throws IllegalArgumentException if it is negative
   */
  public CabinHookBuilder clearing(Quantity<Length> clearance) {
    this.clearance = Arguments.notNegative("clearance", clearance).to(unit);
    return this;
  }

  /**
   * The hook's length to the nearest mark of a rule, and the eyes' insides up to one; the door then
   * is held as far open as that length holds it.
   *
   * @param rule the rule
   * @return this builder
   */
  public CabinHookBuilder on(Graduation<Length> rule) {
    this.rule = Objects.requireNonNull(rule, "rule");
    return this;
  }

  /**
   * The hook that all of this describes.
   *
   * @return the hook and its eyes, which fit each other
   * @throws IllegalArgumentException if the eyes lie too close to each other or to the pin for a
   *     hook between them
   */
  public CabinHook hook() {
    return new CabinHook(this);
  }

  /** Where the eyes are. */
  @Override
  public String toString() {
    return "description of a cabin hook, its eyes at " + doorAlong + " and " + wallAlong;
  }
}
