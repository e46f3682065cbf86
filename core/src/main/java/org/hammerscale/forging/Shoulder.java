package org.hammerscale.forging;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Outlined;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A stretch set down from the bar with a step: a {@index shoulder}, {@index tenon}, {@index
 * spigot}, neck. Other names: {@index "set down"}, {@index set-down}. It holds V = A L, with its
 * own section A and its length L from the step; the step itself is taken as square.
 *
 * <pre>{@code
 * Section bar = Section.square(inches("1/2"));
 * Section tenon = Section.round(inches("3/8"));
 * Shoulder shoulder = Shoulder.between(bar, tenon, inches(1));
 * shoulder.stock(bar)  // 0.5368 in (0.4436 in to 0.6494 in)  bar to mark off for the tenon, by hand
 * shoulder.by(HandAllowance.NONE).stock(bar)  // 0.4418 in  by volume alone
 * }</pre>
 *
 * <p>Set-down work by hand comes out shorter than its metal, so that the bar it uses is an estimate
 * by {@link HandAllowance#SET_DOWN} unless another allowance is given. What the bar at hand gives
 * is {@link HandAllowance#lengthFrom} of {@link DrawOut#lengthFrom}.
 *
 * <p>Source: conservation of volume, and that of the allowance.
 */
public final class Shoulder implements Feature, Outlined {
  private final Section bar;
  private final Section setDown;
  private final Measure<Length> length;
  private final HandAllowance hand;

  private Shoulder(Section bar, Section setDown, Measure<Length> length, HandAllowance hand) {
    this.bar = bar;
    this.setDown = setDown;
    this.length = length;
    this.hand = hand;
  }

  /**
   * A stretch set down with a step.
   *
   * @param bar the section before the step
   * @param setDown the section after it, of no more area
   * @param length its finished length from the step, more than zero
   * @return the stretch, with the allowance for set-down work
   * @throws IllegalArgumentException if the section set down has more area than the bar or none, or
   *     the length is not more than zero
   */
  public static Shoulder between(Section bar, Section setDown, Quantity<Length> length) {
    Section.requireArea("setDown", setDown);
    Section.requireArea("bar", bar);
    return new Shoulder(
        bar,
        DrawOut.between(bar, setDown).finished(),
        Arguments.positive("length", length),
        HandAllowance.SET_DOWN);
  }

  /**
   * The same stretch with another allowance for the hand.
   *
   * @param allowance the allowance; {@link HandAllowance#NONE} leaves the exact geometry
   * @return the stretch
   */
  public Shoulder by(HandAllowance allowance) {
    return new Shoulder(bar, setDown, length, Objects.requireNonNull(allowance, "allowance"));
  }

  /** {@return {@code shoulder}} */
  @Override
  public String name() {
    return "shoulder";
  }

  @Override
  public Section start() {
    return bar;
  }

  @Override
  public Section end() {
    return setDown;
  }

  /** {@return its section × length, exact, in the cube of the length's unit} */
  @Override
  public Estimate<Volume> metalKept() {
    return Estimate.exact(
        Measures.volume(length, Measures.area(length, length)).withValue(volume(Notes.NONE)));
  }

  /** {@return what the hand takes} */
  @Override
  public Losses metalLost() {
    return hand.addedTo(Losses.NONE, metalKept());
  }

  /** {@return yes, but for no allowance at all: finished pieces have been through the fire} */
  @Override
  public boolean holdsScale() {
    return hand.holdsScale();
  }

  /** {@return its finished length} */
  @Override
  public Measure<Length> reach() {
    return length;
  }

  /** {@return a step, then the section set down} */
  @Override
  public Silhouette outline() {
    return Silhouette.from(setDown).to(length, setDown);
  }

  /** {@return how the volume was found} */
  @Override
  public Working working() {
    return Notes.taken(bar + " set down to " + setDown, length.getUnit(), this::volume)
        .withSource(Source.computed("conservation of volume"))
        .withSource(hand.source());
  }

  private double volume(Notes n) {
    Unit<Area> square = Measures.area(length, length).getUnit();
    double a = n.givenArea("A", "section set down", setDown.area().in(square));
    double l = n.given("L", "length from the step", length.in(length.getUnit()));
    return n.volume("V", "metal kept", "L A", l * a);
  }

  /** Sections, length and allowance. */
  @Override
  public String toString() {
    return length + " set down from " + bar + " to " + setDown + "\n  " + hand;
  }
}
