package org.hammerscale.spacing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.hammerscale.units.Measure;
import org.junit.jupiter.api.Test;

/**
 * Two rows of holes over stretches of a half grid, against a search: the widest spacing is one at
 * which some chain of steps just fills the way between two edges, and of a layout that fits, all
 * holes can be pushed towards the pin until each lies a chain of steps behind an edge. So it is
 * enough to try those spacings, and for each those places.
 */
class TwoRowsTest {
  private static final double NEAR = 1e-9;

  /** Stretches where holes may lie, with the fixed holes as the last ones: single points. */
  @SuppressWarnings("ArrayRecordComponent") // drawn once and never compared
  private record Search(double[][] stretches, int fixed, int holes, double apart) {
    static Search any(Random random) {
      int count = 1 + random.nextInt(4);
      int fixed = random.nextInt(2);
      double[][] stretches = new double[count + fixed][];
      double x = 0;
      for (int i = 0; i < count; i++) {
        double from = x + (i == 0 ? 0 : 0.5 * (1 + random.nextInt(5)));
        x = from + 0.5 * random.nextInt(6);
        stretches[i] = new double[] {from, x};
      }
      for (int i = count; i < stretches.length; i++) {
        double place = 0.5 * random.nextInt((int) (2 * x) + 1);
        stretches[i] = new double[] {place, place};
      }
      double apart = 0.5 * (1 + random.nextInt(random.nextBoolean() ? 4 : 12));
      return new Search(stretches, fixed, 2 + random.nextInt(4), apart);
    }

    int free() {
      return stretches.length - fixed;
    }

    double last() {
      return stretches[free() - 1][1];
    }

    HoleRow row(TrialUnit unit) {
      HoleRow row =
          HoleRow.along(unit.of(last() + 1))
              .holes(holes)
              .startingFrom(unit.of(0))
              .endingBefore(unit.of(1))
              .inTwoRows(unit.of(apart));
      for (int i = 1; i < free(); i++) {
        row =
            row.missing(
                ClosedStretch.between(unit.of(stretches[i - 1][1]), unit.of(stretches[i][0])));
      }
      for (int i = free(); i < stretches.length; i++) {
        row = row.usingAnyway(unit.of(stretches[i][0]));
      }
      return row;
    }

    /** The step from row to row along the strap. */
    private double step(double spacing) {
      return spacing <= apart ? 0 : Math.sqrt(spacing * spacing - apart * apart);
    }

    double widest() {
      TreeSet<Double> spacings = new TreeSet<>(List.of(apart));
      for (double[] p : stretches) {
        for (double[] q : stretches) {
          for (int steps = 1; steps < holes; steps++) {
            for (int straights = 0; straights <= steps / 2; straights++) {
              spacings.add(filling(q[1] - p[0], steps - 2 * straights, straights));
            }
          }
        }
      }
      double widest = 0;
      while (!spacings.isEmpty()) {
        Double[] left = spacings.toArray(new Double[0]);
        double middle = left[left.length / 2];
        if (fits(middle)) {
          widest = middle;
          spacings.headSet(middle, true).clear();
        } else {
          spacings.tailSet(middle, true).clear();
        }
      }
      return widest;
    }

    /** The spacing at which so many steps fill a length, by halving. */
    private double filling(double length, int diagonals, int straights) {
      double lo = 0;
      double hi = length + apart + 1;
      for (int i = 0; i < 60; i++) {
        double middle = (lo + hi) / 2;
        if (diagonals * step(middle) + straights * middle <= length) {
          lo = middle;
        } else {
          hi = middle;
        }
      }
      return lo;
    }

    private boolean fits(double spacing) {
      TreeSet<Double> places = new TreeSet<>();
      for (double[] stretch : stretches) {
        for (int diagonals = 0; diagonals < holes; diagonals++) {
          for (int straights = 0; straights < holes; straights++) {
            double x = stretch[0] + diagonals * step(spacing) + straights * spacing;
            for (int i = 0; i < free(); i++) {
              if (x >= stretches[i][0] - NEAR && x <= stretches[i][1] + NEAR) {
                places.add(x);
              }
            }
          }
        }
      }
      for (int i = free(); i < stretches.length; i++) {
        places.add(stretches[i][0]);
      }
      double[] sorted = places.stream().mapToDouble(x -> x).toArray();
      return fits(sorted, new double[holes], 0, 0, spacing);
    }

    private boolean fits(double[] places, double[] x, int placed, int from, double spacing) {
      if (placed == holes) {
        return isLayout(x, spacing);
      }
      for (int i = from; i < places.length; i++) {
        x[placed] = places[i];
        if ((placed < 1 || x[placed] - x[placed - 1] >= step(spacing) - NEAR)
            && (placed < 2 || x[placed] - x[placed - 2] >= spacing - NEAR)
            && fits(places, x, placed + 1, i, spacing)) {
          return true;
        }
      }
      return false;
    }

    /** Whether each fixed hole is used, and only once if it lies where no other hole may. */
    boolean isLayout(double[] x, double spacing) {
      for (int i = free(); i < stretches.length; i++) {
        double f = stretches[i][0];
        long here = Arrays.stream(x).filter(y -> Math.abs(y - f) <= NEAR).count();
        if (here == 0 || (here > 1 && !allows(f))) {
          return false;
        }
      }
      return leastOf(x) >= spacing - 1e-7;
    }

    boolean allows(double x) {
      for (int i = 0; i < free(); i++) {
        if (x >= stretches[i][0] - NEAR && x <= stretches[i][1] + NEAR) {
          return true;
        }
      }
      return false;
    }

    boolean isFixed(double x) {
      return fixed > 0 && Math.abs(x - stretches[free()][0]) <= NEAR;
    }

    private double leastOf(double[] x) {
      return TwoRowsTest.leastOf(x, apart);
    }
  }

  private static double leastOf(double[] x, double apart) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < x.length; i++) {
      least = Math.min(least, Math.hypot(x[i] - x[i - 1], apart));
      least = i == 1 ? least : Math.min(least, x[i] - x[i - 2]);
    }
    return least;
  }

  @Test
  void onStretchesTheWidestSpacingIsThatOfASearch() {
    for (long seed = 1; seed <= 6000; seed++) {
      Random random = new Random(seed);
      Search search = Search.any(random);
      TrialUnit unit = TrialUnit.any(random);
      String which = "seed " + seed + ": " + search.row(TrialUnit.whole());
      double widest = unit.number(search.row(unit).widestSpacing());
      assertEquals(search.widest(), widest, 1e-7, which);
      if (widest > 1e-7) {
        HoleLayout layout = search.row(unit).layout();
        double[] x = unit.positions(layout);
        assertTrue(search.isLayout(x, widest), () -> which + ", " + layout);
        for (double place : x) {
          assertTrue(search.allows(place) || search.isFixed(place), () -> which + ", " + layout);
        }
      }
    }
  }

  @Test
  void theWidestSpacingMayBeTheDistanceOfTheRows() {
    HoleRow point = HoleRow.along(inches(10)).holes(2).startingFrom(inches(4));
    HoleRow pair = point.endingBefore(inches(6)).inTwoRows(inches(0.8));
    assertEquals(inches(0.8), pair.widestSpacing());
    assertEquals(List.of(inches(4), inches(4)), pair.layout().positions());
    assertEquals(inches(0.8), pair.symmetricAbout(inches(4)).widestSpacing());
    assertEquals(2, pair.leastSpacing(millimetres(20.32)).mostHoles());
    HoleRow strap =
        HoleRow.along(inches(12)).holes(8).startingFrom(inches(1)).endingBefore(inches(1));
    for (int i = 1; i <= 4; i++) {
      ClosedStretch seam = ClosedStretch.seamAt(inches("2 3/4").multiply(i));
      strap = strap.missing(seam.clear(inches("1 3/8")));
    }
    for (int i = 1; i <= 40; i++) {
      HoleRow rows = strap.inTwoRows(inches(i / 20d));
      HoleLayout layout = rows.layout();
      double[] x = layout.positions().stream().mapToDouble(Measure::getValue).toArray();
      assertEquals(rows.widestSpacing(), layout.closestSpacing());
      assertEquals(leastOf(x, i / 20d), layout.closestSpacing().getValue(), NEAR);
    }
  }
}
