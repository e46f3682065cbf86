package org.hammerscale.strength;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.internal.Arguments;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * What a push on a bolted door does to its slide bolt and its staples: the bolt is a beam with an
 * overhang, pulled out of the wood at the outer staple and pressed on to it at the inner one. Other
 * names: {@index "bolt shear"}, {@index "staple pull"}.
 *
 * <pre>{@code
 * Bar rod = Bar.of(Section.round(millimetres(12)), Material.MILD_STEEL);
 * SlideBolt bolt = SlideBolt.thrown(millimetres(40), rod).across(millimetres(4)).stapledApart(millimetres(100)).bolt();
 * SlideBoltLoad pushed = SlideBoltLoad.of(bolt, newtons(500));
 * pushed.outerStaple()     // 585 N      pulls both its legs out of the door
 * pushed.innerStaple()     // 85 N       presses on the door
 * pushed.bending()         // 50.1 MPa   of the bolt, at the outer staple
 * pushed.shear()           // 4.421 MPa  and on the average across it
 * }</pre>
 *
 * <p>Exact for one steady force at the middle of the keeper, the bolt straight and elastic. Compare
 * a pull with what two legs hold in the wood. Stresses are in MPa, or in psi for a force in
 * pounds-force. Source: statics of a beam with an overhang.
 */
public final class SlideBoltLoad {
  private static final Source BEAM = Source.computed("statics of a beam with an overhang");

  private final SlideBolt bolt;
  private final Measure<Force> force;
  private final StressUnits units;

  private SlideBoltLoad(SlideBolt bolt, Measure<Force> force) {
    this.bolt = bolt;
    this.force = force;
    this.units = StressUnits.ofForce(force);
  }

  /**
   * A push on the door, at the keeper.
   *
   * @param bolt the bolt, thrown
   * @param force what the keeper bears, more than zero
   * @return the load
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public static SlideBoltLoad of(SlideBolt bolt, Quantity<Force> force) {
    Objects.requireNonNull(bolt, "bolt");
    return new SlideBoltLoad(bolt, Arguments.positiveForce("force", force));
  }

  /**
   * What pulls the outer staple out of the door: F (1 + o/s).
   *
   * @return the force on both its legs, exact
   */
  public Measure<Force> outerStaple() {
    return units.force(outer(Notes.NONE)).to(force.getUnit());
  }

  /**
   * What presses the inner staple's end of the bolt on to the door: F o/s.
   *
   * @return the force, exact; pushed the other way the inner staple is pulled with it
   */
  public Measure<Force> innerStaple() {
    return units.force(inner(Notes.NONE)).to(force.getUnit());
  }

  /** {@return what pulls the keeper out of the frame: the force itself} */
  public Measure<Force> keeper() {
    return force;
  }

  /** {@return the shear across the bolt, on the average, exact} */
  public Measure<Pressure> shear() {
    return units.pressure(shear(Notes.NONE));
  }

  /** {@return the shear at the bolt's middle: 4/3 of the average in a round, 3/2 in a flat} */
  public Measure<Pressure> peakShear() {
    return shear().multiply(bolt.bar().section().isRound() ? 4 / 3d : 1.5);
  }

  /** {@return the bending stress of the bolt at the outer staple, exact as a cantilever} */
  public Measure<Pressure> bending() {
    return units.pressure(bending(Notes.NONE));
  }

  /** {@return how the pull on the outer staple was found} */
  public Working working() {
    return taken("pull on the outer staple", this::outer);
  }

  /** {@return how the force at the inner staple was found} */
  public Working innerStapleWorking() {
    return taken("push at the inner staple", this::inner);
  }

  /** {@return how the average shear was found} */
  public Working shearWorking() {
    return taken("shear of a slide bolt", this::shear);
  }

  /** {@return how the bending stress was found} */
  public Working bendingWorking() {
    return taken("bending of a slide bolt", this::bending);
  }

  /** {@return what was not counted, and who has to check} */
  public List<Caution> cautions() {
    return LoadCautions.OF_STRENGTH;
  }

  private Working taken(String title, Notes.Calculation calculation) {
    return Notes.taken(title, units.length(), calculation)
        .withSource(BEAM)
        .withCautions(cautions());
  }

  private double outer(Notes n) {
    double f = units.givenForce(n, "force at the keeper", force);
    double o = overhang(n);
    double s = apart(n);
    return units.force(n, "A", "pull on the outer staple", "F (1 + o / s)", f * (1 + o / s));
  }

  private double inner(Notes n) {
    double f = units.givenForce(n, "force at the keeper", force);
    double o = overhang(n);
    double s = apart(n);
    return units.force(n, "B", "push at the inner staple", "F o / s", f * o / s);
  }

  private double shear(Notes n) {
    double f = units.givenForce(n, "force at the keeper", force);
    Section section = bolt.bar().section();
    if (section.isRound()) {
      double d = units.given(n, "d", "diameter of the bolt", section.width());
      return units.pressure(n, "τ", "average shear", "4 F / (π d²)", 4 * f / (Math.PI * (d * d)));
    }
    double b = units.given(n, "b", "width of the bolt", section.width());
    double t = units.given(n, "t", "thickness of the bolt", section.thickness());
    return units.pressure(n, "τ", "average shear", "F / (b t)", f / (b * t));
  }

  private double bending(Notes n) {
    double f = units.givenForce(n, "force at the keeper", force);
    double o = overhang(n);
    double m = units.moment(n, "M", "bending moment", "F o", f * o);
    Section section = bolt.bar().section();
    if (section.isRound()) {
      double d = units.given(n, "d", "diameter of the bolt", section.width());
      return units.pressure(
          n, "σ", "bending stress", "32 M / (π d³)", 32 * m / (Math.PI * (d * d * d)));
    }
    double b = units.given(n, "b", "width of the bolt", section.width());
    double t = units.given(n, "t", "thickness of the bolt", section.thickness());
    return units.pressure(n, "σ", "bending stress", "6 M / (b t²)", 6 * m / (b * (t * t)));
  }

  private double overhang(Notes n) {
    Measure<Length> out = bolt.keeperOverhang();
    return units.given(n, "o", "keeper beyond the outer staple", out);
  }

  private double apart(Notes n) {
    return units.given(n, "s", "staples apart, outside", bolt.staplesApart());
  }

  /** The force and the bolt. */
  @Override
  public String toString() {
    return force + " on the " + bolt;
  }
}
