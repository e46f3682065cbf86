package org.hammerscale.examples;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What an order file says of each job, and what it may say there. */
enum OrderItem {
  NAME("any text that names the job"),
  HAND("left or right"),
  PAIRS("a whole number from 1 to 1000"),
  BAR_WIDTH(Texts.LENGTH),
  BAR_THICKNESS(Texts.LENGTH),
  PIN(Texts.LENGTH),
  CLEARANCE(Texts.LENGTH),
  COAT(Texts.LENGTH),
  KNUCKLES("a whole number from 2 to 15"),
  JOINT_GAP(Texts.LENGTH),
  KERF(Texts.LENGTH),
  OPENING("degrees, such as 110°"),
  HUNG("face, joint or corner"),
  DOOR_LEAF(Texts.LENGTH),
  DOOR_TAPER(Texts.LENGTH),
  POST_LEAF(Texts.LENGTH),
  POST_TAPER(Texts.LENGTH),
  TIP_WIDTH(Texts.LENGTH),
  TIP_THICKNESS(Texts.LENGTH),
  HEAT("a temperature such as 1100 °C or 2000 °F"),
  TIME_AT_HEAT(Texts.TIME),
  BARREL_WORK(Texts.TIME),
  TAPER_WORK(Texts.TIME),
  SCREW("a gauge number such as 10, or a diameter such as 5 mm"),
  DOOR_HOLES("a whole number from 1 to 50"),
  DOOR_SEAMS(Texts.SEAMS),
  POST_HOLES("a whole number from 1 to 50"),
  POST_SEAMS(Texts.SEAMS),
  SEAM_WIDTH(Texts.LENGTH),
  WOOD("the name of a species"),
  GRADUATION("1/8 in, 1/16 in, 1/32 in, 1/64 in, 1 mm, 0.5 mm or 0.1 mm");

  private static final class Texts {
    static final String LENGTH = "a length such as 1 1/2 in or 40 mm";
    static final String TIME = "minutes, such as 0.5 min";
    static final String SEAMS = "lengths from the pin's centre, such as 5 in; 10 in, or none";
  }

  private final String accepted;

  OrderItem(String accepted) {
    this.accepted = accepted;
  }

  /** How it is called in a file, such as {@code bar width}. */
  String label() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }

  String accepted() {
    return accepted;
  }

  static @Nullable OrderItem named(String label) {
    return Arrays.stream(values())
        .filter(item -> item.label().equals(label))
        .findFirst()
        .orElse(null);
  }

  static String names() {
    return Arrays.stream(values()).map(OrderItem::label).collect(Collectors.joining(", "));
  }
}
