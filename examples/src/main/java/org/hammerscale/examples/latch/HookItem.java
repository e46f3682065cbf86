package org.hammerscale.examples.latch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a cabin hook alone. */
public final class HookItem {
  public static final OrderItem EYE_ON_DOOR = OrderItem.of("eye on door", Reading.LENGTH);
  public static final OrderItem DOOR_EYE_OFF = OrderItem.of("door eye off", Reading.PLACE);
  public static final OrderItem EYE_ON_WALL = OrderItem.of("eye on wall", Reading.PLACE);
  public static final OrderItem WALL_EYE_OFF = OrderItem.of("wall eye off", Reading.PLACE);
  public static final OrderItem HELD_OPEN = OrderItem.of("held open", Reading.OPENING);
  public static final OrderItem STANDING_OFF = OrderItem.of("standing off", Reading.LENGTH);
  public static final OrderItem EYES = OrderItem.of("eyes", Reading.oneOf(Texts.eyes()));
  public static final OrderItem EYE_DEPTH = OrderItem.of("eye depth", Reading.LENGTH);

  private static final class Texts {
    /** Whether they are staples. */
    static Map<String, Boolean> eyes() {
      Map<String, Boolean> eyes = new LinkedHashMap<>();
      eyes.put("screw eyes", false);
      eyes.put("staples", true);
      return eyes;
    }
  }

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.WIRE,
          EYE_ON_DOOR,
          DOOR_EYE_OFF,
          EYE_ON_WALL,
          WALL_EYE_OFF,
          HELD_OPEN,
          STANDING_OFF,
          EYES,
          EYE_DEPTH,
          SetItem.CLEARANCE,
          SetItem.COAT,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private HookItem() {}
}
