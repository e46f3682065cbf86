package org.hammerscale.latch;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Eye;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.PunchedHole;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A slotted strap that swings over a staple, and is held there by a padlock's shackle or a peg.
 * Other names: {@index "hasp and staple"}, {@index "padlock hasp"}.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(millimetres(40), millimetres(4)), Material.MILD_STEEL);
 * Bar rod = Bar.of(Section.round(millimetres(8)), Material.MILD_STEEL);
 * Staple staple = Staple.inside(millimetres(12), rod).standing(Hasp.leastInside(millimetres(4), millimetres(8), millimetres(2)));
 * Hasp hasp = Hasp.of(strap, staple).stapledAt(millimetres(45)).pinAbove(millimetres(4)).hasp();
 * hasp.slotLength()                // 11.15 mm   for an 8 mm staple, since its tall end swings
 * hasp.play(millimetres(8))        // 2 mm       off its seat, with an 8 mm shackle in
 * hasp.slotWidth()                 // 28 mm      over both legs
 * Hasp.hanger(strap, rod, millimetres(0.5)).insideWidth()   // 40.5 mm  of a staple to hang it on
 * }</pre>
 *
 * <p>As the hasp lifts off, each point of the staple describes a circle about the pin, seen from
 * the strap; the slot is what those circles cut out of its thickness. Exact as plane geometry: a
 * staple across the hasp counts as square on top, one in line with its round crown as round. Places
 * count from the pin, in the strap's unit. The strap's eye is turned centred on a pin, and joggled
 * for one elsewhere; it is rolled up, flush with the underside, round the crown of a staple that it
 * hangs on. Source: circles about the pin.
 */
public final class Hasp {
  private static final Source CIRCLES =
      Source.computed("circles of the staple's corners about the hasp's pin");

  private final Bar strap;
  private final Staple staple;
  private final boolean inLine;
  private final Unit<Length> unit;
  private final Measure<Length> pinAbove;
  private final Measure<Length> stapledAt;
  private final Measure<Length> clearance;
  private final Measure<Length> bore;
  private final Measure<Length> beyond;
  private final @Nullable Staple hanger;
  private final Measure<Length> from;
  private final Measure<Length> to;
  private final Measure<Length> width;

  Hasp(HaspBuilder asked) {
    this.strap = asked.strap;
    this.staple = asked.staple;
    this.inLine = asked.inLine;
    this.unit = asked.unit;
    this.pinAbove = asked.pinAbove;
    this.stapledAt = asked.stapledAt;
    this.clearance = asked.clearance;
    this.bore = asked.bore;
    this.beyond = asked.beyond;
    this.hanger = asked.hanger;
    check();
    Measure<Length> across =
        inLine ? wire() : staple.insideWidth().to(unit).add(wire().multiply(2));
    Measure<Length> wide = across.add(clearance.multiply(2));
    Measure<Length> near = Measure.of(swept().near(Notes.NONE), unit);
    Measure<Length> far = Measure.of(swept().far(Notes.NONE), unit);
    Graduation<Length> rule = asked.rule;
    this.from = rule == null ? near : rule.downTo(near).to(unit);
    this.to = rule == null ? far : rule.upTo(far).to(unit);
    this.width = rule == null ? wide : rule.upTo(wide).to(unit);
    checkSlot();
  }

  /**
   * Begins a description.
   *
   * @param strap what the hasp is forged from, flat
   * @param staple what it shuts over
   * @return a builder that is told the rest
   */
  public static HaspBuilder of(Bar strap, Staple staple) {
    return new HaspBuilder(strap, staple);
  }

  /**
   * The least clear height inside the staple for a padlock: strap + shackle + clearance.
   *
   * @param strap the thickness of the hasp, more than zero
   * @param shackle the thickness of the shackle, more than zero
   * @param clearance zero or more
   * @return the height above the base, exact, in the strap's unit
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static Measure<Length> leastInside(
      Quantity<Length> strap, Quantity<Length> shackle, Quantity<Length> clearance) {
    return Arguments.positive("strap", strap)
        .add(Arguments.positive("shackle", shackle))
        .add(Arguments.notNegative("clearance", clearance));
  }

  /**
   * A staple to hang a hasp on: as wide inside as the strap and the play, so high that the rolled
   * eye lies on the wood, its crown square.
   *
   * @param strap what the hasp is forged from
   * @param rod what the staple is bent from
   * @param play of the eye on its crown and of the strap between its legs, zero or more
   * @return the staple, to be driven or clenched
   * @throws IllegalArgumentException if the play is negative
   */
  public static Staple hanger(Bar strap, Bar rod, Quantity<Length> play) {
    Section section = Objects.requireNonNull(strap, "strap").section();
    Measure<Length> free = Arguments.notNegative("play", play).to(section.width().getUnit());
    return Staple.inside(section.width().add(free), rod)
        .standing(section.thickness().add(free.divide(2)))
        .withSquareCrown();
  }

  /** {@return what it shuts over} */
  public Staple staple() {
    return staple;
  }

  /** {@return the staple that it hangs on; empty if that is a pin of the smith's} */
  public Optional<Staple> hanger() {
    return Optional.ofNullable(hanger);
  }

  /** {@return what it is forged from} */
  public Bar strap() {
    return strap;
  }

  /** {@return the inside of the eye that it turns on} */
  public Measure<Length> bore() {
    return bore;
  }

  /** {@return how far the pin's middle lies above its underside; negative below it} */
  public Measure<Length> pinAbove() {
    return pinAbove;
  }

  /** {@return from the pin to the near side of the staple} */
  public Measure<Length> stapledAt() {
    return stapledAt;
  }

  /** {@return how much of its length the staple takes up: one wire, or all of it in line} */
  public Measure<Length> stapleLength() {
    return inLine ? staple.insideWidth().to(unit).add(wire().multiply(2)) : wire();
  }

  /** {@return whether both legs of the staple stand in line along it} */
  public boolean isInLine() {
    return inLine;
  }

  /** {@return from the pin to its free end} */
  public Measure<Length> length() {
    return to.add(beyond);
  }

  /** {@return where the slot begins, from the pin: √(x² − u²) less the clearance} */
  public Measure<Length> slotFrom() {
    return from;
  }

  /** {@return where the slot ends, from the pin: √(ρ² − y²) and the clearance} */
  public Measure<Length> slotTo() {
    return to;
  }

  /** {@return how long the slot is; exact} */
  public Measure<Length> slotLength() {
    return to.subtract(from);
  }

  /** {@return how wide the slot is: over the staple and the clearance on both sides; exact} */
  public Measure<Length> slotWidth() {
    return width;
  }

  /** {@return how much longer the slot is than the staple, for the swing alone; exact} */
  public Measure<Length> longerForSwing() {
    return slotLength().subtract(stapleLength()).subtract(clearance.multiply(2));
  }

  /** {@return how the slot's beginning was found, before a rule} */
  public Working slotFromWorking() {
    return Notes.taken("near end of a hasp's slot", unit, swept()::near).withSource(CIRCLES);
  }

  /** {@return how the slot's end was found, before a rule} */
  public Working slotToWorking() {
    return Notes.taken("far end of a hasp's slot", unit, swept()::far).withSource(CIRCLES);
  }

  /**
   * How far the shut hasp can lift off its seat with a shackle in the staple.
   *
   * @param shackle its thickness, more than zero
   * @return the play at the staple, exact
   * @throws IllegalArgumentException if the shackle does not go in
   */
  public Measure<Length> play(Quantity<Length> shackle) {
    Measure<Length> thick = Arguments.positive("shackle", shackle).to(unit);
    Measure<Length> room = staple.insideHeight().to(unit).subtract(thickness());
    return room.subtract(
        Arguments.atMost("shackle", thick, "the room over the hasp", room, "raise the staple"));
  }

  /**
   * The same play at the edge of the door that the hasp shuts.
   *
   * @param shackle the shackle's thickness, more than zero
   * @param edgeFromHinge how far the edge is from the door's hinge, more than zero
   * @param stapleFromHinge how far the staple is from it, more than zero
   * @return how far the edge can be lifted, exact for small play
   * @throws IllegalArgumentException if an argument is out of range
   */
  public Measure<Length> playAtEdge(
      Quantity<Length> shackle, Quantity<Length> edgeFromHinge, Quantity<Length> stapleFromHinge) {
    Measure<Length> edge = Arguments.positive("edgeFromHinge", edgeFromHinge);
    Measure<Length> at = Arguments.positive("stapleFromHinge", stapleFromHinge);
    return play(shackle).multiply(edge.ratio(at));
  }

  /**
   * The hasp as it is forged: its eye, the strap, the slot, and what is left to lift it by.
   *
   * @return the piece, its marks told from where the eye ends, trimmed at the free end
   */
  public Piece hasp() {
    Section section = strap.section();
    return Piece.of(
            strap,
            Eye.turned(bore, section),
            Plain.of(section, toSlot()),
            PunchedHole.through(section, slot()),
            Plain.of(section, beyond))
        .withReferenceAfter(1);
  }

  /** {@return all pieces to forge: the hasp, its staple, and the one that it hangs on, if any} */
  public List<Piece> pieces() {
    return hanger == null
        ? List.of(hasp(), staple.piece())
        : List.of(hasp(), staple.piece(), hanger.piece());
  }

  /** {@return what a hasp does not keep out, and what its staple warns of} */
  public List<Caution> cautions() {
    return List.of(
        Caution.danger(
            "a hasp locked from outside shuts people in, and no driven staple keeps out a lever:"
                + " clench it or rivet it on a plate, and see that nobody is inside"),
        staple.cautions().get(0));
  }

  private Measure<Length> thickness() {
    return strap.section().thickness().to(unit);
  }

  private Measure<Length> wire() {
    return staple.rod().section().width().to(unit);
  }

  private Hole slot() {
    Measure<Length> along = slotLength();
    return along.isLessThan(width)
        ? Hole.mortise(width, along).turned()
        : Hole.mortise(along, width);
  }

  /** The strap from where the eye ends: a rolled one does beneath the pin. */
  private Measure<Length> toSlot() {
    return hanger == null ? clearOfEye() : from;
  }

  private Measure<Length> clearOfEye() {
    return from.subtract(bore.divide(2)).subtract(thickness());
  }

  private void check() {
    Measure<Length> off = pinAbove.getValue() < 0 ? pinAbove.negate() : pinAbove;
    if (!off.isLessThan(stapledAt)) {
      throw new IllegalArgumentException(
          "fromPin must be more than the pin's height of "
              + off
              + " over the hasp's underside, was "
              + stapledAt
              + "; set the staple farther from the pin");
    }
    Arguments.atLeast(
        "staple",
        staple.insideHeight().to(unit),
        "the hasp's thickness",
        thickness(),
        "let the staple stand higher");
    if (hanger != null) {
      checkHanger(hanger);
    }
  }

  private void checkHanger(Staple hanging) {
    Arguments.atLeast(
        "hanger",
        hanging.insideHeight().to(unit),
        "the hasp's thickness",
        thickness(),
        "let it stand higher");
    Arguments.atLeast(
        "straight crown of the hanger",
        hanging.straightCrown().to(unit),
        "the strap's width",
        strap.section().width(),
        "bend it wider, or square at its corners");
  }

  private void checkSlot() {
    if (!(clearOfEye().getValue() > 0)) {
      throw new IllegalArgumentException(
          "fromPin must leave strap between eye and slot, was "
              + stapledAt
              + "; set the staple farther from the pin, or hang the hasp on a thinner pin");
    }
    Measure<Length> across = strap.section().width();
    if (!width.isLessThan(across)) {
      throw new IllegalArgumentException(
          "strap must be wider than the slot of "
              + width
              + ", was "
              + across
              + "; take a wider strap, or a staple in line with it");
    }
  }

  /** What the staple cuts out of the strap as it lifts. */
  private HaspSlot swept() {
    boolean isRound = inLine && staple.hasRoundCrown();
    return new HaspSlot(
        stapledAt.in(unit),
        stapleLength().in(unit),
        pinAbove.in(unit),
        staple.heightOverAll().in(unit),
        thickness().in(unit),
        clearance.in(unit),
        isRound);
  }

  /** Strap and slot. */
  @Override
  public String toString() {
    return "hasp of "
        + strap.section()
        + ", slot "
        + slotLength()
        + " × "
        + width
        + " from "
        + from
        + " off the pin";
  }
}
