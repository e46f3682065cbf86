package org.hammerscale.hinge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.heat.Contraction;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;

/**
 * A pair of leaves that fit each other: rolled round one bore, divided into knuckles that
 * interleave, cut back so far that the door opens as wide as it must. The first leaf is the one on
 * the post (jamb, frame), the second hangs on it. Other names: {@index hinge}, pair of {@index
 * strap}s or {@index band}s, {@index T-hinge}.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * HingePairBuilder asked = HingePair.of(strap, Bore.forPin(inches("1/2")).clearing(inches("1/64")));
 * asked.knuckles(Knuckles.across(inches("1 1/2")).withGap(inches("1/32"))).leaves(Plain.of(strap.section(), inches(12)));
 * HingePair pair = asked.opening(degrees(110), Hanging.FACE).on(SIXTEENTH).pair();
 * pair.slotsOf(Leaf.FIRST).get(0)                            // slot of the first leaf: 5/8 in at 7/16 in
 * pair.knuckles().gap()                                      // 1/16 in  the least that sixteenths can show
 * pair.notchDepth()                                          // 7/16 in  behind the pin, for it to open
 * pair.leaf(Leaf.FIRST).layout().on(SIXTEENTH).cutLength()   // 14 7/16 in  of the bar, for each leaf
 * }</pre>
 *
 * <p>Lengths are exact as geometry but where a feature is an estimate. Both leaves get the same
 * notch. What it carries is another question: see {@link org.hammerscale.strength.DoorLoad} and
 * {@link org.hammerscale.strength.BarrelOpening}. Source: the parts, each with its own.
 */
public final class HingePair {
  private final Bar strap;
  private final Bore bore;
  private final Barrel barrel;
  private final Knuckles knuckles;
  private final Hanging hanging;
  private final Measure<Angle> wanted;
  private final Hand hand;
  private final boolean proud;
  private final Measure<Length> runningGap;
  private final Measure<Length> notch;
  private final Swing swing;
  private final Piece first;
  private final Piece second;

  HingePair(HingePairBuilder asked) {
    this.strap = asked.strap;
    this.bore = asked.bore;
    Barrel rolled = Barrel.around(bore, asked.rolled).endedWith(asked.end);
    this.barrel = asked.centred ? rolled.centred() : rolled;
    Graduation<Length> rule = asked.rule;
    this.knuckles = rule == null ? asked.knuckles : asked.knuckles.on(rule);
    this.hanging = asked.hanging;
    this.wanted = asked.opening;
    this.hand = asked.hand;
    checkWidth();
    this.runningGap = asked.runningGap;
    this.proud = asked.proud == null ? hanging == Hanging.FACE : asked.proud;
    LeafProfile lying = asked.centred ? LeafProfile.centred(barrel) : LeafProfile.tangent(barrel);
    LeafProfile profile = proud ? lying.turnedOver() : lying;
    LeafProfile firstProfile = profile.reaching(lengthFromPin(Leaf.FIRST, asked.first));
    LeafProfile secondProfile =
        asked.first.equals(asked.second)
            ? firstProfile
            : profile.reaching(lengthFromPin(Leaf.SECOND, asked.second));
    Swing uncut = Swing.between(firstProfile, secondProfile).withGap(asked.runningGap);
    Measure<Length> depth = asked.notch == null ? leastNotch(uncut) : asked.notch;
    this.notch = rule == null ? depth : rule.upTo(depth);
    LeafProfile fixed = firstProfile.notchedBehindPin(notch);
    LeafProfile moving =
        firstProfile == secondProfile ? fixed : secondProfile.notchedBehindPin(notch);
    this.swing = Swing.between(fixed, moving).withGap(asked.runningGap);
    checkSwing(uncut);
    checkRoom(Leaf.FIRST, asked.first);
    checkRoom(Leaf.SECOND, asked.second);
    this.first = piece(asked.first);
    this.second = asked.first.equals(asked.second) ? first : piece(asked.second);
  }

  /**
   * Begins a description.
   *
   * @param strap the bar that both leaves are forged from
   * @param bore the pin and the room round it
   * @return a builder that is told the rest
   */
  public static HingePairBuilder of(Bar strap, Bore bore) {
    return new HingePairBuilder(strap, bore);
  }

  /** {@return the bar that both leaves are forged from} */
  public Bar strap() {
    return strap;
  }

  /** {@return the bore: the pin and the room round it} */
  public Bore bore() {
    return bore;
  }

  /** {@return the barrel that both leaves are rolled to, before it is divided} */
  public Barrel barrel() {
    return barrel;
  }

  /** {@return how the barrel is divided} */
  public Knuckles knuckles() {
    return knuckles;
  }

  /** {@return on which side the door hangs} */
  public Hand hand() {
    return hand;
  }

  /** {@return how the door hangs} */
  public Hanging hanging() {
    return hanging;
  }

  /**
   * One leaf as it is forged: the barrel, then what was asked for beyond it.
   *
   * @param which the leaf
   * @return the piece, its marks told from where the leaf leaves the barrel, trimmed at both ends
   */
  public Piece leaf(Leaf which) {
    Objects.requireNonNull(which, "which");
    return which == Leaf.FIRST ? first : second;
  }

  /**
   * How long a leaf is from the pin's centre to its tip.
   *
   * @param which the leaf
   * @return the length, exact, in the bore's unit
   */
  public Measure<Length> lengthFromPin(Leaf which) {
    Objects.requireNonNull(which, "which");
    List<Feature> features = leaf(which).features();
    return lengthFromPin(which, features.subList(1, features.size()));
  }

  /** {@return how deep the notches go behind the pin's centre; exact} */
  public Measure<Length> notchDepth() {
    return notch;
  }

  /**
   * What is cut out of one leaf for the knuckles of the other.
   *
   * @param which the leaf
   * @return its slots and notches, across the leaf from the edge told by {@link #markedFrom}
   */
  public List<KnuckleSlot> slotsOf(Leaf which) {
    Objects.requireNonNull(which, "which");
    return knuckles.slotsOf(which);
  }

  /** {@return the gap kept between the floor of a notch and the other leaf} */
  public Measure<Length> runningGap() {
    return runningGap;
  }

  /** {@return whether the barrels stand proud on the side that the door opens toward} */
  public boolean hasProudBarrels() {
    return proud;
  }

  /**
   * How far along the flat bar the slots go beyond the mark between barrel and leaf. Measure it
   * from that mark, not from the bar's end: how much the curl takes is uncertain by about a
   * thickness.
   *
   * @return the length, exact
   */
  public Measure<Length> slotFloor() {
    return barrel.closing().slotFloorFromMark(notch);
  }

  /**
   * The edge that knuckles and slots are measured from, for the top knuckle to come first on both
   * leaves: which one it is when the leaf lies with the face up that the door's opening side shows,
   * its barrel end to the left.
   *
   * @param which the leaf
   * @return {@code far edge} or {@code near edge}
   */
  public String markedFrom(Leaf which) {
    Objects.requireNonNull(which, "which");
    return (hand == Hand.LEFT) == (which == Leaf.SECOND) ? "far edge" : "near edge";
  }

  /**
   * The metal that the slots of one leaf take out, from the curl and from the notch behind the pin.
   * The bar is cut with it in; the finished leaf is lighter by it.
   *
   * @param which the leaf
   * @return the volume, as uncertain as the curl
   */
  public Estimate<Volume> metalCutOut(Leaf which) {
    Objects.requireNonNull(which, "which");
    Measure<Length> width = knuckles.width().withValue(0);
    for (KnuckleSlot slot : slotsOf(which)) {
      width = width.add(slot.width());
    }
    Estimate<Length> along = barrel.closing().slotFloorFromEnd(notch);
    Measure<Area> across = Measures.area(width, barrel.section().thickness());
    return Estimate.of(
        Measures.volume(along.low(), across),
        Measures.volume(along.likely(), across),
        Measures.volume(along.high(), across));
  }

  /**
   * How the two leaves turn about the pin, toward the side that the door opens to.
   *
   * @return the swing, with both notches as deep as {@link #notchDepth}
   */
  public Swing swing() {
    return swing;
  }

  /** {@return how far the door was asked to open, from shut} */
  public Measure<Angle> wantedOpening() {
    return wanted;
  }

  /** {@return how far the door opens from shut until iron meets iron; exact} */
  public Measure<Angle> opening() {
    return swing.opening(hanging);
  }

  /**
   * The drift that sizes the hot bore, so that it is right when cold.
   *
   * @param work the contraction of the leaf from the heat that it is drifted at
   * @return the drift
   */
  public Drift drift(Contraction work) {
    return Drift.leaving(bore.diameter(), work);
  }

  /**
   * The bottom swage that trues the hot barrel, so that it is right when cold.
   *
   * @param work the contraction of the leaf from the heat that it is trued at
   * @return the swage
   */
  public Swage swage(Contraction work) {
    return Swage.truing(barrel.outsideDiameter(), work);
  }

  /** {@return the pin; its length is asked for with the width of the {@link #knuckles}} */
  public Pin pin() {
    return Pin.of(bore.pin());
  }

  /** {@return what the barrel, the swing and both leaves warn of, each once} */
  public List<Caution> cautions() {
    Set<Caution> cautions = new LinkedHashSet<>(swing.cautions());
    cautions.addAll(first.layout().cautions());
    cautions.addAll(second.layout().cautions());
    return List.copyOf(cautions);
  }

  private Measure<Length> leastNotch(Swing uncut) {
    Measure<Length> least = uncut.leastNotch(hanging.pastFlat(wanted));
    // The floor of a centred leaf's notch lies beyond its neck, whatever the swing needs.
    Measure<Length> start = barrel.leafStart();
    return least.isLessThan(start) ? start : least;
  }

  private Measure<Length> lengthFromPin(Leaf which, List<Feature> beyondBarrel) {
    if (beyondBarrel.isEmpty()) {
      throw new IllegalArgumentException(
          which + " must go on beyond its barrel, was none; give at least a Plain stretch");
    }
    Measure<Length> length = barrel.leafStart();
    for (Feature feature : beyondBarrel) {
      length = length.add(feature.reach());
    }
    return length;
  }

  private void checkWidth() {
    Measure<Length> strapWidth = barrel.section().width();
    if (!knuckles.width().isEquivalentTo(strapWidth)) {
      throw new IllegalArgumentException(
          "width of the knuckles must be that of the strap at the barrel, "
              + strapWidth
              + ", was "
              + knuckles.width()
              + "; divide the strap's width, or say what section the barrel is rolled from");
    }
  }

  private void checkSwing(Swing uncut) {
    if (!swing.shuts(hanging)) {
      throw new IllegalArgumentException(
          "leaves must fold by "
              + hanging.folded()
              + " to hang "
              + hanging
              + ", but meet at "
              + swing.backSwing()
              + "; roll the barrels to one face and set the faces flush, or hang them on the face");
    }
    Measure<Angle> pastFlat = hanging.pastFlat(wanted);
    if (!swing.clears(pastFlat)) {
      throw new IllegalArgumentException(
          "depth of notch must be at least "
              + uncut.leastNotch(pastFlat)
              + " for the door to open "
              + wanted
              + ", was "
              + notch
              + "; cut the notch deeper");
    }
  }

  private void checkRoom(Leaf which, List<Feature> beyondBarrel) {
    Measure<Length> length = lengthFromPin(which, beyondBarrel);
    if (!notch.isLessThan(length)) {
      throw new IllegalArgumentException(
          which
              + " must be longer than the notch behind its pin is deep, "
              + notch
              + ", was "
              + length
              + "; lengthen the leaf, or let the door open less");
    }
  }

  private Piece piece(List<Feature> beyondBarrel) {
    List<Feature> features = new ArrayList<>();
    features.add(barrel);
    features.addAll(beyondBarrel);
    return Piece.of(strap, features.toArray(new Feature[0]))
        .withReferenceAfter(1)
        .trimmedAt(PieceEnd.FIRST, PieceEnd.LAST);
  }

  /** Strap, pin, notch and opening. */
  @Override
  public String toString() {
    return hand
        + " pair, "
        + barrel.section()
        + ", pin "
        + bore.pin()
        + ": notch "
        + notch
        + ", opens "
        + opening();
  }
}
