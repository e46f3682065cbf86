/** Orders of what closes: thumb latches, slide bolts, cabin hooks, hasps, springs. */
@NullMarked
package org.hammerscale.examples.latch;

import org.jspecify.annotations.NullMarked;
