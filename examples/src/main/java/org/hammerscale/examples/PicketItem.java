package org.hammerscale.examples;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a row of pickets alone. */
final class PicketItem {
  static final OrderItem SPAN = OrderItem.of("span", Reading.LENGTH);
  static final OrderItem SPHERE = OrderItem.of("sphere", Reading.LENGTH);
  static final OrderItem TOLERANCE = OrderItem.of("tolerance", Reading.LENGTH_OR_ZERO);
  static final OrderItem RAKE = OrderItem.of("rake", Reading.SLOPE);
  static final OrderItem LENGTH = OrderItem.of("length", Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          SPAN,
          SPHERE,
          TOLERANCE,
          RAKE,
          LENGTH,
          SetItem.KERF,
          SetItem.GRADUATION);

  private PicketItem() {}
}
