package org.hammerscale.examples.latch;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;

/** What an order file says of a slide bolt alone. */
public final class BoltItem {
  public static final OrderItem THROW = OrderItem.of("throw", Reading.LENGTH);
  public static final OrderItem GAP = OrderItem.of("gap", Reading.LENGTH_OR_ZERO);
  public static final OrderItem SET_BACK = OrderItem.of("set back", Reading.LENGTH_OR_ZERO);
  public static final OrderItem STAPLES_APART = OrderItem.of("staples apart", Reading.LENGTH);
  public static final OrderItem FROM_EDGE = OrderItem.of("from edge", Reading.LENGTH_OR_ZERO);
  public static final OrderItem STAPLE_DEPTH = OrderItem.of("staple depth", Reading.LENGTH);
  public static final OrderItem DROP = OrderItem.of("drop", Reading.LENGTH_OR_ZERO);
  public static final OrderItem SHRINKAGE = OrderItem.of("shrinkage", Reading.LENGTH_OR_ZERO);
  public static final OrderItem KNOB =
      OrderItem.of("knob", Reading.lengthOr("tail", "the knob's diameter, such as 4 mm, or tail"));
  public static final OrderItem STANDING = OrderItem.of("standing", Reading.LENGTH);

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

  private BoltItem() {}
}
