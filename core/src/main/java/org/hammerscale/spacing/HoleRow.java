package org.hammerscale.spacing;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;

/**
 * A row of fastener holes to be laid out along a leaf, strap or band: how many, where they may lie,
 * and what they must miss. {@link #layout} answers it. Other names: {@index "hole spacing"},
 * {@index "hole pattern"}, {@index pitch}.
 *
 * <p>Places are measured from the <em>pin centre</em>, spacings from centre to centre along the
 * leaf. Two aims: the widest least spacing (unless told otherwise), or holes nearest to wanted
 * places, such as an even spread over each board, with the least spacing kept. Among layouts that
 * are equally good, the one that lies nearest to an even row is taken. The mirrored row has the
 * mirrored layout; only where a row is its own mirror image and no mirrored layout is as good,
 * holes lie towards the pin.
 *
 * <pre>{@code
 * HoleRow row = HoleRow.along(millimetres(240)).holes(5).startingFrom(millimetres(20)).endingBefore(millimetres(20));
 * row.layout()  // 5 holes at 20 mm, 70 mm, 120 mm, 170 mm, 220 mm from the pin centre, at least 50 mm apart  evenly
 * HoleRow board = row.missing(ClosedStretch.seamAt(millimetres(120)).clear(millimetres(15)));
 * board.widestSpacing()  // 42.5 mm  with a seam where the third would lie
 * HoleRow wide = board.leastSpacing(millimetres(60));
 * wide.isFeasible()  // false  if the wood asks for 60 mm,
 * wide.mostHoles()  // 4  four must do
 * board.leastSpacing(millimetres(20)).boardByBoard(2, 3).layout().positions().get(1)  // 105 mm  two and three
 * }</pre>
 *
 * <p>Answers are exact, in the leaf's unit: every layout is compared by reasoning, none is drawn by
 * lot. The work grows with the number of holes and closed stretches, with the square of the number
 * of holes if some are fixed. Source: geometry of intervals, computed; checked against trying all
 * layouts of small rows.
 */
public final class HoleRow {
  private final RowPlan plan;

  private HoleRow(RowPlan plan) {
    this.plan = plan;
  }

  /**
   * A row along a leaf.
   *
   * @param leafLength from the pin centre to the tip, more than zero; answers are in its unit
   * @return the row, of which the number of holes and both ends must still be told
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public static HoleRow along(Quantity<Length> leafLength) {
    Objects.requireNonNull(leafLength, "leafLength");
    Measure<Length> length = Arguments.positive("leaf length", leafLength);
    return new HoleRow(new RowPlan(length.getUnit(), length.getValue()));
  }

  private HoleRow with(Consumer<RowPlan> change) {
    RowPlan changed = plan.copy();
    change.accept(changed);
    return new HoleRow(changed);
  }

  private double read(Measure<Length> length) {
    return length.in(plan.unit);
  }

  /**
   * The same with so many holes.
   *
   * @param count fixed ones included, 1 to 1,000, which no shop reaches
   * @return the row
   * @throws IllegalArgumentException if there are none, or more than 1,000
   */
  public HoleRow holes(int count) {
    if (count < 1) {
      throw new IllegalArgumentException(
          "count of holes must be at least 1, was "
              + count
              + "; leave the row out if there are none");
    }
    if (count > RowPlan.MOST_HOLES) {
      throw new IllegalArgumentException(
          "count of holes must be at most "
              + RowPlan.MOST_HOLES
              + ", was "
              + count
              + "; divide the leaf into several rows");
    }
    return with(p -> p.holes = count);
  }

  /**
   * The same with its first possible place.
   *
   * @param start from the pin centre to the first place where a hole may lie: beyond the barrel,
   *     with the iron's end distance; not negative
   * @return the row
   * @throws IllegalArgumentException if the distance is negative
   */
  public HoleRow startingFrom(Quantity<Length> start) {
    Objects.requireNonNull(start, "start");
    double from = read(Arguments.notNegative("start", start));
    return with(p -> p.start = from);
  }

  /**
   * The same with its last possible place.
   *
   * @param endDistance from the last place where a hole may lie to the tip: the iron's end
   *     distance; not negative
   * @return the row
   * @throws IllegalArgumentException if the distance is negative
   */
  public HoleRow endingBefore(Quantity<Length> endDistance) {
    Objects.requireNonNull(endDistance, "endDistance");
    double end = plan.length - read(Arguments.notNegative("end distance", endDistance));
    return with(p -> p.end = end);
  }

  /**
   * The same with a least spacing, also called pitch.
   *
   * @param spacing between the centres of any two holes, not negative
   * @return the row
   * @throws IllegalArgumentException if the spacing is negative
   */
  public HoleRow leastSpacing(Quantity<Length> spacing) {
    Objects.requireNonNull(spacing, "spacing");
    double least = read(Arguments.notNegative("least spacing", spacing));
    return with(p -> p.least = least);
  }

  /**
   * The same missing more seams, bosses and the like.
   *
   * @param closed what no hole may lie in; 2,000 of them at most
   * @return the row
   * @throws IllegalArgumentException if there are more
   */
  public HoleRow missing(ClosedStretch... closed) {
    Objects.requireNonNull(closed, "closed");
    return with(p -> p.close(List.of(closed)));
  }

  /**
   * The same with one more fixed hole: there already, or wanted just there.
   *
   * @param fixedHole from the pin centre, not in a closed stretch, not negative
   * @return the row
   * @throws IllegalArgumentException if the fixedHole is negative, or there are more than 1,000
   */
  public HoleRow using(Quantity<Length> fixedHole) {
    Objects.requireNonNull(fixedHole, "fixedHole");
    return using(fixedHole, false);
  }

  private HoleRow using(Quantity<Length> place, boolean anyway) {
    double fixed = read(Arguments.notNegative("fixed hole", place));
    if (fixed > plan.length + plan.slack()) {
      throw new IllegalArgumentException(
          "fixed hole must lie on the leaf of "
              + plan.measure(plan.length)
              + ", was at "
              + plan.measure(fixed)
              + "; measure it from the pin centre");
    }
    return with(p -> p.fix(fixed, anyway));
  }

  /**
   * The same with one more fixed hole, in a closed stretch or not; the layout has a caution if it
   * is.
   *
   * @param fixedHole from the pin centre, not negative
   * @return the row
   * @throws IllegalArgumentException if the fixedHole is negative, or there are more than 1,000
   */
  public HoleRow usingAnyway(Quantity<Length> fixedHole) {
    Objects.requireNonNull(fixedHole, "fixedHole");
    return using(fixedHole, true);
  }

  /**
   * The same, to be its own mirror image about the middle of the leaf.
   *
   * @return the row
   */
  public HoleRow symmetric() {
    return with(p -> p.centre = p.length / 2);
  }

  /**
   * The same, to be its own mirror image. An odd row has a hole on the mirror line. Fixed holes
   * must be images of one another.
   *
   * @param mirrorLine the mirror line, from the pin centre, more than zero
   * @return the row
   * @throws IllegalArgumentException if the mirrorLine is not more than zero
   */
  public HoleRow symmetricAbout(Quantity<Length> mirrorLine) {
    Objects.requireNonNull(mirrorLine, "mirrorLine");
    double centre = read(Arguments.positive("mirror line", mirrorLine));
    return with(p -> p.centre = centre);
  }

  /**
   * The same staggered, also called zigzag: holes lie in two rows by turns. A hole keeps its
   * spacing p from the next in its own row and, slantwise, from its neighbours in the other: √(p² −
   * b²) along the leaf, nothing if the rows lie b ≥ p apart. Wood has one limit along the grain and
   * another across it: take the greater, or see that each is kept.
   *
   * @param distanceBetweenRows the distance b between the two rows, more than zero
   * @return the row
   * @throws IllegalArgumentException if the distance is not more than zero
   */
  public HoleRow inTwoRows(Quantity<Length> distanceBetweenRows) {
    Objects.requireNonNull(distanceBetweenRows, "distanceBetweenRows");
    double b = read(Arguments.positive("distance between rows", distanceBetweenRows));
    return with(p -> p.apart = b);
  }

  /**
   * The same, its holes to lie as near as can be to an even row from its start to its end. The
   * greatest move is made as small as can be. A least spacing must be told.
   *
   * @return the row
   */
  public HoleRow nearestToEven() {
    return with(
        p -> {
          p.nearest = true;
          p.places = null;
        });
  }

  /**
   * The same, its holes to lie as near as can be to wanted places. The greatest move is made as
   * small as can be. A least spacing must be told.
   *
   * @param places one for each hole in rising order, from the pin centre, not negative
   * @return the row
   * @throws IllegalArgumentException if a place is negative, or they do not rise
   */
  public HoleRow nearestTo(List<? extends Quantity<Length>> places) {
    Objects.requireNonNull(places, "places");
    double[] wanted =
        places.stream().mapToDouble(q -> read(Arguments.notNegative("wanted place", q))).toArray();
    for (int i = 1; i < wanted.length; i++) {
      if (wanted[i] < wanted[i - 1] - plan.slack()) {
        throw new IllegalArgumentException(
            "wanted places must rise, was "
                + plan.measure(wanted[i])
                + " behind "
                + plan.measure(wanted[i - 1])
                + "; name them from the pin on");
      }
    }
    return with(
        p -> {
          p.nearest = true;
          p.places = wanted;
        });
  }

  /**
   * The same with so many holes on each board, to lie as near as can be to an even spread over the
   * open stretch that seams and other closed stretches leave of it: from end to end, or in the
   * middle if it is one. Both ends and the closed stretches must have been told, and a least
   * spacing before asking.
   *
   * @param counts of the holes in each open stretch from the pin on, 0 or more; one number stands
   *     for all of them
   * @return the row
   * @throws IllegalArgumentException if the counts are not as many as the stretches, which the
   *     message tells, or there is no hole, or there are more than 1,000
   * @throws IllegalStateException if an end has not been told
   */
  public HoleRow boardByBoard(int... counts) {
    Objects.requireNonNull(counts, "counts");
    int[] each = plan.boardByBoard(counts);
    HoleRow row =
        holes((int) Math.min(Integer.MAX_VALUE, Arrays.stream(each).asLongStream().sum()));
    double[] spread = Targets.spread(plan.free(), each);
    return row.with(
        p -> {
          p.nearest = true;
          p.places = spread;
        });
  }

  /**
   * One row that suits this leaf and others: it misses what any of them misses, uses what any of
   * them uses, keeps the widest of their least spacings, and lies where all of them may have holes.
   * A hole that two of them use, told in whatever units, is one hole; one beyond the tip of any of
   * them suits none. Number of holes, aim, symmetry and rows are this one's. {@link #isFeasible}
   * tells whether there is such a row.
   *
   * @param others rows of the other leaves, each with both ends told
   * @return the row, along this leaf
   * @throws IllegalArgumentException if together they have more than 2,000 closed stretches or
   *     1,000 fixed holes
   * @throws IllegalStateException if an end of another row has not been told
   */
  public HoleRow sharedWith(HoleRow... others) {
    Objects.requireNonNull(others, "others");
    RowPlan shared = plan;
    for (HoleRow other : others) {
      other.plan.checkEndsTold();
      shared = shared.and(other.plan);
    }
    return new HoleRow(shared);
  }

  /**
   * Whether there is a layout that keeps the least spacing.
   *
   * @return whether {@link #layout} has an answer
   * @throws IllegalArgumentException if wanted places are not as many as the holes
   * @throws IllegalStateException if the number of holes, an end, or for the second aim the least
   *     spacing has not been told
   */
  public boolean isFeasible() {
    plan.checkTold();
    return plan.contradiction(plan.free()) == null && new RowSolver(plan).isFeasible();
  }

  /**
   * The most holes that fit at the least spacing, whatever number was asked for.
   *
   * @return their number; 0 if there is no place, or fixed holes crowd one another
   * @throws IllegalArgumentException if fixed holes contradict the rest, see {@link #layout}, or if
   *     the spacing is so small that more than 1,000 holes fit
   * @throws IllegalStateException if the least spacing or an end has not been told
   */
  public int mostHoles() {
    if (!(plan.least > 0)) {
      throw new IllegalStateException(
          "least spacing must be more than zero to count holes; say it with leastSpacing(…)");
    }
    RowPlan any = plan.copy();
    any.holes = Math.max(Math.max(1, plan.holes), plan.fixed.size());
    any.nearest = false;
    any.places = null;
    int most = new RowSolver(any).most(plan.least);
    if (most > RowPlan.MOST_HOLES) {
      throw new IllegalArgumentException(
          "least spacing must be wide enough for no more than "
              + RowPlan.MOST_HOLES
              + " holes in a row, was "
              + plan.measure(plan.least)
              + "; ask for a wider one");
    }
    return most;
  }

  /**
   * The widest least spacing that the holes can have, whatever was asked for. It is a distance
   * between two edges or fixed holes divided by the number of spacings that must go between.
   *
   * @return the spacing, exact; zero if there is no room for them
   * @throws IllegalArgumentException if there is only one hole, or fixed holes contradict the rest
   * @throws IllegalStateException if the number of holes or an end has not been told
   */
  public Measure<Length> widestSpacing() {
    if (plan.holes == 1) {
      throw new IllegalArgumentException(
          "holes must be at least 2 to have a spacing, was 1; ask for more, or for the layout");
    }
    Chain widest = new RowSolver(plan).widest();
    return plan.measure(widest == null ? 0 : plan.spacing(widest));
  }

  /**
   * Places the holes.
   *
   * @return the layout
   * @throws IllegalArgumentException if there is none: the message says how many holes or what
   *     spacing would fit and what stands in the way; or if a fixed hole lies in a closed stretch,
   *     is named twice, or has no image in a symmetric row, or if there are more fixed holes or
   *     wanted places than holes
   * @throws IllegalStateException if the number of holes, an end, or for the second aim the least
   *     spacing has not been told
   */
  public HoleLayout layout() {
    RowSolver solver = new RowSolver(plan);
    Chain widest = plan.isForWidest() ? solver.widest() : null;
    double[] places = solver.layout(widest);
    if (places == null) {
      throw new IllegalArgumentException(RowNames.advice(plan, solver));
    }
    return HoleLayout.of(plan, places, widest);
  }

  /** What is asked for, in short. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    text.append(plan.holes == 1 ? "1 hole" : plan.holes + " holes");
    text.append(" along ").append(plan.measure(plan.length));
    plan.closed.forEach(k -> text.append(", missing the ").append(k.name()));
    return text.toString();
  }
}
