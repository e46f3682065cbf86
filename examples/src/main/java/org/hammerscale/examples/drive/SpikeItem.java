package org.hammerscale.examples.drive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a spike alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum SpikeItem implements OrderItem {
  HEAD(Reading.oneOf(SpikeHead.values())),
  HEAD_ACROSS(Reading.LENGTH),
  HEAD_HIGH(Reading.LENGTH),
  POINT(Reading.oneOf(Texts.points())),
  POINT_LENGTH(Reading.LENGTH),
  THROUGH(Reading.lengths("thicknesses from the head on, such as 6 mm; 25 mm, or none")),
  TIMBER(Reading.LENGTH),
  DEPTH(Texts.depth()),
  LOAD(Reading.LOAD);

  static final class Texts {
    /** Whether it is a chisel. */
    static Map<String, Boolean> points() {
      Map<String, Boolean> points = new LinkedHashMap<>();
      points.put("chisel", true);
      points.put("taper", false);
      return points;
    }

    /** How deep a tip goes. */
    static Reading<?> depth() {
      return Reading.lengthOr("clenched", "how deep its tip goes, such as 120 mm, or clenched");
    }
  }

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          HEAD,
          HEAD_ACROSS,
          HEAD_HIGH,
          POINT,
          POINT_LENGTH,
          THROUGH,
          TIMBER,
          DEPTH,
          SetItem.WOOD,
          LOAD,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  SpikeItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
