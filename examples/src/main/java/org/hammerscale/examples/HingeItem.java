package org.hammerscale.examples;

import java.util.List;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.hinge.Hand;
import org.hammerscale.hinge.Hanging;

/** What an order file says of strap hinges alone. */
final class HingeItem {
  static final OrderItem HAND = OrderItem.of("hand", Reading.oneOf(Hand.values()));
  static final OrderItem PAIRS = OrderItem.of("pairs", Reading.count(1, 1000));
  static final OrderItem BAR_WIDTH = OrderItem.of("bar width", Reading.LENGTH);
  static final OrderItem BAR_THICKNESS =
      OrderItem.of("bar thickness", Reading.LENGTH).atMost(BAR_WIDTH);
  static final OrderItem PIN = OrderItem.of("pin", Reading.LENGTH);
  static final OrderItem KNUCKLES = OrderItem.of("knuckles", Reading.count(2, 15));
  static final OrderItem JOINT_GAP = OrderItem.of("joint gap", Reading.LENGTH_OR_ZERO);
  static final OrderItem OPENING = OrderItem.of("opening", Reading.OPENING);
  static final OrderItem HUNG = OrderItem.of("hung", Reading.oneOf(Hanging.values()));
  static final OrderItem DOOR_LEAF = OrderItem.of("door leaf", Reading.LENGTH);
  static final OrderItem DOOR_TAPER =
      OrderItem.of("door taper", Reading.LENGTH_OR_ZERO).atMost(DOOR_LEAF);
  static final OrderItem POST_LEAF = OrderItem.of("post leaf", Reading.LENGTH);
  static final OrderItem POST_TAPER =
      OrderItem.of("post taper", Reading.LENGTH_OR_ZERO).atMost(POST_LEAF);
  static final OrderItem TIP_WIDTH = OrderItem.of("tip width", Reading.LENGTH).atMost(BAR_WIDTH);
  static final OrderItem TIP_THICKNESS =
      OrderItem.of("tip thickness", Reading.LENGTH).atMost(BAR_THICKNESS);
  static final OrderItem TIME_AT_HEAT = OrderItem.of("time at heat", Reading.MINUTES);
  static final OrderItem BARREL_WORK = OrderItem.of("barrel work", Reading.MINUTES);
  static final OrderItem TAPER_WORK = OrderItem.of("taper work", WorkRate.READING);
  static final OrderItem DOOR_HOLES = OrderItem.of("door holes", Reading.count(1, 50));
  static final OrderItem DOOR_SEAMS = OrderItem.of("door seams", Texts.SEAMS);
  static final OrderItem POST_HOLES = OrderItem.of("post holes", Reading.count(1, 50));
  static final OrderItem POST_SEAMS = OrderItem.of("post seams", Texts.SEAMS);
  static final OrderItem SEAM_WIDTH = OrderItem.of("seam width", Reading.LENGTH_OR_ZERO);
  static final OrderItem CENTRES =
      OrderItem.of(
          "centres",
          Reading.lengthOr(
              "none", "from one hinge of the door to the next, such as 40 in or 1 m, or none"));

  private static final class Texts {
    static final Reading<?> SEAMS =
        Reading.lengths("lengths from the pin's centre, such as 5 in; 10 in, or none");
  }

  /** All that a job says, in the order of the work. */
  static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          HAND,
          PAIRS,
          BAR_WIDTH,
          BAR_THICKNESS,
          PIN,
          SetItem.CLEARANCE,
          SetItem.COAT,
          KNUCKLES,
          JOINT_GAP,
          SetItem.KERF,
          OPENING,
          HUNG,
          DOOR_LEAF,
          DOOR_TAPER,
          POST_LEAF,
          POST_TAPER,
          TIP_WIDTH,
          TIP_THICKNESS,
          SetItem.HEAT,
          TIME_AT_HEAT,
          BARREL_WORK,
          TAPER_WORK,
          SetItem.SCREW,
          DOOR_HOLES,
          DOOR_SEAMS,
          POST_HOLES,
          POST_SEAMS,
          SEAM_WIDTH,
          SetItem.WOOD,
          CENTRES,
          SetItem.GRADUATION);

  private HingeItem() {}
}
