package org.hammerscale.examples.latch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a cabin hook alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum HookItem implements OrderItem {
  EYE_ON_DOOR(Reading.LENGTH),
  DOOR_EYE_OFF(Reading.PLACE),
  EYE_ON_WALL(Reading.PLACE),
  WALL_EYE_OFF(Reading.PLACE),
  HELD_OPEN(Reading.OPENING),
  STANDING_OFF(Reading.LENGTH),
  EYES(Reading.oneOf(Texts.eyes())),
  EYE_DEPTH(Reading.LENGTH);

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

  private final Reading<?> reading;

  HookItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
