package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.scale.ScaleLoss;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;

/**
 * One forged piece: a bar, and the features along it from the end that is measured from.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * Feature eye = Barrel.around(inches("1/2"), strap.section());
 * Feature tip = Taper.between(strap.section(), Section.flat(inches("3/4"), inches("1/8")), inches(6));
 * Piece leaf = Piece.of(strap, eye, Plain.of(strap.section(), inches(9)), tip).withReferenceAfter(1).trimmedAt(PieceEnd.FIRST, PieceEnd.LAST);
 * leaf.layout().cutLength()            // 14.4635 in (14.2135 in to 14.7135 in)  before it goes on a rule
 * leaf.sectionAt(inches(12))           // 1 1/8 in × 3/16 in flat  what a hole there goes through
 * HeatPlan plan = HeatPlan.soaking(fahrenheit(2100), minutes(1)).inHeats(3);
 * leaf.layout(plan).scaleAllowance()   // 0.1889 in (0.09446 in to 0.3779 in)  what the fire takes from the taper
 * }</pre>
 */
public final class Piece {
  private static final int MOST = 1000;

  private final Bar bar;
  private final List<Feature> features;
  private final int reference; // how many features stand before the reference mark
  private final Set<PieceEnd> trimmed;
  private final List<Integer> order; // as told; else empty

  private Piece(
      Bar bar, List<Feature> features, int reference, Set<PieceEnd> trimmed, List<Integer> order) {
    this.bar = bar;
    this.features = features;
    this.reference = reference;
    this.trimmed = trimmed;
    this.order = order;
    checkOrder();
  }

  /**
   * A piece whose marks are told from its first end and which is trimmed at its last.
   *
   * @param bar what it is forged from
   * @param features its features in order, 1 to 1000, from the marked end
   * @return the piece
   * @throws IllegalArgumentException if there is no feature, or there are too many
   */
  public static Piece of(Bar bar, Feature... features) {
    Objects.requireNonNull(features, "features");
    Objects.requireNonNull(bar, "bar");
    Arguments.count(
        "number of features", features.length, 1, MOST, "a straight cut is one Plain stretch");
    return new Piece(bar, List.of(features), 0, Set.of(PieceEnd.LAST), List.of());
  }

  /**
   * The same piece with its marks told from between two features, such as where a leaf leaves its
   * barrel. What hand and fire take more or less goes from there to the ends.
   *
   * @param featuresBefore how many features stand before the reference mark, 0 for the first end to
   *     all of them for the last
   * @return the piece
   * @throws IllegalArgumentException if there are not so many
   */
  public Piece withReferenceAfter(int featuresBefore) {
    if (featuresBefore < 0 || featuresBefore > features.size()) {
      throw new IllegalArgumentException(
          "featuresBefore must be from 0 to "
              + features.size()
              + ", was "
              + featuresBefore
              + "; give the number of features before the reference mark");
    }
    return new Piece(bar, features, featuresBefore, trimmed, order);
  }

  /**
   * The same piece trimmed at these ends and no other. What is not exact is drawn or rolled to its
   * finished size, and pushes what is left to the trimmed end on its side of the reference mark.
   *
   * @param ends none, one or both
   * @return the piece
   * @throws IllegalArgumentException if an end cannot be trimmed, since it is closed to itself
   */
  public Piece trimmedAt(PieceEnd... ends) {
    Set<PieceEnd> wanted = Set.copyOf(Arrays.asList(Objects.requireNonNull(ends, "ends")));
    for (PieceEnd end : wanted) {
      Feature outermost = features.get(end == PieceEnd.FIRST ? 0 : features.size() - 1);
      if (outermost.trimming() == Trimming.NEVER) {
        throw new IllegalArgumentException(
            end
                + " must be free to be trimmed, was a "
                + outermost.name()
                + "; trim the "
                + end.other()
                + ", and cut the "
                + outermost.name()
                + " to "
                + outermost.stock(bar.section()).likely()
                + " of bar");
      }
    }
    return new Piece(bar, features, reference, wanted, order);
  }

  /**
   * The same piece worked in another order than from the last end to the reference mark and then
   * from the first end to it.
   *
   * @param numbers of all features in the order they are worked, counted from 1 at the first end
   * @return the piece
   * @throws IllegalArgumentException if a number is missing or twice, or a feature that changes its
   *     length is worked before one beyond it, whose mark it moves before it is used
   */
  public Piece workedInOrder(int... numbers) {
    Objects.requireNonNull(numbers, "numbers");
    List<Integer> told = Arrays.stream(numbers).boxed().toList();
    List<Integer> all = IntStream.rangeClosed(1, features.size()).boxed().toList();
    if (!told.stream().sorted().toList().equals(all)) {
      throw new IllegalArgumentException(
          "numbers must name each of the "
              + features.size()
              + " features once, was "
              + told.toString().replaceAll("[\\[\\]]", "")
              + "; count them from 1 at the first end");
    }
    return new Piece(bar, features, reference, trimmed, told);
  }

  /**
   * The order in which its features are worked: unless told, those towards the last end from the
   * end inwards, then those towards the first end likewise, so that each mark is used before the
   * work moves it.
   *
   * @return the numbers of the features, counted from 1 at the first end
   */
  public List<Integer> order() {
    if (!order.isEmpty()) {
      return order;
    }
    List<Integer> usual = new ArrayList<>(features.size());
    for (int number = features.size(); number > reference; number--) {
      usual.add(number);
    }
    for (int number = 1; number <= reference; number++) {
      usual.add(number);
    }
    return List.copyOf(usual);
  }

  private void checkOrder() {
    for (int i = 0; i < order.size(); i++) {
      for (int later : order.subList(i + 1, order.size())) {
        int now = order.get(i);
        boolean beyond = now > reference ? later > now : later < now && later <= reference;
        if (beyond && changesLength(now) && changesLength(later)) {
          throw new IllegalArgumentException(
              "numbers must work what lies farther from the reference mark first, was the "
                  + features.get(now - 1).name()
                  + " ("
                  + now
                  + ") before the "
                  + features.get(later - 1).name()
                  + " ("
                  + later
                  + "), whose mark it moves; work "
                  + later
                  + " before "
                  + now);
        }
      }
    }
  }

  /** Whether working a feature moves the marks beyond it. */
  boolean changesLength(int number) {
    Feature feature = features.get(number - 1);
    Estimate<Length> stock = feature.stock(bar.section());
    return !stock.isExact() || !stock.likely().isEquivalentTo(feature.reach());
  }

  /** {@return how many features stand before the mark that the others are told from} */
  public int featuresBeforeReference() {
    return reference;
  }

  /**
   * Whether what is too long is cut off at an end.
   *
   * @param end the end
   * @return whether it is trimmed
   */
  public boolean isTrimmedAt(PieceEnd end) {
    return trimmed.contains(Objects.requireNonNull(end, "end"));
  }

  /** {@return what it is forged from} */
  public Bar bar() {
    return bar;
  }

  /** {@return its features in order from the marked end} */
  public List<Feature> features() {
    return features;
  }

  /**
   * Where its features lie on the cold bar.
   *
   * @return the layout, with the length to cut and the marks
   */
  public Layout layout() {
    return Layout.of(this);
  }

  /**
   * The same with what the fire takes: bar is added where a stretch is forged to another section.
   * Every stretch is taken to go through every heat of the plan; where only one end is heated, ask
   * {@link ScaleLoss#allowance} for that stretch by itself.
   *
   * @param plan the heats that the piece goes through
   * @return the layout, with the length to cut and the marks, scale counted
   * @throws IllegalArgumentException if the bar is neither iron nor plain steel
   */
  public Layout layout(HeatPlan plan) {
    return Layout.of(this).with(ScaleLoss.of(bar, plan));
  }

  /**
   * The section that the finished piece has somewhere: what a hole there goes through. Where two
   * features meet it is that of the one before.
   *
   * @param fromReference how far from the reference mark towards the last end, along the finished
   *     piece; negative towards the first
   * @return the section there
   * @throws IllegalArgumentException if the piece does not reach so far, or the feature there does
   *     not know its section
   */
  public Section sectionAt(Quantity<Length> fromReference) {
    Measure<Length> place = Arguments.length("fromReference", fromReference);
    Measure<Length> left = place;
    for (int i = 0; i < reference; i++) {
      left = left.add(features.get(i).reach());
    }
    for (Feature feature : features) {
      if (left.getValue() < 0) {
        break;
      }
      if (!left.isGreaterThan(feature.reach()) || left.isEquivalentTo(feature.reach())) {
        return feature.sectionAt(left);
      }
      left = left.subtract(feature.reach());
    }
    throw new IllegalArgumentException(
        "fromReference must lie on the piece, was "
            + place
            + "; measure along the finished piece from its reference mark");
  }

  /** The bar and the names of the features. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("piece of ").append(bar).append(":");
    for (int i = 0; i < features.size(); i++) {
      text.append(i == 0 ? " " : ", ").append(features.get(i).name());
    }
    return text.toString();
  }
}
