package org.hammerscale.spacing;

import javax.measure.quantity.Length;
import org.hammerscale.internal.ShopRules;
import org.hammerscale.units.Graduation;
import org.jspecify.annotations.Nullable;

/**
 * The row of an exact layout once more, its holes on the marks of a rule: a row like any other,
 * whose places are marks, with the same aim.
 *
 * <p>A stretch that holds no mark loses its holes to another stretch. That is no rounding any more
 * unless it costs the aim a step of the rule at most, so it is refused otherwise.
 */
final class MarkedRow {
  private final HoleLayout exact;
  private final RowPlan plan;
  private final double[] places;

  MarkedRow(HoleLayout exact, RowPlan plan, double[] places) {
    this.exact = exact;
    this.plan = plan;
    this.places = places;
  }

  /** The layout on a rule, or a refusal that says which stretch holds no mark. */
  HoleLayout on(Graduation<Length> rule) {
    HoleLayout layout = tried(rule);
    if (layout != null) {
      return layout;
    }
    Places free = plan.free();
    int lost = withoutMark(free, plan.marks(rule));
    String why =
        lost < 0
            ? "none keep the holes out of the closed stretches"
                + (plan.least > 0 ? " and " + plan.measure(plan.least) : "")
                + " apart"
            : stretch(free, places[lost]) + ", where hole " + (lost + 1) + " goes, holds none";
    throw new IllegalArgumentException(
        "rule must have marks for these holes, was one of "
            + rule
            + ": "
            + why
            + "; "
            + help(rule, lost < 0 && plan.least > 0));
  }

  private String stretch(Places free, double place) {
    double[] ends = free.stretch(free.stretchWith(place));
    return ends[1] - ends[0] <= plan.slack()
        ? "the one place at " + plan.measure(ends[0])
        : "the stretch from " + plan.measure(ends[0]) + " to " + plan.measure(ends[1]);
  }

  private String help(Graduation<Length> rule, boolean spaced) {
    for (Graduation<Length> finer : ShopRules.finerThan(rule)) {
      if (tried(finer) != null) {
        return "take " + finer + (spaced ? ", or a smaller least spacing" : "");
      }
    }
    return "no finer rule of the shop has them: measure these holes off, or move a closed stretch";
  }

  private @Nullable HoleLayout tried(Graduation<Length> rule) {
    boolean imaged = !plan.isMirrored() || plan.hasImagesOn(rule);
    HoleLayout layout = imaged ? solved(plan.on(rule), rule) : null;
    if (layout == null && plan.isMirrored()) {
      layout = solved(plan.unsymmetric().on(rule), rule);
    }
    if (layout == null || withoutMark(plan.free(), plan.marks(rule)) < 0) {
      return layout;
    }
    double step = rule.step().in(plan.unit);
    return layout.lostToRule().getValue() <= step + 4 * plan.slack() ? layout : null;
  }

  private @Nullable HoleLayout solved(RowPlan marked, Graduation<Length> rule) {
    RowSolver solver = new RowSolver(marked);
    double[] solved = solver.layout(marked.isForWidest() ? solver.widest() : null);
    return solved == null ? null : HoleLayout.on(rule, plan, solved, exact);
  }

  /** The first hole of the exact layout whose stretch holds no mark, fixed ones apart; or −1. */
  private int withoutMark(Places free, Marks marks) {
    double[] fixed = plan.sortedFixed();
    for (int i = 0; i < places.length; i++) {
      int stretch = free.stretchWith(places[i]);
      boolean isFixed = false;
      for (double f : fixed) {
        isFixed |= Math.abs(f - places[i]) <= plan.slack();
      }
      if (!isFixed && stretch >= 0) {
        double[] ends = free.stretch(stretch);
        if (marks.up(ends[0]) > ends[1] + plan.slack()) {
          return i;
        }
      }
    }
    return -1;
  }
}
