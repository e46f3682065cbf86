/**
 * What it looks like: drawings at true scale to lay hot iron on, as SVG, without a dependency.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.drawing.BarDrawing}: where do the marks go on the cold bar?
 *   <li>{@link org.hammerscale.drawing.LeafDrawing}: what does the finished piece look like?
 *   <li>{@link org.hammerscale.drawing.HingeDrawing}: how does it hang, and what stops it?
 *   <li>{@link org.hammerscale.drawing.LatchDrawing}: where do bolt, latch, hasp or hook go on the
 *       door; how is its spring cut?
 *   <li>{@link org.hammerscale.drawing.PicketDrawing}: where along the rail does each picket stand?
 *   <li>{@link org.hammerscale.drawing.HoleTemplate}: where do I drill?
 *   <li>{@link org.hammerscale.drawing.BentDrawing}: what do I lay the hot hook or scroll on?
 *   <li>{@link org.hammerscale.drawing.HookDrawing}: what section is a hook that carries drawn to?
 *   <li>{@link org.hammerscale.drawing.ChainDrawing}: what do the links of a chain look like?
 *   <li>{@link org.hammerscale.drawing.BracketDrawing}: where do its screws go on the wall?
 *   <li>{@link org.hammerscale.drawing.DrivenDrawing}: how deep does a spike or a pintle reach?
 *   <li>{@link org.hammerscale.drawing.BasketDrawing}: how does the basket look when it is open?
 *   <li>{@link org.hammerscale.drawing.CurveDrawing}: how does it change with time or number?
 *   <li>{@link org.hammerscale.drawing.CuttingDrawing}: which bar is chalked where?
 *   <li>{@link org.hammerscale.drawing.Drawing}: how do I print it?
 * </ul>
 *
 * <p>{@link org.hammerscale.drawing.Paper} is what it is printed on.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.drawing;

import org.jspecify.annotations.NullMarked;
