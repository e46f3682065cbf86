/** Orders of what carries: brackets, hooks and chains. */
@NullMarked
package org.hammerscale.examples.carry;

import org.jspecify.annotations.NullMarked;
