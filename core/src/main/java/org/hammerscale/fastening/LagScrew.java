package org.hammerscale.fastening;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A {@index "lag screw"} (US), {@index "coach screw"} (GB): a heavy wood screw with a hexagonal or
 * square head that sits on the iron. Other name: {@index "lag bolt"}.
 *
 * <pre>{@code
 * LagScrew lag = LagScrew.of(inches("3/8"));
 * lag.clearanceHole()           // 7/16 in    to drill in the strap
 * lag.acrossFlats()             // 9/16 in    the spanner
 * lag.threadLength(inches(4))   // 2 1/2 in   thread of one 4 in long,
 * lag.holdingThread(inches(4))  // 2 9/32 in  of which so much holds, its point does not
 * }</pre>
 *
 * <p>Sizes are the standard's nominal ones, in inches.
 *
 * <p>Source: ASME B18.2.1, as tabulated in the National Design Specification for Wood Construction,
 * table L2, from memory.
 */
public final class LagScrew implements WoodFastener {
  private static final Source TABLE =
      Source.fromMemory(
          "ASME B18.2.1, in the National Design Specification for Wood Construction", "table L2");

  /** Diameter, root, threads an inch, width across flats, height of the head, tip, in inches. */
  private record Row(
      double d, double root, double threads, double flats, double high, double tip) {}

  private static final List<Row> ROWS =
      List.of(
          new Row(1 / 4.0, 0.173, 10, 7 / 16.0, 11 / 64.0, 5 / 32.0),
          new Row(5 / 16.0, 0.227, 9, 1 / 2.0, 7 / 32.0, 3 / 16.0),
          new Row(3 / 8.0, 0.265, 7, 9 / 16.0, 1 / 4.0, 7 / 32.0),
          new Row(7 / 16.0, 0.328, 7, 5 / 8.0, 19 / 64.0, 9 / 32.0),
          new Row(1 / 2.0, 0.371, 6, 3 / 4.0, 11 / 32.0, 5 / 16.0),
          new Row(5 / 8.0, 0.471, 5, 15 / 16.0, 27 / 64.0, 13 / 32.0),
          new Row(3 / 4.0, 0.579, 4.5, 1.125, 1 / 2.0, 1 / 2.0));

  private final Row row;

  private LagScrew(Row row) {
    this.row = row;
  }

  /**
   * The lag screw of a nominal diameter.
   *
   * @param diameter 1/4, 5/16, 3/8, 7/16, 1/2, 5/8 or 3/4 in
   * @return the screw
   * @throws IllegalArgumentException if the table has no such diameter
   */
  public static LagScrew of(Quantity<Length> diameter) {
    Measure<Length> wanted = Arguments.positive("diameter", diameter);
    for (Row row : ROWS) {
      if (Measures.inches(row.d()).isEquivalentTo(wanted)) {
        return new LagScrew(row);
      }
    }
    throw new IllegalArgumentException(
        "diameter must be 1/4, 5/16, 3/8, 7/16, 1/2, 5/8 or 3/4 in, was "
            + wanted
            + "; take the nearest of these");
  }

  @Override
  public Kind kind() {
    return Kind.LAG_SCREW;
  }

  @Override
  public Measure<Length> diameter() {
    return Measures.inches(row.d());
  }

  @Override
  public Measure<Length> rootDiameter() {
    return Measures.inches(row.root());
  }

  /** {@return the pitch of its thread, an inch divided by the threads an inch} */
  public Measure<Length> pitch() {
    return Measures.inches(1 / row.threads());
  }

  /** {@return the width of its hexagonal head across the flats, the size of the spanner} */
  public Measure<Length> acrossFlats() {
    return Measures.inches(row.flats());
  }

  /** {@return the height of its head above the iron} */
  public Measure<Length> headHeight() {
    return Measures.inches(row.high());
  }

  /** {@return the length of its tapered tip, which is not counted on to hold} */
  @Override
  public Measure<Length> tip() {
    return Measures.inches(row.tip());
  }

  /** {@return the hole through the iron, 1/16 in more than the shank (common practice)} */
  public Measure<Length> clearanceHole() {
    return diameter().add(Measures.inches(1 / 16.0));
  }

  /**
   * The thread of a screw of a given length with its tip: T = L/2 + 1/2 in, at most 6 in and at
   * most the screw.
   *
   * @param length of the screw under the head, more than its tip
   * @return the least thread by the standard, in the length's unit
   * @throws IllegalArgumentException if the length is not more than the tip
   */
  @Override
  public Measure<Length> threadLength(Quantity<Length> length) {
    Measure<Length> measure = checked(length);
    return measure.withValue(thread(Notes.NONE, measure));
  }

  /**
   * The thread that holds in withdrawal: T less the tip.
   *
   * @param length of the screw under the head, more than its tip
   * @return the length of full thread, in the length's unit
   * @throws IllegalArgumentException if the length is not more than the tip
   */
  public Measure<Length> holdingThread(Quantity<Length> length) {
    Measure<Length> measure = checked(length);
    return measure.withValue(holding(Notes.NONE, measure));
  }

  /**
   * How the thread that holds was found.
   *
   * @param length of the screw under the head, more than its tip
   * @return the working of {@link #holdingThread}
   * @throws IllegalArgumentException if the length is not more than the tip
   */
  public Working threadWorking(Quantity<Length> length) {
    Measure<Length> measure = checked(length);
    return Notes.taken("thread of a " + this, measure.getUnit(), n -> holding(n, measure))
        .withSource(TABLE);
  }

  private Measure<Length> checked(Quantity<Length> length) {
    Measure<Length> measure = Arguments.positive("length", length);
    if (!measure.isGreaterThan(tip())) {
      throw new IllegalArgumentException(
          "length must be more than the tip of "
              + tip()
              + ", was "
              + measure
              + "; take a longer one");
    }
    return measure;
  }

  private double thread(Notes n, Measure<Length> length) {
    Unit<Length> unit = length.getUnit();
    double l = n.given("L", "length under the head", length.getValue());
    double e = n.given("e", "an inch", Measure.of(1, ShopUnits.INCH).in(unit));
    double half = l / 2 + e / 2;
    String meaning = "thread with its tip";
    if (half >= l) {
      return n.length("T", meaning + ", the whole screw", "L", l);
    }
    return half > 6 * e
        ? n.length("T", meaning + ", six inches at most", "6 e", 6 * e)
        : n.length("T", meaning, "L / 2 + e / 2", half);
  }

  private double holding(Notes n, Measure<Length> length) {
    double t = thread(n, length);
    double tip = n.given("x", "tip", tip().in(length.getUnit()));
    return n.length("P", "thread that holds", "T − x", t - tip);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LagScrew that && row.equals(that.row);
  }

  @Override
  public int hashCode() {
    return row.hashCode();
  }

  /** The diameter. */
  @Override
  public String toString() {
    return diameter() + " lag screw";
  }
}
