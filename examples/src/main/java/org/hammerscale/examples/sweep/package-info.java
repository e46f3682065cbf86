/** What if the bar were wider, or the pin stouter? Every choice tried, the best told. */
@NullMarked
package org.hammerscale.examples.sweep;

import org.jspecify.annotations.NullMarked;
