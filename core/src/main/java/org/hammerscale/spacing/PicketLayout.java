package org.hammerscale.spacing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * Where the pickets of a {@link PicketRow} stand. Mark all from one post, by the running sums that
 * stand here: a rounded pitch stepped off leaves the sum of its errors in the last gap.
 *
 * <pre>{@code
 * PicketRow row = PicketRow.across(millimetres(1500)).of(millimetres(16), millimetres(12)).stopping(GuardCode.ENGLAND_SPHERE);
 * PicketLayout balcony = row.layout();
 * balcony                                   // 13 pickets, 94 mm apart
 * balcony.pitch()                           // 216 mm  from one to the next like it
 * balcony.on(MILLIMETRE).edges().get(2)     // 310 mm
 * balcony.on(MILLIMETRE).widestGap()        // 94 mm
 * row.raked(degrees(35)).layout().edges().get(0)   // 114.75 mm  along the rail of the stairs
 * }</pre>
 *
 * <p>Exact, in the span's unit. Gaps are level and clear, whatever the rake.
 */
public final class PicketLayout {
  private static final Source ARITHMETIC = Source.computed("pickets and gaps add up to the span");
  private static final int MOST_MORE = 50;

  private final PicketPlan plan;
  private final double[] edges;
  private final @Nullable Graduation<Length> rule;

  private PicketLayout(PicketPlan plan, double[] edges, @Nullable Graduation<Length> rule) {
    this.plan = plan;
    this.edges = edges;
    this.rule = rule;
  }

  static PicketLayout even(PicketPlan plan, int count) {
    return new PicketLayout(plan, plan.even(count), null);
  }

  /** {@return how many pickets there are} */
  public int pickets() {
    return edges.length;
  }

  /**
   * The equal gap: (S − Σ w) / (n + 1). On a rule it is the mean of the gaps.
   *
   * @return the clear gap, exact
   */
  public Measure<Length> gap() {
    return plan.measure(gap(Notes.NONE));
  }

  /** {@return the widest gap, level; the equal gap unless the pickets are on a rule} */
  public Measure<Length> widestGap() {
    return plan.measure(widest());
  }

  /** {@return the narrowest gap, level; the equal gap unless the pickets are on a rule} */
  public Measure<Length> narrowestGap() {
    double narrowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= pickets(); i++) {
      narrowest = Math.min(narrowest, gapBefore(i));
    }
    return plan.measure(narrowest);
  }

  /**
   * The gaps from the first post to the last, one more than there are pickets.
   *
   * @return each clear and level; equal unless the pickets are on a rule
   */
  public List<Measure<Length>> gaps() {
    List<Measure<Length>> all = new ArrayList<>();
    for (int i = 0; i <= pickets(); i++) {
      all.add(plan.measure(gapBefore(i)));
    }
    return List.copyOf(all);
  }

  /**
   * From a picket to the next like it, level: w + gap, of a pattern all its pickets and gaps.
   *
   * @return the pitch with equal gaps, exact
   */
  public Measure<Length> pitch() {
    int pattern = plan.widths().size();
    return plan.measure(plan.sum(pattern) + pattern * plan.gap(pickets()));
  }

  /** {@return the near edge of each picket from the post, along the rail} */
  public List<Measure<Length>> edges() {
    List<Measure<Length>> all = new ArrayList<>();
    for (double edge : edges) {
      Measure<Length> place = plan.measure(edge);
      all.add(rule == null ? place : rule.nearest(place));
    }
    return List.copyOf(all);
  }

  /** {@return the far edge of each picket from the post, along the rail} */
  public List<Measure<Length>> farEdges() {
    List<Measure<Length>> all = new ArrayList<>();
    List<Measure<Length>> near = edges();
    for (int i = 0; i < edges.length; i++) {
      all.add(plan.measure(near.get(i).getValue() + plan.slope() * plan.width(i)));
    }
    return List.copyOf(all);
  }

  /** {@return from post to post along the rail} */
  public Measure<Length> railLength() {
    return plan.measure(plan.slope() * plan.span());
  }

  /** {@return the angle of the rail from level, in degrees} */
  public Measure<Angle> rake() {
    return Measure.of(Math.acos(1 / plan.slope()), ShopUnits.RADIAN).to(ShopUnits.DEGREE);
  }

  /** {@return the centre of each picket from the post, along the rail} */
  public List<Measure<Length>> centres() {
    List<Measure<Length>> all = new ArrayList<>();
    List<Measure<Length>> near = edges();
    for (int i = 0; i < edges.length; i++) {
      all.add(plan.measure(near.get(i).getValue() + plan.slope() * plan.width(i) / 2));
    }
    return List.copyOf(all);
  }

  /**
   * The layout with the near edges on the marks of a rule that lies along the rail with its zero at
   * the post: of all places on marks those whose widest gap is narrowest, and then nearest to the
   * equal gaps. If the sphere would pass there, and no number was told, there are more pickets.
   *
   * @param newRule the rule
   * @return the layout, its widest gap as narrow as any on these marks
   * @throws IllegalArgumentException if pickets do not stand apart on so coarse a rule, or no
   *     number of them stops the sphere
   */
  public PicketLayout on(Graduation<Length> newRule) {
    Objects.requireNonNull(newRule, "newRule");
    boolean told = plan.count() >= 0;
    int step = plan.whole() ? plan.widths().size() : 1;
    int first = told ? pickets() : plan.least();
    for (int n = first; n <= first + (told ? 0 : MOST_MORE * step); n += step) {
      double[] marked = plan.gap(n) < 0 ? null : plan.onMarks(n, newRule);
      if (marked != null) {
        PicketLayout layout = new PicketLayout(plan, marked, newRule);
        if (told || plan.stops(layout.widest())) {
          return layout;
        }
      }
    }
    throw new IllegalArgumentException(
        "newRule must have marks for these pickets, was one of "
            + newRule
            + " for gaps of "
            + gap()
            + (told ? "" : " that must stay narrow enough")
            + "; take a finer rule");
  }

  /** {@return that local codes govern, and where the sphere passes or a picket was added} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    boolean limited = plan.limit() > 0;
    if (limited && !plan.stops(widest())) {
      cautions.add(
          Caution.danger(
              "an opening of "
                  + widestGap()
                  + " is not less than the "
                  + plan.measure(plan.limit())
                  + " asked for: a child's head may pass; take more pickets"));
    }
    if (rule != null && plan.count() < 0 && pickets() > plan.least()) {
      cautions.add(
          Caution.limit(
              "on "
                  + rule
                  + " it takes "
                  + pickets()
                  + " pickets where equal gaps take "
                  + plan.least()
                  + "; a finer rule may save them",
              ARITHMETIC));
    }
    if (limited) {
      cautions.add(
          Caution.limit(
              "the gap is that between the narrowest places of the pickets: measure hammered and"
                  + " tapered ones there, and take a tolerance off the opening",
              Source.commonPractice("pickets and holes are never quite true")));
    }
    cautions.add(GuardCode.GOVERN);
    return List.copyOf(cautions);
  }

  /** {@return how the equal gap was found} */
  public Working working() {
    return Notes.taken("gap between " + pickets() + " pickets", plan.unit(), this::gap)
        .withSource(ARITHMETIC)
        .withCautions(cautions());
  }

  private double gap(Notes n) {
    double s = n.given("S", "clear span, level", plan.span());
    double count = n.number("n", "pickets", "", pickets());
    String meaning = "equal gap";
    if (plan.widths().size() == 1) {
      double w = n.given("w", "width of a picket", plan.widths().get(0));
      return n.length("g", meaning, "(S − n w) / (n + 1)", (s - count * w) / (count + 1));
    }
    double all = n.given("W", "widths of all pickets, added up", plan.sum(pickets()));
    return n.length("g", meaning, "(S − W) / (n + 1)", (s - all) / (count + 1));
  }

  private double widest() {
    double widest = 0;
    for (int i = 0; i <= pickets(); i++) {
      widest = Math.max(widest, gapBefore(i));
    }
    return widest;
  }

  /** The level gap in front of a picket; behind the last for the number of pickets. */
  private double gapBefore(int picket) {
    if (rule == null) {
      return plan.gap(pickets());
    }
    double from = picket == 0 ? 0 : edges[picket - 1] / plan.slope() + plan.width(picket - 1);
    double to = picket == pickets() ? plan.span() : edges[picket] / plan.slope();
    return to - from;
  }

  /** Number and gaps. */
  @Override
  public String toString() {
    String gaps =
        rule == null
            ? gap() + " apart"
            : narrowestGap() + " to " + widestGap() + " apart on " + rule;
    return pickets() + (pickets() == 1 ? " picket, " : " pickets, ") + gaps;
  }
}
