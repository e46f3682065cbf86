/**
 * Change of section: what is drawn out thinner and longer, spread, or jumped up thicker and
 * shorter. Volume is conserved throughout; what the hand takes beyond that is a {@link
 * org.hammerscale.forging.HandAllowance}.
 */
@NullMarked
package org.hammerscale.forging;

import org.jspecify.annotations.NullMarked;
