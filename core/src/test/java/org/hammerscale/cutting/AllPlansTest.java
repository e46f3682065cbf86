package org.hammerscale.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Small lists against all their plans: 250 lists by lot for each seed, 2,000 in all. */
class AllPlansTest {
  private static final int LISTS = 250;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void isAsGoodAsTheBestOfAllPlans(long seed) {
    Random random = new Random(seed);
    int planned = 0;
    int fewest = 0;
    for (int n = 0; n < LISTS; n++) {
      List<Aim> aims = aims(random);
      TrialList trial = new TrialList(random, aims);
      long[] best = trial.best();
      if (best.length == 0) {
        assertThrows(IllegalArgumentException.class, () -> plan(trial, aims), trial::toString);
        continue;
      }
      planned++;
      CuttingPlan plan = plan(trial, aims);
      for (Aim aim : aims) {
        long wanted = Math.abs(best[aims.indexOf(aim)]);
        Reached reached = plan.reached(aim);
        long value = steps(reached.value(), aim);
        if (aim == Aim.FEWEST_PATTERNS) {
          assertTrue(value >= wanted && steps(reached.bound(), aim) <= wanted, trial::toString);
          fewest += value == wanted ? 1 : 0;
          if (value > wanted) {
            break; // the next aim is about other plans
          }
        } else if (aim == Aim.LONGEST_LEFTOVER && aims.get(aims.size() - 1) == aim) {
          // Ranked behind the patterns it is as good as they let it be found.
          assertTrue(value <= wanted && steps(reached.bound(), aim) >= wanted, trial::toString);
        } else {
          assertEquals(wanted, value, () -> aim + " of " + trial);
          assertTrue(reached.isProven(), () -> aim + " of " + trial);
        }
      }
    }
    assertTrue(planned > LISTS / 2, "planned " + planned);
    assertTrue(fewest > planned * 9 / 10, "fewest patterns in " + fewest + " of " + planned);
  }

  private static CuttingPlan plan(TrialList trial, List<Aim> aims) {
    return trial.list().plan(aims.toArray(new Aim[0]));
  }

  private static long steps(BigDecimal number, Aim aim) {
    return aim == Aim.LEAST_MONEY
        ? number.movePointRight(2).longValueExact()
        : number.longValueExact();
  }

  private static List<Aim> aims(Random random) {
    List<Aim> material =
        new ArrayList<>(List.of(Aim.LEAST_MONEY, Aim.LEAST_NEW_STOCK, Aim.FEWEST_BARS));
    List<Aim> rest = new ArrayList<>(List.of(Aim.LONGEST_LEFTOVER, Aim.FEWEST_PATTERNS));
    Collections.shuffle(material, random);
    Collections.shuffle(rest, random);
    material.addAll(rest);
    return material;
  }
}
