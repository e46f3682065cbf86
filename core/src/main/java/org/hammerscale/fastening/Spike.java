package org.hammerscale.fastening;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.stock.Section;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/**
 * A driven shank: a {@index spike}, a big nail, the tail of a pintle or of a screwless eye, one leg
 * of a staple. The wood feels it as a nail of its diameter; of a square shank that is the side.
 *
 * <pre>{@code
 * Spike tail = Spike.of(Section.square(millimetres(14)));
 * Wood oak = Wood.named("oak");
 * ReferenceWithdrawal.of(tail, oak).leastLength(newtons(6000))   // 117.9 mm  of a pintle's tail in the post, for a heavy gate
 * PilotHole.pulledOut(tail, oak).mostThreadHole()               // 12.6 mm  to bore for it at most
 * }</pre>
 *
 * <p>A square shank of the same metal has 1.13 of the surface of a round one; track spikes were
 * found to hold half as much again. The side for the diameter is therefore on the safe side, an
 * estimate. A chisel point goes across the grain.
 *
 * <p>Source: common practice for the square; a page on track spikes (read).
 */
public final class Spike extends DrivenShank {
  private static final Source SQUARE =
      Source.commonPractice("the side of a square shank for its diameter");
  private static final Source END =
      Source.fromMemory("ANSI/AWC NDS 2015", "12.2.3, nails and spikes not in end grain");

  private Spike(Section shank) {
    super(shank);
  }

  /**
   * A shank to be driven.
   *
   * @param shank its section in the wood, square or round
   * @return the spike
   * @throws IllegalArgumentException if the shank is neither square nor round
   */
  public static Spike of(Section shank) {
    return new Spike(shank);
  }

  /** {@return what to heed in driving it} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (!shank().isRound()) {
      cautions.add(
          Caution.limit(
              "a square shank is reckoned as a round one of its side: an estimate, on the safe side;"
                  + " drive a chisel point across the grain, lest the wood split",
              SQUARE));
    }
    cautions.add(
        Caution.limit(
            "drive it into side grain, beyond any split or decayed wood, and bore for it: end grain is"
                + " not to be relied on",
            END));
    cautions.add(
        Caution.danger(
            "wear eye protection: hardened heads and points chip under the hammer; a pull on a"
                + " driven pintle also bends it, so reckon the shank besides"));
    return List.copyOf(cautions);
  }

  /** Its shank. */
  @Override
  public String toString() {
    return "spike of " + shank();
  }
}
