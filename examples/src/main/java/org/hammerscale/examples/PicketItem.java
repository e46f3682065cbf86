package org.hammerscale.examples;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a row of pickets alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
enum PicketItem implements OrderItem {
  SPAN(Reading.LENGTH),
  SPHERE(Reading.LENGTH),
  TOLERANCE(Reading.LENGTH_OR_ZERO),
  RAKE(Reading.SLOPE),
  LENGTH(Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          SPAN,
          SPHERE,
          TOLERANCE,
          RAKE,
          LENGTH,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  PicketItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
