/**
 * Opening the bar: what slitting, punching, sawing and splitting leave of it. A slit loses nothing,
 * a punch loses its slug, a saw its kerf.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.punching.DriftedHole}: how far does the bar swell and shorten round
 *       a hole that is slit and drifted?
 *   <li>{@link org.hammerscale.punching.PunchedHole}: what does a punch take, and what is left
 *       beside the hole?
 *   <li>{@link org.hammerscale.punching.Slot}: how wide is the tongue to punch out between two saw
 *       cuts?
 *   <li>{@link org.hammerscale.punching.FlatEye}: how large must a disc be before it is opened to
 *       an eye?
 *   <li>{@link org.hammerscale.punching.Split}: what becomes of the tines of a split bar?
 * </ul>
 *
 * <p>They are told of their {@link org.hammerscale.punching.Hole}, the finished shape. {@link
 * org.hammerscale.punching.Slit} is how long to cut for it, {@link org.hammerscale.punching.HotCut}
 * what the chisel costs.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.punching;

import org.jspecify.annotations.NullMarked;
