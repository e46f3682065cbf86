package org.hammerscale.examples.order;

import java.util.Map;
import java.util.function.Supplier;

/** Values of a job that cannot be put together, and the item that its customer should look at. */
public final class Blame extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient OrderItem item;

  private Blame(OrderItem item, IllegalArgumentException cause) {
    super(cause.getMessage(), cause);
    this.item = item;
  }

  public OrderItem item() {
    return item;
  }

  /** Takes a step that is refused, if it is, because of one item. */
  public static <T> T on(OrderItem item, Supplier<T> step) {
    try {
      return step.get();
    } catch (IllegalArgumentException e) {
      throw new Blame(item, e);
    }
  }

  /**
   * The same step, which names what it refuses: a refusal begins with the name of the parameter.
   *
   * @param items what each parameter is called in a file
   * @param other the item to look at for any other
   */
  public static <T> T by(Map<String, OrderItem> items, OrderItem other, Supplier<T> step) {
    try {
      return step.get();
    } catch (IllegalArgumentException e) {
      String parameter = String.valueOf(e.getMessage()).split(" ", 2)[0];
      throw new Blame(items.getOrDefault(parameter, other), e);
    }
  }
}
