package org.hammerscale.fastening;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
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
 * A slotted countersunk wood screw of DIN 97, by its diameter: head of 90°.
 *
 * <pre>{@code
 * MetricWoodScrew five = MetricWoodScrew.din97(millimetres(5));
 * five.clearanceHole()                             // 5.5 mm   to drill in the strap
 * five.countersinkIn(millimetres(4)).depth()       // 1.85 mm  how deep to sink the head
 * five.countersinkIn(millimetres(2)).entersWood()  // 0.1 mm   in a thin strap the wood is sunk too
 * five.threadLength(millimetres(50))               // 30 mm    thread of one 50 mm long
 * }</pre>
 *
 * <p>Sizes are the standard's nominal ones, in millimetres; the head is the most it allows.
 *
 * <p>Source: DIN 97, from memory; the heads of 2, 2.5, 3, 3.5, 4, 5, 6 and 8 mm were read in a
 * table of DIN 965, which has the same heads.
 */
public final class MetricWoodScrew implements WoodFastener, CountersunkHead {
  private static final Source CLEARANCE =
      Source.commonPractice("half a millimetre more than the shank of a wood screw");
  private static final double CLEARANCE_MM = 0.5;

  /** Diameter, head and height of the head, in millimetres. */
  private record Row(double diameter, double head, double height) {}

  private static final List<Row> ROWS =
      List.of(
          new Row(2, 3.8, 1.2),
          new Row(2.5, 4.7, 1.5),
          new Row(3, 5.6, 1.65),
          new Row(3.5, 6.5, 1.93),
          new Row(4, 7.5, 2.2),
          new Row(4.5, 8.3, 2.35),
          new Row(5, 9.2, 2.5),
          new Row(5.5, 10.2, 2.75),
          new Row(6, 11, 3),
          new Row(7, 12.5, 3.5),
          new Row(8, 14.5, 4));

  private final Row row;

  private MetricWoodScrew(Row row) {
    this.row = row;
  }

  /**
   * The screw of a nominal diameter.
   *
   * @param diameter 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7 or 8 mm
   * @return the screw
   * @throws IllegalArgumentException if the standard has no such diameter
   */
  public static MetricWoodScrew din97(Quantity<Length> diameter) {
    Measure<Length> wanted = Arguments.positive("diameter", diameter);
    for (Row row : ROWS) {
      if (Measures.millimetres(row.diameter()).isEquivalentTo(wanted)) {
        return new MetricWoodScrew(row);
      }
    }
    throw new IllegalArgumentException(
        "diameter must be one of DIN 97, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7 or 8 mm, was "
            + wanted
            + "; take the nearest, or make the screw a CountersunkHead of your own");
  }

  @Override
  public Kind kind() {
    return Kind.WOOD_SCREW;
  }

  @Override
  public Measure<Length> diameter() {
    return Measures.millimetres(row.diameter());
  }

  /** {@return two thirds of the shank. Source: USDA Wood Handbook, ch. 8 (read)} */
  @Override
  public Measure<Length> rootDiameter() {
    return diameter().multiply(2).divide(3);
  }

  @Override
  public Measure<Length> headDiameter() {
    return Measures.millimetres(row.head());
  }

  /**
   * The most that the standard allows the head from its face to where the shank begins, with the
   * rounding below it. The cone with sharp edges, {@link Countersink#headDepth}, is less.
   *
   * @return the height k, in millimetres
   */
  public Measure<Length> headHeight() {
    return Measures.millimetres(row.height());
  }

  /** {@return 90°} */
  @Override
  public Measure<Angle> headAngle() {
    return Measures.degrees(90);
  }

  /** {@return the hole through the iron, half a millimetre more than the shank} */
  @Override
  public Measure<Length> clearanceHole() {
    return Measures.millimetres(hole(Notes.NONE));
  }

  /**
   * The thread of a screw: 0.6 of its length.
   *
   * @param length of the screw, more than zero
   * @return 0.6 of it, in its unit. Source: DIN 97, from memory
   * @throws IllegalArgumentException if the length is not more than zero
   */
  @Override
  public Measure<Length> threadLength(Quantity<Length> length) {
    return Arguments.positive("length", length).multiply(0.6);
  }

  /** {@return how the hole through the iron follows from the diameter} */
  public Working holeWorking() {
    Unit<Length> unit = ShopUnits.MILLIMETRE;
    return Notes.taken("hole in the iron for a " + this, unit, this::hole).withSource(CLEARANCE);
  }

  private double hole(Notes n) {
    double d = n.given("d", "diameter of the screw", row.diameter());
    return n.length("C", "hole in the iron", "d + 0.5", d + CLEARANCE_MM);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MetricWoodScrew that && row.equals(that.row);
  }

  @Override
  public int hashCode() {
    return row.hashCode();
  }

  /** The diameter. */
  @Override
  public String toString() {
    return diameter() + " wood screw, DIN 97";
  }
}
