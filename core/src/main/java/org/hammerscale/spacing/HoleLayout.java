package org.hammerscale.spacing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * Where the holes of a row go: the answer to a {@link HoleRow}. Places are measured from the pin
 * centre.
 *
 * <pre>{@code
 * ClosedStretch seam = ClosedStretch.seamAt(inches(6)).wide(inches("1/8")).clear(inches("3/4"));
 * HoleRow row = HoleRow.along(inches(14)).holes(4).startingFrom(inches("1 1/2")).endingBefore(inches("3/4"));
 * HoleLayout holes = row.missing(seam).layout();
 * holes.closestSpacing()  // 3 11/16 in  to compare with what the wood asks for
 * holes.largestMove()  // 0.2292 in  how far the seam pushes a hole from an even row
 * holes.on(SIXTEENTH).positions().get(2)  // 9 5/16 in  where to punch the third, by the rule
 * holes.governedBy()  // "holes 1 to 2, 1 spacing from the start of the row at 1 1/2 in to the edge of the seam at 6 in at 5 3/16 in"
 * holes.unevenBecause().get()  // "past the seam at 6 in"  to write on the sheet
 * }</pre>
 *
 * <p>Exact, in the leaf's unit. Source: geometry of intervals.
 */
public final class HoleLayout {
  private static final Source INTERVALS =
      Source.computed("geometry of intervals: holes packed from one edge or fixed hole to another");
  private static final Source DISTANCE = Source.computed("distance between two holes");
  private static final Source ZIGZAG =
      Source.computed("least of the sections straight across and zigzag from row to row");

  private final RowPlan plan;
  private final double[] places;
  private final @Nullable Chain chain;
  private final @Nullable Graduation<Length> rule;

  /** What the layout on a rule was made from. */
  private final @Nullable HoleLayout exact;

  private HoleLayout(
      RowPlan plan,
      double[] places,
      @Nullable Chain chain,
      @Nullable Graduation<Length> rule,
      @Nullable HoleLayout exact) {
    this.plan = plan;
    this.places = places;
    this.chain = chain;
    this.rule = rule;
    this.exact = exact;
  }

  static HoleLayout of(RowPlan plan, double[] places, @Nullable Chain chain) {
    return new HoleLayout(plan, places, chain, null, null);
  }

  static HoleLayout on(Graduation<Length> rule, RowPlan plan, double[] places, HoleLayout exact) {
    return new HoleLayout(plan, places, null, rule, exact);
  }

  /** {@return the places of the holes, from the pin centre, in rising order} */
  public List<Measure<Length>> positions() {
    return measures(places);
  }

  /** {@return the seams, bosses and the like that they miss} */
  public List<ClosedStretch> closedStretches() {
    return plan.closed;
  }

  /** {@return how long the leaf is that they lie along, from the pin centre to its tip} */
  public Measure<Length> leafLength() {
    return plan.measure(plan.length);
  }

  /**
   * {@return how far its two rows lie apart, the first hole in one, the next in the other; or 0}
   */
  public Measure<Length> betweenRows() {
    return plan.measure(plan.apart);
  }

  /** {@return the distances along the leaf from each hole to the next; none for one hole} */
  public List<Measure<Length>> spacings() {
    double[] gaps = new double[places.length - 1];
    for (int i = 0; i < gaps.length; i++) {
      gaps[i] = places[i + 1] - places[i];
    }
    return measures(gaps);
  }

  /**
   * Why the holes are unevenly spaced: what makes the widest of the {@link #spacings} wider than
   * the least, which a customer may ask.
   *
   * @return it in a few words, such as {@code past the seam at 120 mm}; empty if the spacings are
   *     alike but for a step of the rule, or nothing lies there
   */
  public Optional<String> unevenBecause() {
    double least = Double.POSITIVE_INFINITY;
    double widest = 0;
    for (int i = 1; i < places.length; i++) {
      least = Math.min(least, places[i] - places[i - 1]);
      widest = Math.max(widest, places[i] - places[i - 1]);
    }
    double alike = 4 * plan.slack() + (rule == null ? 0 : rule.step().in(plan.unit));
    for (int i = 1; i < places.length && widest - least > alike; i++) {
      boolean isWidest = places[i] - places[i - 1] >= widest - 4 * plan.slack();
      String why = isWidest ? RowNames.between(plan, places[i - 1], places[i]) : "";
      if (!why.isEmpty()) {
        return Optional.of(why);
      }
    }
    return Optional.empty();
  }

  private List<Measure<Length>> measures(double[] values) {
    return Arrays.stream(values).mapToObj(plan::measure).toList();
  }

  /**
   * The least distance between the centres of two holes: along the leaf in one row, slantwise
   * between two.
   *
   * @return the distance, exact
   * @throws IllegalStateException if there is only one hole
   */
  public Measure<Length> closestSpacing() {
    return plan.measure(spacing(Notes.NONE));
  }

  /**
   * The greatest distance of a hole from where it is wanted: from the even row between the ends,
   * unless places were named.
   *
   * @return the distance, exact, not negative
   */
  public Measure<Length> largestMove() {
    return plan.measure(move(Notes.NONE));
  }

  /**
   * What decides: the edges or fixed holes between which the holes have no room to spare, or the
   * hole that had to move furthest.
   *
   * @return it in words
   */
  public String governedBy() {
    if (chain != null) {
      return tight(chain);
    }
    int i = furthest();
    Measure<Length> move = largestMove();
    return move.getValue() == 0
        ? "every hole lies where it is wanted"
        : "hole " + (i + 1) + ", " + move + " from " + plan.measure(plan.wanted()[i]);
  }

  /** The deciding chain as it lies in this layout, which may hold an image of it. */
  private String tight(Chain decided) {
    double spacing = spacing(Notes.NONE);
    for (int i = 0; i < places.length && plan.apart == 0; i++) {
      for (int j = i + 1; j < places.length && isTight(j, spacing); j++) {
        Chain own = new Chain(places[i], places[j], j - i, 0);
        if (RowNames.isKnown(plan, places[i]) && RowNames.isKnown(plan, places[j])) {
          return "holes " + (i + 1) + " to " + (j + 1) + ", " + RowNames.of(plan, own);
        }
      }
    }
    return RowNames.of(plan, decided);
  }

  private boolean isTight(int i, double spacing) {
    return places[i] - places[i - 1] <= spacing + 4 * plan.slack();
  }

  /**
   * How the least spacing was found.
   *
   * @return the working
   * @throws IllegalStateException if there is only one hole
   */
  public Working working() {
    return Notes.taken("least spacing of the holes", plan.unit, this::spacing)
        .withSource(chain == null ? DISTANCE : INTERVALS)
        .withCautions(cautions());
  }

  /** {@return how the largest move was found} */
  public Working moveWorking() {
    return Notes.taken("largest move of a hole", plan.unit, this::move)
        .withSource(DISTANCE)
        .withCautions(cautions());
  }

  private double spacing(Notes n) {
    if (places.length == 1) {
      throw new IllegalStateException("one hole has no spacing; ask for its position");
    }
    if (chain != null) {
      String from = RowNames.of(plan, chain.from());
      return chain.spacing(n, plan.apart, plan.slack(), from, RowNames.of(plan, chain.to()));
    }
    int closest = 0;
    int step = 1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < places.length; i++) {
      if (distance(i - 1, i, plan.apart) < least) {
        least = distance(i - 1, i, plan.apart);
        closest = i - 1;
      }
    }
    for (int i = 2; i < places.length && plan.apart > 0; i++) {
      if (distance(i - 2, i, 0) < least) {
        least = distance(i - 2, i, 0);
        closest = i - 2;
        step = 2;
      }
    }
    double a = note(n, closest);
    double e = note(n, closest + step);
    String formula = symbol(closest + step) + " − " + symbol(closest);
    if (step == 2 || plan.apart == 0) {
      return n.length("d", "least spacing", formula, e - a);
    }
    double b = n.given("b", "distance between the rows", plan.apart);
    double l = n.length("l", "along the leaf", formula, e - a);
    return n.length("d", "least spacing", "√(l² + b²)", Math.sqrt(l * l + b * b));
  }

  private double distance(int from, int to, double apart) {
    return apart == 0 ? places[to] - places[from] : Math.hypot(places[to] - places[from], apart);
  }

  private double move(Notes n) {
    int i = furthest();
    double x = note(n, i);
    double t = n.given("t", "where it is wanted", plan.wanted()[i]);
    return x >= t
        ? n.length("r", "largest move", symbol(i) + " − t", x - t)
        : n.length("r", "largest move", "t − " + symbol(i), t - x);
  }

  private double note(Notes n, int i) {
    return n.given(symbol(i), "hole " + (i + 1), places[i]);
  }

  private static String symbol(int i) {
    return "x" + Subscripts.of(i + 1);
  }

  private int furthest() {
    double[] wanted = plan.wanted();
    int furthest = 0;
    for (int i = 1; i < places.length; i++) {
      double more = Math.abs(places[i] - wanted[i]) - Math.abs(places[furthest] - wanted[furthest]);
      furthest = more > plan.slack() ? i : furthest;
    }
    return furthest;
  }

  /**
   * The layout on the marks of a rule: the row's aim met anew, with every hole on a mark. All marks
   * outside the closed stretches are weighed. If the widest spacing was the aim, the holes get the
   * widest that the marks allow, and lie nearest to an even row; if they were to lie near wanted
   * places, the greatest move is as small as the marks allow. The least spacing that was asked for
   * is kept, no two holes of a row go to one mark, and fixed holes stay where they are. A symmetric
   * row stays so if the marks allow it, and has a caution if not. {@link #lostToRule} tells the
   * cost.
   *
   * @param newRule the rule, laid with its zero on the pin centre
   * @return the layout, as good as any on these marks
   * @throws IllegalArgumentException if there is none, or if a stretch between closed stretches
   *     where a hole goes holds no mark and letting the hole go elsewhere costs more than a step of
   *     the rule; the message names the stretch, and the coarsest rule that would do
   */
  public HoleLayout on(Graduation<Length> newRule) {
    Objects.requireNonNull(newRule, "newRule");
    HoleLayout from = exact();
    return new MarkedRow(from, plan, from.places).on(newRule);
  }

  private HoleLayout exact() {
    return exact == null ? this : exact;
  }

  /**
   * What the rule costs the row's aim: how much less the {@linkplain #closestSpacing least spacing}
   * is than that of the exact layout or, where holes were to lie near wanted places, how much more
   * the {@linkplain #largestMove largest move}.
   *
   * @return the loss, exact; zero if the layout is on no rule, less only where a symmetric row had
   *     to give up its symmetry
   */
  public Measure<Length> lostToRule() {
    return plan.measure(lost(Notes.NONE));
  }

  /** {@return how the loss was found} */
  public Working lostToRuleWorking() {
    return Notes.taken("what the rule costs", plan.unit, this::lost)
        .withSource(DISTANCE)
        .withCautions(cautions());
  }

  private double lost(Notes n) {
    if (plan.isForWidest()) {
      double e = n.given("e", "least spacing of the exact layout", exact().spacing(Notes.NONE));
      double d = n.given("d", "least spacing on the rule", spacing(Notes.NONE));
      return n.length("c", "lost to the rule", "e − d", e - d);
    }
    double e = n.given("e", "largest move in the exact layout", exact().move(Notes.NONE));
    double r = n.given("r", "largest move on the rule", move(Notes.NONE));
    return n.length("c", "lost to the rule", "r − e", r - e);
  }

  /** {@return what to know before drilling} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    Places free = plan.free();
    for (double fixed : plan.anyway) {
      if (!free.contains(fixed)) {
        cautions.add(
            Caution.limit(
                "the fixed hole at "
                    + plan.measure(fixed)
                    + " lies in the "
                    + RowNames.inTheWay(plan, fixed)
                    + ", as it was allowed to; do not count on its holding",
                Source.commonPractice("a fastener in a seam or too near an edge splits the wood")));
      }
    }
    if (plan.apart > 0) {
      cautions.add(
          Caution.limit(
              "staggered rows "
                  + plan.measure(plan.apart)
                  + " apart: check the section left along the zigzag from hole to hole, and the"
                  + " wood's spacing along and across the grain",
              ZIGZAG));
    }
    if (rule != null && plan.isMirrored() && !isMirrored()) {
      cautions.add(
          Caution.limit(
              "on "
                  + rule
                  + " the row is no longer quite symmetric; take a rule with a mark on"
                  + " the mirror line at "
                  + plan.measure(plan.centre),
              Source.computed("the image of a mark is a mark only then")));
    }
    return List.copyOf(cautions);
  }

  private boolean isMirrored() {
    int last = places.length - 1;
    for (int i = 0; i <= last; i++) {
      if (Math.abs(2 * plan.centre - places[i] - places[last - i]) > 4 * plan.slack()) {
        return false;
      }
    }
    return true;
  }

  /** Number, places and least spacing. */
  @Override
  public String toString() {
    String list =
        positions().stream().map(Measure::toString).collect(Collectors.joining(", ", " at ", ""));
    return (places.length == 1 ? "1 hole" : places.length + " holes")
        + (plan.apart > 0 ? " in two rows by turns" : "")
        + list
        + " from the pin centre"
        + (places.length == 1 ? "" : ", at least " + closestSpacing() + " apart");
  }
}
