/** What an order is read from and written with, whatever is ordered. */
@NullMarked
package org.hammerscale.examples.order;

import org.jspecify.annotations.NullMarked;
