/**
 * Pieces: features along a bar, the length to cut, and the marks to punch before the fire is lit.
 */
@NullMarked
package org.hammerscale.piece;

import org.jspecify.annotations.NullMarked;
