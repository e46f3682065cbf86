/** What wood holds: fasteners pulled out of it and pushed sideways, one by one and in a row. */
@NullMarked
package org.hammerscale.holding;

import org.jspecify.annotations.NullMarked;
