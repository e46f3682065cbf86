package org.hammerscale.examples;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
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
  OPENING("degrees up to 360, such as 110°"),
  HUNG("face, joint or corner"),
  DOOR_LEAF(Texts.LENGTH),
  DOOR_TAPER(Texts.LENGTH),
  POST_LEAF(Texts.LENGTH),
  POST_TAPER(Texts.LENGTH),
  TIP_WIDTH(Texts.LENGTH),
  TIP_THICKNESS(Texts.LENGTH),
  HEAT("a temperature with its unit, such as 1100 °C or 2000 °F"),
  TIME_AT_HEAT(Texts.TIME),
  BARREL_WORK(Texts.TIME),
  TAPER_WORK("minutes at the anvil for a length, such as 0.2 min/in, or usual"),
  SCREW("a size and a length, such as 10 × 1 1/4 in or 5 mm × 40 mm"),
  DOOR_HOLES("a whole number from 1 to 50"),
  DOOR_SEAMS(Texts.SEAMS),
  POST_HOLES("a whole number from 1 to 50"),
  POST_SEAMS(Texts.SEAMS),
  SEAM_WIDTH(Texts.LENGTH),
  WOOD("a timber, such as oak, white oak or Douglas fir"),
  CENTRES("from one hinge of the door to the next, such as 40 in or 1 m, or none"),
  GRADUATION("1/8 in, 1/16 in, 1/32 in, 1/64 in, 1 mm, 0.5 mm or 0.1 mm");

  private static final class Texts {
    static final String LENGTH = "a length such as 1 1/2 in or 40 mm";
    static final String TIME = "minutes up to 60, such as 0.5 min";
    static final String SEAMS = "lengths from the pin's centre, such as 5 in; 10 in, or none";
  }

  private static final Map<String, OrderItem> BY_LABEL =
      Arrays.stream(values()).collect(Collectors.toMap(OrderItem::label, Function.identity()));

  private final String accepted;

  OrderItem(String accepted) {
    this.accepted = accepted;
  }

  /** How it is called in a file, such as {@code bar width}. */
  String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  String accepted() {
    return accepted;
  }

  /** The one that is written so. */
  static @Nullable OrderItem named(String label) {
    return BY_LABEL.get(label);
  }

  static String names() {
    return Arrays.stream(values()).map(OrderItem::label).collect(Collectors.joining(", "));
  }
}
