package org.hammerscale.examples.rail;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a collar alone. */
public final class CollarItem {
  public static final OrderItem BARS = OrderItem.of("bars", Reading.count(1, 20));
  public static final OrderItem EACH = OrderItem.of("each", Reading.SECTION);
  public static final OrderItem ENDS =
      OrderItem.of("ends", Reading.oneOf(CollarOrder.Ends.values()));

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          BARS,
          EACH,
          ENDS,
          SetItem.KERF,
          SetItem.GRADUATION);

  private CollarItem() {}
}
