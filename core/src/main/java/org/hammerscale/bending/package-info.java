/**
 * Change of direction: the bar is bent, turned, wound or twisted, and keeps its section. How much
 * bar a bend uses follows from the line in its thickness that keeps its length, a {@link
 * org.hammerscale.bending.NeutralLine}; hot work keeps the mean line.
 */
@NullMarked
package org.hammerscale.bending;

import org.jspecify.annotations.NullMarked;
