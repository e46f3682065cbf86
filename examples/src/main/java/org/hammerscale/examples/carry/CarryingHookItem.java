package org.hammerscale.examples.carry;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a carrying hook alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum CarryingHookItem implements OrderItem {
  EYE(Reading.LENGTH),
  SHANK(Reading.LENGTH),
  INSIDE(Reading.LENGTH),
  TIP(Reading.LENGTH_OR_ZERO),
  BEYOND_CENTRE(Reading.LENGTH_OR_ZERO),
  LOAD(Reading.LOAD),
  SAFETY(Reading.count(1, 100));

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

  private final Reading<?> reading;

  CarryingHookItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
