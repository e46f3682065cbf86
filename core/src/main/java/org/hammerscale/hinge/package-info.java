/**
 * The moving joint of a pair of hinges: what is rolled round the pin, how it is divided, how it
 * turns, and the tools that make it.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.hinge.HingePair}: what do I cut, slot, drift and drill for two
 *       leaves that fit?
 *   <li>{@link org.hammerscale.hinge.Barrel}: how much bar does the rolled eye take, and how large
 *       does it come out?
 *   <li>{@link org.hammerscale.hinge.Knuckles}: where do the slots go, on the marks of my rule?
 *   <li>{@link org.hammerscale.hinge.Swing}: how far does it open, and what stops it?
 *   <li>{@link org.hammerscale.hinge.Drift}, {@link org.hammerscale.hinge.Swage}: which tool do I
 *       take from the rack?
 *   <li>{@link org.hammerscale.hinge.Pin}: how long do I cut the pin?
 * </ul>
 *
 * <p>A {@link org.hammerscale.hinge.Bore} says what pin a barrel is made for, a {@link
 * org.hammerscale.hinge.BarrelEnd} how its end meets the leaf, {@link
 * org.hammerscale.hinge.BarrelClosing} what follows for strip and slots. {@link
 * org.hammerscale.hinge.LeafProfile}, {@link org.hammerscale.hinge.Board} and {@link
 * org.hammerscale.hinge.Hanging} describe what swings; {@link org.hammerscale.hinge.PinStandOff}
 * and {@link org.hammerscale.hinge.DoorEdge} how far the pin and the door keep off. What a hinge
 * carries is asked in {@code strength}.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.hinge;

import org.jspecify.annotations.NullMarked;
