package org.hammerscale.holding;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * How long a screw or nail must be to stand deep enough in the wood that receives its point: L = t
 * + k D + x, with the thickness t of all that it goes through first, its diameter D and the tip x
 * that does not count; or a share of the length or of the thickness. Other names: {@index "screw
 * length"}, {@index penetration}.
 *
 * <pre>{@code
 * WoodScrew eight = WoodScrew.number(8);
 * PenetrationRule.SIX_DIAMETERS.leastLength(inches("3/16"), eight)       // 1.1715 in  for a load across
 * PenetrationRule.TWO_THIRDS_OF_SCREW.leastLength(inches("3/16"), eight)  // 9/16 in  the carpenter's rule: too short in iron
 * }</pre>
 *
 * <p>Take the longest that the rules in question ask for, then the next {@linkplain ScrewSeries
 * stocked} length, then see that the point stays in the wood. Exact as the rules state it.
 */
public enum PenetrationRule {
  /** 6 D, the tip counted: the least of wood screws and nails under a load across. */
  SIX_DIAMETERS("6 diameters", 6, false),
  /** 10 D, the tip counted: what tabulated values of wood screws and nails assume. */
  TEN_DIAMETERS("10 diameters", 10, false),
  /** 4 D, the tip not counted: the least of lag screws. */
  FOUR_DIAMETERS_AND_TIP("4 diameters beyond the tip", 4, true),
  /** 8 D, the tip not counted: what tabulated values of lag screws assume. */
  EIGHT_DIAMETERS_AND_TIP("8 diameters beyond the tip", 8, true),
  /** Two thirds of the screw in the receiving piece: L = 3 t. A carpenter's rule, for boards. */
  TWO_THIRDS_OF_SCREW("two thirds of the screw", 3, false),
  /** Two thirds of the fixed thickness in the receiving piece: L = 5 t / 3, the other reading. */
  TWO_THIRDS_OF_THICKNESS("two thirds of the fixed thickness", 5 / 3d, false);

  private static final Source AWC =
      Source.read("American Wood Council, answer on the 2001 NDS", "least penetration");
  private static final Source PAGES =
      Source.read("woodworking pages, the rule of two thirds", "two readings");

  private final String words;
  private final double factor;
  private final boolean beyondTip;

  PenetrationRule(String words, double factor, boolean beyondTip) {
    this.words = words;
    this.factor = factor;
    this.beyondTip = beyondTip;
  }

  /** The least that the standard asks of a fastener of this kind. */
  static PenetrationRule leastOf(WoodFastener fastener) {
    return fastener.kind() == WoodFastener.Kind.LAG_SCREW ? FOUR_DIAMETERS_AND_TIP : SIX_DIAMETERS;
  }

  /**
   * The least length by this rule.
   *
   * @param fixed the thickness of all that it goes through before the receiving piece, more than
   *     zero
   * @param fastener the screw or nail
   * @return the length, exact, in the unit of the thickness
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public Measure<Length> leastLength(Quantity<Length> fixed, WoodFastener fastener) {
    Objects.requireNonNull(fastener, "fastener");
    Measure<Length> thickness = Arguments.positive("fixed", fixed);
    return thickness.withValue(least(Notes.NONE, thickness, fastener));
  }

  /**
   * How that length was found.
   *
   * @param fixed the thickness of all that it goes through first, more than zero
   * @param fastener the screw or nail
   * @return the working of {@link #leastLength}
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public Working working(Quantity<Length> fixed, WoodFastener fastener) {
    Objects.requireNonNull(fastener, "fastener");
    Measure<Length> thickness = Arguments.positive("fixed", fixed);
    return Notes.taken(
            "least length by the rule of " + words,
            thickness.getUnit(),
            n -> least(n, thickness, fastener))
        .withSource(isShare() ? PAGES : AWC);
  }

  private boolean isShare() {
    return this == TWO_THIRDS_OF_SCREW || this == TWO_THIRDS_OF_THICKNESS;
  }

  private double least(Notes n, Measure<Length> fixed, WoodFastener fastener) {
    double t = n.given("t", "thickness it goes through first", fixed.getValue());
    if (isShare()) {
      return this == TWO_THIRDS_OF_SCREW
          ? n.length("L", "least length", "3 t", 3 * t)
          : n.length("L", "least length", "5 t / 3", 5 * t / 3);
    }
    double d = n.given("D", "diameter", fastener.diameter().in(fixed.getUnit()));
    double k = n.number("k", "diameters in the wood", "", factor);
    double x = n.given("x", "tip", beyondTip ? fastener.tip().in(fixed.getUnit()) : 0);
    return n.length("L", "least length", "t + k D + x", t + k * d + x);
  }

  /** The rule in words. */
  @Override
  public String toString() {
    return words;
  }
}
