/**
 * What the fire takes: the oxide that grows on hot iron and falls off under the hammer.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.scale.ScaleLoss}: how much does the bar lose, and what is left of
 *       its sizes?
 *   <li>{@link org.hammerscale.scale.HeatPlan}: what will the fire do to it: how many heats, how
 *       hot, how long?
 * </ul>
 *
 * <p>A shop learns what its own fire takes by a {@link org.hammerscale.scale.Weighing} or more.
 *
 * <p>A plan is told more closely by a {@link org.hammerscale.scale.FireHistory}, how hot and when,
 * and an {@link org.hammerscale.scale.Atmosphere}, what the iron stands in. {@link
 * org.hammerscale.scale.ScaleLaw} holds the published laws that the loss is reckoned by; {@link
 * org.hammerscale.scale.ScaleRule} the rules of thumb of forging works, for comparison.
 *
 * <p>All of it is an estimate, whose spread is that of its source or is said to be a judgement.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.scale;

import org.jspecify.annotations.NullMarked;
