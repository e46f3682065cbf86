package org.hammerscale.punching;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/** What becomes the rim of a drifted hole must be as long as the rim, or stretch a little. */
final class Rim {
  /** A part so small is only rounding. */
  static final double SLACK = 1e-9;

  private static final double MOST_STRETCH = 8 / 7d;

  private Rim() {}

  /** Cautions for lips of a given length, each of which becomes half the rim of a hole. */
  static List<Caution> cautions(String what, Measure<Length> lip, Hole hole) {
    Measure<Length> half = hole.perimeter().divide(2);
    double stretch = half.ratio(lip);
    if (stretch < 1 - SLACK) {
      return List.of(
          Caution.limit(
              "the "
                  + what
                  + " of "
                  + lip
                  + " is longer than half the way round the hole ("
                  + half
                  + "): its ends stay open; make it shorter",
              Source.computed("the lips become the rim")));
    }
    return stretch > MOST_STRETCH + SLACK
        ? List.of(
            Caution.limit(
                "the "
                    + what
                    + " of "
                    + lip
                    + " must stretch by more than a seventh to go half the way round the hole ("
                    + half
                    + "): make it longer, or the ends tear",
                Slit.STRAIGHTENED))
        : List.of();
  }
}
