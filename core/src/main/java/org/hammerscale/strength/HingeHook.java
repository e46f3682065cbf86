package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.bending.SquareCorner;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The hook on the post that a strap hinge hangs on: an upright pin on a level shank, whose top is
 * the shoulder that the barrel rests on. Other names: {@index pintle} (US), {@index gudgeon},
 * {@index ride}.
 *
 * <pre>{@code
 * HookPin pin = HookPin.of(Pin.of(millimetres(12)), millimetres(40));
 * HingeHook hook = HingeHook.of(pin, Section.round(millimetres(12)), millimetres(30));
 * hook.shankBending(newtons(250))          // 44.21 MPa  the door's weight on it
 * hook.shankStressUnder(newtons(300))      // 48.63 MPa  the upper hook's pull
 * hook.shankCentresWithOneInverted(millimetres(900))   // 952 mm  to drill the post at
 * hook.piece(Material.MILD_STEEL, millimetres(100)).layout().cutLength()   // 176 mm
 * }</pre>
 *
 * <p>Stresses are those of a cantilever, exact for what is counted: one force at a time, the shank
 * held at the post's face. They come out in MPa, or in psi for a force in pounds-force. In timber
 * the wood gives way at its face, so that the shank bends from deeper in and its stress is greater.
 *
 * <p>Source: bending of a cantilever; statics.
 */
public final class HingeHook {
  private static final Source LEVELS = Source.computed("levels of pins, shoulders and shanks");
  private static final Caution LIFT_OFF =
      Caution.danger(
          "a door lifts off upright hooks: set one of the two upside down, or keep it down with a"
              + " cotter; then the upright one carries the whole weight");
  private static final Caution IN_TIMBER =
      Caution.limit(
          "in timber the shank bends from deeper than the post's face: drive it tight, let a"
              + " shoulder or a plate bear on the face, and keep the projection small",
          Source.commonPractice("wood crushes where a shank leaves it"));

  private final HookBeam beam;

  private HingeHook(HookBeam beam) {
    this.beam = beam;
  }

  /**
   * A hook.
   *
   * @param pin its pin, with the barrel that turns on it
   * @param shank its shank: round, square, or a flat lying as it is in the post
   * @param projection from the post's face to the pin's centre, at least half the pin
   * @return the hook
   * @throws IllegalArgumentException if the projection lies outside its range, or the shank is
   *     neither round nor rectangular
   */
  public static HingeHook of(HookPin pin, Section shank, Quantity<Length> projection) {
    Section.requireArea("shank", shank);
    Objects.requireNonNull(pin, "pin");
    Measure<Length> out = Arguments.positive("projection", projection);
    if (out.isLessThan(pin.diameter().divide(2))) {
      throw new IllegalArgumentException(
          "projection must be at least half the pin of "
              + pin.diameter()
              + ", was "
              + out
              + "; measure from the post's face to the pin's centre");
    }
    if (!HookBeam.knows(shank)) {
      throw new IllegalArgumentException(
          "shank must be round, square or flat, was " + shank + "; forge it to one of these");
    }
    return new HingeHook(new HookBeam(pin, shank, out));
  }

  /** {@return its pin, with the barrel that turns on it} */
  public HookPin pin() {
    return beam.pin();
  }

  /** {@return its shank} */
  public Section shank() {
    return beam.shank();
  }

  /** {@return from the post's face to the pin's centre} */
  public Measure<Length> projection() {
    return beam.projection();
  }

  /**
   * The bending stress of the shank at the post's face under a weight on the pin: σ = F p / Z, with
   * Z = π D³/32 for a round shank and b h²/6 for a rectangular one of height h.
   *
   * @param weight what hangs on this hook, more than zero
   * @return the stress, exact for that cantilever
   * @throws IllegalArgumentException if the weight is not more than zero
   */
  public Measure<Pressure> shankBending(Quantity<Force> weight) {
    return StressUnits.stress("weight", weight, beam::shankBending);
  }

  /**
   * The greatest stress of the shank under a level pull on the pin, straight away from the post: it
   * bends the shank by its height above it and stretches it besides: σ = F (h/2 + g + w/2) / Z + F
   * / A. On an upright hook it adds to that of the weight, since both stretch the top of the shank.
   * A level force along the post's face twists the shank instead, which is not reckoned here.
   *
   * @param pull the level force at the middle of the barrel, more than zero
   * @return the stress, exact for that cantilever
   * @throws IllegalArgumentException if the pull is not more than zero
   */
  public Measure<Pressure> shankStressUnder(Quantity<Force> pull) {
    return StressUnits.stress("pull", pull, beam::shankPull);
  }

  /**
   * How far apart the shanks of two upright hooks sit in the post: as far as the middles of the
   * straps.
   *
   * @param strapCentres from the middle of one strap to that of the other, more than zero
   * @return the same distance
   * @throws IllegalArgumentException if the distance is not more than zero
   */
  public Measure<Length> shankCentres(Quantity<Length> strapCentres) {
    return Arguments.positive("strap centres", strapCentres);
  }

  /**
   * How far apart the shanks sit where the upper hook is set upside down against lift-off: C + w +
   * 2 g + h. Its shoulder lies above its barrel, that of the lower hook below.
   *
   * @param strapCentres from the middle of one strap to that of the other, C; more than zero
   * @return the distance from shank to shank, exact, in the unit of the centres
   * @throws IllegalArgumentException if the distance is not more than zero
   */
  public Measure<Length> shankCentresWithOneInverted(Quantity<Length> strapCentres) {
    Measure<Length> centres = Arguments.positive("strap centres", strapCentres);
    return centres.withValue(beam.inverted(Notes.NONE, centres));
  }

  /**
   * The hook as a piece bent from one round bar, with a sharp corner between pin and shank: from
   * the top of the pin, the pin, the corner, the shank.
   *
   * @param material what it is made of
   * @param behind how far the shank reaches behind the post's face, with what is clenched or
   *     threaded; not negative
   * @return the piece, whose layout tells the length to cut and the mark of the corner; the pin
   *     ends flush with the barrel
   * @throws IllegalArgumentException if the shank is not round bar of the pin's diameter: such a
   *     hook is drawn down or welded, and laid out feature by feature
   */
  public Piece piece(Material material, Quantity<Length> behind) {
    Section bar = shank();
    Measure<Length> diameter = pin().diameter();
    Measure<Length> inside = Arguments.notNegative("behind", behind);
    if (!bar.isRound() || !bar.width().isEquivalentTo(diameter)) {
      throw new IllegalArgumentException(
          "shank must be round bar of the pin's "
              + diameter
              + " to be bent from one bar, was "
              + bar
              + "; lay out a drawn-down pin as a Shoulder of the shank's bar");
    }
    Measure<Length> level = projection().subtract(diameter.divide(2)).add(inside);
    return Piece.of(
        Bar.of(bar, material),
        Plain.of(bar, pin().height()),
        SquareCorner.of(bar),
        Plain.of(bar, level));
  }

  /** {@return against lift-off, quenching, a narrow shoulder, soft wood; no certified design} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(LIFT_OFF);
    cautions.addAll(pin().pin().cautions());
    if (pin().lift().getValue() == 0 && !shank().width().isGreaterThan(pin().diameter())) {
      cautions.add(
          Caution.limit(
              "the shank of "
                  + shank().width()
                  + " is no wider than the pin, so that the barrel rests on little more than the"
                  + " bend: forge a shoulder, or put a washer under the barrel",
              Source.commonPractice("a barrel turns on a flat shoulder")));
    }
    cautions.add(IN_TIMBER);
    cautions.addAll(LoadCautions.OF_STRENGTH);
    return List.copyOf(cautions);
  }

  /**
   * How the stress of the shank under a weight was found.
   *
   * @param weight what hangs on this hook, more than zero
   * @return the working of {@link #shankBending}
   */
  public Working shankWorking(Quantity<Force> weight) {
    return told(StressUnits.working("shank under a weight", "weight", weight, beam::shankBending));
  }

  /**
   * How the stress of the shank under a pull was found.
   *
   * @param pull the level force, more than zero
   * @return the working of {@link #shankStressUnder}
   */
  public Working shankPullWorking(Quantity<Force> pull) {
    return told(StressUnits.working("shank under a pull", "pull", pull, beam::shankPull));
  }

  /**
   * How the centres with one hook inverted were found.
   *
   * @param strapCentres from the middle of one strap to that of the other, more than zero
   * @return the working of {@link #shankCentresWithOneInverted}
   */
  public Working invertedWorking(Quantity<Length> strapCentres) {
    Measure<Length> centres = Arguments.positive("strap centres", strapCentres);
    return Notes.taken(
            "shanks of two hooks, one inverted", centres.getUnit(), n -> beam.inverted(n, centres))
        .withSource(LEVELS)
        .withCautions(cautions());
  }

  private Working told(Working working) {
    return working.withSource(HookPin.CANTILEVER).withCautions(cautions());
  }

  /** Pin, shank and projection. */
  @Override
  public String toString() {
    return "hook with a " + pin().pin() + " on " + shank() + ", " + projection() + " from the post";
  }
}
