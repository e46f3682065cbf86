package org.hammerscale.examples.carry;

import java.util.List;
import java.util.Optional;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a bracket alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum BracketItem implements OrderItem {
  ARM(Reading.LENGTH),
  PLATE(Reading.LENGTH),
  BEND(Reading.LENGTH_OR_ZERO),
  SCREWS_AT(Reading.lengths("places from the foot with ; between them, such as 20 mm; 150 mm")),
  BRACE_OUT(Reading.lengthOr("none", "how far along the arm, such as 150 mm, or none")),
  BRACE_DOWN(Reading.lengthOr("none", "how far down the plate, such as 150 mm, or none")),
  LOAD(Reading.LOAD),
  LOAD_OUT(Reading.LENGTH),
  SIGN_WIDE(Reading.lengthOr("none", "how wide the sign is, such as 400 mm, or none")),
  SIGN_HIGH(Reading.lengthOr("none", "how high the sign is, such as 300 mm, or none")),
  WIND(Reading.WIND),
  SAFETY(Reading.count(1, 100)),
  WALL(Reading.LENGTH);

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          ARM,
          PLATE,
          BEND,
          SCREWS_AT,
          BRACE_OUT,
          BRACE_DOWN,
          LOAD,
          LOAD_OUT,
          SIGN_WIDE,
          SIGN_HIGH,
          WIND,
          SAFETY,
          SetItem.SCREW,
          SetItem.WOOD,
          WALL,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  BracketItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }

  @Override
  public Optional<OrderItem> limit() {
    return this == LOAD_OUT ? Optional.of(ARM) : Optional.empty();
  }
}
