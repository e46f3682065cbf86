/**
 * What closes: bolts, latches, hooks and hasps, each as parts that fit each other.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.latch.SlideBolt}: how far apart are its staples, how wide its
 *       keeper?
 * </ul>
 *
 * <p>A {@link org.hammerscale.latch.Staple} is what many of them shut into; a {@link
 * org.hammerscale.latch.DoorMovement} is what they must allow for. What they bear is asked of
 * {@code strength}, what tears them out of {@code holding}.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.latch;

import org.jspecify.annotations.NullMarked;
