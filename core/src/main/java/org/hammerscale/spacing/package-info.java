/**
 * Where things go along a length: rows of holes that miss seams and keep their distances, pickets
 * between posts.
 *
 * <p>Where to begin: {@link org.hammerscale.spacing.HoleRow}: where do the holes of this leaf go,
 * how far apart can they lie, and how many fit? It is told what to miss by {@link
 * org.hammerscale.spacing.ClosedStretch}s, and answers with a {@link
 * org.hammerscale.spacing.HoleLayout}, the places and what decided them. How far apart the wood
 * wants them is in {@link org.hammerscale.fastening}. {@link org.hammerscale.spacing.PicketRow}:
 * how many pickets or balusters go between these posts, and where?
 *
 * <p>Policies are those of {@linkplain org.hammerscale.working the whole library}: {@code null} is
 * refused with a {@link NullPointerException}, any other bad argument with an {@link
 * IllegalArgumentException} that says what to do.
 */
@NullMarked
package org.hammerscale.spacing;

import org.jspecify.annotations.NullMarked;
