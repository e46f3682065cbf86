package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.CountersunkHead;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.jspecify.annotations.Nullable;

/**
 * The screws that a strap or a plate asks for: which, how many, how long. It goes through iron, and
 * perhaps a plate or a board more, into the wood that receives the points, and is pulled off that
 * wood and pushed along it.
 *
 * <pre>{@code
 * import java.util.List;
 * DoorLoad gate = DoorLoad.weighing(pounds(60), feet(3)).hungAt(inches(6), inches(36));
 * StrapScrews strap = StrapScrews.through(inches("3/16")).into(inches("1 1/2"), Wood.named("Douglas-fir coast"));
 * StrapScrews upper = strap.pushedAcross(gate.worst(2)).pulledOff(gate.pull(2));
 * ScrewSeries box = ScrewSeries.of("box", List.of(WoodScrew.number(10)), List.of(inches(1), inches("1 1/2")));
 * upper.bestOf(box)   // 2 × no. 10 wood screw, 0.19 in, 1 1/2 in long; both together 30.2 %
 * upper.choices(ScrewSeries.WOOD_SCREWS).size()   // 10  sizes of the series would do
 * }</pre>
 *
 * <p>Of each size of a series the length is taken that needs the fewest screws, and of these the
 * shortest, if the penetration that the standard asks for is kept, the point stays in the wood and
 * the head lies flush in the iron. The iron of strap and screw is taken for mild steel, its low
 * yield strength ÷ 2 unless another factor is given. A row holds as {@link FastenerRow} tells: n
 * screws count for n^0.9; one alone would let the strap turn, so that there are two where there is
 * room.
 *
 * <p>Exact by the rules that {@link ScrewChoice} names; where in the strap the screws may stand is
 * a matter of spacing.
 */
public final class StrapScrews {
  private static final int MOST = 100;
  private static final double MOST_SAFETY = 100;

  private final Measure<Length> iron;
  private final Measure<Length> fixed;
  private final Measure<Length> board;
  private final Wood wood;
  private final Measure<Force> pull;
  private final Measure<Force> across;
  private final double safety;
  private final int most;
  private final boolean headsOnTheIron;

  private StrapScrews(
      Measure<Length> iron,
      Measure<Length> fixed,
      Measure<Length> board,
      Wood wood,
      Measure<Force> pull,
      Measure<Force> across,
      double safety,
      int most,
      boolean headsOnTheIron) {
    this.iron = iron;
    this.fixed = fixed;
    this.board = board;
    this.wood = wood;
    this.pull = pull;
    this.across = across;
    this.safety = safety;
    this.most = most;
    this.headsOnTheIron = headsOnTheIron;
  }

  /** Screws through iron, of which the wood that receives their points is still to be told. */
  public static final class Unplaced {
    private final Measure<Length> iron;
    private final Measure<Length> fixed;

    private Unplaced(Measure<Length> iron, Measure<Length> fixed) {
      this.iron = iron;
      this.fixed = fixed;
    }

    /**
     * The same through one thickness more under the strap: a plate, or a board that the point
     * passes.
     *
     * @param thickness more than zero
     * @return the screws
     * @throws IllegalArgumentException if the thickness is not more than zero
     */
    public Unplaced andThrough(Quantity<Length> thickness) {
      return new Unplaced(iron, fixed.add(Arguments.positive("thickness", thickness)));
    }

    /**
     * The same into the wood that receives the points, in side grain.
     *
     * @param thickness of that board or post, more than zero
     * @param receiver what it is
     * @return the question, without a load yet; of at most 12 screws
     * @throws IllegalArgumentException if the thickness is not more than zero
     */
    public StrapScrews into(Quantity<Length> thickness, Wood receiver) {
      Measure<Length> thick = Arguments.positive("thickness", thickness);
      Objects.requireNonNull(receiver, "receiver");
      Measure<Force> none = Measures.newtons(0);
      return new StrapScrews(iron, fixed, thick, receiver, none, none, 2, 12, false);
    }

    /** What they go through. */
    @Override
    public String toString() {
      return "screws through " + fixed + ", into nothing yet";
    }
  }

  /**
   * Screws through a strap.
   *
   * @param iron the thickness of the strap where the head sits, more than zero
   * @return the screws, of which the wood must still be told
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public static Unplaced through(Quantity<Length> iron) {
    Measure<Length> strap = Arguments.positive("iron", iron);
    return new Unplaced(strap, strap);
  }

  /**
   * The same pulled straight off the wood, along the screws.
   *
   * @param force of all screws together, not negative
   * @return the question
   * @throws IllegalArgumentException if the force is negative
   */
  public StrapScrews pulledOff(Quantity<Force> force) {
    Measure<Force> off = Arguments.notNegativeForce("force", force);
    return new StrapScrews(iron, fixed, board, wood, off, across, safety, most, headsOnTheIron);
  }

  /**
   * The same pushed along the wood, across the screws.
   *
   * @param force of all screws together, not negative
   * @return the question
   * @throws IllegalArgumentException if the force is negative
   */
  public StrapScrews pushedAcross(Quantity<Force> force) {
    Measure<Force> along = Arguments.notNegativeForce("force", force);
    return new StrapScrews(iron, fixed, board, wood, pull, along, safety, most, headsOnTheIron);
  }

  /**
   * The same with another safety factor on the yield strength of strap and screw. The wood's
   * working loads have their own.
   *
   * @param factor 1 (none) to 100
   * @return the question
   * @throws IllegalArgumentException if the factor lies outside that range
   */
  public StrapScrews withSafety(double factor) {
    if (!(factor >= 1 && factor <= MOST_SAFETY)) {
      throw new IllegalArgumentException(
          "factor must lie between 1 and "
              + MOST_SAFETY
              + ", was "
              + factor
              + "; give the number that the yield strength is divided by");
    }
    return new StrapScrews(iron, fixed, board, wood, pull, across, factor, most, headsOnTheIron);
  }

  /**
   * The same with room for another number of screws.
   *
   * @param count the most that there is room for, 1 to 100
   * @return the question
   * @throws IllegalArgumentException if the count lies outside that range
   */
  public StrapScrews atMost(int count) {
    Arguments.count("count", count, 1, MOST, "count the holes that the strap has room for");
    return new StrapScrews(iron, fixed, board, wood, pull, across, safety, count, headsOnTheIron);
  }

  /** {@return the same with heads that stand on the iron, round or square, in a thin strap} */
  public StrapScrews withHeadsOnTheIron() {
    return new StrapScrews(iron, fixed, board, wood, pull, across, safety, most, true);
  }

  Measure<Length> iron() {
    return iron;
  }

  /** {@return the thickness of all that the screws go through first, in the unit of the iron} */
  public Measure<Length> fixed() {
    return fixed;
  }

  Wood wood() {
    return wood;
  }

  Measure<Force> pull() {
    return pull;
  }

  Measure<Force> across() {
    return across;
  }

  double safety() {
    return safety;
  }

  int most() {
    return most;
  }

  /**
   * Whether the point of so long a screw stays in the wood: L − t ≤ the receiver's thickness.
   *
   * @param length of the screw, more than zero
   * @return whether it does not come through
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public boolean keepsPoint(Quantity<Length> length) {
    Measure<Length> inWood = Arguments.positive("length", length).subtract(fixed);
    return inWood.isLessThanOrEqualTo(board) || inWood.isEquivalentTo(board);
  }

  /**
   * The screws of a series that do it: of each size that has an answer one choice, the fewest
   * screws first, of as many the thinnest.
   *
   * @param series what is stocked
   * @return the choices, one at least
   * @throws IllegalArgumentException if no size of the series does it; the message tells why
   */
  public List<ScrewChoice> choices(ScrewSeries series) {
    Objects.requireNonNull(series, "series");
    List<ScrewChoice> all = new ArrayList<>();
    Set<String> reasons = new TreeSet<>();
    for (WoodFastener screw : series.screws()) {
      ScrewChoice choice = choice(screw, series, reasons);
      if (choice != null) {
        all.add(choice);
      }
    }
    if (all.isEmpty()) {
      throw new IllegalArgumentException(
          "series must hold a screw for this strap, was "
              + series
              + ": "
              + String.join("; ", reasons)
              + "; take thicker wood or another series, or bolt through");
    }
    all.sort(
        Comparator.comparingInt(ScrewChoice::count)
            .thenComparing(choice -> choice.screw().diameter())
            .thenComparing(ScrewChoice::length));
    return List.copyOf(all);
  }

  /**
   * The first of the {@link #choices}: the fewest screws, of as many the thinnest.
   *
   * @param series what is stocked
   * @return the choice
   * @throws IllegalArgumentException if no size of the series does it; the message tells why
   */
  public ScrewChoice bestOf(ScrewSeries series) {
    return choices(series).get(0);
  }

  private @Nullable ScrewChoice choice(
      WoodFastener screw, ScrewSeries series, Set<String> reasons) {
    if (!headsOnTheIron
        && screw instanceof CountersunkHead head
        && !head.countersinkIn(iron).fits()) {
      reasons.add("some heads are deeper than " + iron + " of iron");
      return null;
    }
    Measure<Length> least = PenetrationRule.leastOf(screw).leastLength(fixed, screw);
    ScrewChoice best = null;
    boolean longEnough = false;
    for (Measure<Length> length : series.lengths()) {
      boolean deep = !length.isLessThan(least) || length.isEquivalentTo(least);
      if (!deep || !keepsPoint(length)) {
        continue;
      }
      longEnough = true;
      ScrewHold hold = new ScrewHold(screw, length, this);
      int count = count(hold.mostOfOne());
      if (count <= most && (best == null || count < best.count())) {
        best = new ScrewChoice(hold, count, headsOnTheIron);
      }
    }
    if (best == null) {
      reasons.add(
          longEnough
              ? "some would need more than " + most
              : "some want to stand deeper than " + board + " of wood lets them");
    }
    return best;
  }

  /** The fewest that count for as many as are needed; two where there is room, lest it turn. */
  private int count(double needed) {
    double least = Math.pow(needed, 1 / FastenerRow.POWER);
    int count = (int) Math.max(Math.min(2, most), Math.min(1e6, Math.ceil(least - 1e-9)));
    return Math.pow(count, FastenerRow.POWER) * (1 + 1e-12) < needed ? count + 1 : count;
  }

  /** What it goes through and what it bears. */
  @Override
  public String toString() {
    return "screws through "
        + fixed
        + " into "
        + board
        + " of "
        + wood.name()
        + "\n  pulled off by "
        + pull
        + ", pushed across by "
        + across;
  }
}
