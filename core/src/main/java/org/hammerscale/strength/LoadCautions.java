package org.hammerscale.strength;

import java.util.List;
import org.hammerscale.working.Caution;

/** What every answer about a load carries with it. */
final class LoadCautions {
  static final Caution NOT_CERTIFIED =
      Caution.danger(
          "this is no certified design: have hardware overhead, and hardware that the public's"
              + " safety depends on, checked by a licensed engineer; local codes govern");

  /** For a strength that is compared with one force. */
  static final Caution ONE_STEADY_LOAD =
      Caution.danger(
          "one steady load is counted: slamming, wind, a person on the gate and wear are not,"
              + " unless they are in it or the safety factor covers them");

  static final List<Caution> ALL = List.of(NOT_CERTIFIED);

  /** For a stress, and for what is chosen by it. */
  static final List<Caution> OF_STRENGTH = List.of(ONE_STEADY_LOAD, NOT_CERTIFIED);

  private LoadCautions() {}
}
