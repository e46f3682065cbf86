package org.hammerscale.examples.latch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a hasp and its staple alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum HaspItem implements OrderItem {
  HUNG_ON(Reading.ROUND),
  STAPLE_AT(Reading.LENGTH),
  LEGS(Reading.oneOf(Texts.legs())),
  STAPLE_WIDTH(Reading.LENGTH),
  STAPLE_DEPTH(Reading.LENGTH),
  SHACKLE(Reading.LENGTH),
  SHACKLE_ROOM(Reading.LENGTH_OR_ZERO),
  BEYOND(Reading.LENGTH);

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

  private final Reading<?> reading;

  HaspItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
