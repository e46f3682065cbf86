package org.hammerscale.examples;

import java.util.function.Supplier;

/** Values of a job that cannot be put together, and the item that its customer should look at. */
final class Blame extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final OrderItem item;

  private Blame(OrderItem item, IllegalArgumentException cause) {
    super(cause.getMessage(), cause);
    this.item = item;
  }

  OrderItem item() {
    return item;
  }

  /** Takes a step that is refused, if it is, because of one item. */
  static <T> T on(OrderItem item, Supplier<T> step) {
    try {
      return step.get();
    } catch (IllegalArgumentException e) {
      throw new Blame(item, e);
    }
  }
}
