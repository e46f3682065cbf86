/** How other shop software calls the library: an order file in, job sheets out. */
@NullMarked
package org.hammerscale.examples;

import org.jspecify.annotations.NullMarked;
