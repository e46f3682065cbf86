/**
 * Pieces from the bars in the rack: which bars to buy, which offcuts to use, where to chalk the
 * cuts, and whether a cheaper way exists. The front door is {@link
 * org.hammerscale.cutting.CutList}; a {@link org.hammerscale.cutting.Rack} fills in what is at hand
 * and what can be bought; a {@link org.hammerscale.cutting.CuttingPlan} is the answer.
 *
 * <p>Policies: {@code null} is refused with a {@link NullPointerException}; any other bad argument
 * with an {@link IllegalArgumentException} that names the parameter, the value, the rule and what
 * to do. Nothing changes after it is made.
 */
@NullMarked
package org.hammerscale.cutting;

import org.jspecify.annotations.NullMarked;
