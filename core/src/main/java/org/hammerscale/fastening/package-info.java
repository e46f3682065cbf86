/** Fixing the forged leaf: fasteners, their holes in the iron and over the wood, what they hold. */
@NullMarked
package org.hammerscale.fastening;

import org.jspecify.annotations.NullMarked;
