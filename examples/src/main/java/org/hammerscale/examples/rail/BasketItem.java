package org.hammerscale.examples.rail;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a basket alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum BasketItem implements OrderItem {
  HEIGHT(Reading.LENGTH),
  TURNS(Reading.TURNS),
  BULGE(Reading.LENGTH),
  WELD(Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          HEIGHT,
          TURNS,
          BULGE,
          WELD,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  BasketItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
