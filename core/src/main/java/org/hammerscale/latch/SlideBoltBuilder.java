package org.hammerscale.latch;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.jspecify.annotations.Nullable;

/**
 * Asks for a {@link SlideBolt}, one demand after the other; what is not said stays usual: the bolt
 * ends flush with the door's edge when drawn, no gap, staples of half the bolt's thickness, apart
 * by twice the throw and twice the thickness and a quarter of the throw from the edge, a sixteenth
 * of the thickness of room in them, and a knob of half the bolt's thickness. Each method gives back
 * this builder.
 *
 * <pre>{@code
 * Bar rod = Bar.of(Section.round(inches("1/2")), Material.MILD_STEEL);
 * SlideBoltBuilder asked = SlideBolt.thrown(inches("1 1/2"), rod).across(inches("1/8"));
 * asked.stapledApart(inches(4)).clearing(inches("1/32")).bolt().engagement()   // 1 3/8 in
 * asked.withTail(inches(2)).bolt().bolt().bar()   // 1/2 in round, mild steel
 * }</pre>
 */
public final class SlideBoltBuilder {
  final Bar bar;
  final Measure<Length> travel;
  final Unit<Length> unit;
  Measure<Length> gap;
  Measure<Length> setBack;
  Measure<Length> apart;
  Measure<Length> fromEdge;
  Measure<Length> clearance;
  Measure<Length> coat;
  Measure<Length> drop;
  Measure<Length> shrinkage;
  Measure<Length> depth;
  Measure<Length> handleHeight;
  Measure<Length> knob;
  boolean tail;
  Bar staples;

  @Nullable Graduation<Length> rule;

  SlideBoltBuilder(Quantity<Length> travel, Bar bar) {
    this.travel = Arguments.positive("travel", travel);
    this.bar = Objects.requireNonNull(bar, "bar");
    checkShape(bar.section());
    this.unit = this.travel.getUnit();
    Measure<Length> thick = bar.section().thickness().to(unit);
    Measure<Length> none = this.travel.withValue(0);
    this.gap = none;
    this.setBack = none;
    this.coat = none;
    this.drop = none;
    this.shrinkage = none;
    this.apart = this.travel.add(thick).multiply(2);
    this.fromEdge = this.travel.divide(4);
    this.clearance = thick.divide(16);
    this.knob = thick.divide(2);
    this.handleHeight = thick.multiply(2);
    this.staples = Bar.of(Section.round(thick.divide(2)), bar.material());
    this.depth = thick.multiply(4);
  }

  /**
   * How far it is from the door's edge to the face of the keeper.
   *
   * @param gap zero or more
   * @return this builder
   * @throws IllegalArgumentException if it is negative
   */
  public SlideBoltBuilder across(Quantity<Length> gap) {
    this.gap = Arguments.notNegative("gap", gap).to(unit);
    return this;
  }

  /**
   * How far the bolt's end lies behind the door's edge when it is drawn.
   *
   * @param setBack zero or more
   * @return this builder
   * @throws IllegalArgumentException if it is negative
   */
  public SlideBoltBuilder setBack(Quantity<Length> setBack) {
    this.setBack = Arguments.notNegative("setBack", setBack).to(unit);
    return this;
  }

  /**
   * The two staples on the door, from the outer side of one to that of the other.
   *
   * @param apart more than zero
   * @return this builder
   * @throws IllegalArgumentException if it is not more than zero
   */
  public SlideBoltBuilder stapledApart(Quantity<Length> apart) {
    this.apart = Arguments.positive("apart", apart).to(unit);
    return this;
  }

  /**
   * How far the outer staple stands from the door's edge.
   *
   * @param fromEdge from the edge to the outer side of the staple; zero or more
   * @return this builder
   * @throws IllegalArgumentException if it is negative
   */
  public SlideBoltBuilder fromEdge(Quantity<Length> fromEdge) {
    this.fromEdge = Arguments.notNegative("fromEdge", fromEdge).to(unit);
    return this;
  }

  /**
   * The running clearance in the staples, once both are finished.
   *
   * @param clearance across, zero or more
   * @return this builder
   * @throws IllegalArgumentException if it is negative
   */
  public SlideBoltBuilder clearing(Quantity<Length> clearance) {
    this.clearance = Arguments.notNegative("clearance", clearance).to(unit);
    return this;
  }

  /**
   * Room for a finish: a coat lies on both sides of the bolt and on both sides of the opening.
   *
   * @param coat the thickness of one coat, zero or more
   * @return this builder
   * @throws IllegalArgumentException if it is negative
   */
  public SlideBoltBuilder coated(Quantity<Length> coat) {
    this.coat = Arguments.notNegative("coat", coat).to(unit);
    return this;
  }

  /**
   * What the keeper must take when the wood moves, see {@link DoorMovement}.
   *
   * @param drop how far the door's edge may drop, zero or more
   * @param shrinkage how much farther it may draw away from the keeper, zero or more
   * @return this builder
   * @throws IllegalArgumentException if either is negative
   */
  public SlideBoltBuilder allowing(Quantity<Length> drop, Quantity<Length> shrinkage) {
    Measure<Length> down = Arguments.notNegative("drop", drop).to(unit);
    this.shrinkage = Arguments.notNegative("shrinkage", shrinkage).to(unit);
    this.drop = down;
    return this;
  }

  /**
   * What the staples and the keeper are bent from, and how deep they are driven.
   *
   * @param rod the rod
   * @param depth how deep the points reach into the wood, at least two thicknesses
   * @return this builder
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public SlideBoltBuilder inStaplesOf(Bar rod, Quantity<Length> depth) {
    Objects.requireNonNull(depth, "depth");
    Bar told = Objects.requireNonNull(rod, "rod");
    this.depth = Arguments.positive("depth", depth).to(unit);
    this.staples = told;
    return this;
  }

  /**
   * A round knob, a pin riveted through the bolt between its staples: it stops at the outer staple
   * when the bolt is thrown, and must find room between the two.
   *
   * @param diameter of the pin, more than zero and less than half the bolt is wide
   * @param standing how high it stands above the bolt's axis, more than zero
   * @return this builder
   * @throws IllegalArgumentException if either is not more than zero
   */
  public SlideBoltBuilder withKnob(Quantity<Length> diameter, Quantity<Length> standing) {
    Objects.requireNonNull(standing, "standing");
    Measure<Length> wide = Arguments.positive("diameter", diameter).to(unit);
    this.handleHeight = Arguments.positive("standing", standing).to(unit);
    this.knob = wide;
    this.tail = false;
    return this;
  }

  /**
   * Instead of a knob a tail: the bolt's end turned up behind the inner staple, which stops it when
   * the bolt is thrown.
   *
   * @param standing how high it stands above the bolt's axis, at least one and a half times its
   *     thickness
   * @return this builder
   * @throws IllegalArgumentException if it is not more than zero
   */
  public SlideBoltBuilder withTail(Quantity<Length> standing) {
    this.handleHeight = Arguments.positive("standing", standing).to(unit);
    this.tail = true;
    return this;
  }

  /**
   * On the marks of a rule: openings, the staples' distance and the bolt's length up. The running
   * clearance then is what the rule leaves, and the cocking with it.
   *
   * @param rule the rule
   * @return this builder
   */
  public SlideBoltBuilder on(Graduation<Length> rule) {
    this.rule = Objects.requireNonNull(rule, "rule");
    return this;
  }

  /**
   * The bolt that all of this describes.
   *
   * @return the bolt, its staples and its keeper, which fit each other
   * @throws IllegalArgumentException if the bolt does not reach the keeper, or the knob finds no
   *     room between the staples
   */
  public SlideBolt bolt() {
    return new SlideBolt(this);
  }

  private static void checkShape(Section section) {
    boolean filled =
        !section.isTube()
            && section.area().isEquivalentTo(Measures.area(section.width(), section.thickness()));
    if (!section.isRound() && !filled) {
      throw new IllegalArgumentException(
          "bar must be round, square or flat to slide, was "
              + section
              + "; forge the bolt to one of these first");
    }
  }

  /** Bar and travel. */
  @Override
  public String toString() {
    return "description of a slide bolt of " + bar.section() + ", thrown " + travel;
  }
}
