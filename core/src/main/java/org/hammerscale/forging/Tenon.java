package org.hammerscale.forging;

import java.util.ArrayList;
import java.util.List;
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
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A riveted tenon: a stretch set down from the bar with a shoulder, put through a hole in another
 * bar and headed over. Other names: {@index "tenon joint"}, {@index "riveted tenon"}, {@index
 * "mortise and tenon"}. Its length from the shoulder is L = g + g (H / A − 1) + V / A: through the
 * other bar of thickness g, what fills a hole of area H wider than the tenon's A, and what the head
 * of volume V takes.
 *
 * <pre>{@code
 * Section bar = Section.square(millimetres(16));
 * Section peg = Section.square(millimetres(10));
 * Upset head = Head.dome(peg, Section.round(millimetres(18)), millimetres(5));
 * Tenon tenon = Tenon.between(bar, peg).through(millimetres(6), head);
 * tenon.lengthBeyond()   // 7.016 mm  to stand out of the other bar
 * tenon.length()         // 13.02 mm  from the shoulder, before it is headed
 * tenon.shoulderWidth()  // 3 mm  all round, to bear on it
 * tenon.stock(bar)       // 6.178 mm (5.105 mm to 7.474 mm)  of the bar, by hand
 * }</pre>
 *
 * <p>Exact as geometry; the bar it uses is an estimate by {@link HandAllowance#SET_DOWN} unless
 * another allowance is given. No printed rule for the width of a shoulder was found. Source:
 * conservation of volume.
 */
public final class Tenon implements Feature, Outlined {
  private static final Source VOLUME = Source.computed("conservation of volume");

  private final Section bar;
  private final Section peg;
  private final Section hole;
  private final Measure<Length> grip;
  private final Upset head;
  private final HandAllowance hand;
  private final Unit<Length> unit;

  private Tenon(
      Section bar,
      Section peg,
      Section hole,
      Measure<Length> grip,
      Upset head,
      HandAllowance hand) {
    this.bar = bar;
    this.peg = peg;
    this.hole = hole;
    this.grip = grip;
    this.head = head;
    this.hand = hand;
    this.unit = grip.getUnit();
  }

  /** A tenon that goes through nothing yet. */
  public static final class Unheaded {
    private final Section bar;
    private final Section peg;

    private Unheaded(Section bar, Section peg) {
      this.bar = bar;
      this.peg = peg;
    }

    /**
     * The tenon through another bar, and headed.
     *
     * @param thickness of the other bar or plate, more than zero; less the depth of a {@link
     *     Head#countersunk} head, in full for {@link Head#countersunkOverGrip}
     * @param head on a shank of the tenon's section
     * @return the tenon, in a hole that it fills
     * @throws IllegalArgumentException if the thickness is not more than zero, or the head is that
     *     of another section
     */
    public Tenon through(Quantity<Length> thickness, Upset head) {
      Objects.requireNonNull(head, "head");
      if (!head.start().isSimilarTo(peg) || !head.start().area().isEquivalentTo(peg.area())) {
        throw new IllegalArgumentException(
            "head must be one on the tenon of "
                + peg
                + ", was one on "
                + head.start()
                + "; make it of the tenon's section");
      }
      Measure<Length> grip = Arguments.positive("thickness", thickness);
      return new Tenon(bar, peg, peg, grip, head, HandAllowance.SET_DOWN);
    }

    /** Both sections. */
    @Override
    public String toString() {
      return "tenon of " + peg + " on " + bar;
    }
  }

  /**
   * A tenon set down from a bar.
   *
   * @param bar the section before the shoulder
   * @param tenon the section after it, of no more area
   * @return the tenon, through nothing yet
   * @throws IllegalArgumentException if the tenon has more area than the bar, or one has none
   */
  public static Unheaded between(Section bar, Section tenon) {
    Section.requireArea("tenon", tenon);
    Section.requireArea("bar", bar);
    return new Unheaded(bar, DrawOut.between(bar, tenon).finished());
  }

  /**
   * The same in a wider hole, which it swells to fill.
   *
   * @param section of the hole in the other bar, no smaller than the tenon
   * @return the tenon
   * @throws IllegalArgumentException if the tenon does not pass it
   */
  public Tenon inHole(Section section) {
    Section.requireArea("section", section);
    if (section.width().isLessThan(peg.width())
        || section.thickness().isLessThan(peg.thickness())
        || section.area().isLessThan(peg.area())) {
      throw new IllegalArgumentException(
          "section must pass the tenon of "
              + peg
              + ", was a hole of "
              + section
              + "; punch or drift it wider");
    }
    return new Tenon(bar, peg, section, grip, head, hand);
  }

  /**
   * The same with another allowance for the hand.
   *
   * @param allowance the allowance; {@link HandAllowance#NONE} leaves the exact geometry
   * @return the tenon
   */
  public Tenon by(HandAllowance allowance) {
    return new Tenon(bar, peg, hole, grip, head, Objects.requireNonNull(allowance, "allowance"));
  }

  /** {@return the section of the tenon} */
  public Section section() {
    return peg;
  }

  /** {@return the hole to make in the other bar} */
  public Section hole() {
    return hole;
  }

  /**
   * How far it stands out of the other bar before it is headed: what fills the hole, and the head.
   *
   * @return the length, exact as geometry, in the unit of the other bar's thickness
   */
  public Measure<Length> lengthBeyond() {
    return Measure.of(beyond(Notes.NONE), unit);
  }

  /**
   * Its length from the shoulder before it is headed.
   *
   * @return the length, exact as geometry, in the unit of the other bar's thickness
   */
  public Measure<Length> length() {
    return Measure.of(length(Notes.NONE), unit);
  }

  /**
   * How wide the shoulder bears beside the hole, at its narrower side: half of what the bar is
   * wider than the hole.
   *
   * @return the width, exact; negative if the bar would pass the hole
   */
  public Measure<Length> shoulderWidth() {
    double across = (bar.width().in(unit) - hole.width().in(unit)) / 2;
    double thick = (bar.thickness().in(unit) - hole.thickness().in(unit)) / 2;
    return Measure.of(Math.min(across, thick), unit);
  }

  /** {@return {@code riveted tenon}} */
  @Override
  public String name() {
    return "riveted tenon";
  }

  @Override
  public Section start() {
    return bar;
  }

  @Override
  public Section end() {
    return head.end();
  }

  /** {@return its section × its length, exact, in the cube of the thickness's unit} */
  @Override
  public Estimate<Volume> metalKept() {
    Measure<Length> length = length();
    double volume = length.getValue() * peg.area().in(square());
    return Estimate.exact(Measures.volume(length, Measures.area(length, length)).withValue(volume));
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

  /** {@return the shoulder, the tenon as it fills its hole, and the head} */
  @Override
  public Silhouette outline() {
    Silhouette tenon = Silhouette.from(bar).to(grip.withValue(0), hole).to(grip, hole);
    return head.ledOn(tenon, grip);
  }

  /** {@return the other bar's thickness and the height of the head} */
  @Override
  public Measure<Length> reach() {
    return grip.add(head.reach());
  }

  /** {@return against a narrow shoulder, a long shank that buckles, and burns} */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(head.cautions());
    if (!(shoulderWidth().getValue() > 0)) {
      cautions.add(
          Caution.limit(
              "the shoulder does not bear all round the hole of "
                  + hole
                  + ": take a thicker bar or a smaller tenon",
              Source.commonPractice("a tenon is drawn tight against its shoulder")));
    }
    cautions.add(
        Caution.limit(
            "keep the shoulder's corner a little round, and ease the edge of the hole for it: a sharp"
                + " corner cracks in the fire or under the hammer",
            Source.commonPractice("corners are kept round")));
    return List.copyOf(cautions);
  }

  /** {@return how its length was found} */
  @Override
  public Working working() {
    return Notes.taken(toString(), unit, this::length)
        .withSource(VOLUME)
        .withSource(hand.source())
        .withCautions(cautions());
  }

  private double beyond(Notes n) {
    double g = n.given("g", "thickness of the other bar", grip.getValue());
    double a = n.givenArea("A", "section of the tenon", peg.area().in(square()));
    double w = n.givenArea("H", "section of the hole", hole.area().in(square()));
    double f = n.length("f", "what fills the hole", "g (H / A − 1)", g * (w / a - 1));
    double h = n.given("h", "tenon taken by the " + head.name(), head.stockLength().in(unit));
    return n.length("b", "beyond the other bar", "f + h", f + h);
  }

  private double length(Notes n) {
    double b = beyond(n);
    return n.length("L", "length from the shoulder", "g + b", grip.getValue() + b);
  }

  private Unit<Area> square() {
    return Measures.area(grip, grip).getUnit();
  }

  /** Sections, thickness and head. */
  @Override
  public String toString() {
    return "tenon of " + peg + " on " + bar + "\n  through " + grip + ", with a " + head.name();
  }
}
