/** Orders of what closes: thumb latches, slide bolts, cabin hooks, hasps. */
@NullMarked
package org.hammerscale.examples.latch;

import org.jspecify.annotations.NullMarked;
