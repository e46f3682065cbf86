package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;

/**
 * Finished pieces that shall match, by the sizes measured on each, and which of them go together.
 *
 * <pre>{@code
 * MatchedSize length = MatchedSize.of("length", inches("1/16"));
 * MatchedSize flush = MatchedSize.of("flushness", inches("1/64"));
 * MatchedSet left = MatchedSet.by(length, flush).with("L1", inches(12), inches("1/64")).with("L2", inches("12 1/8"), inches(0));
 * MatchedSet right = MatchedSet.by(length, flush).with("R1", inches("12 1/8"), inches(0)).with("R2", inches(12), inches("1/64"));
 * left.firstToMatch()              // length within 1/16 in
 * left.pairedWith(right).get(0)    // L1 with R2: length differs by 0 in, flushness differs by 0 in
 * }</pre>
 *
 * <p>How badly two pieces match is the sum over the sizes of (difference ÷ what is allowed)².
 */
public final class MatchedSet {
  private static final int MOST_SIZES = 20;
  private static final int MOST_PIECES = 1000;
  private static final int MOST_PAIRED = 40;

  private record Finished(String name, List<Measure<Length>> measured) {}

  private final List<MatchedSize> sizes;
  private final List<Finished> pieces;

  private MatchedSet(List<MatchedSize> sizes, List<Finished> pieces) {
    this.sizes = sizes;
    this.pieces = pieces;
  }

  /**
   * A set without pieces.
   *
   * @param sizes in which they shall match, 1 to 20, no name twice
   * @return the set
   * @throws IllegalArgumentException if there is none, there are too many, or a name stands twice
   */
  public static MatchedSet by(MatchedSize... sizes) {
    List<MatchedSize> all = List.of(Objects.requireNonNull(sizes, "sizes"));
    Arguments.count("number of sizes", all.size(), 1, MOST_SIZES, "name what shall match");
    Set<String> names = new HashSet<>();
    for (MatchedSize size : all) {
      if (!names.add(size.name())) {
        throw new IllegalArgumentException(
            "sizes must have different names, was " + size.name() + " twice; rename one");
      }
    }
    return new MatchedSet(all, List.of());
  }

  /**
   * The same set with one more finished piece.
   *
   * @param piece its name, which no other has
   * @param measured its sizes, in the order in which the set was told them
   * @return the set
   * @throws IllegalArgumentException if the name stands twice, or there is not one length a size
   */
  @SafeVarargs
  public final MatchedSet with(String piece, Quantity<Length>... measured) {
    Arguments.text("piece", piece);
    Objects.requireNonNull(measured, "measured");
    if (measured.length != sizes.size()) {
      throw new IllegalArgumentException(
          "measured must have a length for each of the "
              + sizes.size()
              + " sizes, was "
              + measured.length
              + "; give them in the order of the sizes");
    }
    Arguments.count("piece", pieces.size() + 1, 1, MOST_PIECES, "match them in smaller sets");
    if (pieces.stream().anyMatch(each -> each.name().equals(piece))) {
      throw new IllegalArgumentException(
          "piece must have a name of its own, was " + piece + "; number the pieces");
    }
    List<Measure<Length>> lengths = new ArrayList<>();
    for (Quantity<Length> each : measured) {
      lengths.add(Arguments.length("measured", each));
    }
    List<Finished> all = new ArrayList<>(pieces);
    all.add(new Finished(piece, List.copyOf(lengths)));
    return new MatchedSet(sizes, List.copyOf(all));
  }

  /** {@return in what they shall match} */
  public List<MatchedSize> sizes() {
    return sizes;
  }

  /** {@return the names of the pieces} */
  public List<String> pieces() {
    return pieces.stream().map(Finished::name).toList();
  }

  /**
   * How far the largest piece lies above the smallest in a size.
   *
   * @param size one of the set's
   * @return the observed range, in the unit of the first piece; compare it with {@link
   *     MatchedSize#expectedRange}
   * @throws IllegalArgumentException if the size is not one of the set's or no piece is measured
   */
  public Measure<Length> range(MatchedSize size) {
    int index = sizes.indexOf(Objects.requireNonNull(size, "size"));
    if (index < 0 || pieces.isEmpty()) {
      throw new IllegalArgumentException(
          "size must be one that is measured on the pieces, was "
              + size
              + "; measure a piece, and ask with a size of the set");
    }
    List<Measure<Length>> all = pieces.stream().map(each -> each.measured().get(index)).toList();
    Measure<Length> unit = all.get(0);
    return Collections.max(all).to(unit.getUnit()).subtract(Collections.min(all));
  }

  /**
   * The size to match first: the one whose range is largest for what is allowed. Before two pieces
   * are measured it goes by what is expected of two.
   *
   * @return the size; the first named of several alike
   */
  public MatchedSize firstToMatch() {
    MatchedSize first = sizes.get(0);
    for (MatchedSize size : sizes) {
      if (burden(size) > burden(first)) {
        first = size;
      }
    }
    return first;
  }

  private double burden(MatchedSize size) {
    if (pieces.size() >= 2) {
      return range(size).ratio(size.within());
    }
    return size.isVarying() ? size.expectedRange(2).ratio(size.within()) : 0;
  }

  /**
   * Pairs of identical pieces: sorted by the {@linkplain #firstToMatch size to match first}, each
   * goes with its neighbour. In that size no other pairing has a smaller sum of differences, nor a
   * smaller greatest one.
   *
   * @return the pairs, the smallest pieces first
   * @throws IllegalArgumentException if there is not an even number of pieces, 2 at least
   */
  public List<MatchedPair> pairs() {
    if (pieces.isEmpty() || pieces.size() % 2 != 0) {
      throw new IllegalArgumentException(
          "pieces must be an even number, was "
              + pieces.size()
              + "; forge another or leave one out");
    }
    int index = sizes.indexOf(firstToMatch());
    List<Finished> sorted = new ArrayList<>(pieces);
    sorted.sort(Comparator.comparing(each -> each.measured().get(index)));
    List<MatchedPair> pairs = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i += 2) {
      pairs.add(pair(sorted.get(i), sorted.get(i + 1)));
    }
    return List.copyOf(pairs);
  }

  /**
   * Pairs of mirrored pieces, left with right hands, that match best of all pairings: an exact
   * assignment.
   *
   * @param others the other hands, as many, by the same sizes, 1 to 40
   * @return a pair for each piece of this set, in its order
   * @throws IllegalArgumentException if there are not as many, more than 40, or the sizes differ
   */
  public List<MatchedPair> pairedWith(MatchedSet others) {
    if (!Objects.requireNonNull(others, "others").sizes.equals(sizes)
        || others.pieces.size() != pieces.size()) {
      throw new IllegalArgumentException(
          "others must be as many by the same sizes, was "
              + others
              + " for "
              + this
              + "; measure the same sizes on both hands");
    }
    Arguments.count(
        "others", pieces.size(), 1, MOST_PAIRED, "pair them in lots of 40, sorted by one size");
    double[][] costs = new double[pieces.size()][pieces.size()];
    for (int i = 0; i < costs.length; i++) {
      for (int j = 0; j < costs.length; j++) {
        costs[i][j] = cost(pieces.get(i), others.pieces.get(j));
      }
    }
    int[] with = Assignment.of(costs);
    List<MatchedPair> pairs = new ArrayList<>();
    for (int i = 0; i < with.length; i++) {
      pairs.add(pair(pieces.get(i), others.pieces.get(with[i])));
    }
    return List.copyOf(pairs);
  }

  private double cost(Finished one, Finished other) {
    double sum = 0;
    for (int k = 0; k < sizes.size(); k++) {
      double away =
          one.measured().get(k).subtract(other.measured().get(k)).ratio(sizes.get(k).within());
      sum += away * away;
    }
    return sum;
  }

  private MatchedPair pair(Finished one, Finished other) {
    List<Measure<Length>> differences = new ArrayList<>();
    for (int k = 0; k < sizes.size(); k++) {
      Measure<Length> away = one.measured().get(k).subtract(other.measured().get(k));
      differences.add(away.getValue() < 0 ? away.negate() : away);
    }
    return new MatchedPair(one.name(), other.name(), sizes, List.copyOf(differences));
  }

  /** How many pieces, and in what they shall match. */
  @Override
  public String toString() {
    return pieces.size()
        + (pieces.size() == 1 ? " piece to match in " : " pieces to match in ")
        + String.join(", ", sizes.stream().map(MatchedSize::toString).toList());
  }
}
