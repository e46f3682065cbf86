package org.hammerscale.bending;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Measure;

/**
 * An eye at the end of a bar, centred on it: turned (bent round until it closes, not welded), or
 * welded. A turned eye uses the circumference of the mean diameter, π (d + t). Other names: {@index
 * loop}, {@index "ring end"}; an {@index "eye bolt"} ends in one.
 *
 * <pre>{@code
 * Section rod = Section.round(inches("1/2"));
 * Eye eye = Eye.turned(inches(1), rod);
 * eye.developedLength()                                // 4.7124 in  rod that goes round
 * Eye.scarfed(inches(1), rod).developedLength()        // 4.2124 in  with its end scarfed and welded across
 * eye.welded(WeldAllowance.ONE_THICKNESS).cutLength()  // 5.2124 in (4.4624 in to 5.4624 in)  if welded
 * }</pre>
 *
 * <p>Lengths come out in the diameter's unit. For the barrel of a hinge, rolled to one face of its
 * leaf, see {@code Barrel}.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 109 and 111; American Technical Society,
 * <cite>Modern Shop Practice</cite>, vol. 1, "Eye bolt".
 */
public final class Eye extends ClosedRound {
  private Eye(Measure<Length> diameter, Section section, Joint joint) {
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
    return new Eye(Arguments.positive("diameter", diameter), section, Joint.TURNED);
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
    return new Eye(Arguments.positive("diameter", diameter), section, Joint.SCARFED);
  }

  /**
   * The same eye as a full ring that is upset and welded to the neck, such as with a butterfly
   * scarf.
   *
   * @param allowance what upsetting and welding take
   * @return the eye
   */
  public Eye welded(WeldAllowance allowance) {
    return new Eye(
        insideDiameter(),
        section(),
        Joint.welded(Objects.requireNonNull(allowance, "allowance").forBar(section())));
  }

  /**
   * The same kind of eye in the size that uses up a length of bar.
   *
   * @param length the length of bar of the eye's section
   * @return the eye
   * @throws IllegalArgumentException if the length is too short to close an eye of this section
   */
  public Eye using(Quantity<Length> length) {
    double line = meanLineOf("length", length, Math.PI * thickness());
    return new Eye(diameterFrom(line), section(), joint());
  }

  /** {@return before it is worked: its end meets the bar} */
  @Override
  public Trimming trimming() {
    return Trimming.BEFORE_WORK;
  }

  @Override
  String noun() {
    return "eye";
  }
}
