package org.hammerscale.latch;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * Asks for a {@link Hasp}, one demand after the other; what is not said stays usual: the pin in the
 * middle of the strap's thickness, no working clearance, a pin as thick as twice the strap, and as
 * much strap beyond the slot as it is wide. Each method gives back this builder.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/4"), inches("3/16")), Material.MILD_STEEL);
 * Bar rod = Bar.of(Section.round(inches("5/16")), Material.MILD_STEEL);
 * Staple staple = Staple.inside(inches("1/2"), rod).standing(inches("11/16"));
 * HaspBuilder asked = Hasp.of(strap, staple).stapledAt(inches(3)).clearing(inches("1/32"));
 * asked.hasp().slotLength()               // 0.4982 in
 * asked.on(SIXTEENTH).hasp().slotLength()   // 9/16 in  both ends on marks, outwards
 * }</pre>
 */
public final class HaspBuilder {
  final Bar strap;
  final Staple staple;
  final Unit<Length> unit;
  Measure<Length> pinAbove;
  Measure<Length> stapledAt;
  Measure<Length> clearance;
  Measure<Length> bore;
  Measure<Length> beyond;
  boolean inLine;

  @Nullable Staple hanger;

  @Nullable Graduation<Length> rule;

  HaspBuilder(Bar strap, Staple staple) {
    this.strap = Objects.requireNonNull(strap, "strap");
    this.staple = Objects.requireNonNull(staple, "staple");
    this.unit = strap.section().width().getUnit();
    Measure<Length> t = strap.section().thickness().to(unit);
    this.pinAbove = t.divide(2);
    this.stapledAt = strap.section().width().multiply(3);
    this.clearance = t.withValue(0);
    this.bore = t.multiply(2);
    this.beyond = strap.section().width();
  }

  /**
   * Where the staple stands.
   *
   * @param fromPin from the hasp's pin to the near side of the staple, more than zero
   * @return this builder
   * @throws IllegalArgumentException if it is not more than zero
   */
  public HaspBuilder stapledAt(Quantity<Length> fromPin) {
    this.stapledAt = Arguments.positive("fromPin", fromPin).to(unit);
    return this;
  }

  /**
   * The staple's two legs in line along the hasp, its slot long and narrow; else they stand across
   * it.
   *
   * @return this builder
   */
  public HaspBuilder inLine() {
    this.inLine = true;
    return this;
  }

  /**
   * Where a pin of the smith's lies, if not in the middle of the strap's thickness.
   *
   * @param above the pin's middle above the hasp's underside; negative below it
   * @return this builder
   */
  public HaspBuilder pinAbove(Quantity<Length> above) {
    this.pinAbove = Arguments.length("above", above).to(unit);
    this.hanger = null;
    return this;
  }

  /**
   * Working clearance of the slot, at either end and on either side.
   *
   * @param clearance zero or more; with the coats of a finish in it
   * @return this builder
   * @throws IllegalArgumentException if it is negative
   */
  public HaspBuilder clearing(Quantity<Length> clearance) {
    this.clearance = Arguments.notNegative("clearance", clearance).to(unit);
    return this;
  }

  /**
   * The eye that the hasp turns on, about a pin of the smith's.
   *
   * @param bore its inside, more than zero
   * @return this builder
   * @throws IllegalArgumentException if it is not more than zero
   */
  public HaspBuilder hungOn(Quantity<Length> bore) {
    this.bore = Arguments.positive("bore", bore).to(unit);
    this.hanger = null;
    return this;
  }

  /**
   * Hung on a staple of its own, instead of a pin: the eye is rolled up round its crown, the pin is
   * the middle of that crown, and the strap lies flat on the wood.
   *
   * @param hanger the staple, such as {@link Hasp#hanger} gives
   * @param play of the eye on its crown, zero or more; with the coats of a finish in it
   * @return this builder
   * @throws IllegalArgumentException if the play is negative
   */
  public HaspBuilder hungOn(Staple hanger, Quantity<Length> play) {
    Measure<Length> rod =
        Objects.requireNonNull(hanger, "hanger").rod().section().thickness().to(unit);
    this.bore = rod.add(Arguments.notNegative("play", play));
    this.pinAbove = hanger.insideHeight().to(unit).add(rod.divide(2));
    this.hanger = hanger;
    return this;
  }

  /**
   * How much strap is left beyond the slot, to lift it by.
   *
   * @param beyond more than zero
   * @return this builder
   * @throws IllegalArgumentException if it is not more than zero
   */
  public HaspBuilder reachingBeyond(Quantity<Length> beyond) {
    this.beyond = Arguments.positive("beyond", beyond).to(unit);
    return this;
  }

  /**
   * The slot on the marks of a rule, outwards: from down, to and width up.
   *
   * @param rule the rule
   * @return this builder
   */
  public HaspBuilder on(Graduation<Length> rule) {
    this.rule = Objects.requireNonNull(rule, "rule");
    return this;
  }

  /**
   * The hasp that all of this describes.
   *
   * @return the hasp and its staples, which fit each other
   * @throws IllegalArgumentException if a staple is too close to the pin, too low or too narrow for
   *     the strap, or the slot too wide for it
   */
  public Hasp hasp() {
    return new Hasp(this);
  }

  /** Strap and staple. */
  @Override
  public String toString() {
    return "description of a hasp of " + strap.section() + " over a " + staple;
  }
}
