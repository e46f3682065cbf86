package org.hammerscale.latch;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/**
 * A latch spring where it works: held by a foot of its own strip, set (pressed a little) when the
 * latch rests, and pressed farther when the latch has travelled. Other names: {@index "spring
 * foot"}, {@index preload}.
 *
 * <pre>{@code
 * Bar strip = Bar.of(Section.flat(millimetres(16), millimetres(2)), Material.MEDIUM_CARBON_STEEL);
 * LatchSpring leaf = LatchSpring.of(millimetres(150), millimetres(16), millimetres(2)).taperedTo(millimetres(8));
 * FittedSpring spring = FittedSpring.on(millimetres(30), leaf).set(millimetres(4)).travelling(millimetres(10));
 * spring.forceAtRest()                    // 6.742 N   what keeps the latch shut
 * spring.forceAtTravel()                  // 23.6 N    what the thumb lifts beside the latch
 * spring.stressAtTravel()                // 331.8 MPa  at its root; use(limit) tells the share of a limit
 * spring.mostTravel(megapascals(600))     // 21.32 mm  from that set
 * spring.piece(strip).layout().cutLength()   // 180 mm  foot and spring, cut to shape
 * }</pre>
 *
 * <p>Exact by beam theory, for a foot that holds fast. The strip is sawn or filed to its taper, so
 * that the bar is as long as the spring. Source: {@link LatchSpring}.
 */
public final class FittedSpring {
  private static final Source CLAMPED =
      Source.read("student laboratory note page", "force and deflection of a clamped bar");

  private final LatchSpring spring;
  private final Measure<Length> foot;
  private final Measure<Length> set;
  private final Measure<Length> travel;
  private final int holes;
  private final Measure<Length> hole;

  private FittedSpring(
      LatchSpring spring,
      Measure<Length> foot,
      Measure<Length> set,
      Measure<Length> travel,
      int holes,
      Measure<Length> hole) {
    this.spring = spring;
    this.foot = foot;
    this.set = set;
    this.travel = travel;
    this.holes = holes;
    this.hole = hole;
  }

  /**
   * A spring on its foot, neither set nor pressed.
   *
   * @param foot the length of strip that is held, more than zero
   * @param spring what bends, from the end of the foot on
   * @return the spring
   * @throws IllegalArgumentException if the foot is not more than zero
   */
  public static FittedSpring on(Quantity<Length> foot, LatchSpring spring) {
    Measure<Length> held = Arguments.positive("foot", foot);
    Measure<Length> none = Objects.requireNonNull(spring, "spring").length().withValue(0);
    return new FittedSpring(spring, held, none, none, 0, none);
  }

  /**
   * The same pressed by the resting latch.
   *
   * @param newSet how far the resting latch keeps its tip from where it stands free, zero or more
   * @return the spring
   * @throws IllegalArgumentException if the set is negative
   */
  public FittedSpring set(Quantity<Length> newSet) {
    Measure<Length> pressed = Arguments.notNegative("set", newSet);
    return new FittedSpring(spring, foot, pressed, travel, holes, hole);
  }

  /**
   * The same under a latch that travels.
   *
   * @param newTravel how far the latch moves the tip from rest, zero or more
   * @return the spring
   * @throws IllegalArgumentException if the travel is negative
   */
  public FittedSpring travelling(Quantity<Length> newTravel) {
    Measure<Length> moved = Arguments.notNegative("travel", newTravel);
    return new FittedSpring(spring, foot, set, moved, holes, hole);
  }

  /**
   * The same with holes along the middle of its foot, each in the middle of an equal part of it.
   *
   * @param count how many, 1 to 10
   * @param diameter of each, more than zero; less than the strip is wide, and than its part of the
   *     foot is long
   * @return the spring
   * @throws IllegalArgumentException if the count is out of range, or the holes leave no metal
   */
  public FittedSpring drilled(int count, Quantity<Length> diameter) {
    Arguments.count("count", count, 1, 10, "one or two screws hold a foot");
    Measure<Length> wide = Arguments.positive("diameter", diameter);
    Measure<Length> part = foot.divide(count);
    Measure<Length> most = part.isLessThan(spring.width()) ? part : spring.width();
    if (!wide.isLessThan(most)) {
      throw new IllegalArgumentException(
          "diameter must be less than "
              + most
              + " to leave metal round each hole of the foot, was "
              + wide
              + "; drill it smaller or make the foot longer");
    }
    return new FittedSpring(spring, foot, set, travel, count, wide);
  }

  /** {@return what bends} */
  public LatchSpring spring() {
    return spring;
  }

  /** {@return the length of strip that is held} */
  public Measure<Length> foot() {
    return foot;
  }

  /** {@return how far the resting latch presses it} */
  public Measure<Length> set() {
    return set;
  }

  /** {@return how far the latch presses it beyond that} */
  public Measure<Length> travel() {
    return travel;
  }

  /** {@return the diameter of the foot's holes; zero if there are none} */
  public Measure<Length> hole() {
    return hole;
  }

  /** {@return the middles of the foot's holes from its end, in rising order} */
  public List<Measure<Length>> holes() {
    List<Measure<Length>> places = new ArrayList<>();
    for (int i = 0; i < holes; i++) {
      places.add(foot.multiply((2 * i + 1) / (2.0 * holes)));
    }
    return List.copyOf(places);
  }

  /** {@return how far its tip is pressed at full travel: set + travel, exact} */
  public Measure<Length> deflection() {
    return set.add(travel);
  }

  /** {@return what it presses when the latch rests, exact by beam theory, in newtons} */
  public Measure<Force> forceAtRest() {
    return spring.force(set);
  }

  /** {@return what it presses at full travel, exact by beam theory, in newtons} */
  public Measure<Force> forceAtTravel() {
    return spring.forceAt(travel, set);
  }

  /** {@return the bending stress at its root at full travel, exact by beam theory} */
  public Measure<Pressure> stressAtTravel() {
    return spring.stress(forceAtTravel());
  }

  /**
   * How much of a limit the stress at full travel uses.
   *
   * @param limit the stress that the hardened and tempered metal may bear, more than zero
   * @return stress ÷ limit; more than 1 is too much
   * @throws IllegalArgumentException if the limit is not more than zero
   */
  public double use(Quantity<Pressure> limit) {
    return stressAtTravel().ratio(Arguments.positivePressure("limit", limit));
  }

  /**
   * How far the latch may travel from that set before the root reaches a stress.
   *
   * @param limit the stress that the metal may bear, more than zero; at least that of the set
   * @return the travel, exact for small ones, in the unit of the spring's length
   * @throws IllegalArgumentException if the limit is not more than zero, or the set alone takes
   *     more
   */
  public Measure<Length> mostTravel(Quantity<Pressure> limit) {
    Measure<Length> most = spring.mostTravel(limit);
    Arguments.atMost(
        "set",
        set,
        "what the limit of stress allows in all",
        most,
        "set it less or make it longer");
    return most.subtract(set);
  }

  /**
   * The strip that it is cut from, its taper sawn or filed: the foot first.
   *
   * @param strip a bar as wide and as thick as the root
   * @return the piece, its mark where the foot ends
   * @throws IllegalArgumentException if the bar has other sizes
   */
  public Piece piece(Bar strip) {
    Objects.requireNonNull(strip, "strip");
    Measure<Length> wide = strip.section().width();
    Measure<Length> thick = strip.section().thickness();
    if (!wide.isEquivalentTo(spring.width()) || !thick.isEquivalentTo(spring.thickness())) {
      throw new IllegalArgumentException(
          "strip must be "
              + spring.width()
              + " × "
              + spring.thickness()
              + " as the spring's root is, was "
              + strip.section()
              + "; take that bar, or reckon the spring of this one");
    }
    return Piece.of(
        strip, Plain.of(strip.section(), foot), Plain.of(strip.section(), spring.length()));
  }

  /** {@return how a spring fails, and what of it is not reckoned} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(spring.cautions(deflection()));
    cautions.add(
        Caution.limit(
            "its foot is taken to hold fast: a clamped strip that was measured gave 1.6 times as"
                + " much as reckoned, so it may press less; try it with a spring balance",
            CLAMPED));
    cautions.add(
        Caution.limit(
            "rust, nicks and being pressed thousands of times are not counted: the limit of stress"
                + " must leave room for them",
            Source.commonPractice("springs break where they are nicked, and after many presses")));
    return List.copyOf(cautions);
  }

  /** What it is, and how it is held and pressed. */
  @Override
  public String toString() {
    return spring + "\n  on a foot of " + foot + ", set " + set + ", travelling " + travel;
  }
}
