package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * How a row of like fasteners shares a load: unequally, so that n of them hold less than n times
 * one. Other name: {@index "group action"}. The first by the eye of a hinge carries most.
 *
 * <pre>{@code
 * FastenerRow row = FastenerRow.pulledOut(5);
 * row.effectiveNumber()  // 4.257 (3.624 to 5)  five hold as much as four and a quarter
 * row.holds(poundsForce(135))  // 574.7 lbf (489.2 lbf to 675 lbf)  if one holds 135 lbf
 * row.mostLoaded(poundsForce(300))  // 70.48 lbf (60 lbf to 82.78 lbf)  what the first takes of 300 lbf
 * FastenerRow.acrossGrain(4).effectiveNumber()  // 3.482 (3.031 to 4)  four pushed across the grain
 * }</pre>
 *
 * <p>A caller compares {@link #mostLoaded} of a hinge's reaction with what one fastener holds, or
 * the reaction itself with {@link #holds}. A load that both pulls out and shears wants both shares
 * together: at an angle α out of the face, NDS 12.4 combines them to W Z / (W cos² α + Z sin² α).
 *
 * <p>The likely number is the rule's. Not more than n can hold; as the rule's lower bound the same
 * ratio is taken once more, for holes drilled wide or not in line: common practice. Sources: EN
 * 1995-1-1, 8.7.2 (screws pulled out, n^0.9), from memory, and (8.34) (bolts in a row along the
 * grain), read.
 */
public final class FastenerRow {
  /** The power of its number that a row of screws counts for. */
  static final double POWER = 0.9;

  static final Source PULLED_OUT =
      Source.fromMemory("EN 1995-1-1", "8.7.2, effective number of screws n^0.9");
  private static final Source ALONG =
      Source.read(
          "EN 1995-1-1", "(8.34), bolts in a row along the grain, as public pages quote it");
  private static final Source ACROSS =
      Source.commonPractice(
          "n^0.9 as for screws pulled out, where EN 1995-1-1 (8.35) would count all of them");
  private static final Source SPREAD =
      Source.commonPractice("at most all hold alike; at least the ratio of the rule once more");

  private final int count;
  private final Source source;

  /** Spacing in diameters, of a row along the grain; else 0. */
  private final double spacing;

  private FastenerRow(int count, Source source, double spacing) {
    if (count < 1) {
      throw new IllegalArgumentException(
          "number of fasteners must be at least 1, was " + count + "; count those of the row");
    }
    this.count = count;
    this.source = source;
    this.spacing = spacing;
  }

  /**
   * A row that is pulled out of the wood, off its face: n^0.9.
   *
   * @param count the number of fasteners n, at least 1
   * @return the row
   * @throws IllegalArgumentException if there is none
   */
  public static FastenerRow pulledOut(int count) {
    return new FastenerRow(count, PULLED_OUT, 0);
  }

  /**
   * A row along the grain that is pulled along itself, as on a ledge or a post: the smaller of n
   * and n^0.9 (a₁ / 13 d)^(1/4).
   *
   * @param count the number of fasteners n, at least 1
   * @param fastener one of them; its diameter counts
   * @param spacing a₁, centre to centre, more than zero
   * @return the row
   * @throws IllegalArgumentException if there is none, or the spacing is not more than zero
   */
  public static FastenerRow alongGrain(int count, WoodFastener fastener, Quantity<Length> spacing) {
    Objects.requireNonNull(fastener, "fastener");
    double diameters = Arguments.positive("spacing", spacing).ratio(fastener.diameter());
    return new FastenerRow(count, ALONG, diameters);
  }

  /**
   * A row across the grain that is pulled along itself, as of a level strap over upright boards:
   * n^0.9, where the standard counts all n.
   *
   * @param count the number of fasteners n, at least 1
   * @return the row
   * @throws IllegalArgumentException if there is none
   */
  public static FastenerRow acrossGrain(int count) {
    return new FastenerRow(count, ACROSS, 0);
  }

  /**
   * The same kind of row with another number of fasteners, to compare.
   *
   * @param other the number of fasteners n, at least 1
   * @return the row
   * @throws IllegalArgumentException if there is none
   */
  public FastenerRow withCount(int other) {
    return new FastenerRow(other, source, spacing);
  }

  /** {@return how many fasteners it has} */
  public int count() {
    return count;
  }

  /**
   * As many fasteners as would hold as much if all carried alike: n_ef.
   *
   * @return the number, an estimate from 1 to n
   */
  public Estimate<Dimensionless> effectiveNumber() {
    return Estimate.of(number(least()), number(likely(Notes.NONE)), number(count));
  }

  /**
   * What the row holds.
   *
   * @param one what one fastener holds, not negative; zero where it counts for nothing
   * @return the force, an estimate, in the unit of one
   * @throws IllegalArgumentException if the force is negative
   */
  public Estimate<Force> holds(Quantity<Force> one) {
    return holds(Estimate.exact(Arguments.notNegativeForce("force of one", one)));
  }

  /**
   * What the row holds, where one is an estimate itself; both err together.
   *
   * @param one what one fastener holds, not negative
   * @return the force, an estimate, in the unit of one
   * @throws IllegalArgumentException if a force is negative
   */
  public Estimate<Force> holds(Estimate<Force> one) {
    Objects.requireNonNull(one, "one");
    Arguments.notNegativeForce("force of one", one.low());
    return Estimate.of(
        one.low().multiply(least()),
        one.likely().multiply(likely(Notes.NONE)),
        one.high().multiply(count));
  }

  /**
   * What the fastener bears that carries most: the first by the eye.
   *
   * @param load what pulls at the row, more than zero
   * @return its share, an estimate, in the unit of the load
   * @throws IllegalArgumentException if the load is not more than zero
   */
  public Estimate<Force> mostLoaded(Quantity<Force> load) {
    Measure<Force> whole = Arguments.positiveForce("load", load);
    return Estimate.of(
        whole.divide(count), whole.divide(likely(Notes.NONE)), whole.divide(least()));
  }

  /** {@return what makes the shares more unequal than the rule says} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (count > 1) {
      cautions.add(
          Caution.limit(
              "the first fastener by the eye carries most, and all of it as long as its hole is the"
                  + " only tight one: drill the iron to fit, in line with the wood",
              SPREAD));
    }
    if (spacing > 0 && spacing < 4) {
      cautions.add(
          Caution.limit(
              "a spacing of less than 4 diameters along the grain is closer than any rule allows;"
                  + " set the holes further apart",
              ALONG));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the likely number was found} */
  public Working working() {
    return Notes.taken("effective number in a row", ShopUnits.METRE, this::likely)
        .withSource(source)
        .withSource(SPREAD)
        .withCautions(cautions());
  }

  private double likely(Notes n) {
    double all = n.number("n", "fasteners", "", count);
    if (count == 1 || spacing == 0) {
      return n.number("nₑ", "effective number", "pow(n, 0.9)", Math.pow(all, POWER));
    }
    double s = n.number("s", "spacing in diameters", "", spacing);
    double rule =
        n.number(
            "r",
            "number by the rule",
            "pow(n, 0.9) pow(s / 13, 0.25)",
            Math.pow(all, POWER) * Math.pow(s / 13, 0.25));
    double most = Math.min(all, Math.max(1, rule));
    String formula = most == rule ? "r" : most == all ? "n" : "1";
    return n.number("nₑ", "effective number, from 1 to n", formula, most);
  }

  private double least() {
    double likely = likely(Notes.NONE);
    return Math.max(1, likely * likely / count);
  }

  private static Measure<Dimensionless> number(double value) {
    return Measure.of(value, ShopUnits.ONE);
  }

  /** How many, and how many they count for. */
  @Override
  public String toString() {
    return count + " fasteners that hold as much as " + effectiveNumber();
  }
}
