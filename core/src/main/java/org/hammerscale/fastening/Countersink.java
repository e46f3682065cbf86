package org.hammerscale.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * The cone cut or swaged into the iron for a flat head, so that it lies flush. A head of diameter A
 * on a shank D is (A − D) / (2 tan(θ/2)) deep; the cone in the iron ends at the straight hole C and
 * is (A − C) / (2 tan(θ/2)) deep. Where that is less than the plate, a straight land is left; where
 * it is more, the head stands proud unless the hole is let grow at the back and the wood is
 * countersunk too.
 *
 * <pre>{@code
 * Countersink flush = WoodScrew.number(8).countersinkIn(inches("3/16"));
 * flush.diameter()    // 0.332 in    how wide the cone opens, for the head to lie flush
 * flush.land()        // 0.0954 in   iron left straight below it
 * Countersink thin = WoodScrew.number(14).countersinkIn(inches("1/8"));
 * thin.fits()         // false       the head is deeper than the strap:
 * thin.standsProud()  // 0.02282 in  it stands out so much,
 * thin.entersWood()   // 0.02742 in  or the wood is countersunk so deep
 * }</pre>
 *
 * <p>Exact as geometry of a cone with a sharp edge. A head as bought has a small cylinder or a
 * rounded edge and is a little smaller: cut until the head in hand lies flush. Other names: {@index
 * "countersunk hole"}, {@index sink}, {@index csk}.
 */
public final class Countersink {
  private static final Source CONE = Source.computed("a cone of the head's included angle");
  private static final Source FLUSH =
      Source.computed("the plate must be at least as thick as the head is deep");

  private final Measure<Length> head;
  private final Measure<Angle> angle;
  private final Measure<Length> shank;
  private final Measure<Length> hole;
  private final Measure<Length> plate;
  private final Unit<Length> unit;

  private Countersink(
      Measure<Length> head,
      Measure<Angle> angle,
      Measure<Length> shank,
      Measure<Length> hole,
      Measure<Length> plate) {
    this.head = head;
    this.angle = angle;
    this.shank = shank;
    this.hole = hole;
    this.plate = plate;
    this.unit = plate.getUnit();
  }

  /**
   * The countersink that a head wants in a plate, over its own clearance hole.
   *
   * @param head the head
   * @param plate the thickness of the iron where it sits, more than zero
   * @return the countersink, with lengths in the plate's unit
   * @throws IllegalArgumentException if the thickness is not more than zero, or the head is not a
   *     cone wider than its shank and its hole
   */
  public static Countersink under(CountersunkHead head, Quantity<Length> plate) {
    Objects.requireNonNull(head, "head");
    Measure<Length> thick = Arguments.positive("plate", plate);
    Measure<Angle> angle = Arguments.angle("headAngle", head.headAngle(), 179);
    if (angle.getValue() == 0) {
      throw new IllegalArgumentException(
          "headAngle must be more than 0°, was 0°; give the included angle, 82° or 90° as a rule");
    }
    Measure<Length> shank = Arguments.positive("diameter", head.diameter());
    Measure<Length> wide = Arguments.positive("headDiameter", head.headDiameter());
    checkHole("diameter", shank, wide);
    return new Countersink(wide, angle, shank, shank, thick)
        .over("clearanceHole of the head", head.clearanceHole());
  }

  /**
   * The same head over another hole.
   *
   * @param diameter of the straight hole, at least that of the shank and less than that of the head
   * @return the countersink
   * @throws IllegalArgumentException if the shank does not pass, or the head falls through
   */
  public Countersink withHole(Quantity<Length> diameter) {
    return over("diameter", diameter);
  }

  private Countersink over(String name, Quantity<Length> diameter) {
    Measure<Length> wide = Arguments.positive(name, diameter);
    if (wide.isLessThan(shank)) {
      throw new IllegalArgumentException(
          name
              + " must be at least the "
              + shank
              + " of the shank, was "
              + wide
              + "; drill the hole wider");
    }
    checkHole(name, wide, head);
    return new Countersink(head, angle, shank, wide, plate);
  }

  private static void checkHole(String name, Measure<Length> hole, Measure<Length> head) {
    if (!hole.isLessThan(head)) {
      throw new IllegalArgumentException(
          name
              + " must be less than the "
              + head
              + " of the head, was "
              + hole
              + "; drill it smaller, or take a larger screw");
    }
  }

  /** {@return the diameter at the face, that of the head} */
  public Measure<Length> diameter() {
    return head.to(unit);
  }

  /** {@return the included angle θ of the cone} */
  public Measure<Angle> angle() {
    return angle;
  }

  /** {@return the straight hole C below the cone} */
  public Measure<Length> hole() {
    return hole.to(unit);
  }

  /** {@return the thickness of the iron where the head sits} */
  public Measure<Length> plate() {
    return plate;
  }

  /**
   * How deep the cone is from the face to the straight hole: h = (A − C) / (2 tan(θ/2)).
   *
   * @return the depth of a flush countersink, exact, in the plate's unit; more than the plate if
   *     the cone would come out at the back
   */
  public Measure<Length> depth() {
    return Measure.of(depth(Notes.NONE), unit);
  }

  /**
   * How deep the head itself is down to its shank: H = (A − D) / (2 tan(θ/2)).
   *
   * @return the depth of the head, exact for a sharp edge, in the plate's unit
   */
  public Measure<Length> headDepth() {
    return Measure.of(headDepth(Notes.NONE), unit);
  }

  /** {@return whether the plate is at least as thick as the head is deep} */
  public boolean fits() {
    return headDepth(Notes.NONE) <= plate.getValue() * (1 + 1e-12);
  }

  /** {@return the straight hole left under the cone, t − h; zero if the cone comes out below} */
  public Measure<Length> land() {
    return plate.withValue(Math.max(0, plate.getValue() - depth(Notes.NONE)));
  }

  /**
   * How much the head stands proud if the hole keeps its size at the back, so that the cone ends
   * there: h − t.
   *
   * @return the height above the face, exact, in the plate's unit; zero if the cone ends within
   */
  public Measure<Length> standsProud() {
    return plate.withValue(Math.max(0, depth(Notes.NONE) - plate.getValue()));
  }

  /**
   * How far a flush head reaches into the wood behind the plate, where it wants a countersink too:
   * H − t.
   *
   * @return the depth below the back of the plate, exact, in the plate's unit; zero if it fits
   */
  public Measure<Length> entersWood() {
    return plate.withValue(Math.max(0, headDepth(Notes.NONE) - plate.getValue()));
  }

  /**
   * What the hole becomes at the back of the plate if the head is let in flush: the straight hole,
   * or A − 2 t tan(θ/2) if the cone comes out there.
   *
   * @return the diameter, exact, in the plate's unit
   */
  public Measure<Length> diameterAtBack() {
    double cone = head.in(unit) - 2 * plate.getValue() * Math.tan(half());
    return plate.withValue(Math.max(hole.in(unit), cone));
  }

  /**
   * The thickness to count in bearing at a countersunk hole: the plate less half the depth of the
   * cone, which is counted no deeper than the plate.
   *
   * @return t − h/2, exact, in the plate's unit. Source: EN 1993-1-8, table 3.4, note (from memory)
   */
  public Measure<Length> bearingThickness() {
    return plate.withValue(plate.getValue() - Math.min(depth(Notes.NONE), plate.getValue()) / 2);
  }

  /** {@return cautions for a head deeper than the plate, and for one that leaves a knife edge} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (!fits()) {
      cautions.add(
          Caution.limit(
              "the head is "
                  + headDepth()
                  + " deep and the plate only "
                  + plate
                  + (standsProud().getValue() > 0
                      ? ": it stands " + standsProud() + " proud over a hole of " + hole() + ", or"
                      : ": its neck")
                  + " reaches "
                  + entersWood()
                  + " into the wood; countersink the wood too, take a smaller screw, or a round"
                  + " head",
              FLUSH));
    } else if (land().getValue() < plate.getValue() * 1e-12) {
      cautions.add(
          Caution.limit(
              "the cone takes the whole plate of " + plate + " and leaves a knife edge at its back",
              FLUSH));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the depth of the cone in the iron was found} */
  public Working working() {
    return Notes.taken("countersink to the straight hole", unit, this::depth)
        .withSource(CONE)
        .withCautions(cautions());
  }

  /** {@return how the depth of the head was found} */
  public Working headWorking() {
    return Notes.taken("countersunk head with a sharp edge", unit, this::headDepth)
        .withSource(CONE)
        .withCautions(cautions());
  }

  private double depth(Notes n) {
    double a = n.given("A", "diameter of the head", head.in(unit));
    double c = n.given("C", "straight hole", hole.in(unit));
    double half = half(n);
    return n.length("h", "depth of the cone", "(A − C) / (2 tan(φ))", (a - c) / (2 * half));
  }

  private double headDepth(Notes n) {
    double a = n.given("A", "diameter of the head", head.in(unit));
    double d = n.given("D", "diameter of the shank", shank.in(unit));
    double half = half(n);
    return n.length("H", "depth of the head", "(A − D) / (2 tan(φ))", (a - d) / (2 * half));
  }

  /** The tangent of half the included angle. */
  private double half(Notes n) {
    return Math.tan(n.value("φ", "half the included angle", "", half(), ShopUnits.RADIAN));
  }

  private double half() {
    return angle.in(ShopUnits.RADIAN) / 2;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Countersink that
        && head.equals(that.head)
        && angle.equals(that.angle)
        && shank.equals(that.shank)
        && hole.equals(that.hole)
        && plate.equals(that.plate);
  }

  @Override
  public int hashCode() {
    return Objects.hash(head, angle, shank, hole, plate);
  }

  /** Diameter, angle, hole and plate, and whether the head fits. */
  @Override
  public String toString() {
    return angle
        + " countersink, "
        + diameter()
        + " over a hole of "
        + hole()
        + " in "
        + plate
        + (fits() ? "" : ", too thin for the head");
  }
}
