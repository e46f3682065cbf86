/**
 * Change of section: what is drawn out thinner and longer, spread, or jumped up thicker and
 * shorter.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.forging.Taper}: how much bar does a taper or a point take?
 *   <li>{@link org.hammerscale.forging.End}: how much does a penny, a bean, a spear or a fishtail
 *       take?
 *   <li>{@link org.hammerscale.forging.Shoulder}: how much does a tenon or a neck take?
 *   <li>{@link org.hammerscale.forging.Tenon}: how long must a tenon be that is riveted over?
 *   <li>{@link org.hammerscale.forging.DrawOut}: how long does this bar get at that section?
 *   <li>{@link org.hammerscale.forging.Upset}: how much bar does a thick stretch take, and will it
 *       buckle?
 *   <li>{@link org.hammerscale.forging.Spread}: how wide does a bar get that is hammered thin?
 * </ul>
 *
 * <p>Heads are {@link org.hammerscale.forging.Head} for rivets, nails and balls, {@link
 * org.hammerscale.forging.BoltHead} for bolts, and {@link org.hammerscale.forging.RivetBlank} for
 * the rivet that is closed in its hole. A {@link org.hammerscale.forging.SpreadLaw} says how much
 * of the thickness goes into width.
 *
 * <p>Volume is conserved throughout; what the hand takes beyond that is a {@link
 * org.hammerscale.forging.HandAllowance}.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.forging;

import org.jspecify.annotations.NullMarked;
