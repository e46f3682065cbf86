package org.hammerscale.latch;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A latch worked by the thumb: a lever through the door lifts a bar on the other side out of its
 * catch. Other names: {@index "Suffolk latch"} without and {@index "Norfolk latch"} with a back
 * plate, {@index "bar latch"}, {@index "gate latch"}.
 *
 * <pre>{@code
 * Bar bar = Bar.of(Section.flat(millimetres(20), millimetres(6)), Material.MILD_STEEL);
 * ThumbLatchBuilder asked = ThumbLatch.through(millimetres(44), bar, millimetres(200));
 * asked.thumbAt(millimetres(30), millimetres(8)).lifting(millimetres(60), millimetres(180));
 * asked.into(LatchCatch.standing(millimetres(15)).under(millimetres(4)), millimetres(2));
 * ThumbLatch latch = asked.allowing(millimetres(4), millimetres(6)).on(MILLIMETRE).latch();
 * latch.liftNeeded()       // 17 mm     over the nose, the door dropped
 * latch.lift()             // 42.05 mm  what the thumb gives there
 * latch.slotHeight()       // 20 mm     through the door, for the lever
 * }</pre>
 *
 * <p>The lever turns by sin φ = s/a and lifts the bar's far lower edge by y = z tan φ; the bar
 * turns by γ = atan((y − u)/x) + asin(u/√(x² + (y − u)²)) and its edge rises at the catch by Y = X
 * tan γ − u/cos γ + u. Exact as plane geometry of stiff parts, in the door's unit. Source: plane
 * geometry; statics of two levers without friction.
 */
public final class ThumbLatch {
  private static final Source LEVERS =
      Source.computed("plane geometry of a lever square to the door and a bar along it");
  private static final Source STATICS = Source.computed("statics of two levers without friction");
  private static final double GRAVITY = 9.80665;

  private final Bar bar;
  private final Bar lever;
  private final Unit<Length> unit;
  private final Measure<Length> door;
  private final Measure<Length> length;
  private final Measure<Length> pivotOut;
  private final LatchMotion motion;
  private final LatchParts parts;
  private final Measure<Length> thumb;
  private final Measure<Length> travel;
  private final Measure<Length> contact;
  private final Measure<Length> catchAt;
  private final Measure<Length> edgeBelow;
  private final Measure<Length> drop;
  private final Measure<Length> over;
  private final Measure<Length> room;
  private final Measure<Length> fingers;
  private final Measure<Length> grip;
  private final LatchCatch nose;
  private final boolean backPlate;
  private final Closing closing;
  private final Staple guide;
  private final Measure<Length> slotHeight;

  ThumbLatch(ThumbLatchBuilder asked) {
    this.bar = asked.bar;
    this.lever = asked.lever;
    this.unit = asked.unit;
    this.door = asked.door;
    this.length = asked.length;
    this.pivotOut = asked.pivotOut;
    this.thumb = asked.thumb;
    this.travel = asked.travel;
    this.contact = asked.contact;
    this.catchAt = asked.catchAt;
    this.edgeBelow = asked.edgeBelow;
    this.drop = asked.drop;
    this.over = asked.over;
    this.room = asked.room;
    this.fingers = asked.fingers;
    this.grip = asked.grip;
    this.nose = asked.nose;
    this.backPlate = asked.backPlate;
    this.closing = asked.closing;
    this.motion = new LatchMotion(asked, reach());
    this.parts = new LatchParts(asked, reach());
    LatchFit.check(asked, motion, liftNeeded());
    Graduation<Length> rule = asked.rule;
    Measure<Length> high = Measure.of(slot(Notes.NONE), unit);
    this.slotHeight = rule == null ? high : rule.upTo(high).to(unit);
    this.guide = guide(asked.guide, rule);
  }

  /**
   * Begins a description.
   *
   * @param door how thick the door is, more than zero; its unit is that of the answers
   * @param bar what the latch bar is made of, its width upright
   * @param length of the bar from its pivot to its tip, more than zero
   * @return a builder that is told the rest
   * @throws IllegalArgumentException if a length is not more than zero
   */
  public static ThumbLatchBuilder through(Quantity<Length> door, Bar bar, Quantity<Length> length) {
    return new ThumbLatchBuilder(door, bar, length);
  }

  /** {@return how thick the door is} */
  public Measure<Length> door() {
    return door;
  }

  /** {@return how far the lever's pivot lies in front of the door's outer face} */
  public Measure<Length> pivotOut() {
    return pivotOut;
  }

  /** {@return from the lever's pivot out to where the thumb presses} */
  public Measure<Length> thumbFromPivot() {
    return thumb;
  }

  /** {@return how far the thumb goes down} */
  public Measure<Length> thumbTravel() {
    return travel;
  }

  /** {@return the bar's length from its pivot to its tip} */
  public Measure<Length> length() {
    return length;
  }

  /** {@return how far the bar's pivot lies above its lower edge} */
  public Measure<Length> pivotAboveEdge() {
    return edgeBelow;
  }

  /** {@return the room of the bar in its guide, below and above and before it} */
  public Measure<Length> room() {
    return room;
  }

  /** {@return the clear room for fingers behind the handle} */
  public Measure<Length> fingers() {
    return fingers;
  }

  /** {@return the clear length of the handle} */
  public Measure<Length> grip() {
    return grip;
  }

  /** {@return how far the lever turns; exact, in degrees} */
  public Measure<Angle> leverAngle() {
    return degrees(motion.lever(Notes.NONE));
  }

  /** {@return how far the lever lifts the bar where it touches it: y = z tan φ; exact} */
  public Measure<Length> liftAtContact() {
    return Measure.of(motion.atContact(Notes.NONE), unit);
  }

  /** {@return how far the bar turns; exact, in degrees} */
  public Measure<Angle> barAngle() {
    return degrees(motion.turn(Notes.NONE));
  }

  /** {@return how far the bar's lower edge rises at the catch; exact} */
  public Measure<Length> lift() {
    return Measure.of(motion.lift(Notes.NONE), unit);
  }

  /** {@return how the lift at the catch was found} */
  public Working working() {
    return Notes.taken("lift of a thumb latch at its catch", unit, motion::lift)
        .withSource(LEVERS)
        .withCautions(cautions());
  }

  /**
   * The lift, from where the bar rests on the door, that takes it over the nose when the door has
   * dropped as far as was allowed for. Beyond the free height below it the bar rests on the catch's
   * floor and is behind the lever by as much.
   *
   * @return the lift at the catch, exact; never more than {@link #lift}
   */
  public Measure<Length> liftNeeded() {
    return nose.lostAtRise().to(unit).add(drop).add(over);
  }

  /** {@return the catch on the frame} */
  public LatchCatch nose() {
    return nose;
  }

  /** {@return how much of the bar's tip lies beyond the catch's inner face; exact} */
  public Measure<Length> overlap() {
    return length.subtract(catchAt);
  }

  /**
   * What the thumb must press with to begin to lift the bar's own weight.
   *
   * @return the force, without friction and spring
   */
  public Measure<Force> thumbForce() {
    Measure<Length> whole = length.add(depth());
    double weight = bar.mass(whole).in(ShopUnits.KILOGRAM) * GRAVITY;
    Measure<Length> middle = whole.divide(2).subtract(depth());
    return thumbForce(
        Measure.of(weight, ShopUnits.NEWTON), middle.getValue() < 0 ? middle.withValue(0) : middle);
  }

  /**
   * What the thumb must press with to begin to lift what presses down on the bar: F = W (X/x)
   * (z/a).
   *
   * @param down its weight, or a spring on it; zero or more
   * @param fromPivot where along the bar, zero or more
   * @return the force, without friction
   * @throws IllegalArgumentException if an argument is negative
   */
  public Measure<Force> thumbForce(Quantity<Force> down, Quantity<Length> fromPivot) {
    Measure<Force> press = Arguments.notNegativeForce("down", down);
    Measure<Length> at = Arguments.notNegative("fromPivot", fromPivot);
    return press.withValue(motion.force(Notes.NONE, press, at));
  }

  /**
   * How the thumb's force was found.
   *
   * @param down what presses on the bar
   * @param fromPivot where along it
   * @return the working of {@link #thumbForce(Quantity, Quantity)}
   * @throws IllegalArgumentException if an argument is negative
   */
  public Working thumbForceWorking(Quantity<Force> down, Quantity<Length> fromPivot) {
    Measure<Force> press = Arguments.notNegativeForce("down", down);
    Measure<Length> at = Arguments.notNegative("fromPivot", fromPivot);
    return Notes.taken("force of the thumb", unit, n -> motion.force(n, press, at))
        .withSource(STATICS);
  }

  /**
   * How high the slot through the door is: the lever's thickness, what it rises at the inner face,
   * and the room.
   *
   * @return the height, exact, on the rule that was asked for
   */
  public Measure<Length> slotHeight() {
    return slotHeight;
  }

  /** {@return how the slot's height was found, before a rule} */
  public Working slotWorking() {
    return Notes.taken("slot for a lever through the door", unit, this::slot).withSource(LEVERS);
  }

  /**
   * The staple on the door that the bar moves in: it takes the bar from rest to its full lift.
   *
   * @return the guide, half way from contact to catch; its width stands upright
   */
  public Staple guide() {
    return guide;
  }

  /**
   * Where lever, guide and catch are along the bar, from its pivot: positive to the right, seen
   * from the bar's side of the door.
   *
   * @return three places, exact
   */
  public List<Measure<Length>> places() {
    return List.of(
        contact.multiply(closing.sign()),
        guideAt().multiply(closing.sign()),
        catchAt.multiply(closing.sign()));
  }

  /** {@return which way the door closes, seen from the bar} */
  public Closing closing() {
    return closing;
  }

  /** {@return the bar, from behind its pivot to its tip; the pivot one depth from that end} */
  public Piece bar() {
    return parts.bar();
  }

  /** {@return the thumb piece, from where the thumb presses to past the bar's far face} */
  public Piece thumbPiece() {
    return parts.thumbPiece();
  }

  /** {@return the handle: foot, leg, grip, leg, foot} */
  public Piece handle() {
    return parts.handle();
  }

  /** {@return the line of the handle's middle, foot to foot, to lay the hot bar on} */
  public MeanLine handleLine() {
    return parts.handleLine();
  }

  /** {@return the catch: a point to drive into the frame, and what stands out of it} */
  public Piece catchPiece() {
    return parts.catchPiece();
  }

  /** {@return all pieces to forge: bar, thumb piece, handle, guide, catch, and its plate if any} */
  public List<Piece> pieces() {
    List<Piece> pieces =
        new ArrayList<>(List.of(bar(), thumbPiece(), handle(), guide.piece(), catchPiece()));
    if (backPlate) {
      pieces.add(parts.plate());
    }
    return List.copyOf(pieces);
  }

  /** {@return whether the handle is on a plate: Norfolk; else Suffolk} */
  public boolean hasBackPlate() {
    return backPlate;
  }

  /** {@return fingers, escape, and where advice on handles is not kept} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (!HandleRule.BS_8300_BEHIND_GRIP.allows(fingers)) {
      cautions.add(
          Caution.limit(
              "room of "
                  + fingers
                  + " behind the handle is less than published advice, "
                  + HandleRule.BS_8300_BEHIND_GRIP,
              HandleRule.BS_8300_BEHIND_GRIP.source()));
    }
    cautions.add(
        Caution.danger(
            "a latch traps fingers under its bar and is no lock; ease its edges; for use by"
                + " everyone and on escape routes local codes govern"));
    cautions.addAll(guide.cautions());
    return List.copyOf(cautions);
  }

  private static Measure<Angle> degrees(double radians) {
    return Measure.of(radians, ShopUnits.RADIAN).to(ShopUnits.DEGREE);
  }

  private Measure<Length> depth() {
    return bar.section().width().to(unit);
  }

  /** From the lever's pivot to the bar's far face. */
  private Measure<Length> reach() {
    return pivotOut.add(door).add(bar.section().thickness().to(unit));
  }

  private Measure<Length> guideAt() {
    return contact.add(catchAt).divide(2);
  }

  private Staple guide(Bar rod, @Nullable Graduation<Length> rule) {
    double turned = motion.turn(Notes.NONE);
    Measure<Length> far = guideAt().add(rod.section().width().to(unit).divide(2));
    Measure<Length> above = depth().subtract(edgeBelow);
    Measure<Length> span =
        far.multiply(Math.tan(turned)).add(above.divide(Math.cos(turned))).add(edgeBelow);
    Measure<Length> wide = span.isLessThan(depth()) ? depth() : span;
    Staple exact =
        Staple.inside(wide.add(room.multiply(2)), rod)
            .standing(bar.section().thickness().to(unit).add(room))
            .withSquareCrown();
    return rule == null ? exact : exact.on(rule);
  }

  private double slot(Notes n) {
    double angle = motion.lever(n);
    double z = n.given("z", "pivot to the door's inner face", pivotOut.add(door).in(unit));
    double t = n.given("t", "thickness of the lever", lever.section().thickness().in(unit));
    double r = n.given("r", "room", room.in(unit));
    return n.length("h", "slot through the door", "t + z tan(φ) + r", t + z * Math.tan(angle) + r);
  }

  /** Pattern, door, and both lifts. */
  @Override
  public String toString() {
    return (backPlate ? "Norfolk" : "Suffolk")
        + " latch through a door of "
        + door
        + ", lifts "
        + lift()
        + " where "
        + liftNeeded()
        + " is needed";
  }
}
