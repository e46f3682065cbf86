package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Bend;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A bracket bent square from one bar, of a shelf or a lamp: its plate goes down the wall, its arm
 * stands out level on top; a straight brace may lie in the corner. Other names: {@index "shelf
 * bracket"}, {@index "L bracket"}.
 *
 * <pre>{@code
 * Bar bar = Bar.of(Section.flat(inches(1), inches("1/4")), Material.MILD_STEEL);
 * AngleBracket shelf = AngleBracket.ofArmAndPlate(inches(9), inches(10), bar);
 * shelf.piece().layout().cutLength()            // 18.589 in  of bar
 * shelf.straightPlate()                         // 9 1/2 in   from the foot, room for screws
 * AngleBracket.Brace brace = shelf.bracedOutAndDown(inches(7), inches(8)).brace().orElseThrow();
 * brace.piece().layout().cutLength()            // 10.2774 in  along its lower edge
 * brace.angleToArm()                            // 48.95°
 * }</pre>
 *
 * <p>Sizes are outside sizes: the arm from the wall to its tip, the plate from the arm's top to its
 * foot. Exact as geometry; the bend follows its mean line, as thick inside in radius as the bar
 * unless told otherwise. What it carries tell {@link Bracket}, {@link BracketArm} and {@link
 * StayedArm}. Lengths come out in the arm's unit. Source: plane geometry.
 */
public final class AngleBracket {
  private static final Source TRIANGLE = Source.computed("right triangle in the corner");

  private final Bar bar;
  private final Measure<Length> arm;
  private final Measure<Length> plate;
  private final Bend bend;
  private final Optional<Brace> brace;

  private AngleBracket(
      Bar bar, Measure<Length> arm, Measure<Length> plate, Bend bend, Optional<Brace> brace) {
    this.bar = bar;
    this.arm = arm;
    this.plate = plate;
    this.bend = bend;
    this.brace = brace;
  }

  /**
   * A bracket without a brace.
   *
   * @param arm how far it stands out from the wall
   * @param plate how far it reaches down the wall, from the arm's top
   * @param bar what it is bent from, its thickness across the bend
   * @return the bracket
   * @throws IllegalArgumentException if either leg is shorter than the bend
   */
  public static AngleBracket ofArmAndPlate(Quantity<Length> arm, Quantity<Length> plate, Bar bar) {
    Objects.requireNonNull(bar, "bar");
    Measure<Length> out = Arguments.positive("arm", arm);
    Measure<Length> down = Arguments.positive("plate", plate).to(out.getUnit());
    Measure<Length> thick = bar.section().thickness().to(out.getUnit());
    Bend bend = square(thick, bar);
    String longer = "make it longer, or of thinner bar";
    Arguments.atLeast("arm", out, "the bend", bend.setback(), longer);
    Arguments.atLeast("plate", down, "the bend", bend.setback(), longer);
    return new AngleBracket(bar, out, down, bend, Optional.empty());
  }

  private static Bend square(Measure<Length> insideRadius, Bar bar) {
    return Bend.of(Measures.degrees(90), insideRadius, bar.section());
  }

  /**
   * The same bent to another radius.
   *
   * @param insideRadius of the bend, zero or more
   * @return the bracket
   * @throws IllegalArgumentException if the radius is negative, a leg shorter than the bend, or a
   *     brace nearer to the corner
   */
  public AngleBracket bentTo(Quantity<Length> insideRadius) {
    Measure<Length> radius = Arguments.notNegative("insideRadius", insideRadius).to(arm.getUnit());
    Measure<Length> least = arm.isLessThan(plate) ? arm : plate;
    Measure<Length> straight = brace.map(it -> it.nearest()).orElse(least);
    Measure<Length> most = straight.subtract(thickness());
    String advice = "bend it tighter, or make arm and plate longer and set a brace farther off";
    Arguments.atMost("insideRadius", radius, "what arm, plate and brace leave", most, advice);
    return new AngleBracket(bar, arm, plate, square(radius, bar), brace);
  }

  /**
   * The same with a brace of its own bar, mitred to lie against the plate and under the arm.
   *
   * @param out from the wall to where its lower edge meets the arm
   * @param down from the arm's top to where its lower edge meets the plate
   * @return the bracket
   * @throws IllegalArgumentException if arm or plate ends before it, or its upper edge would meet
   *     the bend
   */
  public AngleBracket bracedOutAndDown(Quantity<Length> out, Quantity<Length> down) {
    Measure<Length> along = Arguments.positive("out", out).to(arm.getUnit());
    Measure<Length> below = Arguments.positive("down", down).to(arm.getUnit());
    String near = "set it nearer to the corner";
    Arguments.atMost("out", along, "the arm", arm, near);
    Arguments.atMost("down", below, "the plate", plate, near);
    Brace told = new Brace(this, along, below);
    told.requireBeyond(bend.setback());
    return new AngleBracket(bar, arm, plate, bend, Optional.of(told));
  }

  /** {@return what it is bent from} */
  public Bar bar() {
    return bar;
  }

  /** {@return how far it stands out from the wall} */
  public Measure<Length> arm() {
    return arm;
  }

  /** {@return how far it reaches down the wall, from the arm's top} */
  public Measure<Length> plate() {
    return plate;
  }

  /** {@return the bend between plate and arm} */
  public Bend bend() {
    return bend;
  }

  /** {@return how much of the plate is straight, from its foot; exact} */
  public Measure<Length> straightPlate() {
    return bend.straightLeg(plate);
  }

  /** {@return its brace, if it has one} */
  public Optional<Brace> brace() {
    return brace;
  }

  /** {@return the piece to forge: plate, bend, arm} */
  public Piece piece() {
    return Piece.of(
        bar,
        Plain.of(bar.section(), straightPlate()),
        bend,
        Plain.of(bar.section(), bend.straightLeg(arm)));
  }

  /** {@return the line of its middle, from the plate's foot} */
  public MeanLine meanLine() {
    return MeanLine.straight(straightPlate())
        .bentRight(bend.insideRadius().add(thickness().divide(2)), bend.angle())
        .straightOn(bend.straightLeg(arm));
  }

  /** {@return all pieces to forge: the bracket, and its brace if it has one} */
  public List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(piece());
    brace.ifPresent(it -> pieces.add(it.piece()));
    return List.copyOf(pieces);
  }

  /** {@return of a tight bend and of a brace, and that no design is certified} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(bend.cautions());
    if (brace.isPresent()) {
      cautions.add(
          Caution.limit(
              "what the joints of a brace hold, and whether it buckles, is not reckoned here",
              TRIANGLE));
    }
    cautions.addAll(LoadCautions.OF_STRENGTH);
    return List.copyOf(cautions);
  }

  private Measure<Length> thickness() {
    return bar.section().thickness().to(arm.getUnit());
  }

  /** Bar, arm and plate. */
  @Override
  public String toString() {
    return "bracket of "
        + bar.section()
        + ", arm "
        + arm
        + ", plate "
        + plate
        + brace.map(it -> ", brace " + it.out() + " × " + it.down()).orElse("");
  }

  /**
   * A straight bar across the corner of a bracket, bevelled to lie under its arm and on its plate.
   */
  public static final class Brace {
    private static final String FARTHER = "set the brace farther from the corner";

    private final Bar bar;
    private final Measure<Length> plate;
    private final Measure<Length> out;
    private final Measure<Length> down;
    private final Unit<Length> unit;

    private Brace(AngleBracket bracket, Measure<Length> out, Measure<Length> down) {
      this.bar = bracket.bar;
      this.plate = bracket.plate;
      this.out = out;
      this.down = down;
      this.unit = bracket.arm.getUnit();
    }

    /** {@return from the wall to where its lower edge meets the arm} */
    public Measure<Length> out() {
      return out;
    }

    /** {@return from the arm's top to where its lower edge meets the plate} */
    public Measure<Length> down() {
      return down;
    }

    /** {@return the piece, as long as its lower edge: √((o − t)² + (d − t)²)} */
    public Piece piece() {
      return Piece.of(bar, Plain.of(bar.section(), Measure.of(edge(Notes.NONE), unit)));
    }

    /** {@return how the length of its lower edge was found} */
    public Working working() {
      return Notes.taken("lower edge of a brace", unit, this::edge).withSource(TRIANGLE);
    }

    /**
     * {@return the angle between brace and arm, to bevel its end to; that to the plate is the rest
     * of 90°}
     */
    public Measure<Angle> angleToArm() {
      double t = bar.section().thickness().in(unit);
      double angle = Math.atan2(down.getValue() - t, out.getValue() - t);
      return Measure.of(angle, ShopUnits.RADIAN).to(ShopUnits.DEGREE);
    }

    /**
     * Whether a screw's head on the plate stays clear of the brace's end, t / cos α high.
     *
     * @param height of the screw above the plate's foot
     * @param head its diameter, zero or more
     * @return whether the head lies wholly above or below the end; touching is clear
     * @throws IllegalArgumentException if the diameter is negative
     */
    public boolean isClearOf(Quantity<Length> height, Quantity<Length> head) {
      Measure<Length> middle = Arguments.length("height", height);
      Measure<Length> half = Arguments.notNegative("head", head).divide(2);
      Measure<Length> low = plate.subtract(down);
      Measure<Length> top = plate.subtract(onPlate());
      return !middle.add(half).isGreaterThan(low) || !middle.subtract(half).isLessThan(top);
    }

    private void requireBeyond(Measure<Length> bent) {
      Measure<Length> least = bent.add(bar.section().thickness());
      Arguments.atLeast("out", out, "the bend and the brace's thickness", least, FARTHER);
      Arguments.atLeast("down", down, "the bend and the brace's thickness", least, FARTHER);
      Arguments.atLeast("upper edge of the brace, out,", onArm(), "the bend", bent, FARTHER);
      Arguments.atLeast("upper edge of the brace, down,", onPlate(), "the bend", bent, FARTHER);
    }

    /** Where its upper edge meets the arm, from the wall. */
    private Measure<Length> onArm() {
      double sine = Math.sin(angleToArm().in(ShopUnits.RADIAN));
      return out.subtract(bar.section().thickness().divide(sine));
    }

    /** Where its upper edge meets the plate, from the arm's top. */
    private Measure<Length> onPlate() {
      double cosine = Math.cos(angleToArm().in(ShopUnits.RADIAN));
      return down.subtract(bar.section().thickness().divide(cosine));
    }

    private Measure<Length> nearest() {
      return onArm().isLessThan(onPlate()) ? onArm() : onPlate();
    }

    private double edge(Notes n) {
      double o = n.given("o", "out along the arm", out.getValue());
      double d = n.given("d", "down the plate", down.getValue());
      double t = n.given("t", "thickness of arm and plate", bar.section().thickness().in(unit));
      double edge = Math.sqrt((o - t) * (o - t) + (d - t) * (d - t));
      return n.length("l", "lower edge", "√((o − t)² + (d − t)²)", edge);
    }

    /** Where it meets arm and plate. */
    @Override
    public String toString() {
      return "brace " + out + " out, " + down + " down";
    }
  }
}
