/** Change of section: what is drawn out thinner and longer, or jumped up thicker and shorter. */
@NullMarked
package org.hammerscale.forging;

import org.jspecify.annotations.NullMarked;
