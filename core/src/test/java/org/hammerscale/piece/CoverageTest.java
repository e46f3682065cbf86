package org.hammerscale.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.hammerscale.working.Notes;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ten thousand simulated shops: how often the bound is enough for the next piece. */
class CoverageTest {
  private static final int SHOPS = 10_000;
  private static final double BOOK = 420;
  private static final double SPREAD = 5;

  @ParameterizedTest
  @CsvSource({"2, 1", "3, 2", "5, 3", "12, 4"})
  void classicalBoundIsEnoughNineteenTimesInTwenty(int trials, long seed) {
    Random random = new Random(seed);
    int enough = 0;
    for (int shop = 0; shop < SHOPS; shop++) {
      double mean = 300 + 200 * random.nextDouble();
      double spread = 0.1 + 10 * random.nextDouble();
      ShopModel model = ShopModel.of(BOOK, 1, 1, SPREAD, pieces(random, mean, spread, trials));
      enough += model.classicalBound(0.95) >= mean + spread * random.nextGaussian() ? 1 : 0;
    }
    assertEquals(0.95, enough / (double) SHOPS, 0.01);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, 1, 11",
    "0, 1, 4, 12",
    "1, 1, 1, 13",
    "1, 1, 4, 14",
    "2, 1, 4, 15",
    "5, 1, 4, 16",
    "3, 0.2, 1, 17",
    "3, 10, 30, 18",
    "20, 2, 7, 19"
  })
  void boundByTheBookIsEnoughInShopsThatTheBookKnows(
      int trials, double meanWorth, int spreadWorth, long seed) {
    Random random = new Random(seed);
    int enough = 0;
    for (int shop = 0; shop < SHOPS; shop++) {
      double squares = 0; // a chi-squared number of so many degrees of freedom
      for (int i = 0; i < spreadWorth; i++) {
        double normal = random.nextGaussian();
        squares += normal * normal;
      }
      double spread = SPREAD * Math.sqrt(spreadWorth / squares);
      double mean = BOOK + spread / Math.sqrt(meanWorth) * random.nextGaussian();
      ShopModel model =
          ShopModel.of(BOOK, meanWorth, spreadWorth, SPREAD, pieces(random, mean, spread, trials));
      double next = mean + spread * random.nextGaussian();
      enough += model.bound(Notes.NONE, 0.95) >= next ? 1 : 0;
    }
    assertEquals(0.95, enough / (double) SHOPS, 0.01);
  }

  private static double[] pieces(Random random, double mean, double spread, int count) {
    double[] pieces = new double[count];
    for (int i = 0; i < count; i++) {
      pieces[i] = mean + spread * random.nextGaussian();
    }
    return pieces;
  }
}
