package org.hammerscale.examples.drive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a staple by itself. */
public final class StapleItem {
  public static final OrderItem WIDTH = OrderItem.of("width", Reading.LENGTH);
  public static final OrderItem HEIGHT = OrderItem.of("height", Reading.LENGTH);
  public static final OrderItem CROWN = OrderItem.of("crown", Reading.oneOf(Texts.crowns()));
  public static final OrderItem TIMBER = OrderItem.of("timber", Reading.LENGTH);
  public static final OrderItem DEPTH = OrderItem.of("depth", SpikeItem.Texts.depth());
  public static final OrderItem LOAD = OrderItem.of("load", Reading.LOAD);

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

  private StapleItem() {}
}
