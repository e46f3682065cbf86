/** Orders of what goes round the bars of a rail and joins them: collars, baskets, tenons. */
@NullMarked
package org.hammerscale.examples.rail;

import org.jspecify.annotations.NullMarked;
