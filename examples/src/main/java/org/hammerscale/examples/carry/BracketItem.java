package org.hammerscale.examples.carry;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a bracket alone. */
public final class BracketItem {
  public static final OrderItem ARM = OrderItem.of("arm", Reading.LENGTH);
  public static final OrderItem PLATE = OrderItem.of("plate", Reading.LENGTH);
  public static final OrderItem BEND = OrderItem.of("bend", Reading.LENGTH_OR_ZERO);
  public static final OrderItem SCREWS_AT =
      OrderItem.of(
          "screws at",
          Reading.lengths("places from the foot with ; between them, such as 20 mm; 150 mm"));
  public static final OrderItem BRACE_OUT =
      OrderItem.of(
          "brace out", Reading.lengthOr("none", "how far along the arm, such as 150 mm, or none"));
  public static final OrderItem BRACE_DOWN =
      OrderItem.of(
          "brace down",
          Reading.lengthOr("none", "how far down the plate, such as 150 mm, or none"));
  public static final OrderItem LOAD = OrderItem.of("load", Reading.LOAD);
  public static final OrderItem LOAD_OUT = OrderItem.of("load out", Reading.LENGTH).atMost(ARM);
  public static final OrderItem SIGN_WIDE =
      OrderItem.of(
          "sign wide", Reading.lengthOr("none", "how wide the sign is, such as 400 mm, or none"));
  public static final OrderItem SIGN_HIGH =
      OrderItem.of(
          "sign high", Reading.lengthOr("none", "how high the sign is, such as 300 mm, or none"));
  public static final OrderItem WIND = OrderItem.of("wind", Reading.WIND);
  public static final OrderItem SAFETY = OrderItem.of("safety", Reading.count(1, 100));
  public static final OrderItem WALL = OrderItem.of("wall", Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          ARM,
          PLATE,
          BEND,
          SCREWS_AT,
          BRACE_OUT,
          BRACE_DOWN,
          LOAD,
          LOAD_OUT,
          SIGN_WIDE,
          SIGN_HIGH,
          WIND,
          SAFETY,
          SetItem.SCREW,
          SetItem.WOOD,
          WALL,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private BracketItem() {}
}
