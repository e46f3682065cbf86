/** Orders of what carries: brackets and hooks. */
@NullMarked
package org.hammerscale.examples.carry;

import org.jspecify.annotations.NullMarked;
