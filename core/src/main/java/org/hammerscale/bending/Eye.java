package org.hammerscale.bending;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;

/**
 * An eye at the end of a bar, centred on it: turned (bent round until it closes, not welded), or
 * welded. A turned eye uses the circumference of the mean diameter, π (d + t). Other names: loop,
 * ring end, eye bolt.
 *
 * <pre>{@code
 * Section rod = Section.round(inches("1/2"));
 * Eye eye = Eye.turned(inches(1), rod);
 * eye.developedLength()                                    // 4.7124 in
 * Eye.scarfed(inches(1), rod).developedLength()            // 4.2124 in
 * eye.welded(WeldAllowance.ONE_THICKNESS).cutLength()      // 5.2124 in (4.8999 in to 5.4624 in)
 * }</pre>
 *
 * <p>Lengths come out in the diameter's unit. For the barrel of a hinge, rolled to one face of its
 * leaf, see {@code Barrel}.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 109 and 111; American Technical Society,
 * <cite>Modern Shop Practice</cite>, vol. 1, "Eye bolt".
 */
public final class Eye extends Circle {
  private Eye(Quantity<Length> diameter, Section section, Joint joint) {
    super(diameter, section, joint);
  }

  /**
   * An eye turned until its end meets the bar.
   *
   * @param diameter the finished inside diameter, more than zero
   * @param section the bar where it is turned
   * @return the eye
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Eye turned(Quantity<Length> diameter, Section section) {
    return new Eye(diameter, section, Joint.TURNED);
  }

  /**
   * An eye whose end is scarfed and welded across the neck. The bar is bent sharply at a mark π (d
   * + t) − t from the scarfed end: the neck itself fills one thickness of the ring. That length is
   * the {@link #developedLength}; weld and scarf are within it.
   *
   * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 109.
   *
   * @param diameter the finished inside diameter, more than zero
   * @param section the bar where it is bent
   * @return the eye
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Eye scarfed(Quantity<Length> diameter, Section section) {
    return new Eye(diameter, section, Joint.SCARFED);
  }

  /**
   * The same eye as a full ring that is upset and welded to the neck, such as with a butterfly
   * scarf.
   *
   * @param allowance what upsetting and welding take
   * @return the eye
   */
  public Eye welded(WeldAllowance allowance) {
    return new Eye(insideDiameter(), section(), Joint.welded(allowance));
  }

  /**
   * The same kind of eye in the size that uses up a length of bar.
   *
   * @param length the length of bar of the eye's section
   * @return the eye
   * @throws IllegalArgumentException if the length is too short to close an eye of this section
   */
  public Eye using(Quantity<Length> length) {
    return new Eye(diameterOf(length), section(), joint());
  }

  @Override
  String noun() {
    return "eye";
  }

  /** How it is closed, its inside diameter and its bar. */
  @Override
  public String toString() {
    return name() + ", " + insideDiameter() + " inside, in " + section();
  }
}
