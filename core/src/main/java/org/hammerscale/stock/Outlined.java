package org.hammerscale.stock;

/**
 * A {@link Feature} that knows how it looks, beyond a straight run from the section where it begins
 * to the one where it ends. Drawings ask for it; a caller's own feature implements both.
 */
public interface Outlined {
  /**
   * How it looks when it is finished.
   *
   * @return its silhouette, from where the feature begins, as long as it reaches
   */
  Silhouette outline();
}
