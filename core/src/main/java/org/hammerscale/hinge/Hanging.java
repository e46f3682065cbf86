package org.hammerscale.hinge;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * How a door hangs, which says where its opening counts from: a smith counts from shut, a {@link
 * Swing} from flat. A door always opens through flat toward the side on which the swing is asked
 * for; what the leaves are folded when shut, they are folded to the other side.
 *
 * <pre>{@code
 * Hanging.FACE.fromShut(degrees(110))      // 110°
 * Hanging.JOINT.fromShut(degrees(62.9))    // 242.9°
 * Hanging.CORNER.pastFlat(degrees(180))    // 90°
 * Hanging.JOINT.folded()                   // 180°
 * }</pre>
 *
 * <p>Exact. Source: common practice in hanging doors.
 */
public enum Hanging {
  /** On the face of door and frame: the hinge lies flat when the door is shut. Strap, T-hinge. */
  FACE("on the face", 0),
  /** In the joint, like a butt: the leaves are folded on each other when the door is shut. */
  JOINT("in the joint", 180),
  /** Round a corner, one leaf on the face and one in the joint: at a right angle when shut. */
  CORNER("round the corner", 90);

  private static final double MOST = 360;

  private final String words;
  private final double degrees;

  Hanging(String words, double degrees) {
    this.words = words;
    this.degrees = degrees;
  }

  /** {@return how far the leaves are folded back from flat when the door is shut} */
  public Measure<Angle> folded() {
    return Measure.of(degrees, ShopUnits.DEGREE);
  }

  /**
   * The opening from shut: folding when shut + opening past flat.
   *
   * @param pastFlat how far the hinge opens past flat, 0° to 360°
   * @return the angle that the door turns through from shut, exact, in degrees
   * @throws IllegalArgumentException if the angle lies outside its range
   */
  public Measure<Angle> fromShut(Quantity<Angle> pastFlat) {
    return folded().add(Arguments.angle("opening past flat", pastFlat, MOST));
  }

  /**
   * The opening past flat that a wanted opening from shut needs: what it exceeds the folding by.
   *
   * @param fromShut how far the door shall open from shut, 0° to 360°
   * @return the angle past flat, exact, in degrees; zero if the hinge need not open past flat
   * @throws IllegalArgumentException if the angle lies outside its range
   */
  public Measure<Angle> pastFlat(Quantity<Angle> fromShut) {
    double wanted = Arguments.angle("opening from shut", fromShut, MOST).in(ShopUnits.DEGREE);
    return Measure.of(Math.max(0, wanted - degrees), ShopUnits.DEGREE);
  }

  /** The way of hanging in words, such as {@code in the joint}. */
  @Override
  public String toString() {
    return words;
  }
}
