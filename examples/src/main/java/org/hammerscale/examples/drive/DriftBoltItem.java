package org.hammerscale.examples.drive;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a drift bolt alone. */
public final class DriftBoltItem {
  public static final OrderItem HEAD_ACROSS = OrderItem.of("head across", Reading.LENGTH);
  public static final OrderItem HEAD_HIGH = OrderItem.of("head high", Reading.LENGTH);
  public static final OrderItem WASHER = OrderItem.of("washer", Reading.LENGTH_OR_ZERO);
  public static final OrderItem THROUGH = OrderItem.of("through", Reading.LENGTH);
  public static final OrderItem TIMBER = OrderItem.of("timber", Reading.LENGTH);
  public static final OrderItem DEPTH = OrderItem.of("depth", Reading.LENGTH).atMost(TIMBER);
  public static final OrderItem LOAD = OrderItem.of("load", Reading.LOAD);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          HEAD_ACROSS,
          HEAD_HIGH,
          WASHER,
          THROUGH,
          TIMBER,
          DEPTH,
          SetItem.WOOD,
          LOAD,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private DriftBoltItem() {}
}
