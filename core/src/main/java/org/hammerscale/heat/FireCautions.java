package org.hammerscale.heat;

import java.util.List;
import org.hammerscale.working.Caution;

/**
 * The dangers of the fire, whatever is forged: to be printed with every sheet that sends somebody
 * to it. Other names: {@index "safety notes"}, {@index warnings}.
 *
 * <pre>{@code
 * FireCautions.all().size()      // 7  what every sheet of forging carries
 * FireCautions.CARBON_MONOXIDE   // a fire needs air and a flue: carbon monoxide kills and does not smell
 * FireCautions.BURNS.isDanger()  // true  to be printed apart from a rule that is out of its range
 * }</pre>
 *
 * <p>They are reminders, not a safety instruction: local rules govern. Source: common practice.
 */
public final class FireCautions {
  /** Zinc, paint, lead and oil in the fire. */
  public static final Caution COATED_STOCK =
      Caution.danger(
          "never heat stock that is zinc-coated, plated, painted or oily, nor brass with lead: the"
              + " fumes poison; strip it cold, far enough back, or take clean stock");

  /** What an indoor fire without a draught does. */
  public static final Caution CARBON_MONOXIDE =
      Caution.danger("a fire needs air and a flue: carbon monoxide kills and does not smell");

  /** Bar that burns without a glow. */
  public static final Caution BURNS =
      Caution.danger(
          "iron burns the hand at any heat, in the tongs and on the floor: keep water and a way"
              + " out at hand");

  /** Heat that cannot be seen. */
  public static final Caution HIDDEN_HEAT =
      Caution.danger(
          "below red heat iron looks cold and is not: treat every piece as hot until a hand held"
              + " over it says otherwise");

  /** What flies off under the hammer. */
  public static final Caution EYES =
      Caution.danger(
          "wear eye protection: scale, sparks and chips fly, grinding and quenching too");

  /** What is sealed bursts. */
  public static final Caution CLOSED_TUBE =
      Caution.danger(
          "a sealed tube or a closed barrel bursts in the fire: leave one end open or drill a vent"
              + " through the wall");

  /** Whose rules hold. */
  public static final Caution LOCAL_RULES =
      Caution.danger("local rules for fire, fumes and work govern, before anything said here");

  private static final List<Caution> ALL =
      List.of(COATED_STOCK, CARBON_MONOXIDE, BURNS, HIDDEN_HEAT, EYES, CLOSED_TUBE, LOCAL_RULES);

  private FireCautions() {}

  /** {@return all of them, in the order they are printed} */
  public static List<Caution> all() {
    return ALL;
  }
}
