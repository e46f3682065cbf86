package org.hammerscale.bending;

import org.hammerscale.stock.Feature;

/**
 * A stretch that is bent in a plane and knows the line that its middle follows, so that it can be
 * drawn to lay the work on. A caller's own feature can be one.
 */
public interface Bent extends Feature {
  /** {@return the line of its middle, in the plane that it is bent in} */
  MeanLine meanLine();
}
