/** The job sheets as one page for a browser, with drawings. */
@NullMarked
package org.hammerscale.examples.card;

import org.jspecify.annotations.NullMarked;
