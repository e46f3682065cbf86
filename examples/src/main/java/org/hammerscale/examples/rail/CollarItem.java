package org.hammerscale.examples.rail;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a collar alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum CollarItem implements OrderItem {
  BARS(Reading.count(1, 20)),
  EACH(Reading.SECTION),
  ENDS(Reading.oneOf(CollarOrder.Ends.values()));

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          BARS,
          EACH,
          ENDS,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  CollarItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
