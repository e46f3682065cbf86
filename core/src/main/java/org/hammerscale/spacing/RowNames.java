package org.hammerscale.spacing;

import java.util.ArrayList;
import java.util.List;

/** What lies where on a row, in words. */
final class RowNames {
  private static final String UNKNOWN = "edge";

  private RowNames() {}

  /** What ends at a place, such as {@code end of the row}. */
  static String of(RowPlan plan, double place) {
    String own = own(plan, place);
    if (!own.isEmpty()) {
      return own;
    }
    String image = plan.isMirrored() ? own(plan, 2 * plan.centre - place) : "";
    return image.isEmpty() ? UNKNOWN : "mirror image of the " + image;
  }

  private static String own(RowPlan plan, double place) {
    double slack = 4 * plan.slack();
    if (plan.fixed.stream().anyMatch(f -> Math.abs(f - place) <= slack)) {
      return "fixed hole";
    }
    for (ClosedStretch stretch : plan.closed) {
      if (Math.abs(stretch.from().in(plan.unit) - place) <= slack
          || Math.abs(stretch.to().in(plan.unit) - place) <= slack) {
        return "edge of the " + stretch.name();
      }
    }
    if (Math.abs(plan.start - place) <= slack) {
      return "start of the row";
    }
    if (Math.abs(plan.end - place) <= slack) {
      return "end of the row";
    }
    return plan.isMirrored() && Math.abs(plan.centre - place) <= slack ? "mirror line" : "";
  }

  /** The open stretches of a row. */
  static String stretches(RowPlan plan, Places free) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < free.size(); i++) {
      double[] ends = free.stretch(i);
      text.append(i == 0 ? "" : ", ").append(plan.measure(ends[0]));
      text.append(" to ").append(plan.measure(ends[1]));
    }
    return text.isEmpty() ? "none" : text.toString();
  }

  /** What lies between two holes, or else is fixed; empty if neither is so. */
  static String between(RowPlan plan, double from, double to) {
    double slack = plan.slack();
    String first = "";
    int more = -1;
    for (ClosedStretch stretch : plan.closed) {
      double low = stretch.from().in(plan.unit);
      double high = stretch.to().in(plan.unit);
      if (high - low > slack && low >= from - slack && high <= to + slack) {
        first = first.isEmpty() ? "past the " + stretch.name() : first;
        more++;
      }
    }
    if (!first.isEmpty()) {
      return more == 0 ? first : first + " and " + more + " more";
    }
    for (double f : plan.sortedFixed()) {
      if (Math.abs(f - from) <= slack || Math.abs(f - to) <= slack) {
        return "beside the fixed hole at " + plan.measure(f);
      }
    }
    return "";
  }

  /** What forbids a place. */
  static String inTheWay(RowPlan plan, double place) {
    for (ClosedStretch stretch : plan.closed) {
      if (stretch.from().in(plan.unit) < place && place < stretch.to().in(plan.unit)) {
        return stretch.name();
      }
    }
    return place < plan.start ? "stretch before the start" : "stretch behind the end";
  }

  /** Whether something ends at a place: an edge or a fixed hole, or the image of one. */
  static boolean isKnown(RowPlan plan, double place) {
    return !of(plan, place).equals(UNKNOWN);
  }

  /** A chain in words. */
  static String of(RowPlan plan, Chain chain) {
    int steps = chain.diagonals() + chain.straights();
    return (steps == 1 ? "1 spacing" : steps + " spacings")
        + " from the "
        + of(plan, chain.from())
        + " at "
        + plan.measure(chain.from())
        + " to the "
        + of(plan, chain.to())
        + " at "
        + plan.measure(chain.to());
  }

  /** Why the holes do not fit, and what would help. */
  static String advice(RowPlan plan, RowSolver solver) {
    Chain widest = plan.holes > 1 ? solver.widest() : null;
    List<String> help = new ArrayList<>();
    boolean odd = plan.isMirrored() && plan.holes % 2 == 1;
    int most = plan.least > 0 ? solver.most(plan.least) : 0;
    String what;
    if (plan.least > 0 && most < plan.holes) {
      what =
          "holes must be at most "
              + most
              + " at a least spacing of "
              + plan.measure(plan.least)
              + ", were "
              + plan.holes;
    } else {
      what =
          plan.holes
              + " holes must find room"
              + (odd ? ", the middle one at " + plan.measure(plan.centre) : "")
              + ", but there is none";
    }
    if (most > 0 && most < plan.holes) {
      help.add("ask for fewer");
    }
    if (widest != null) {
      help.add(
          "ask for a least spacing of at most "
              + plan.measure(plan.spacing(widest))
              + " ("
              + of(plan, widest)
              + ")");
    }
    help.addAll(relaxed(plan));
    return what + "; " + (help.isEmpty() ? "take a longer leaf" : String.join(", or ", help));
  }

  /** What alone stands in the way: each thing without which the holes fit. */
  private static List<String> relaxed(RowPlan plan) {
    List<String> help = new ArrayList<>();
    if (plan.isMirrored()) {
      RowPlan without = plan.copy();
      without.centre = Double.NaN;
      tryout(help, without, "give up the symmetry");
    }
    RowPlan longer = plan.copy();
    longer.start = 0;
    tryout(help, longer, "start nearer to the pin");
    longer = plan.copy();
    longer.end = plan.length;
    tryout(help, longer, "go nearer to the tip");
    for (ClosedStretch stretch : firstOf(plan.closed)) {
      RowPlan without = plan.copy();
      without.closed = plan.closed.stream().filter(other -> other != stretch).toList();
      tryout(help, without, "give up the " + stretch.name());
    }
    if (!plan.isMirrored()) {
      for (Double fixed : firstOf(plan.fixed)) {
        RowPlan without = plan.copy();
        without.fixed = plan.fixed.stream().filter(other -> !other.equals(fixed)).toList();
        tryout(help, without, "give up the fixed hole at " + plan.measure(fixed));
      }
    }
    return help.size() > 6 ? help.subList(0, 6) : help;
  }

  /** As many as can be tried in no time. */
  private static <T> List<T> firstOf(List<T> all) {
    return all.subList(0, Math.min(all.size(), 50));
  }

  private static void tryout(List<String> help, RowPlan without, String words) {
    if (new RowSolver(without).isFeasible()) {
      help.add(words);
    }
  }
}
