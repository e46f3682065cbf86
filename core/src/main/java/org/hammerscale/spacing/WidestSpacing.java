package org.hammerscale.spacing;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.spacing.Strip.End;
import org.jspecify.annotations.Nullable;

/**
 * The widest spacing at which a strip takes its holes, and how many it takes at a spacing.
 *
 * <p>The test for one spacing puts each hole as early as it may lie, unless that crowds the next
 * fixed hole, which then comes first. It is exact: whatever layout there is, its i-th hole lies no
 * earlier than the i-th one here (by induction, since what a hole asks of the next only grows with
 * its place), and a hole that is not fixed can always be left out. It costs a step for each hole
 * and each stretch.
 *
 * <p>What fits at a spacing fits at every smaller one, so halving finds the widest. There, the
 * holes of some chain have no room left: it runs in m steps from an edge or fixed hole p to an edge
 * or fixed hole q, and the spacing is (q − p) / m to the last bit. So the halving stops at the
 * noise of the arithmetic, and the last trial tells the chains that it could be: those that take up
 * their length but for that noise. It halves the advance of a {@link Pace}, which tells apart what
 * the spacings of two rows do not.
 */
final class WidestSpacing {
  private final Strip strip;
  private final double slack;

  WidestSpacing(Strip strip) {
    this.strip = strip;
    this.slack = strip.slack();
  }

  /** Whether the holes fit at a pace. */
  boolean fits(Pace pace) {
    return most(pace, strip.holes(), null) >= strip.holes();
  }

  /** Whether the holes fit at all, no two of a row in one place. */
  boolean fitsApart() {
    return fits(Pace.of(5 * slack, strip.apart(), slack));
  }

  /** How many holes fit at a pace, mirror images not counted; no more than one too many. */
  int most(Pace pace) {
    return most(pace, RowPlan.MOST_HOLES + 1, null);
  }

  /** The chain that decides the widest spacing; null if there is no room, or only one hole. */
  @Nullable Chain solve() {
    Chain widest = upperBound();
    if (widest == null) {
      return null;
    }
    double apart = strip.apart();
    double hi = widest.pace(apart, slack).advance(apart);
    double lo = -apart;
    if (fits(Pace.atAdvance(hi, apart))) {
      lo = hi;
    } else if (!fits(Pace.atAdvance(lo, apart))) {
      return null;
    }
    while (hi - lo > slack / 8) {
      double middle = (lo + hi) / 2;
      if (middle <= lo || middle >= hi) {
        break;
      }
      if (fits(Pace.atAdvance(middle, apart))) {
        lo = middle;
      } else {
        hi = middle;
      }
    }
    Pace found = Pace.atAdvance(lo, apart);
    return found.straight() <= 4 * slack ? null : snapped(found, widest);
  }

  /** The widest of the chains that are tight, but for noise, at a pace that fits. */
  private Chain snapped(Pace near, Chain bound) {
    double apart = strip.apart();
    List<Chain> chains = new ArrayList<>();
    chains.add(bound);
    most(near, strip.holes(), chains);
    Chain best = null;
    double widest = Double.NEGATIVE_INFINITY;
    for (Chain chain : chains) {
      double noise = (2 + (chain.diagonals() + chain.straights()) / 4d) * slack;
      if (Math.abs(chain.excess(near)) <= noise) {
        Pace pace = chain.pace(apart, slack);
        if (pace.advance(apart) > widest && fits(pace)) {
          best = chain;
          widest = pace.advance(apart);
        }
      }
    }
    if (best == null) {
      throw new IllegalStateException("no chain of holes is tight at " + near);
    }
    return best;
  }

  /** All holes evenly from the first place to the last: no row can be wider spaced. */
  private @Nullable Chain upperBound() {
    double first = strip.places().isEmpty() ? Double.POSITIVE_INFINITY : strip.places().first();
    double last = strip.places().isEmpty() ? Double.NEGATIVE_INFINITY : strip.places().last();
    double[] fixed = strip.fixed();
    if (fixed.length > 0) {
      first = Math.min(first, fixed[0]);
      last = Math.max(last, fixed[fixed.length - 1]);
    }
    int steps = strip.holes() - 1;
    if (strip.end() == End.MIRROR) {
      last = 2 * strip.centre() - first;
      steps = 2 * strip.holes() - 1;
    }
    return steps < 1 || last < first - slack ? null : new Chain(first, last, steps, 0);
  }

  /** Places up to so many holes and gives their number; 0 if the fixed ones crowd one another. */
  private int most(Pace pace, int wanted, @Nullable List<Chain> chains) {
    if (!fixedHolesFit(pace, chains)) {
      return 0;
    }
    double[] fixed = strip.fixed();
    Spot last = Spot.NONE;
    int placed = 0;
    int next = 0;
    while (placed + fixed.length - next < wanted) {
      Spot earliest = pace.after(last);
      Spot spot = strip.places().land(earliest);
      if (spot == null) {
        break;
      }
      if (chains != null && earliest.steps() > 0) {
        add(chains, earliest, strip.places().last(spot), 0, 0);
      }
      if (next < fixed.length) {
        if (!leavesRoom(spot, next, pace, chains)) {
          spot = Spot.fixed(fixed[next++], last);
        }
      } else if (!minds(spot, pace, chains)) {
        break;
      }
      last = spot;
      placed++;
    }
    return placed + fixed.length - next;
  }

  /** Whether a hole leaves the next fixed hole its room, and the fixed hole after that. */
  private boolean leavesRoom(Spot spot, int next, Pace pace, @Nullable List<Chain> chains) {
    double f = strip.fixed()[next];
    Spot before = spot.previous();
    if (f < spot.x() + pace.diagonal() - slack || f < before.x() + pace.straight() - slack) {
      return false;
    }
    double after = Double.POSITIVE_INFINITY;
    if (next + 1 < strip.fixed().length) {
      after = strip.fixed()[next + 1];
    } else if (strip.end() == End.MIRROR) {
      after = 2 * strip.centre() - f;
    } else if (strip.end() == End.MIRROR_HOLE) {
      after = 2 * strip.centre() - spot.x();
    }
    if (after < spot.x() + pace.straight() - slack) {
      return false;
    }
    if (chains != null) {
      add(chains, spot, f, 1, 0);
      add(chains, before, f, 0, 1);
      if (strip.end() == End.MIRROR_HOLE && next + 1 == strip.fixed().length) {
        addMirrored(chains, spot, spot, 0, 1);
      } else {
        add(chains, spot, after, 0, 1);
      }
    }
    return true;
  }

  /** Whether a hole behind the last fixed one leaves room for the mirror images. */
  private boolean minds(Spot spot, Pace pace, @Nullable List<Chain> chains) {
    if (strip.end() == End.OPEN) {
      return true;
    }
    Spot before = spot.previous();
    double mirror = 2 * strip.centre() - spot.x();
    if (strip.end() == End.MIRROR_HOLE
        || mirror < spot.x() + pace.diagonal() - slack
        || mirror < before.x() + pace.straight() - slack) {
      return false;
    }
    if (chains != null) {
      addMirrored(chains, spot, spot, 1, 0);
      addMirrored(chains, before, spot, 0, 1);
    }
    return true;
  }

  private boolean fixedHolesFit(Pace pace, @Nullable List<Chain> chains) {
    double[] fixed = strip.fixed();
    for (int i = 0; i < fixed.length; i++) {
      double next = fixedOrImage(i + 1);
      double third = fixedOrImage(i + 2);
      if (next < fixed[i] + pace.diagonal() - slack || third < fixed[i] + pace.straight() - slack) {
        return false;
      }
      if (chains != null) {
        Spot spot = Spot.fixed(fixed[i], Spot.NONE);
        add(chains, spot, next, 1, 0);
        add(chains, spot, third, 0, 1);
      }
    }
    return true;
  }

  /** The fixed holes, and behind them their mirror images if there is a mirror. */
  private double fixedOrImage(int i) {
    double[] fixed = strip.fixed();
    int size = fixed.length;
    if (i < size) {
      return fixed[i];
    }
    int image = strip.end() == End.MIRROR_HOLE ? 2 * size - 2 - i : 2 * size - 1 - i;
    return strip.end() == End.OPEN || image < 0
        ? Double.POSITIVE_INFINITY
        : 2 * strip.centre() - fixed[image];
  }

  private static void add(List<Chain> chains, Spot spot, double to, int diagonals, int straights) {
    if (spot.anchor() > Double.NEGATIVE_INFINITY && to < Double.POSITIVE_INFINITY) {
      chains.add(
          new Chain(spot.anchor(), to, spot.diagonals() + diagonals, spot.straights() + straights));
    }
  }

  /** From a hole to the image of another, and on in its image's chain. */
  private void addMirrored(
      List<Chain> chains, Spot spot, Spot imaged, int diagonals, int straights) {
    add(
        chains,
        spot,
        2 * strip.centre() - imaged.anchor(),
        imaged.diagonals() + diagonals,
        imaged.straights() + straights);
  }
}
