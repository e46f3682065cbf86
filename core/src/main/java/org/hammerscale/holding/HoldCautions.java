package org.hammerscale.holding;

import java.util.List;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/** What belongs beside every figure of what a fastener holds. */
final class HoldCautions {
  private static final Source PRACTICE =
      Source.commonPractice("reference values are adjusted by the code of the place");

  private static final Caution LICENSED =
      Caution.danger(
          "hardware overhead or where it may hurt the public wants the design of a licensed engineer;"
              + " local codes govern");

  /** Of a design value. */
  static final List<Caution> REFERENCE =
      List.of(
          Caution.limit(
              "a reference value still needs the adjustments of the local code, for duration of load,"
                  + " moisture, heat and grain",
              PRACTICE),
          LICENSED);

  /** Of a load at which something gives way. */
  static final List<Caution> ULTIMATE =
      List.of(
          Caution.limit(
              "this is the average load at which the wood lets go, no working load: that is about a"
                  + " fifth of it",
              Source.computed("5.5 for screws, 4.5 for lag screws, 5.7 for nails against the NDS")),
          LICENSED);

  /** Of a load up to which a joint springs back. */
  static final List<Caution> PROPORTIONAL =
      List.of(
          Caution.limit(
              "this is the average load up to which the joint springs back, no working load: the old"
                  + " allowable loads of screws were three quarters of it",
              Source.computed(
                  "4800/6400, 3960/5280, 3240/4320 and 2520/3380 for pounds and inches")),
          LICENSED);

  private HoldCautions() {}
}
