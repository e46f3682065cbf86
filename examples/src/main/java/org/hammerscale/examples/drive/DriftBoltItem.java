package org.hammerscale.examples.drive;

import java.util.List;
import java.util.Optional;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a drift bolt alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum DriftBoltItem implements OrderItem {
  HEAD_ACROSS(Reading.LENGTH),
  HEAD_HIGH(Reading.LENGTH),
  WASHER(Reading.LENGTH_OR_ZERO),
  THROUGH(Reading.LENGTH),
  TIMBER(Reading.LENGTH),
  DEPTH(Reading.LENGTH),
  LOAD(Reading.LOAD);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          HEAD_ACROSS,
          HEAD_HIGH,
          WASHER,
          THROUGH,
          TIMBER,
          DEPTH,
          SetItem.WOOD,
          LOAD,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  DriftBoltItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }

  @Override
  public Optional<OrderItem> limit() {
    return this == DEPTH ? Optional.of(TIMBER) : Optional.empty();
  }
}
