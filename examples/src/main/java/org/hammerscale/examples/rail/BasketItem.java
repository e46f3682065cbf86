package org.hammerscale.examples.rail;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a basket alone. */
public final class BasketItem {
  public static final OrderItem HEIGHT = OrderItem.of("height", Reading.LENGTH);
  public static final OrderItem TURNS = OrderItem.of("turns", Reading.TURNS);
  public static final OrderItem BULGE = OrderItem.of("bulge", Reading.LENGTH);
  public static final OrderItem WELD = OrderItem.of("weld", Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          HEIGHT,
          TURNS,
          BULGE,
          WELD,
          SetItem.KERF,
          SetItem.GRADUATION);

  private BasketItem() {}
}
