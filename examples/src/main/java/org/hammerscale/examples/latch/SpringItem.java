package org.hammerscale.examples.latch;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a latch's spring alone. */
public final class SpringItem {
  public static final OrderItem LENGTH = OrderItem.of("length", Reading.LENGTH);
  public static final OrderItem FOOT = OrderItem.of("foot", Reading.LENGTH);
  public static final OrderItem TIP_WIDTH = OrderItem.of("tip width", Reading.LENGTH);
  public static final OrderItem HOLES = OrderItem.of("holes", Reading.count(1, 4));
  public static final OrderItem HOLE = OrderItem.of("hole", Reading.LENGTH);
  public static final OrderItem SET = OrderItem.of("set", Reading.LENGTH);
  public static final OrderItem TRAVEL = OrderItem.of("travel", Reading.LENGTH);
  public static final OrderItem PRESS = OrderItem.of("press", Reading.LOAD);
  public static final OrderItem LIMIT = OrderItem.of("limit", Reading.STRESS);
  public static final OrderItem HARDEN = OrderItem.of("harden", Reading.HEAT);
  public static final OrderItem TEMPER = OrderItem.of("temper", Reading.HEAT);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          LENGTH,
          FOOT,
          TIP_WIDTH,
          HOLES,
          HOLE,
          SET,
          TRAVEL,
          PRESS,
          LIMIT,
          HARDEN,
          TEMPER,
          SetItem.KERF,
          SetItem.GRADUATION);

  private SpringItem() {}
}
