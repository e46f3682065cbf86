/**
 * How an answer was found: formula, numbers, source and cautions, for the smith who wants to see it
 * and the tester who wants to check it.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.working.Working}: how was this answer found?
 *   <li>{@link org.hammerscale.working.Caution}: what must I know before I trust it?
 *   <li>{@link org.hammerscale.working.Notes}: how does a calculation of my own get a working?
 * </ul>
 *
 * <p>A {@link org.hammerscale.working.Step} is one line of a working: a symbol, its meaning,
 * formula and value. A {@link org.hammerscale.working.Source} says where a rule comes from, and how
 * sure that is.
 *
 * <p>Policies of the whole library: {@code null} is refused with a {@link NullPointerException};
 * any other bad argument with an {@link IllegalArgumentException} that names the parameter, the
 * value, the rule and what to do. Nothing changes after it is made.
 */
@NullMarked
package org.hammerscale.working;

import org.jspecify.annotations.NullMarked;
