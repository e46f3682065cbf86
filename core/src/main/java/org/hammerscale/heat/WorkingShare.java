package org.hammerscale.heat;

import javax.measure.quantity.Time;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/** What anvil, hammer and tongs leave of the time in the air. */
final class WorkingShare {
  static final Source SOURCE =
      Source.commonPractice(
          "our own judgement, without a source: anvil and hammer leave about half of the time in"
              + " the air, 0.35 to 0.75 of it");

  private static final double LEAST = 0.35;
  private static final double LIKELY = 0.5;
  private static final double MOST = 0.75;

  private WorkingShare() {}

  static Estimate<Time> of(Estimate<Time> inTheAir) {
    return Estimate.of(
        inTheAir.low().multiply(LEAST),
        inTheAir.likely().withValue(left(Notes.NONE, inTheAir.likely().in(ShopUnits.SECOND))),
        inTheAir.high().multiply(MOST));
  }

  /** The likely seconds left. */
  static double left(Notes n, double t) {
    double s = n.number("s", "part that anvil and hammer leave, 0.35 to 0.75", "", LIKELY);
    return n.value("W", "time for work", "s t", s * t, ShopUnits.SECOND);
  }
}
