/**
 * How an answer was found: formula, numbers, source and cautions, for the smith who wants to see it
 * and the tester who wants to check it.
 *
 * <p>Policies of the whole library: {@code null} is refused with a {@link NullPointerException};
 * any other bad argument with an {@link IllegalArgumentException} that names the parameter, the
 * value, the rule and what to do. Nothing changes after it is made.
 */
@NullMarked
package org.hammerscale.working;

import org.jspecify.annotations.NullMarked;
