/**
 * What heat does to the bar: how long it can be worked, how often it goes back into the fire, how
 * much longer it is hot than cold, and what colour it shows.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.heat.Cooling}: how long is the bar hot enough to work?
 *   <li>{@link org.hammerscale.heat.Heats}: how many heats does the piece take?
 *   <li>{@link org.hammerscale.heat.Contraction}: what must a size read hot, and what is it when
 *       cold?
 *   <li>{@link org.hammerscale.heat.HeatColour}: what colour is that heat, and how hot is that
 *       colour?
 * </ul>
 *
 * <p>Behind them stand {@link org.hammerscale.heat.HotMetal}, the curves of the metal, and {@link
 * org.hammerscale.heat.Air}, what the bar cools in. {@link org.hammerscale.heat.FireCautions} are
 * the dangers that every sheet names. What the fire takes from the bar is in {@link
 * org.hammerscale.scale}.
 *
 * <p>Temperatures are points, in °C or °F. What depends on the fire is an estimate, whose spread is
 * that of its source or is said to be a judgement.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.heat;

import org.jspecify.annotations.NullMarked;
