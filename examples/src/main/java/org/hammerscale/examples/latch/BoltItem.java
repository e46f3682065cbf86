package org.hammerscale.examples.latch;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a slide bolt alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum BoltItem implements OrderItem {
  THROW(Reading.LENGTH),
  GAP(Reading.LENGTH_OR_ZERO),
  SET_BACK(Reading.LENGTH_OR_ZERO),
  STAPLES_APART(Reading.LENGTH),
  FROM_EDGE(Reading.LENGTH_OR_ZERO),
  STAPLE_DEPTH(Reading.LENGTH),
  DROP(Reading.LENGTH_OR_ZERO),
  SHRINKAGE(Reading.LENGTH_OR_ZERO),
  KNOB(Reading.lengthOr("tail", "the knob's diameter, such as 4 mm, or tail")),
  STANDING(Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          SetItem.WIRE,
          THROW,
          GAP,
          SET_BACK,
          STAPLES_APART,
          FROM_EDGE,
          STAPLE_DEPTH,
          SetItem.CLEARANCE,
          SetItem.COAT,
          DROP,
          SHRINKAGE,
          KNOB,
          STANDING,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  BoltItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
