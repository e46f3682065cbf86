/**
 * Change of direction: the bar is bent, turned, wound or twisted, and keeps its section.
 *
 * <p>Where to begin, each with the question how much bar it takes:
 *
 * <ul>
 *   <li>{@link org.hammerscale.bending.Bend}: one bend of any angle; {@link
 *       org.hammerscale.bending.SquareCorner}: one forged sharp.
 *   <li>{@link org.hammerscale.bending.Ring}: a hoop; {@link org.hammerscale.bending.Link} and XX *
 *   <li>{@link org.hammerscale.bending.Eye} and {@link org.hammerscale.bending.Hook}: what ends a
 *       bar; {@link org.hammerscale.bending.UBend}: a staple.
 *   <li>{@link org.hammerscale.bending.Scroll} and {@link org.hammerscale.bending.Coil}: what is
 *       wound; {@link org.hammerscale.bending.Course}: any curve that was drawn and measured.
 *   <li>{@link org.hammerscale.bending.Joggle} and {@link org.hammerscale.bending.Twist}: what runs
 *       on as before.
 *   <li>{@link org.hammerscale.bending.Collar} and {@link org.hammerscale.bending.Basket}: what
 *       goes round bars; {@link org.hammerscale.bending.ChainPattern} and {@link
 *       org.hammerscale.bending.HookProportions}: sizes of links and hooks as handbooks have them.
 * </ul>
 *
 * <p>How much bar a bend uses follows from the line in its thickness that keeps its length, a
 * {@link org.hammerscale.bending.NeutralLine}; hot work keeps the mean line. What closes is welded
 * with a {@link org.hammerscale.bending.WeldAllowance}. The barrel of a hinge is in {@link
 * org.hammerscale.hinge}.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.bending;

import org.jspecify.annotations.NullMarked;
