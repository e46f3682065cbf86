package org.hammerscale.bending;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A round ring: L = π (d + t), the circumference of the mean diameter. Other names: {@index hoop},
 * {@index band}, {@index tyre}. Its ends butt, unless it is asked for welded, lapped or weldless.
 *
 * <pre>{@code
 * Section bar = Section.round(inches(1));
 * Ring ring = Ring.inside(inches(10), bar);
 * ring.developedLength()                                // 34.5575 in  bar for a ring whose ends butt
 * ring.welded(WeldAllowance.THREE_EIGHTHS).cutLength()  // 34.9325 in (34.0575 in to 36.0575 in)  if welded
 * ring.using(inches(36)).insideDiameter()               // 10.4592 in  what 36 in at hand makes
 * }</pre>
 *
 * <p>Lengths come out in the diameter's unit. The thickness of the section lies across the bend,
 * along the ring's radius. Exact as geometry but for the weld.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 111; Googerty, <cite>Hand-Forging and
 * Wrought-Iron Ornamental Work</cite>, 1911, p. 69.
 */
public final class Ring extends ClosedRound {
  private Ring(Measure<Length> diameter, Section section, Joint joint) {
    super(diameter, section, joint);
  }

  /**
   * A ring with butted ends.
   *
   * @param diameter the finished inside diameter, more than zero
   * @param section the bar
   * @return the ring
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Ring inside(Quantity<Length> diameter, Section section) {
    return new Ring(Arguments.positive("diameter", diameter), section, Joint.BUTTED);
  }

  /**
   * The same ring forge-welded.
   *
   * @param allowance what the weld takes
   * @return the ring
   */
  public Ring welded(WeldAllowance allowance) {
    return new Ring(
        insideDiameter(),
        section(),
        Joint.welded(Objects.requireNonNull(allowance, "allowance").forBar(section())));
  }

  /**
   * The same ring with its ends lapped side by side, to be riveted or left so.
   *
   * @param lap the length of the lap on the mean line, more than zero
   * @return the ring
   * @throws IllegalArgumentException if the lap is not more than zero
   */
  public Ring lapped(Quantity<Length> lap) {
    return new Ring(insideDiameter(), section(), Joint.lapped(lap));
  }

  /**
   * The same ring without a joint: slit in wider stock and opened. Its metal is that of the
   * {@linkplain #annulus annulus}; ask {@link #stock} for the length of the {@linkplain #stockWidth
   * wider bar}.
   *
   * @return the ring
   */
  public Ring weldless() {
    return new Ring(insideDiameter(), section(), Joint.WELDLESS);
  }

  /**
   * The same kind of ring in the size that uses up a length of bar: d = L / π − t, after lap or
   * likely weld.
   *
   * @param length the length of bar of the ring's section
   * @return the ring
   * @throws IllegalArgumentException if the length is too short to close a ring of this section
   */
  public Ring using(Quantity<Length> length) {
    double line = meanLineOf("length", length, Math.PI * thickness());
    return new Ring(diameterFrom(line), section(), joint());
  }

  /**
   * The area of the ring's face as it lies flat, between two circles: π (d + t) t.
   *
   * @return the area, exact, in the square of the diameter's unit
   */
  public Measure<Area> annulus() {
    return Measures.area(measure(meanLine(Notes.NONE)), section().thickness());
  }

  /**
   * How wide a bar to slit for the weldless ring: two faces and 1/4 to 1/2 in, as a face is the
   * thickness from inside to outside.
   *
   * <p>Source: American Technical Society, <cite>Modern Shop Practice</cite>, vol. 2, "Weldless
   * rings"; the spread is that of the rule.
   *
   * @return the width, in the diameter's unit
   */
  public Estimate<Length> stockWidth() {
    Measure<Length> faces = section().thickness().to(unit()).multiply(2);
    return Estimate.of(
        faces.add(Measures.inches(1 / 4d)),
        faces.add(Measures.inches(3 / 8d)),
        faces.add(Measures.inches(1 / 2d)));
  }

  /**
   * The length by the old tyre rule: three inside diameters and half an inch for each foot of
   * these, three thicknesses, and a third of one for the weld. {@link #tyreRuleError} tells how far
   * it is off.
   *
   * @return the rule's length, in the diameter's unit
   */
  public Measure<Length> lengthByTyreRule() {
    return measure(bench(Notes.NONE));
  }

  /**
   * How much the {@linkplain #lengthByTyreRule old rule} gives beyond the circumference of the mean
   * diameter.
   *
   * @return the difference, in the diameter's unit; negative where the rule leaves the ring short
   */
  public Measure<Length> tyreRuleError() {
    return lengthByTyreRule().subtract(measure(meanLine(Notes.NONE)));
  }

  /** {@return how the old rule comes to its length} */
  public Working tyreRuleWorking() {
    return Notes.taken("ring by the old tyre rule", unit(), this::bench)
        .withSource(
            Source.commonPractice("3 diameters + 1/2 in a foot + 3 thicknesses + 1/3 thickness"));
  }

  private double bench(Notes n) {
    double d = n.given("d", "inside diameter", insideDiameter().in(unit()));
    double t = t(n);
    double a = n.length("a", "three inside diameters", "3 d", 3 * d);
    double h = n.length("h", "half an inch in a foot of these", "a / 24", a / 24);
    return n.length("L", "bar by the old rule", "a + h + 3 t + t / 3", a + h + 3 * t + t / 3);
  }

  @Override
  String noun() {
    return "ring";
  }
}
