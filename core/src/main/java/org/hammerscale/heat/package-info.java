/**
 * What the fire does: how much longer a hot bar is than a cold one, what colour it shows, how long
 * it can be worked before it is too cold, how much of it falls off as scale, and how many heats a
 * piece takes.
 *
 * <p>Temperatures are points, in °C or °F. What depends on the fire is an estimate, whose spread is
 * that of its source or is said to be a judgement.
 */
@NullMarked
package org.hammerscale.heat;

import org.jspecify.annotations.NullMarked;
