package org.hammerscale.examples.drive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a spike alone. */
public final class SpikeItem {
  public static final OrderItem HEAD = OrderItem.of("head", Reading.oneOf(SpikeHead.values()));
  public static final OrderItem HEAD_ACROSS = OrderItem.of("head across", Reading.LENGTH);
  public static final OrderItem HEAD_HIGH = OrderItem.of("head high", Reading.LENGTH);
  public static final OrderItem POINT = OrderItem.of("point", Reading.oneOf(Texts.points()));
  public static final OrderItem POINT_LENGTH = OrderItem.of("point length", Reading.LENGTH);
  public static final OrderItem THROUGH =
      OrderItem.of(
          "through", Reading.lengths("thicknesses from the head on, such as 6 mm; 25 mm, or none"));
  public static final OrderItem TIMBER = OrderItem.of("timber", Reading.LENGTH);
  public static final OrderItem DEPTH = OrderItem.of("depth", Texts.depth());
  public static final OrderItem LOAD = OrderItem.of("load", Reading.LOAD);

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

  private SpikeItem() {}
}
