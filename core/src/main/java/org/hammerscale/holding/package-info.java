/**
 * What wood holds: fasteners pulled out of it and pushed sideways, one by one and in a row.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.holding.ReferenceWithdrawal}: what may a screw bear that is pulled
 *       straight out?
 *   <li>{@link org.hammerscale.holding.LateralHold}: what does it bear from the side before the
 *       joint gives?
 *   <li>{@link org.hammerscale.holding.StrapScrews}: which screws does this strap ask for, how many
 *       and how long?
 *   <li>{@link org.hammerscale.holding.DrivenStaple}, {@link org.hammerscale.holding.DriftBolt}:
 *       what does iron hold that is driven?
 *   <li>{@link org.hammerscale.holding.FastenerRow}: how much do several bear together, and how
 *       much the first?
 * </ul>
 *
 * <p>{@link org.hammerscale.holding.UltimateWithdrawal} is the load at which the wood lets go, some
 * five times a working load. {@link org.hammerscale.holding.AllowableLateral} is an old working
 * load from the side.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.holding;

import org.jspecify.annotations.NullMarked;
