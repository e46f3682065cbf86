/** Measures, estimates and answers as JSON: one class to copy. */
@NullMarked
package org.hammerscale.examples.json;

import org.jspecify.annotations.NullMarked;
