/**
 * Pieces: features along a bar, the length to cut, the marks to punch before the fire is lit, and
 * what is trimmed off.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.piece.Piece}: what do I want to forge, from which bar?
 *   <li>{@link org.hammerscale.piece.Layout}: how much bar does it take, and where does each
 *       stretch lie?
 *   <li>{@link org.hammerscale.piece.MarkedBar}: what do I cut and punch, on my rule, enough 19
 *       times in 20?
 *   <li>{@link org.hammerscale.piece.Trim}: what comes off, when, and how long is it there?
 *   <li>{@link org.hammerscale.piece.TrialLog}: the first {@link org.hammerscale.piece.Trial} is
 *       forged and trimmed; what do I cut next, and what does each end teach ({@link
 *       org.hammerscale.piece.EndTrials})? A {@link org.hammerscale.piece.TrialBook} keeps them as
 *       text.
 *   <li>{@link org.hammerscale.piece.MatchedSet}: which finished pieces go together, and in which
 *       {@link org.hammerscale.piece.MatchedSize} first? A {@link
 *       org.hammerscale.piece.MatchedPair} tells by how much they differ.
 * </ul>
 *
 * <p>{@link org.hammerscale.piece.Mark} and {@link org.hammerscale.piece.BenchMark} are the places
 * between two stretches, before and after they are put on a rule; {@link
 * org.hammerscale.piece.PieceEnd} names the ends.
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.piece;

import org.jspecify.annotations.NullMarked;
