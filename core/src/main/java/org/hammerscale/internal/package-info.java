/** What several packages need and no caller does; the module does not export it. */
@NullMarked
package org.hammerscale.internal;

import org.jspecify.annotations.NullMarked;
