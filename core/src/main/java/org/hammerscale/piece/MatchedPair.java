package org.hammerscale.piece;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;

/** Two finished pieces of a {@link MatchedSet} that go together. */
public final class MatchedPair {
  private final String one;
  private final String other;
  private final List<MatchedSize> sizes;
  private final List<Measure<Length>> differences;

  MatchedPair(
      String one, String other, List<MatchedSize> sizes, List<Measure<Length>> differences) {
    this.one = one;
    this.other = other;
    this.sizes = sizes;
    this.differences = differences;
  }

  /** {@return the name of one piece; of left and right hands that of the set that was asked} */
  public String one() {
    return one;
  }

  /** {@return the name of the other} */
  public String other() {
    return other;
  }

  /** {@return how much they differ in each size of the set, in its order, not negative} */
  public List<Measure<Length>> differences() {
    return differences;
  }

  /** {@return whether they differ by no more than allowed in any size} */
  public boolean isMatched() {
    for (int i = 0; i < sizes.size(); i++) {
      Measure<Length> most = sizes.get(i).within();
      if (differences.get(i).isGreaterThan(most) && !differences.get(i).isEquivalentTo(most)) {
        return false;
      }
    }
    return true;
  }

  /** Both names, and by how much they differ. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(one).append(" with ").append(other);
    for (int i = 0; i < sizes.size(); i++) {
      text.append(i == 0 ? ": " : ", ").append(sizes.get(i).name()).append(" differs by ");
      text.append(differences.get(i));
    }
    return text.toString();
  }
}
