/** Where things go along a length: rows of holes that miss seams and keep their distances. */
@NullMarked
package org.hammerscale.spacing;

import org.jspecify.annotations.NullMarked;
