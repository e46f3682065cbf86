package org.hammerscale.examples.latch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.latch.Closing;

/** What an order file says of a thumb latch alone. */
public final class LatchItem {
  public static final OrderItem PATTERN = OrderItem.of("pattern", Reading.oneOf(Texts.patterns()));
  public static final OrderItem CLOSES = OrderItem.of("closes", Reading.oneOf(Closing.values()));
  public static final OrderItem DOOR = OrderItem.of("door", Reading.LENGTH);
  public static final OrderItem BAR_LENGTH = OrderItem.of("bar length", Reading.LENGTH);
  public static final OrderItem THUMB = OrderItem.of("thumb", Reading.LENGTH);
  public static final OrderItem TRAVEL = OrderItem.of("travel", Reading.LENGTH);
  public static final OrderItem LIFTED_AT = OrderItem.of("lifted at", Reading.LENGTH);
  public static final OrderItem CAUGHT_AT = OrderItem.of("caught at", Reading.LENGTH);
  public static final OrderItem GAP = OrderItem.of("gap", Reading.LENGTH_OR_ZERO);
  public static final OrderItem NOSE = OrderItem.of("nose", Reading.LENGTH);
  public static final OrderItem FLOOR = OrderItem.of("floor", Reading.LENGTH_OR_ZERO);
  public static final OrderItem OVER = OrderItem.of("over", Reading.LENGTH_OR_ZERO);
  public static final OrderItem DROP = OrderItem.of("drop", Reading.LENGTH_OR_ZERO);
  public static final OrderItem RISE = OrderItem.of("rise", Reading.LENGTH_OR_ZERO);
  public static final OrderItem GRIP = OrderItem.of("grip", Reading.LENGTH);
  public static final OrderItem FINGERS = OrderItem.of("fingers", Reading.LENGTH);
  public static final OrderItem FOOT_HOLES = OrderItem.of("foot holes", Reading.count(1, 10));

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

  private LatchItem() {}
}
