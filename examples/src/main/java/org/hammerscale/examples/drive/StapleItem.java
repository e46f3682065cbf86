package org.hammerscale.examples.drive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a staple by itself. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum StapleItem implements OrderItem {
  WIDTH(Reading.LENGTH),
  HEIGHT(Reading.LENGTH),
  CROWN(Reading.oneOf(Texts.crowns())),
  TIMBER(Reading.LENGTH),
  DEPTH(SpikeItem.Texts.depth()),
  LOAD(Reading.LOAD);

  private static final class Texts {
    /** Whether its corners are square. */
    static Map<String, Boolean> crowns() {
      Map<String, Boolean> crowns = new LinkedHashMap<>();
      crowns.put("round", false);
      crowns.put("square", true);
      return crowns;
    }
  }

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          WIDTH,
          HEIGHT,
          CROWN,
          TIMBER,
          DEPTH,
          SetItem.WOOD,
          LOAD,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private final Reading<?> reading;

  StapleItem(Reading<?> reading) {
    this.reading = reading;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }
}
