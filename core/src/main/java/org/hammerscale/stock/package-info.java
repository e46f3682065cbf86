/**
 * The bar before it is worked.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.stock.Section}: what shape is it, and how long is the same metal in
 *       another?
 *   <li>{@link org.hammerscale.stock.Bar}: what does it weigh?
 *   <li>{@link org.hammerscale.stock.Material}: what metal is it, and what does the fire do to it?
 *   <li>{@link org.hammerscale.stock.Feature}: how does a stretch of a piece, or a class of my own,
 *       say how much bar it uses?
 *   <li>{@link org.hammerscale.stock.Plain}: a stretch that is only cut to length.
 * </ul>
 *
 * <p>{@link org.hammerscale.stock.BarSizes} chooses among what can be bought; {@link
 * org.hammerscale.stock.Losses} names what a feature uses and does not keep, {@link
 * org.hammerscale.stock.Trimming} when it can be cut to length; a {@link
 * org.hammerscale.stock.ForwardingFeature} is another one but for an answer or two.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.stock;

import org.jspecify.annotations.NullMarked;
