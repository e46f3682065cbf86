/** The moving joint of a pair of hinges: what is rolled round the pin, and how it turns. */
@NullMarked
package org.hammerscale.hinge;

import org.jspecify.annotations.NullMarked;
