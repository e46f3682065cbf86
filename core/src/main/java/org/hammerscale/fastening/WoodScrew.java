package org.hammerscale.fastening;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Gauge;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * An American flat-head wood screw by its gauge number n: shank D = 0.060 in + 0.013 in × n, head
 * of 82°. Old British screws follow {@linkplain OldBritishWoodScrew another rule} that agrees with
 * this one only near number 8.
 *
 * <pre>{@code
 * WoodScrew ten = WoodScrew.number(10);
 * ten.clearanceHole()                                        // 13/64 in  to drill in the strap
 * ten.threadLength(inches("1 1/2"))                          // 1 in      thread of one 1 1/2 in long
 * ten.countersinkIn(inches("3/16")).fits()                   // true      its head lies flush in 3/16 in
 * WoodScrew.number(14).countersinkIn(millimetres(3)).fits()  // false     a 14 is too thick for 3 mm
 * }</pre>
 *
 * <p>Sizes are the standard's nominal ones, in inches; screws as bought are a few thousandths
 * smaller.
 *
 * <p>Source: ASME B18.6.1 for shank, thread and head, National Design Specification for Wood
 * Construction, table L3, for the root, both from memory; the heads of numbers 2, 4 to 10 and 12
 * were read in a table of flat heads of the same family.
 */
public final class WoodScrew extends NumberedScrew {
  private static final Source ASME = Source.fromMemory("ASME B18.6.1", "wood screws, flat head");
  private static final Source CLEARANCE =
      Source.commonPractice("the first drill of the 1/64 in series that passes the shank");
  private static final Source NDS =
      Source.fromMemory("National Design Specification for Wood Construction", "table L3");
  private static final Source TWO_THIRDS =
      Source.read("USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190", "ch. 8");
  private static final int LAST = 24;

  /** Threads an inch, head with a sharp edge and at least, and root of the thread in inches. */
  private record Row(int threads, double head, double leastHead, double root) {}

  /** Where the root is not in the table; the rule of two thirds stands in. */
  private static final double NO_ROOT = 0;

  private static final Map<Integer, Row> ROWS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(0, new Row(32, 0.119, 0.099, NO_ROOT)),
              Map.entry(1, new Row(28, 0.146, 0.123, NO_ROOT)),
              Map.entry(2, new Row(26, 0.172, 0.147, NO_ROOT)),
              Map.entry(3, new Row(24, 0.199, 0.171, NO_ROOT)),
              Map.entry(4, new Row(22, 0.225, 0.195, NO_ROOT)),
              Map.entry(5, new Row(20, 0.252, 0.220, NO_ROOT)),
              Map.entry(6, new Row(18, 0.279, 0.244, 0.113)),
              Map.entry(7, new Row(16, 0.305, 0.268, 0.122)),
              Map.entry(8, new Row(15, 0.332, 0.292, 0.131)),
              Map.entry(9, new Row(14, 0.358, 0.316, 0.142)),
              Map.entry(10, new Row(13, 0.385, 0.340, 0.152)),
              Map.entry(12, new Row(11, 0.438, 0.389, 0.171)),
              Map.entry(14, new Row(10, 0.507, 0.452, 0.196)),
              Map.entry(16, new Row(9, 0.544, 0.485, 0.209)),
              Map.entry(18, new Row(8, 0.635, 0.568, 0.232)),
              Map.entry(20, new Row(8, 0.650, 0.582, 0.255)),
              Map.entry(24, new Row(7, 0.762, 0.685, 0.298))));

  private WoodScrew(int number) {
    super(number, LAST, "lag screw");
  }

  /**
   * The screw of a gauge number. Shank and hole are known for every number, head and thread for
   * those that the standard lists.
   *
   * @param number from 0 to 24
   * @return the screw
   * @throws IllegalArgumentException if the number is out of range
   */
  public static WoodScrew number(int number) {
    return new WoodScrew(number);
  }

  /** {@return the numbers whose heads and threads the standard lists} */
  public static List<Integer> standardNumbers() {
    return List.copyOf(ROWS.keySet());
  }

  /**
   * The diameter at the root of its thread: from the table for numbers 6 to 24 that it lists, else
   * {@linkplain #rootByTwoThirds two thirds} of the shank.
   *
   * @return the root, in inches
   */
  @Override
  public Measure<Length> rootDiameter() {
    Row row = ROWS.get(number());
    return row == null || row.root() == NO_ROOT ? rootByTwoThirds() : Measures.inches(row.root());
  }

  /** {@return where its root diameter comes from} */
  public Source rootSource() {
    Row row = ROWS.get(number());
    return row == null || row.root() == NO_ROOT ? TWO_THIRDS : NDS;
  }

  /**
   * The root by the handbook's average, 2/3 D. The tables give about 0.8 D: measure the screw in
   * hand where it matters.
   *
   * @return two thirds of the shank, in inches. Source: USDA Wood Handbook, ch. 8 (read)
   */
  public Measure<Length> rootByTwoThirds() {
    return twoThirdsOfShank();
  }

  /**
   * The head with a sharp edge, the most that the standard allows.
   *
   * @return the diameter, in inches
   * @throws IllegalArgumentException if the standard lists no head for the number
   */
  @Override
  public Measure<Length> headDiameter() {
    return Measures.inches(row().head());
  }

  /**
   * The least that the standard allows a head whose edge is rounded or cut off.
   *
   * @return the diameter, in inches
   * @throws IllegalArgumentException if the standard lists no head for the number
   */
  public Measure<Length> leastHeadDiameter() {
    return Measures.inches(row().leastHead());
  }

  /** {@return 82°; the standard allows 80° to 82°} */
  @Override
  public Measure<Angle> headAngle() {
    return Measures.degrees(82);
  }

  /**
   * The pitch of its thread, an inch divided by the threads an inch.
   *
   * @return the pitch, in inches
   * @throws IllegalArgumentException if the standard lists no thread for the number
   */
  public Measure<Length> pitch() {
    return Measures.inches(1.0 / row().threads());
  }

  /**
   * The thread of a screw: about two thirds of its length.
   *
   * @param length of the screw, more than zero
   * @return two thirds of it, in its unit; a rule, so measure the screw in hand
   * @throws IllegalArgumentException if the length is not more than zero
   */
  @Override
  public Measure<Length> threadLength(Quantity<Length> length) {
    return Arguments.positive("length", length).multiply(2).divide(3);
  }

  @Override
  public Working holeWorking() {
    return super.holeWorking().withSource(CLEARANCE);
  }

  @Override
  double shank(Notes n) {
    n.value("n", "gauge number", "", number(), ShopUnits.ONE);
    double d = Gauge.WOOD_SCREW.size(number()).in(ShopUnits.INCH);
    return n.length("D", "diameter of the shank", "0.06 + 0.013 n", d);
  }

  /** A boatbuilders' chart has the same drills, but for 10 and 16 two thousandths thinner ones. */
  @Override
  double hole(Notes n) {
    double d = shank(n);
    double e = n.given("e", "a sixty-fourth", Graduation.SIXTY_FOURTH.step().in(ShopUnits.INCH));
    return n.length("C", "hole in the iron", "up(D, e)", Math.ceil(d / e - 1e-9) * e);
  }

  private Row row() {
    Row row = ROWS.get(number());
    if (row == null) {
      throw new IllegalArgumentException(
          "number must be one of "
              + standardNumbers().toString().replaceAll("[\\[\\]]", "")
              + " for a standard head and thread, was "
              + number()
              + "; measure the screw and make it a CountersunkHead of your own");
    }
    return row;
  }

  @Override
  Source rule() {
    return ASME;
  }

  @Override
  String series() {
    return "";
  }
}
