package org.hammerscale.examples.rail;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a bar with a riveted tenon alone. */
public final class TenonItem {
  public static final OrderItem LENGTH = OrderItem.of("length", Reading.LENGTH);
  public static final OrderItem TENON = OrderItem.of("tenon", Reading.SECTION);
  public static final OrderItem THROUGH = OrderItem.of("through", Reading.LENGTH);
  public static final OrderItem HEAD_ACROSS = OrderItem.of("head across", Reading.LENGTH);
  public static final OrderItem HEAD_HIGH = OrderItem.of("head high", Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          LENGTH,
          TENON,
          THROUGH,
          HEAD_ACROSS,
          HEAD_HIGH,
          SetItem.CLEARANCE,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private TenonItem() {}
}
