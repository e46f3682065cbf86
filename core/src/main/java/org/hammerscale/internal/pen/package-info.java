/**
 * Pen and paper: lines, letters, sizes and hatching in millimetres, and the sheet they are written
 * on as SVG. It knows nothing of iron; drawings alone hold it, and the module does not export it.
 */
@NullMarked
package org.hammerscale.internal.pen;

import org.jspecify.annotations.NullMarked;
