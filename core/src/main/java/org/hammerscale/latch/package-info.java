/**
 * What closes: bolts, latches, hooks and hasps, each as parts that fit each other.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.latch.ThumbLatch}: does the thumb lift the bar out of its catch?
 *   <li>{@link org.hammerscale.latch.SlideBolt}: how far apart are its staples, how wide its
 *       keeper?
 *   <li>{@link org.hammerscale.latch.CabinHook}: how long is the hook, and where do its eyes go?
 *   <li>{@link org.hammerscale.latch.Hasp}: how long is its slot, how high the staple for a
 *       padlock?
 *   <li>{@link org.hammerscale.latch.LatchSpring}: how far does the spring give, and does it bear
 *       it? {@link org.hammerscale.latch.FittedSpring}: what does it press at rest and at travel?
 * </ul>
 *
 * <p>A {@link org.hammerscale.latch.Staple} is what many of them shut into, and a {@link
 * org.hammerscale.latch.StaplePlate} carries one where wood does not; a {@link
 * org.hammerscale.latch.DoorMovement} is what they must allow for; a {@link
 * org.hammerscale.latch.LatchCatch} keeps a bar, a {@link org.hammerscale.latch.HandleRule} says
 * how much room fingers need. What they bear is asked of {@code strength}, what tears them out of
 * {@code holding}.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.latch;

import org.jspecify.annotations.NullMarked;
