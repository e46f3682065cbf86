/**
 * Opening the bar: holes that are slit and drifted or punched, slots, splits, and what the chisel
 * takes. A slit loses nothing, a punch loses its slug, a saw its kerf.
 */
@NullMarked
package org.hammerscale.punching;

import org.jspecify.annotations.NullMarked;
