package org.hammerscale.examples.latch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.latch.Closing;

/** What an order file says of a thumb latch alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum LatchItem implements OrderItem {
  PATTERN(Reading.oneOf(Texts.patterns())),
  CLOSES(Reading.oneOf(Closing.values())),
  DOOR(Reading.LENGTH),
  BAR_LENGTH(Reading.LENGTH),
  THUMB(Reading.LENGTH),
  TRAVEL(Reading.LENGTH),
  LIFTED_AT(Reading.LENGTH),
  CAUGHT_AT(Reading.LENGTH),
  GAP(Reading.LENGTH_OR_ZERO),
  NOSE(Reading.LENGTH),
  FLOOR(Reading.LENGTH_OR_ZERO),
  OVER(Reading.LENGTH_OR_ZERO),
  DROP(Reading.LENGTH_OR_ZERO),
  RISE(Reading.LENGTH_OR_ZERO),
  GRIP(Reading.LENGTH),
  FINGERS(Reading.LENGTH),
  FOOT_HOLES(Reading.count(1, 10));

  private static final class Texts {
    /** Whether the handle is on a plate. */
    static Map<String, Boolean> patterns() {
      Map<String, Boolean> patterns = new LinkedHashMap<>();
      patterns.put("Suffolk", false);
      patterns.put("Norfolk", true);
      return patterns;
    }
  }

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          PATTERN,
          CLOSES,
          SetItem.BAR,
          SetItem.WIRE,
          DOOR,
          BAR_LENGTH,
          THUMB,
          TRAVEL,
          LIFTED_AT,
          CAUGHT_AT,
          GAP,
          NOSE,
          FLOOR,
          OVER,
          DROP,
          RISE,
          SetItem.CLEARANCE,
          SetItem.COAT,
          GRIP,
          FINGERS,
          SetItem.SCREW,
          FOOT_HOLES,
          SetItem.WOOD,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  LatchItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
