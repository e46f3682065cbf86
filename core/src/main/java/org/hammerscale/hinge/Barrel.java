package org.hammerscale.hinge;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.bending.Bend;
import org.hammerscale.bending.NeutralLine;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Inverse;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The barrel of a hinge leaf, also called its {@index eye}, or {@index knuckle} when it is divided:
 * the end of the strap rolled round the pin. It is tangent, rolled up from one face of the leaf,
 * unless it is {@linkplain #centred() centred}, joggled so that the pin lies in the leaf's own
 * plane.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches("1 1/2"), inches("1/4"));
 * Barrel eye = Barrel.around(inches("1/2"), strap);
 * eye.outsideDiameter()                   // 1 in       the bottom swage that trues it
 * eye.developedLength()                   // 2.3562 in  a full turn: the most that one may cut
 * eye.closing().stripLength()             // 1.9635 in  what closes on the bore with a square-cut end
 * eye.stock(strap)                        // 1.9635 in (1.7135 in to 2.2135 in)  as good as the hand
 * eye.using(inches(2.3562)).insideDiameter()   // 0.6379 in  the bore if the full turn were rolled up
 * eye.ruleOfThreeError()                  // -0.1062 in  what the rule of three is short of a full turn
 * }</pre>
 *
 * <p>Hot bending keeps the section, so the length on the middle of the thickness stays what it was:
 * a full turn takes L = π (d + t). A square-cut end meets the leaf before the turn is full: {@link
 * #closing()} tells by the {@linkplain #endedWith end} that it has how long the strip is, and that
 * is the stock, good to about a thickness of the hand. A full turn is what one may cut in front of
 * the leaf; rolled up whole it closes on a wider bore. Lengths come out in the bore's unit. Of a
 * half round, lying with its flat inside, the line through its centres is taken.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 111; American Technical Society,
 * <cite>Modern Shop Practice</cite>, vol. 1, "Eye bolt"; plane geometry for how it closes.
 */
public final class Barrel implements Feature {
  private static final Source MEAN_LINE = Source.read("Ilgen, Forge Work, 1912", "sec. 111");
  private static final Source BENCH_RULE =
      Source.commonPractice("three times the mean diameter, up to the next eighth of an inch");
  private static final Source ONE_PIN =
      Source.computed("both leaves on one pin, its play in the bores not counted");
  private static final Measure<Length> EIGHTH = Measures.inches(1 / 8d);

  private final Measure<Length> bore;
  private final Section section;
  private final boolean centred;
  private final BarrelEnd end;
  private final Unit<Length> unit;

  private Barrel(Measure<Length> bore, Section section, boolean centred, BarrelEnd end) {
    this.bore = bore;
    this.section = section;
    this.centred = centred;
    this.end = end;
    this.unit = bore.getUnit();
  }

  /**
   * A tangent barrel, rolled up from one face of the leaf, its end cut square.
   *
   * @param bore the finished inside diameter, cold: the pin and its running clearance; more than
   *     zero
   * @param section the strap where it is rolled
   * @return the barrel
   * @throws IllegalArgumentException if the bore is not more than zero
   */
  public static Barrel around(Quantity<Length> bore, Section section) {
    return new Barrel(
        Arguments.positive("bore", bore),
        Section.requireArea("section", section),
        false,
        BarrelEnd.squareCut());
  }

  /**
   * The same round a bore that was reckoned from its pin.
   *
   * @param bore pin, clearance and finish
   * @param section the strap where it is rolled
   * @return the barrel
   */
  public static Barrel around(Bore bore, Section section) {
    return around(Objects.requireNonNull(bore, "bore").diameter(), section);
  }

  /**
   * The same barrel centred on the leaf: the strap is joggled, set over sharply at the neck, so
   * that the pin lies in the middle of its thickness.
   *
   * @return the barrel
   * @throws IllegalArgumentException if the section is neither flat nor square, or the end a scarf
   */
  public Barrel centred() {
    return checked(true, end);
  }

  /**
   * The same barrel with another end to its curl.
   *
   * @param barrelEnd how the end is cut
   * @return the barrel
   * @throws IllegalArgumentException if the barrel cannot end so: a scarf on a centred barrel or a
   *     section that is not flat, one thicker than the strap, or one longer than the barrel is
   *     round
   */
  public Barrel endedWith(BarrelEnd barrelEnd) {
    Objects.requireNonNull(barrelEnd, "barrelEnd");
    return checked(centred, barrelEnd);
  }

  private Barrel checked(boolean inTheMiddle, BarrelEnd barrelEnd) {
    barrelEnd.checkOn(section, inTheMiddle);
    Curl curl = new Curl(section, inTheMiddle, barrelEnd, unit);
    if (curl.endAngle(bore.in(unit)) > 2 * Math.PI) {
      throw new IllegalArgumentException(
          "scarf of the barrel end must leave some of the barrel at full thickness, was "
              + Measure.of(curl.scarfLength(bore.in(unit)), unit)
              + " round a bore of "
              + bore
              + "; shorten the scarf or leave its edge thicker");
    }
    return new Barrel(bore, section, inTheMiddle, barrelEnd);
  }

  /**
   * The barrel of the same strap, kind and end that a length of strap closes on; see {@link
   * BarrelClosing#cutLength}. A square-cut strip of a full turn closes on a wider bore.
   *
   * @param cut the length cut for the barrel, before thinning, with what a weld takes
   * @return the barrel, with the bore that comes of it
   * @throws IllegalArgumentException if the length closes on no bore
   */
  public Barrel using(Quantity<Length> cut) {
    double wanted = Arguments.positive("cut", cut).in(unit);
    BarrelClosing closing = closing();
    double closed =
        Inverse.solve(
            "cut",
            d -> closing.of(d).cutWithWeld(),
            Measures.millimetres(0.001).in(unit),
            2 * (wanted + section.thickness().in(unit)),
            wanted,
            length -> Measure.of(length, unit));
    return around(Measure.of(closed, unit), section).checked(centred, end);
  }

  /** {@return the strap where it is rolled} */
  public Section section() {
    return section;
  }

  /** {@return whether the pin lies in the leaf's plane; else the barrel is tangent to a face} */
  public boolean isCentred() {
    return centred;
  }

  /** {@return the bore d, the diameter of the hole for the pin} */
  public Measure<Length> insideDiameter() {
    return bore;
  }

  /**
   * The diameter of the middle of the strap's thickness, d + t; of a half round that of the circle
   * through its centres.
   *
   * @return the mean diameter, exact, in the bore's unit
   */
  public Measure<Length> meanDiameter() {
    return Measure.of(Curl.mean(Notes.NONE, bore.in(unit), section, unit), unit);
  }

  /**
   * The diameter over the barrel: d + 2 t. A bottom swage of this size trues it.
   *
   * @return the outside diameter, exact, in the bore's unit
   */
  public Measure<Length> outsideDiameter() {
    return bore.add(section.thickness()).add(section.thickness());
  }

  /**
   * Where the leaf begins, from the pin's centre: at the pin line for a tangent barrel; at the neck
   * of a centred one, √(R² − t²/4), where the leaf's faces leave the circle of the barrel. The
   * barrel's stock ends here, and a leaf of a wanted length from the pin's centre has so much less
   * beyond.
   *
   * @return the distance, exact, in the bore's unit; zero for a tangent barrel
   */
  public Measure<Length> leafStart() {
    double start = centred ? new Curl(section, true, end, unit).neck(Notes.NONE, bore.in(unit)) : 0;
    return Measure.of(start, unit);
  }

  /** {@return how it closes: strip, cut length, what of the bore stays open, and its slots} */
  public BarrelClosing closing() {
    return new BarrelClosing(bore, section, centred, end);
  }

  /**
   * The strap rolled up in a full turn: L = π (d + t). It is what smiths cut; {@link #closing}
   * tells what is left of it to trim or to tuck.
   *
   * @return the length on the mean line, exact as geometry, in the bore's unit
   */
  public Measure<Length> developedLength() {
    return Measure.of(developed(Notes.NONE), unit);
  }

  /**
   * The full turn by another rule, such as a K-factor or the one of DIN 6935, which are for cold
   * bending.
   *
   * @param neutralLine which line keeps its length
   * @return the length, exact as geometry of that rule, in the bore's unit
   * @throws IllegalArgumentException if the bore is too small for the rule
   */
  public Measure<Length> developedLength(NeutralLine neutralLine) {
    return fullTurn(neutralLine).developedLength();
  }

  /**
   * The length that smiths reckon at the bench: three times the mean diameter, rounded up to the
   * next eighth of an inch. {@link #ruleOfThreeError} tells how far it is off.
   *
   * @return the rule's length, in the bore's unit
   */
  public Measure<Length> lengthByRuleOfThree() {
    return Measure.of(bench(Notes.NONE), unit);
  }

  /** {@return three mean diameters, before the rule rounds them up; in the bore's unit} */
  public Measure<Length> threeMeanDiameters() {
    return meanDiameter().multiply(3);
  }

  /**
   * How much the {@linkplain #lengthByRuleOfThree rule of three} gives beyond the {@linkplain
   * #developedLength full turn}.
   *
   * @return the difference, in the bore's unit; negative where the rule leaves the barrel short
   */
  public Measure<Length> ruleOfThreeError() {
    return lengthByRuleOfThree().subtract(developedLength());
  }

  /**
   * How flush two leaves lie that hang on one pin: how far the face of this one stands above that
   * of the other, the face that a tangent barrel is tangent to. A tangent leaf's face lies R above
   * the pin's centre, a centred one's t/2. Over the barrels the step is half the difference of
   * their {@linkplain #outsideDiameter outside diameters}.
   *
   * @param other the other leaf's barrel
   * @return the step, exact, in this bore's unit; negative where the other stands higher
   */
  public Measure<Length> faceStepTo(Barrel other) {
    Objects.requireNonNull(other, "other");
    return Measure.of(faceStep(Notes.NONE, other), unit);
  }

  /** {@return {@code rolled barrel}, or {@code centred barrel}} */
  @Override
  public String name() {
    return centred ? "centred barrel" : "rolled barrel";
  }

  @Override
  public Section start() {
    return section;
  }

  /**
   * {@return strip × area of the strap, the hand's thickness either way counted; a weld closes the
   * ring, which is exact}
   */
  @Override
  public Estimate<Volume> metalKept() {
    return metal(closing().strip());
  }

  /** {@return what a forge weld takes; none with any other end} */
  @Override
  public Losses metalLost() {
    WeldAllowance weld = end.weld();
    return weld == null
        ? Losses.NONE
        : Losses.NONE.and("weld", metal(weld.on(section, closing().cutLength())));
  }

  /** {@return its own length of strap to the last bit if the parent has its section} */
  @Override
  public Estimate<Length> stock(Section parent) {
    Section.requireArea("parent", parent);
    return section.equals(parent) ? closing().stripWithWeld() : Feature.super.stock(parent);
  }

  /** {@return before it is worked: the strip is cut to its length, then rolled} */
  @Override
  public Trimming trimming() {
    return Trimming.BEFORE_WORK;
  }

  /**
   * What smiths cut in front of the leaf before the strip is cut to the length that {@linkplain
   * #closing its end} closes on: a full turn; of a welded barrel what the weld may need.
   *
   * @param parent the section of the bar it is forged from
   * @return the length of bar
   */
  @Override
  public Measure<Length> mostToCut(Section parent) {
    Section.requireArea("parent", parent);
    if (end.isWelded()) {
      return stock(parent).high();
    }
    Measure<Length> strip = closing().cutLength();
    Measure<Length> full = developedLength();
    return section.lengthAs(parent, full.isLessThan(strip) ? strip : full);
  }

  /**
   * What it adds to the length over all: its outside radius, since a tangent leaf is measured from
   * the pin's centre, where it leaves the barrel; centred, the {@linkplain #leafStart way to the
   * neck} as well.
   *
   * @return the reach, exact, in the bore's unit
   */
  @Override
  public Measure<Length> reach() {
    return outsideDiameter().divide(2).add(leafStart());
  }

  /** {@return cautions of its end, and one if the curl is tighter than the strap is thick} */
  @Override
  public List<Caution> cautions() {
    return closing().cautions();
  }

  /** {@return how the likely strip was found, its end named and a full turn beside it} */
  @Override
  public Working working() {
    return closing().cutWorking();
  }

  /** {@return how the developed length of a full turn was found} */
  public Working developedWorking() {
    return Notes.taken("rolled barrel, full turn on the mean line", unit, this::developed)
        .withSource(MEAN_LINE)
        .withCautions(cautions());
  }

  /**
   * How the full turn by another rule was found.
   *
   * @param neutralLine which line keeps its length
   * @return the working, with a caution where a cold rule is stretched
   * @throws IllegalArgumentException if the bore is too small for the rule
   */
  public Working developedWorking(NeutralLine neutralLine) {
    return fullTurn(neutralLine).working();
  }

  /** {@return how the bench rule comes to its length} */
  public Working ruleOfThreeWorking() {
    return Notes.taken("rolled barrel by the rule of three", unit, this::bench)
        .withSource(BENCH_RULE)
        .withCautions(benchCautions());
  }

  /**
   * How the step between two leaves was found.
   *
   * @param other the other leaf's barrel
   * @return the working
   */
  public Working faceStepWorking(Barrel other) {
    Objects.requireNonNull(other, "other");
    return Notes.taken("step between two leaves", unit, n -> faceStep(n, other))
        .withSource(ONE_PIN);
  }

  private List<Caution> benchCautions() {
    Measure<Length> error = ruleOfThreeError();
    return error.getValue() < 0
        ? List.of(
            Caution.limit(
                "the rule of three is "
                    + error.negate()
                    + " short of a full turn here; take the developed length",
                MEAN_LINE))
        : List.of();
  }

  private Bend fullTurn(NeutralLine neutralLine) {
    return Bend.of(Measures.degrees(360), bore.divide(2), section).with(neutralLine);
  }

  private Estimate<Volume> metal(Estimate<Length> length) {
    Measure<Area> area = section.area();
    return length.isExact()
        ? Estimate.exact(Measures.volume(length.likely(), area))
        : Estimate.of(
            Measures.volume(length.low(), area),
            Measures.volume(length.likely(), area),
            Measures.volume(length.high(), area));
  }

  private double mean(Notes n) {
    return Curl.mean(n, bore.in(unit), section, unit);
  }

  private double developed(Notes n) {
    return Curl.fullTurn(n, mean(n));
  }

  private double bench(Notes n) {
    double m = mean(n);
    double e = n.given("e", "an eighth of an inch", EIGHTH.in(unit));
    double steps = Math.ceil(3 * m / e - 1e-9);
    return n.length("B", "three mean diameters, up to the next eighth", "up(3 m, e)", steps * e);
  }

  private double faceStep(Notes n, Barrel other) {
    double mine = face(n, "₁", unit);
    double others = other.face(n, "₂", unit);
    return n.length("s", "step from the second face up to the first", "a₁ − a₂", mine - others);
  }

  /** How far the leaf's face lies above the pin's centre. */
  private double face(Notes n, String index, Unit<Length> in) {
    String meaning = "face of leaf " + index + " above the pin's centre";
    double t = n.given("t" + index, "thickness of leaf " + index, section.thickness().in(in));
    if (centred) {
      return n.length("a" + index, meaning, "t" + index + " / 2", t / 2);
    }
    double d = n.given("d" + index, "bore of leaf " + index, bore.in(in));
    return n.length("a" + index, meaning, "d" + index + " / 2 + t" + index, d / 2 + t);
  }

  /** Bore and strap, and what is out of the ordinary. */
  @Override
  public String toString() {
    return (centred ? "centred barrel" : "barrel")
        + " with a bore of "
        + bore
        + " in "
        + section
        + (end.equals(BarrelEnd.squareCut()) ? "" : ", " + end);
  }
}
