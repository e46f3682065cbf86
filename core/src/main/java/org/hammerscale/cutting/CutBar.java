package org.hammerscale.cutting;

import java.util.List;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;

/**
 * A bar of a {@link CuttingPlan}, or several that are cut alike: where the marks are chalked and
 * what is left over.
 */
public final class CutBar {
  private final Counting counting;
  private final Measure<Length> length;
  private final boolean offcut;
  private final int count;
  private final List<CutMark> marks;

  CutBar(
      Counting counting, Measure<Length> length, boolean offcut, int count, List<CutMark> marks) {
    this.counting = counting;
    this.length = length;
    this.offcut = offcut;
    this.count = count;
    this.marks = List.copyOf(marks);
  }

  /** {@return how many bars are cut so} */
  public int count() {
    return count;
  }

  /** {@return the length of each bar, as it was told} */
  public Measure<Length> length() {
    return length;
  }

  /** {@return whether it lies in the rack; otherwise it is bought} */
  public boolean isOffcut() {
    return offcut;
  }

  /** {@return the pieces from one end on, the longest first, at least one} */
  public List<CutMark> marks() {
    return marks;
  }

  /**
   * What is left of each bar behind the last cut.
   *
   * @return the length, exact; zero if the last piece ends the bar within a kerf
   */
  public Measure<Length> leftover() {
    int rest = counting.down(length) - marks.get(marks.size() - 1).endSteps - counting.kerf;
    return counting.measure(Math.max(0, rest));
  }

  /** {@return whether the leftover is an offcut to keep, else it is scrap} */
  public boolean isLeftoverUseful() {
    return leftover().getValue() > 0
        && leftover().isGreaterThanOrEqualTo(counting.list.leastOffcut);
  }

  boolean isCutLike(CutBar other) {
    boolean alike =
        offcut == other.offcut
            && length.compareTo(other.length) == 0
            && marks.size() == other.marks.size();
    for (int i = 0; alike && i < marks.size(); i++) {
      alike = marks.get(i).isLike(other.marks.get(i));
    }
    return alike;
  }

  CutBar oneMore() {
    return new CutBar(counting, length, offcut, count + 1, marks);
  }

  /** What to chalk on it, and what is left. */
  @Override
  public String toString() {
    return count
        + " × "
        + length
        + (offcut ? " offcut" : "")
        + ": "
        + (counting.trim > 0 ? "from " + counting.measure(counting.trim) + ", " : "")
        + "mark "
        + marks.stream().map(CutMark::toString).collect(Collectors.joining(", "))
        + "; "
        + (leftover().getValue() == 0
            ? "nothing left"
            : leftover() + (isLeftoverUseful() ? " left" : " scrap"));
  }
}
