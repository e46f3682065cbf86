package org.hammerscale.examples.order;

/** What jobs of several kinds say, so that the parts of a set can have it in common. */
public final class SetItem {
  public static final OrderItem NAME = OrderItem.of("name", Reading.TEXT);
  public static final OrderItem COUNT = OrderItem.of("count", Reading.count(1, 1000));
  public static final OrderItem BAR = OrderItem.of("bar", Reading.SECTION).ofSet();
  public static final OrderItem WIRE = OrderItem.of("wire", Reading.ROUND);
  public static final OrderItem CLEARANCE = OrderItem.of("clearance", Reading.LENGTH_OR_ZERO);
  public static final OrderItem COAT = OrderItem.of("coat", Reading.LENGTH_OR_ZERO).ofSet();
  public static final OrderItem KERF = OrderItem.of("kerf", Reading.LENGTH_OR_ZERO).ofSet();
  public static final OrderItem HEAT = OrderItem.of("heat", Reading.HEAT).ofSet();
  public static final OrderItem SCREW = OrderItem.of("screw", Reading.SCREW).ofSet();
  public static final OrderItem WOOD = OrderItem.of("wood", Reading.WOOD).ofSet();
  public static final OrderItem GRADUATION = OrderItem.of("graduation", Reading.GRADUATION).ofSet();

  private SetItem() {}
}
