package org.hammerscale.examples.carry;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a carrying hook alone. */
public final class CarryingHookItem {
  public static final OrderItem EYE = OrderItem.of("eye", Reading.LENGTH);
  public static final OrderItem SHANK = OrderItem.of("shank", Reading.LENGTH);
  public static final OrderItem INSIDE = OrderItem.of("inside", Reading.LENGTH);
  public static final OrderItem TIP = OrderItem.of("tip", Reading.LENGTH_OR_ZERO);
  public static final OrderItem BEYOND_CENTRE =
      OrderItem.of("beyond centre", Reading.LENGTH_OR_ZERO);
  public static final OrderItem LOAD = OrderItem.of("load", Reading.LOAD);
  public static final OrderItem SAFETY = OrderItem.of("safety", Reading.count(1, 100));

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          EYE,
          SHANK,
          INSIDE,
          TIP,
          BEYOND_CENTRE,
          LOAD,
          SAFETY,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private CarryingHookItem() {}
}
