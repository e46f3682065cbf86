package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.bending.SquareCorner;
import org.hammerscale.fastening.Spike;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
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
 * Spike tail = Spike.of(hook.shank()).driven(millimetres(124));
 * hook.piece(Material.MILD_STEEL, tail).layout().cutLength()   // 184 mm  of round bar, the tail drawn to a point
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

  private static final Caution ALONG_THE_POST =
      Caution.limit(
          "a pull along the post's face, as of a door that has swung round, twists the shank: that"
              + " is not reckoned",
          Source.computed("statics"));

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
   * The hook as a piece bent from the bar of its shank, with a sharp corner between pin and shank:
   * from the top of the pin, the pin, the corner, the shank. A pin that is thinner than the bar is
   * drawn down to a shoulder that the barrel rests on.
   *
   * @param material what it is made of
   * @param behind how far the shank reaches behind the post's face, with what is threaded or
   *     riveted; not negative
   * @return the piece, its marks told from where the pin ends, trimmed at both ends; the pin ends
   *     flush with the barrel
   * @throws IllegalArgumentException if the shank is neither round nor square, or thinner than the
   *     pin, or projects less than half of it
   */
  public Piece piece(Material material, Quantity<Length> behind) {
    Objects.requireNonNull(material, "material");
    Measure<Length> inside = Arguments.notNegative("behind", behind);
    return piece(material, Plain.of(shank(), level().add(inside)));
  }

  /**
   * The same with a tail that is driven into the post: the shank ends in the tail's point.
   *
   * @param material what it is made of
   * @param tail its shank driven so deep, counted from the post's face, or clenched through the
   *     post; its head is left out
   * @return the piece, its marks told from where the pin ends, trimmed at both ends
   * @throws IllegalArgumentException if the tail is of another section or goes through something
   *     before the post, or as for {@link #piece(Material, Quantity)}
   */
  public Piece piece(Material material, Spike tail) {
    Objects.requireNonNull(material, "material");
    requireOwn(tail);
    Measure<Length> straight = level().add(tail.inWood()).subtract(tail.point().reach());
    return piece(material, Plain.of(shank(), straight), tail.point());
  }

  private void requireOwn(Spike tail) {
    Objects.requireNonNull(tail, "tail");
    if (!tail.shank().meets(shank())) {
      throw new IllegalArgumentException(
          "tail must be of the shank's "
              + shank()
              + ", was of "
              + tail.shank()
              + "; make it Spike.of(hook.shank())");
    }
    if (!tail.layers().isEmpty()) {
      throw new IllegalArgumentException(
          "tail must go straight into the post, was through "
              + tail.layers().get(0)
              + "; count a plate on the post's face as its projection");
    }
  }

  private Piece piece(Material material, Feature... level) {
    Section bar = shank();
    Section round = Section.round(pin().diameter());
    Feature upright =
        bar.meets(round)
            ? Plain.of(bar, pin().height())
            : Shoulder.between(bar, round, pin().height()).reversed();
    List<Feature> features = new ArrayList<>(List.of(upright, SquareCorner.of(bar)));
    features.addAll(List.of(level));
    return Piece.of(Bar.of(bar, material), features.toArray(new Feature[0]))
        .withReferenceAfter(1)
        .trimmedAt(PieceEnd.FIRST, PieceEnd.LAST);
  }

  /** From the inside of the corner to the post's face. */
  private Measure<Length> level() {
    Section bar = shank();
    boolean isSquare = bar.isSimilarTo(Section.square(bar.width()));
    if (!bar.width().isEquivalentTo(bar.thickness()) || !(bar.isRound() || isSquare)) {
      throw new IllegalArgumentException(
          "shank must be round or square to be bent from one bar, was "
              + bar
              + "; lay out another one feature by feature");
    }
    if (pin().diameter().isGreaterThan(bar.width())
        && !pin().diameter().isEquivalentTo(bar.width())) {
      throw new IllegalArgumentException(
          "shank must be as thick as the pin of "
              + pin().diameter()
              + " at least to be bent from one bar, was "
              + bar
              + "; take a thicker bar");
    }
    Measure<Length> half = bar.width().divide(2);
    return projection()
        .subtract(
            Arguments.atMost(
                "half the shank",
                half,
                "the projection",
                projection(),
                "let the pin stand farther from the post, or take a thinner bar"));
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
    cautions.add(ALONG_THE_POST);
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
