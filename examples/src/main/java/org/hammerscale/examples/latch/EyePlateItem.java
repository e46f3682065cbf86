package org.hammerscale.examples.latch;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a staple's loop on a plate alone. */
public final class EyePlateItem {
  public static final OrderItem WIDTH = OrderItem.of("width", Reading.LENGTH);
  public static final OrderItem HEIGHT = OrderItem.of("height", Reading.LENGTH);
  public static final OrderItem LOAD = OrderItem.of("load", Reading.LOAD);
  public static final OrderItem TIMBER = OrderItem.of("timber", Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.WIRE,
          WIDTH,
          HEIGHT,
          SetItem.BAR,
          SetItem.SCREW,
          SetItem.WOOD,
          TIMBER,
          LOAD,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private EyePlateItem() {}
}
