package org.hammerscale.examples.drive;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a pair of driven pintles alone. */
public final class PintleItem {
  public static final OrderItem PIN = OrderItem.of("pin", Reading.LENGTH);
  public static final OrderItem BARREL = OrderItem.of("barrel", Reading.LENGTH);
  public static final OrderItem WASHERS = OrderItem.of("washers", Reading.LENGTH_OR_ZERO);
  public static final OrderItem PROJECTION = OrderItem.of("projection", Reading.LENGTH);
  public static final OrderItem POINT = OrderItem.of("point", Reading.LENGTH);
  public static final OrderItem POST = OrderItem.of("post", Reading.LENGTH);
  public static final OrderItem DEPTH = OrderItem.of("depth", Reading.LENGTH).atMost(POST);
  public static final OrderItem DOOR = OrderItem.of("door", Reading.LOAD);
  public static final OrderItem DOOR_WIDTH = OrderItem.of("door width", Reading.LENGTH);
  public static final OrderItem CENTRES = OrderItem.of("centres", Reading.LENGTH);
  public static final OrderItem SAFETY = OrderItem.of("safety", Reading.count(1, 100));

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          PIN,
          BARREL,
          WASHERS,
          PROJECTION,
          POINT,
          DEPTH,
          POST,
          SetItem.WOOD,
          DOOR,
          DOOR_WIDTH,
          CENTRES,
          SAFETY,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private PintleItem() {}
}
