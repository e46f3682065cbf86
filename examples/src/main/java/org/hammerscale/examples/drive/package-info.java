/** Orders of what is driven into wood: spikes, drift bolts, staples, pintles. */
@NullMarked
package org.hammerscale.examples.drive;

import org.jspecify.annotations.NullMarked;
