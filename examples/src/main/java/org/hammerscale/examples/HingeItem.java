package org.hammerscale.examples;

import java.util.List;
import java.util.Optional;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.hinge.Hand;
import org.hammerscale.hinge.Hanging;
import org.jspecify.annotations.Nullable;

/** What an order file says of strap hinges alone. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
enum HingeItem implements OrderItem {
  HAND(Reading.oneOf(Hand.values())),
  PAIRS(Reading.count(1, 1000)),
  BAR_WIDTH(Reading.LENGTH),
  BAR_THICKNESS(Reading.LENGTH, BAR_WIDTH),
  PIN(Reading.LENGTH),
  KNUCKLES(Reading.count(2, 15)),
  JOINT_GAP(Reading.LENGTH_OR_ZERO),
  OPENING(Reading.OPENING),
  HUNG(Reading.oneOf(Hanging.values())),
  DOOR_LEAF(Reading.LENGTH),
  DOOR_TAPER(Reading.LENGTH_OR_ZERO, DOOR_LEAF),
  POST_LEAF(Reading.LENGTH),
  POST_TAPER(Reading.LENGTH_OR_ZERO, POST_LEAF),
  TIP_WIDTH(Reading.LENGTH, BAR_WIDTH),
  TIP_THICKNESS(Reading.LENGTH, BAR_THICKNESS),
  TIME_AT_HEAT(Reading.MINUTES),
  BARREL_WORK(Reading.MINUTES),
  TAPER_WORK(WorkRate.READING),
  DOOR_HOLES(Reading.count(1, 50)),
  DOOR_SEAMS(Texts.SEAMS),
  POST_HOLES(Reading.count(1, 50)),
  POST_SEAMS(Texts.SEAMS),
  SEAM_WIDTH(Reading.LENGTH_OR_ZERO),
  CENTRES(
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

  private final Reading<?> reading;
  private final @Nullable HingeItem limit;

  HingeItem(Reading<?> reading) {
    this(reading, null);
  }

  HingeItem(Reading<?> reading, @Nullable HingeItem limit) {
    this.reading = reading;
    this.limit = limit;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }

  @Override
  public Optional<HingeItem> limit() {
    return Optional.ofNullable(limit);
  }
}
