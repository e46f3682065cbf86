package org.hammerscale.examples.latch;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a latch's spring alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum SpringItem implements OrderItem {
  LENGTH(Reading.LENGTH),
  FOOT(Reading.LENGTH),
  TIP_WIDTH(Reading.LENGTH),
  HOLES(Reading.count(1, 4)),
  HOLE(Reading.LENGTH),
  SET(Reading.LENGTH),
  TRAVEL(Reading.LENGTH),
  PRESS(Reading.LOAD),
  LIMIT(Reading.STRESS),
  HARDEN(Reading.HEAT),
  TEMPER(Reading.HEAT);

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

  private final Reading<?> reading;

  SpringItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
