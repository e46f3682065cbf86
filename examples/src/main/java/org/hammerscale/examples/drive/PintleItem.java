package org.hammerscale.examples.drive;

import java.util.List;
import java.util.Optional;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a pair of driven pintles alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum PintleItem implements OrderItem {
  PIN(Reading.LENGTH),
  BARREL(Reading.LENGTH),
  WASHERS(Reading.LENGTH_OR_ZERO),
  PROJECTION(Reading.LENGTH),
  POINT(Reading.LENGTH),
  DEPTH(Reading.LENGTH),
  POST(Reading.LENGTH),
  DOOR(Reading.LOAD),
  DOOR_WIDTH(Reading.LENGTH),
  CENTRES(Reading.LENGTH),
  SAFETY(Reading.count(1, 100));

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          PIN,
          BARREL,
          WASHERS,
          PROJECTION,
          POINT,
          DEPTH,
          POST,
          SetItem.WOOD,
          DOOR,
          DOOR_WIDTH,
          CENTRES,
          SAFETY,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  PintleItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }

  @Override
  public Optional<OrderItem> limit() {
    return this == DEPTH ? Optional.of(POST) : Optional.empty();
  }
}
