package org.hammerscale.punching;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A cut through the hot bar with a chisel, and the metal that its bevel costs. The tool's names:
 * {@index "hot set"}, {@index "hot cut"}, {@index "hot chisel"}. The chisel leaves a groove whose
 * sides lean by half its bevel β: a triangle of the bar's thickness t, as much as a straight
 * {@index kerf} of k = t tan(β/2). Cut half from each face there are two small triangles instead,
 * half as much. Or give the kerf that your chisel is known to cost.
 *
 * <pre>{@code
 * Section bar = Section.flat(inches(1), inches("1/4"));
 * HotCut cut = HotCut.bevelled(degrees(30), bar);
 * cut.mouth()                                // 0.134 in  how wide the groove opens
 * cut.kerf()                                 // 0.06699 in  what the cut may cost, as much as a saw of this kerf
 * cut.fromBothFaces().kerf()                 // 0.03349 in  half, if the bar is turned over
 * HotCut.ofKerf(inches("1/16"), bar).kerf()  // 1/16 in  or what your own chisel is known to cost
 * }</pre>
 *
 * <p>An allowance, not a measurement: the chisel pushes metal aside rather than taking it, and only
 * what is dressed off the ends afterwards is lost. The triangle is the most that its bevel can
 * cost. As a feature of a piece it is a cut across the bar: it keeps nothing, reaches no distance
 * and uses its kerf.
 *
 * <p>Exact as geometry of the groove in flat and square bar. Source: plane geometry, or the caller.
 */
public final class HotCut extends Opened {
  private static final double STRAIGHT = 180;
  private static final double BLUNT = 90;
  private static final Source GROOVE = Source.computed("area of the groove ÷ thickness of the bar");
  private static final Source CALLER = Source.commonPractice("kerf that the caller allows");

  private final Measure<Length> known;
  private final Measure<Angle> bevel;
  private final boolean bothFaces;

  private HotCut(Section section, Measure<Length> known, Measure<Angle> bevel, boolean bothFaces) {
    super(section);
    this.known = known;
    this.bevel = bevel;
    this.bothFaces = bothFaces;
    if (section.isTube()) {
      throw new IllegalArgumentException(
          "section must be a solid bar, was " + section + "; saw a tube");
    }
  }

  /**
   * A cut with a bevelled chisel from one face.
   *
   * @param bevel the angle between the two sides of its edge, more than 0° and less than 180°
   * @param section the bar
   * @return the cut
   * @throws IllegalArgumentException if the angle is out of range, or the bar a tube
   */
  public static HotCut bevelled(Quantity<Angle> bevel, Section section) {
    Section.requireArea("section", section);
    String advice = "give the whole angle of the chisel's edge in degrees";
    Measure<Angle> angle = Arguments.angle("bevel", bevel, STRAIGHT, advice);
    double degrees = angle.in(ShopUnits.DEGREE);
    if (degrees == 0 || degrees == STRAIGHT) {
      throw new IllegalArgumentException(
          "bevel must be more than 0° and less than 180°, was " + angle + "; " + advice);
    }
    return new HotCut(section, section.thickness().withValue(0), angle, false);
  }

  /**
   * A cut that costs a known kerf.
   *
   * @param kerf the length of bar that it costs, not negative; zero for a cut that loses nothing
   * @param section the bar
   * @return the cut
   * @throws IllegalArgumentException if the kerf is negative, or the bar a tube
   */
  public static HotCut ofKerf(Quantity<Length> kerf, Section section) {
    return new HotCut(section, Arguments.notNegative("kerf", kerf), Measures.degrees(0), false);
  }

  /**
   * The same cut made half from each face. A known kerf stays what it is.
   *
   * @return the cut
   */
  public HotCut fromBothFaces() {
    return new HotCut(section(), known, bevel, true);
  }

  /**
   * The straight kerf that costs as much: t tan(β/2), half of that from both faces, or the known
   * one.
   *
   * @return the width, exact as geometry, in the unit of the bar's thickness or of the known kerf
   */
  public Measure<Length> kerf() {
    return Measure.of(kerf(Notes.NONE), unit());
  }

  /**
   * {@return the width of the groove at the face, twice the kerf of a bevel; a known kerf itself}
   */
  public Measure<Length> mouth() {
    return isBevelled() ? kerf().multiply(2) : kerf();
  }

  /**
   * The metal that a cut along the bar costs: k t L.
   *
   * @param length how far along the bar, not negative
   * @return the volume, in the cube of the length's unit
   * @throws IllegalArgumentException if the length is negative
   */
  public Measure<Volume> metalAlong(Quantity<Length> length) {
    Measure<Length> far = Arguments.notNegative("length", length);
    return Measures.volume(far, Measures.area(kerf(), section().thickness()));
  }

  /** {@return {@code hot cut}} */
  @Override
  public String name() {
    return "hot cut";
  }

  /** {@return nothing} */
  @Override
  public Estimate<Volume> metalKept() {
    return Estimate.exact(Measures.volume(reach(), section().area()));
  }

  /** {@return the kerf across the bar, k A} */
  @Override
  public Losses metalLost() {
    return Losses.NONE.and("hot cut", Estimate.exact(Measures.volume(kerf(), section().area())));
  }

  /** {@return zero} */
  @Override
  public Measure<Length> reach() {
    return Measure.of(0, unit());
  }

  @Override
  Measure<Length> stretch() {
    return kerf();
  }

  /** {@return a caution for a bevel of more than a right angle; else none} */
  @Override
  public List<Caution> cautions() {
    return bevel.in(ShopUnits.DEGREE) > BLUNT
        ? List.of(
            Caution.limit(
                "a bevel of "
                    + bevel
                    + " is blunter than a right angle: it spreads the bar more than it cuts it;"
                    + " give the whole angle of the edge, and grind it keener",
                Source.commonPractice("hot chisels are ground to about 30°")))
        : List.of();
  }

  /** {@return how the kerf was found} */
  @Override
  public Working working() {
    return Notes.taken("hot cut through " + section(), unit(), this::kerf)
        .withSource(isBevelled() ? GROOVE : CALLER)
        .withCautions(cautions());
  }

  private double kerf(Notes n) {
    if (!isBevelled()) {
      return n.given("k", "kerf that is allowed", known.getValue());
    }
    double t = n.given("t", "thickness of the bar", section().thickness().in(unit()));
    double h = n.number("h", "half the bevel, in radians", "", bevel.in(ShopUnits.RADIAN) / 2);
    String meaning = "kerf of the same metal as the groove";
    return bothFaces
        ? n.length("k", meaning + "s", "t tan(h) / 2", t * Math.tan(h) / 2)
        : n.length("k", meaning, "t tan(h)", t * Math.tan(h));
  }

  private boolean isBevelled() {
    return bevel.getValue() > 0;
  }

  private Unit<Length> unit() {
    return known.getUnit();
  }

  /** Kerf and bar. */
  @Override
  public String toString() {
    return (isBevelled() ? bevel + " bevel" : known + " kerf")
        + (bothFaces ? " from both faces" : "")
        + " through "
        + section();
  }
}
