package org.hammerscale.latch;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Hook;
import org.hammerscale.forging.Head;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A round or flat bolt that slides in two staples on the door and shuts into a keeper on the frame.
 * Other names: {@index "barrel bolt"}, {@index "tower bolt"}, {@index "door bolt"}, {@index
 * "sliding bolt"}.
 *
 * <pre>{@code
 * Bar rod = Bar.of(Section.round(millimetres(12)), Material.MILD_STEEL);
 * SlideBoltBuilder asked = SlideBolt.thrown(millimetres(40), rod).across(millimetres(4)).stapledApart(millimetres(100));
 * SlideBolt bolt = asked.allowing(millimetres(2), millimetres(3)).on(MILLIMETRE).bolt();
 * bolt.leastEngagement()          // 33 mm     once the door has shrunk
 * bolt.staple().insideWidth()     // 13 mm     on a mark, never tighter than asked
 * bolt.tilt()                     // 0.5726°   how far it cocks in them
 * bolt.keeper().insideWidth()     // 18 mm     takes the drop and the cocked tip
 * bolt.bolt().layout().cutLength()   // 162 mm  of the rod
 * }</pre>
 *
 * <p>Engagement is travel − gap − set-back. In openings D = d + c and s apart outside to outside
 * the bolt cocks by acos(d/√(D² + s²)) − atan(s/D), about c/s, and its tip shifts. Exact for a
 * stiff straight bolt; the keeper is as wide as the drop and the shift together need on both sides.
 * What it bears, and what pulls on its staples, is a {@code SlideBoltLoad}. Lengths come out in the
 * travel's unit. Source: plane geometry; statics of two contacts for jamming.
 */
public final class SlideBolt {
  private static final Source GEOMETRY = Source.computed("plane geometry of a bar in two openings");
  private static final Source JAMMING =
      Source.computed("statics of a stiff bolt that touches at two corners");
  private static final double DRY_IRON = 0.3;

  private final Bar bar;
  private final Unit<Length> unit;
  private final Measure<Length> travel;
  private final Measure<Length> gap;
  private final Measure<Length> setBack;
  private final Measure<Length> apart;
  private final Measure<Length> fromEdge;
  private final Measure<Length> coat;
  private final Measure<Length> drop;
  private final Measure<Length> shrinkage;
  private final Measure<Length> handleHeight;
  private final Measure<Length> knob;
  private final boolean tail;
  private final Staple staple;
  private final Staple keeper;
  private final Piece bolt;

  SlideBolt(SlideBoltBuilder asked) {
    this.bar = asked.bar;
    this.unit = asked.unit;
    this.travel = asked.travel;
    this.gap = asked.gap;
    this.setBack = asked.setBack;
    this.coat = asked.coat;
    this.drop = asked.drop;
    this.shrinkage = asked.shrinkage;
    this.handleHeight = asked.handleHeight;
    this.knob = asked.knob;
    this.tail = asked.tail;
    Graduation<Length> rule = asked.rule;
    this.apart = rule == null ? asked.apart : rule.upTo(asked.apart).to(unit);
    this.fromEdge = rule == null ? asked.fromEdge : rule.upTo(asked.fromEdge).to(unit);
    Measure<Length> room = asked.clearance.add(coat.multiply(4));
    Staple running = shaped(asked, width().add(room), thickness().add(room));
    this.staple = rule == null ? running : running.on(rule);
    BoltFit.check(asked, leastEngagement(), apart);
    Measure<Length> wide = width().add(coat.multiply(4)).add(keeperRoom().multiply(2));
    Staple taking = shaped(asked, wide, staple.insideHeight().add(tipShift()));
    this.keeper = rule == null ? taking : taking.on(rule);
    this.bolt = piece(rule);
  }

  /**
   * Begins a description.
   *
   * @param travel how far the bolt is thrown, more than zero; its unit is that of the answers
   * @param bar what it is made of, round, square, or flat on the door
   * @return a builder that is told the rest
   * @throws IllegalArgumentException if the travel is not more than zero
   */
  public static SlideBoltBuilder thrown(Quantity<Length> travel, Bar bar) {
    return new SlideBoltBuilder(travel, bar);
  }

  private static Staple shaped(SlideBoltBuilder asked, Measure<Length> wide, Measure<Length> high) {
    Staple plain = Staple.inside(wide, asked.staples).standing(high).driven(asked.depth);
    return asked.bar.section().isRound() ? plain : plain.withSquareCrown();
  }

  /** {@return what the bolt is made of} */
  public Bar bar() {
    return bar;
  }

  /** {@return how far it is thrown} */
  public Measure<Length> travel() {
    return travel;
  }

  /**
   * How far it reaches into the keeper as it is hung: travel − gap − set-back.
   *
   * @return the length, exact
   */
  public Measure<Length> engagement() {
    return Measure.of(engagement(Notes.NONE), unit);
  }

  /** {@return the same once the door has shrunk as far as was allowed for; exact} */
  public Measure<Length> leastEngagement() {
    return engagement().subtract(shrinkage);
  }

  /** {@return how the engagement was found} */
  public Working working() {
    return Notes.taken("engagement of a slide bolt", unit, this::engagement)
        .withSource(GEOMETRY)
        .withCautions(cautions());
  }

  /** {@return how far it is from the door's edge to the face of the keeper} */
  public Measure<Length> gap() {
    return gap;
  }

  /** {@return how far its end lies behind the door's edge when it is drawn} */
  public Measure<Length> setBack() {
    return setBack;
  }

  /** {@return how high its knob or tail stands above its axis} */
  public Measure<Length> handleHeight() {
    return handleHeight;
  }

  /** {@return from the outer side of one staple to that of the other} */
  public Measure<Length> staplesApart() {
    return apart;
  }

  /**
   * Where staples and keeper stand: from the door's edge to the middle of the outer and the inner
   * staple, inwards, and to the middle of the keeper, outwards and negative.
   *
   * @return three places, exact
   */
  public List<Measure<Length>> places() {
    Measure<Length> half = wire().divide(2);
    return List.of(fromEdge.add(half), fromEdge.add(apart).subtract(half), gap.add(half).negate());
  }

  /** {@return either of the two staples on the door} */
  public Staple staple() {
    return staple;
  }

  /** {@return the staple on the frame, wide enough for drop and cocking} */
  public Staple keeper() {
    return keeper;
  }

  /** {@return the running clearance that the staples leave once all is finished; exact} */
  public Measure<Length> clearance() {
    return staple.insideWidth().subtract(width()).subtract(coat.multiply(4)).to(unit);
  }

  /**
   * How far the bolt can turn in its staples, in the plane of the door.
   *
   * @return the angle, exact for a stiff bolt, in degrees
   */
  public Measure<Angle> tilt() {
    return Measure.of(tilt(Notes.NONE), ShopUnits.RADIAN).to(ShopUnits.DEGREE);
  }

  /**
   * How far its tip can lie off the middle of the staples when it is thrown.
   *
   * @return the length, exact for a stiff bolt; the keeper has as much room on either side
   */
  public Measure<Length> tipShift() {
    return Measure.of(shift(Notes.NONE), unit);
  }

  /** {@return how the shift of the tip was found, and the tilt in it} */
  public Working tipShiftWorking() {
    return Notes.taken("shift of a cocked bolt's tip", unit, this::shift).withSource(GEOMETRY);
  }

  /**
   * How far its tip stands out of the outer staple when it is thrown.
   *
   * @return the length, exact
   */
  public Measure<Length> overhang() {
    return fromEdge.add(travel).subtract(setBack);
  }

  /**
   * How far the middle of the keeper stands from the outer side of the outer staple: where a force
   * on the door bends the bolt.
   *
   * @return the length, exact
   */
  public Measure<Length> keeperOverhang() {
    return fromEdge.add(gap).add(wire().divide(2));
  }

  /**
   * Whether the thrown bolt still enters its keeper after the door has moved, cocked as it may be.
   *
   * @param lower how far the door's edge has dropped; negative if it has risen
   * @return whether there is room
   */
  public boolean entersAfterDrop(Quantity<Length> lower) {
    Measure<Length> moved = Arguments.length("lower", lower);
    Measure<Length> down = moved.getValue() < 0 ? moved.negate() : moved;
    Measure<Length> side =
        keeper.insideWidth().subtract(width()).subtract(coat.multiply(4)).divide(2);
    return !side.isLessThan(down.add(tipShift())) || side.isEquivalentTo(down.add(tipShift()));
  }

  /**
   * The least distance of the staples at which a push on the handle slides the bolt and does not
   * jam it: s = 2 μ a. The thickness of the bolt cancels.
   *
   * @param friction between bolt and staples, more than 0 and at most 2; dry iron about 0.3
   * @return the distance outside to outside, exact for a stiff bolt
   * @throws IllegalArgumentException if the friction is out of range
   */
  public Measure<Length> leastApart(double friction) {
    double mu = checked(friction);
    return Measure.of(jamming(Notes.NONE, mu), unit);
  }

  /**
   * How the least distance of the staples was found.
   *
   * @param friction between bolt and staples, more than 0 and at most 2
   * @return the working of {@link #leastApart}
   * @throws IllegalArgumentException if the friction is out of range
   */
  public Working leastApartWorking(double friction) {
    double mu = checked(friction);
    return Notes.taken("staples against jamming", unit, n -> jamming(n, mu)).withSource(JAMMING);
  }

  /**
   * The bolt itself, from its tip: straight, and a tail if it has one.
   *
   * @return the piece, trimmed at the end that is not its tip
   */
  public Piece bolt() {
    return bolt;
  }

  /** {@return whether its end is turned up; else it has a knob} */
  public boolean hasTail() {
    return tail;
  }

  /**
   * Where the knob's hole is drilled, from the tip: the knob meets the outer staple just when the
   * bolt is thrown.
   *
   * @return the place, exact
   * @throws IllegalArgumentException if it has a tail
   */
  public Measure<Length> knobPlace() {
    requireKnob();
    return overhang().add(wire()).add(knob.divide(2));
  }

  /**
   * What the knob's hole is countersunk to below, at 90°, so that the head there lies flush and the
   * bolt flat on the wood: half as much again as the knob, but no deeper than half the bolt.
   *
   * @return the diameter, exact
   * @throws IllegalArgumentException if it has a tail
   */
  public Measure<Length> knobCountersink() {
    requireKnob();
    Measure<Length> half = knob.divide(2);
    return knob.add(half.isGreaterThan(thickness()) ? thickness() : half);
  }

  /**
   * The knob: a pin that goes through the bolt, its far end headed over flush.
   *
   * @return the piece
   * @throws IllegalArgumentException if the bolt has a tail
   */
  public Piece knob() {
    requireKnob();
    Section pin = Section.round(knob);
    Measure<Length> straight = handleHeight.add(thickness().divide(2));
    return Piece.of(
        Bar.of(pin, bar.material()),
        Plain.of(pin, straight),
        Head.countersunkOverGrip(pin, knobCountersink(), Measures.degrees(90)));
  }

  /** {@return all pieces to forge: the bolt, its knob if it has one, two staples, the keeper} */
  public List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(bolt);
    if (!tail) {
      pieces.add(knob());
    }
    Piece one = staple.piece();
    pieces.add(one);
    pieces.add(one);
    pieces.add(keeper.piece());
    return List.copyOf(pieces);
  }

  /** {@return that it may jam, that a finger may be caught, and what its parts warn of} */
  public List<Caution> cautions() {
    Set<Caution> cautions = new LinkedHashSet<>();
    Measure<Length> least = leastApart(DRY_IRON);
    if (apart.isLessThan(least)) {
      cautions.add(
          Caution.limit(
              "staples closer than " + least + " let a dry bolt jam under a push on its handle",
              JAMMING));
    }
    cautions.add(
        Caution.danger(
            "a bolt is no lock and no way out: on an escape route local codes govern; keep fingers"
                + " out of the gap when the door shuts"));
    cautions.addAll(staple.cautions());
    return List.copyOf(cautions);
  }

  private Measure<Length> width() {
    return bar.section().width().to(unit);
  }

  private Measure<Length> thickness() {
    return bar.section().thickness().to(unit);
  }

  /** How much of the bolt's way a staple takes up. */
  private Measure<Length> wire() {
    return staple.rod().section().width().to(unit);
  }

  private Measure<Length> keeperRoom() {
    return drop.add(tipShift());
  }

  private Piece piece(@Nullable Graduation<Length> rule) {
    Measure<Length> through = overhang().add(apart);
    Measure<Length> radius = thickness().divide(2);
    Measure<Length> straight = tail ? through.subtract(radius) : through.add(width());
    Plain shank = Plain.of(bar.section(), rule == null ? straight : rule.upTo(straight));
    if (!tail) {
      return Piece.of(bar, shank);
    }
    Measure<Length> tip = handleHeight.subtract(thickness());
    return Piece.of(bar, shank, Hook.cabin(radius, bar.section()).withTip(tip));
  }

  private void requireKnob() {
    if (tail) {
      throw new IllegalArgumentException("knob must be there, was a tail; ask for a knob");
    }
  }

  private static double checked(double friction) {
    return Arguments.number("friction", friction, 2, "dry iron on iron is about 0.3");
  }

  private double engagement(Notes n) {
    double t = n.given("T", "travel", travel.in(unit));
    double g = n.given("g", "gap to the keeper", gap.in(unit));
    double b = n.given("b", "set-back when drawn", setBack.in(unit));
    return n.length("E", "in the keeper", "T − g − b", t - g - b);
  }

  private double tilt(Notes n) {
    double d = n.given("d", "bolt, across", bar.section().width().in(unit));
    double c = n.given("c", "running clearance", clearance().in(unit));
    double s = n.given("s", "staples apart, outside", apart.in(unit));
    double wide = n.length("D", "opening", "d + c", d + c);
    double angle = Math.acos(d / Math.sqrt(wide * wide + s * s)) - Math.atan(s / wide);
    return n.value(
        "θ", "tilt", "acos(d / √(D² + s²)) − atan(s / D)", Math.max(angle, 0), ShopUnits.RADIAN);
  }

  private double shift(Notes n) {
    double angle = tilt(n);
    double d = bar.section().width().in(unit);
    double wide = d + clearance().in(unit);
    double s = apart.in(unit);
    double o = n.given("o", "tip beyond the outer staple", overhang().in(unit));
    double off = d / (2 * Math.cos(angle)) + (s + o) * Math.tan(angle) - wide / 2;
    return n.length("q", "shift of the tip", "d / (2 cos(θ)) + (s + o) tan(θ) − D / 2", off);
  }

  private double jamming(Notes n, double friction) {
    double a = n.given("a", "push from the bolt's axis", handleHeight.in(unit));
    double mu = n.number("μ", "friction", "", friction);
    return n.length("s", "staples apart, at least", "2 μ a", 2 * mu * a);
  }

  /** Bar, travel, engagement and staples. */
  @Override
  public String toString() {
    return "slide bolt of "
        + bar.section()
        + ", thrown "
        + travel
        + ", "
        + engagement()
        + " in its keeper, staples "
        + apart
        + " apart";
  }
}
