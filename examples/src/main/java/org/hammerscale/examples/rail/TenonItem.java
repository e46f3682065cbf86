package org.hammerscale.examples.rail;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a bar with a riveted tenon alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum TenonItem implements OrderItem {
  LENGTH(Reading.LENGTH),
  TENON(Reading.SECTION),
  THROUGH(Reading.LENGTH),
  HEAD_ACROSS(Reading.LENGTH),
  HEAD_HIGH(Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          LENGTH,
          TENON,
          THROUGH,
          HEAD_ACROSS,
          HEAD_HIGH,
          SetItem.CLEARANCE,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  TenonItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
