package org.hammerscale.examples.order;

import java.util.Locale;
import java.util.Optional;

/** What a block of an order file says of each of its jobs, and what it may say there. */
public interface OrderItem {
  /** Its name as a constant, such as {@code BAR_WIDTH}. */
  String name();

  /** How its cells are read. */
  Reading<?> reading();

  /** The item that its length may not be more than. */
  default Optional<? extends OrderItem> limit() {
    return Optional.empty();
  }

  /**
   * Whether hinges and what belongs to them have it in common, so that it may be told {@code as
   * hinges}.
   */
  default boolean isOfSet() {
    return false;
  }

  /** How it is called in a file, such as {@code bar width}. */
  default String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
