/**
 * Fixing the forged leaf: fasteners, their holes in the iron and in the wood behind it, and the
 * wood itself.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.fastening.WoodScrew}, {@link org.hammerscale.fastening.LagScrew},
 *       {@link org.hammerscale.fastening.CarriageBolt}, {@link org.hammerscale.fastening.Rivet},
 *       {@link org.hammerscale.fastening.ClenchedNail}: how long, and what hole does it want?
 *   <li>{@link org.hammerscale.fastening.Spike}: how long is what is driven, and how deep is it
 *       bored for?
 *   <li>{@link org.hammerscale.fastening.Countersink}: does the head lie flush in this strap?
 *   <li>{@link org.hammerscale.fastening.CountersunkHoles}: and where the leaf is tapered?
 *   <li>{@link org.hammerscale.fastening.PilotHole}: what is drilled in the wood?
 *   <li>{@link org.hammerscale.fastening.IronHole}: what does the hole leave of the strap?
 *   <li>{@link org.hammerscale.fastening.WoodSpacing}: how far from one another, from edge and end?
 * </ul>
 *
 * <p>Other screws are the {@link org.hammerscale.fastening.MetricWoodScrew} and the {@link
 * org.hammerscale.fastening.OldBritishWoodScrew}; a caller's own can be a {@link
 * org.hammerscale.fastening.WoodFastener} or a {@link org.hammerscale.fastening.CountersunkHead}.
 * The distances are those of an {@link org.hammerscale.fastening.IronHoleRule} in the iron and a
 * {@link org.hammerscale.fastening.SpacingRule} in the wood; {@link
 * org.hammerscale.fastening.SeamClearance} is that of a joint between boards. {@link
 * org.hammerscale.fastening.Wood} has a gravity on two bases, {@link
 * org.hammerscale.fastening.OvenDryGravity} and {@link
 * org.hammerscale.fastening.TwelvePercentGravity}, which are two types so that no rule gets the
 * wrong one.
 *
 * <p>Where the holes go is in {@link org.hammerscale.spacing}, what they hold in {@link
 * org.hammerscale.holding}.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.fastening;

import org.jspecify.annotations.NullMarked;
