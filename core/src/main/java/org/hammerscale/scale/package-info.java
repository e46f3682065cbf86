/**
 * What the fire takes: the oxide that grows on hot iron and falls off under the hammer.
 *
 * <p>All of it is an estimate, whose spread is that of its source or is said to be a judgement.
 */
@NullMarked
package org.hammerscale.scale;

import org.jspecify.annotations.NullMarked;
