/**
 * What iron bears: the loads of doors, gates and lids, and what pins, hooks, barrels and drilled
 * straps do under them.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.strength.DoorLoad}: what pulls on each hinge of this gate?
 *   <li>{@link org.hammerscale.strength.PinSize}: how thick must the pin be?
 *   <li>{@link org.hammerscale.strength.BarrelOpening}: when does the curl open?
 *   <li>{@link org.hammerscale.strength.HingeHook}: does the hook bend, and where do I drill the
 *       post?
 *   <li>{@link org.hammerscale.strength.CarryingHook}: when does a hook open that something hangs
 *       from?
 *   <li>{@link org.hammerscale.strength.AngleBracket}: how much bar does a bracket take, and where
 *       does its brace sit?
 *   <li>{@link org.hammerscale.strength.Bracket}: what does a shelf or a sign pull at its screws?
 *   <li>{@link org.hammerscale.strength.NetSection}, {@link org.hammerscale.strength.Bearing}: what
 *       is left of the strap at its holes?
 * </ul>
 *
 * <p>{@link org.hammerscale.strength.PinLoad}, {@link org.hammerscale.strength.HookPin} and {@link
 * org.hammerscale.strength.LidLoad} answer for one part; a {@link
 * org.hammerscale.strength.PermissibleStress} is strength and safety factor together. {@link
 * org.hammerscale.strength.HingeCount}, {@link org.hammerscale.strength.StrapRule} and {@link
 * org.hammerscale.strength.HingeGrade} are the trade's guidance. All of it is statics of the loads
 * that are counted: no certified design.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.strength;

import org.jspecify.annotations.NullMarked;
