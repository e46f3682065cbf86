package org.hammerscale.examples.latch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a hasp and its staple alone. */
public final class HaspItem {
  public static final OrderItem HUNG_ON = OrderItem.of("hung on", Reading.ROUND);
  public static final OrderItem STAPLE_AT = OrderItem.of("staple at", Reading.LENGTH);
  public static final OrderItem LEGS = OrderItem.of("legs", Reading.oneOf(Texts.legs()));
  public static final OrderItem STAPLE_WIDTH = OrderItem.of("staple width", Reading.LENGTH);
  public static final OrderItem STAPLE_DEPTH = OrderItem.of("staple depth", Reading.LENGTH);
  public static final OrderItem SHACKLE = OrderItem.of("shackle", Reading.LENGTH);
  public static final OrderItem SHACKLE_ROOM = OrderItem.of("shackle room", Reading.LENGTH_OR_ZERO);
  public static final OrderItem BEYOND = OrderItem.of("beyond", Reading.LENGTH);

  private static final class Texts {
    /** Whether they stand in line along the hasp. */
    static Map<String, Boolean> legs() {
      Map<String, Boolean> legs = new LinkedHashMap<>();
      legs.put("in line", true);
      legs.put("across", false);
      return legs;
    }
  }

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          SetItem.WIRE,
          HUNG_ON,
          STAPLE_AT,
          LEGS,
          STAPLE_WIDTH,
          STAPLE_DEPTH,
          SHACKLE,
          SHACKLE_ROOM,
          BEYOND,
          SetItem.CLEARANCE,
          SetItem.COAT,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private HaspItem() {}
}
