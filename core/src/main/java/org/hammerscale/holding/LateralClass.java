package org.hammerscale.holding;

import java.util.Arrays;
import java.util.Comparator;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener;

/**
 * The classes of wood by which the Wood Handbook states K, in pounds and inches, by gravity at 12 %
 * to the hundredth. From memory of table 8-4.
 */
enum LateralClass {
  LIGHT_HARDWOOD(true, 0.33, 0.47, 1440, 3360, 3820),
  MIDDLE_HARDWOOD(true, 0.48, 0.56, 2000, 4640, 4280),
  DENSE_HARDWOOD(true, 0.57, 0.74, 2720, 6400, 4950),
  LIGHT_SOFTWOOD(false, 0.29, 0.42, 1440, 3380, 3380),
  MIDDLE_SOFTWOOD(false, 0.43, 0.47, 1800, 4320, 3820),
  DENSE_SOFTWOOD(false, 0.48, 0.52, 2200, 5280, 4280);

  private final boolean hardwood;
  private final double least;
  private final double most;
  private final double nail;
  private final double screw;
  private final double lag;

  LateralClass(boolean hardwood, double least, double most, double nail, double screw, double lag) {
    this.hardwood = hardwood;
    this.least = least;
    this.most = most;
    this.nail = nail;
    this.screw = screw;
    this.lag = lag;
  }

  /** The densest class that begins no higher than the wood's gravity, to the hundredth. */
  static LateralClass of(Wood wood) {
    return Arrays.stream(values())
        .filter(c -> c.hardwood == wood.isHardwood() && c.least <= hundredths(wood))
        .max(Comparator.comparingDouble(c -> c.least))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "wood must have a gravity at 12 % of at least "
                        + (wood.isHardwood() ? LIGHT_HARDWOOD : LIGHT_SOFTWOOD).least
                        + " for the table of lateral loads, was "
                        + wood.at12Percent()
                        + " ("
                        + wood.name()
                        + "); bolt through such light wood"));
  }

  private static double hundredths(Wood wood) {
    return Math.rint(wood.at12Percent().value() * 100) / 100;
  }

  double k(WoodFastener.Kind kind) {
    return switch (kind) {
      case WOOD_SCREW -> screw;
      case LAG_SCREW -> lag;
      case NAIL -> nail;
    };
  }

  /** The group of the old rule for wood screws whose constant is three quarters of ours at most. */
  AllowableLateral.Group group() {
    return switch (this) {
      case DENSE_HARDWOOD -> AllowableLateral.Group.I;
      case DENSE_SOFTWOOD -> AllowableLateral.Group.II;
      case MIDDLE_HARDWOOD, MIDDLE_SOFTWOOD -> AllowableLateral.Group.III;
      case LIGHT_HARDWOOD, LIGHT_SOFTWOOD -> AllowableLateral.Group.IV;
    };
  }

  /** Whether the wood is denser than this class, the last of its kind. */
  boolean isBelow(Wood wood) {
    return hundredths(wood) > most;
  }

  boolean isDense() {
    return this == DENSE_HARDWOOD;
  }

  double densest() {
    return most;
  }
}
