/**
 * The sourced values that this library is checked against, for its own tests and those of any other
 * program: what goes in, what somebody else says comes out, how near one must come, and who says
 * so.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.checking.CheckTopic}: what can be checked, and by which values?
 *   <li>{@link org.hammerscale.checking.CheckValue}: what is asked here, and what is the answer?
 * </ul>
 *
 * <p>The values lie in the jar as plain CSV files, one a topic, all with the same columns; the page
 * {@code README.md} beside them describes those for a reader in any language. Nothing is read until
 * a topic is asked for its values, and no number until it is asked for.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.checking;

import org.jspecify.annotations.NullMarked;
