package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.fastening.Wood;
import org.hammerscale.hinge.Hand;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * One job of an order file while it is read: each fault is noted and a harmless value put in its
 * place, so that the customer hears of all faults at once.
 */
final class OrderColumn {
  private static final Map<String, Graduation<Length>> GRADUATIONS =
      Map.of(
          "1/8 in", Graduation.EIGHTH,
          "1/16 in", Graduation.SIXTEENTH,
          "1/32 in", Graduation.THIRTY_SECOND,
          "1/64 in", Graduation.SIXTY_FOURTH,
          "1 mm", Graduation.MILLIMETRE,
          "0.5 mm", Graduation.HALF_MILLIMETRE,
          "0.1 mm", Graduation.TENTH_MILLIMETRE);
  private static final Map<String, Hanging> HANGINGS =
      Map.of("face", Hanging.FACE, "joint", Hanging.JOINT, "corner", Hanging.CORNER);
  private static final Map<String, Hand> HANDS = Map.of("left", Hand.LEFT, "right", Hand.RIGHT);

  private final Map<OrderItem, String> texts;
  private final Map<OrderItem, Integer> lines;
  private final List<Fault> faults;
  private final int before;

  OrderColumn(Map<OrderItem, String> texts, Map<OrderItem, Integer> lines, List<Fault> faults) {
    this.texts = texts;
    this.lines = lines;
    this.faults = faults;
    this.before = faults.size();
  }

  /** Reads every item once, so that each fault is noted; whether there was none. */
  boolean isSound() {
    name();
    hand();
    hanging();
    opening();
    heat();
    screw();
    wood();
    graduation();
    for (OrderItem item : OrderItem.values()) {
      switch (item) {
        case PAIRS, KNUCKLES, DOOR_HOLES, POST_HOLES -> count(item);
        case TIME_AT_HEAT, BARREL_WORK, TAPER_WORK -> minutes(item);
        case DOOR_SEAMS, POST_SEAMS -> lengths(item);
        case CLEARANCE, COAT, JOINT_GAP, KERF, SEAM_WIDTH, DOOR_TAPER, POST_TAPER ->
            lengthOrZero(item);
        case BAR_WIDTH, BAR_THICKNESS, PIN, DOOR_LEAF, POST_LEAF, TIP_WIDTH, TIP_THICKNESS ->
            length(item);
        default -> {} // read above
      }
    }
    if (faults.size() == before) {
      atMost(OrderItem.BAR_THICKNESS, OrderItem.BAR_WIDTH);
      atMost(OrderItem.TIP_WIDTH, OrderItem.BAR_WIDTH);
      atMost(OrderItem.TIP_THICKNESS, OrderItem.BAR_THICKNESS);
      atMost(OrderItem.DOOR_TAPER, OrderItem.DOOR_LEAF);
      atMost(OrderItem.POST_TAPER, OrderItem.POST_LEAF);
    }
    return faults.size() == before;
  }

  /** What each value by itself cannot tell. */
  private void atMost(OrderItem item, OrderItem limit) {
    Measure<Length> most = lengthOrZero(limit);
    Measure<Length> value = lengthOrZero(item);
    if (value.isGreaterThan(most)) {
      fault(item, value + " is more than the " + limit.label() + "; accepted: at most " + most);
    }
  }

  /** A fault that only shows when several values are put together. */
  void fault(OrderItem item, String problem) {
    String job = texts.getOrDefault(OrderItem.NAME, "");
    String where = item.label() + (job.isEmpty() ? "" : " of " + job);
    faults.add(new Fault(lines.getOrDefault(item, 0), where, problem));
  }

  String name() {
    String name = text(OrderItem.NAME);
    if (name.isEmpty()) {
      fault(OrderItem.NAME, "there is none; accepted: " + OrderItem.NAME.accepted());
    }
    return name;
  }

  Measure<Length> length(OrderItem item) {
    return read(item, Measures::length, Measures.inches(1), OrderColumn::checkedPositive);
  }

  Measure<Length> lengthOrZero(OrderItem item) {
    return read(item, Measures::length, Measures.inches(0), OrderColumn::checkedNotNegative);
  }

  List<Measure<Length>> lengths(OrderItem item) {
    List<Measure<Length>> all = new ArrayList<>();
    if (!text(item).equals("none")) {
      for (String one : text(item).split(";", -1)) {
        all.add(read(item, one.strip(), Measures::length, Measures.inches(1)));
      }
    }
    return all;
  }

  int count(OrderItem item) {
    int least = item == OrderItem.KNUCKLES ? 2 : 1;
    int most = item == OrderItem.KNUCKLES ? 15 : item == OrderItem.PAIRS ? 1000 : 50;
    String text = text(item);
    // Four digits at most, so that the number cannot overflow.
    int count = text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : -1;
    if (count < least || count > most) {
      fault(item, "\"" + text + "\" is no count; accepted: " + item.accepted());
      return least;
    }
    return count;
  }

  Measure<Angle> opening() {
    return read(
        OrderItem.OPENING,
        text -> Measures.degrees(number(text, "°")),
        Measures.degrees(90),
        OrderColumn::checkedPositive);
  }

  Measure<Temperature> heat() {
    return read(
        OrderItem.HEAT,
        text ->
            text.endsWith("°F")
                ? Measures.fahrenheit(number(text, "°F"))
                : Measures.celsius(number(text, "°C")),
        Measures.celsius(1100),
        heat -> heat);
  }

  Measure<Time> minutes(OrderItem item) {
    return read(
        item,
        text -> Measures.minutes(number(text, "min")),
        Measures.minutes(1),
        OrderColumn::checkedPositive);
  }

  Screw screw() {
    return read(OrderItem.SCREW, text(OrderItem.SCREW), Screw::parse, Screw.parse("8"));
  }

  Wood wood() {
    return read(OrderItem.WOOD, text(OrderItem.WOOD), Wood::named, Wood.species().get(0));
  }

  Hand hand() {
    return oneOf(OrderItem.HAND, HANDS, Hand.LEFT);
  }

  Hanging hanging() {
    return oneOf(OrderItem.HUNG, HANGINGS, Hanging.FACE);
  }

  Graduation<Length> graduation() {
    return oneOf(OrderItem.GRADUATION, GRADUATIONS, Graduation.SIXTEENTH);
  }

  private <T> T oneOf(OrderItem item, Map<String, T> known, T instead) {
    T value = known.get(text(item));
    if (value == null) {
      fault(item, "\"" + text(item) + "\" is not known; accepted: " + item.accepted());
      return instead;
    }
    return value;
  }

  private <T> T read(
      OrderItem item, Function<String, ? extends T> reader, T instead, Function<T, T> check) {
    return read(item, text(item), text -> check.apply(reader.apply(text)), instead);
  }

  private <T> T read(OrderItem item, String text, Function<String, ? extends T> reader, T instead) {
    try {
      return reader.apply(text);
    } catch (IllegalArgumentException e) {
      fault(item, e.getMessage() + "; accepted: " + item.accepted());
      return instead;
    }
  }

  private static double number(String text, String unit) {
    String digits = text.endsWith(unit) ? text.substring(0, text.length() - unit.length()) : text;
    if (!digits.strip().matches("-?[0-9]+(\\.[0-9]+)?")) {
      throw new IllegalArgumentException("\"" + text + "\" is not in " + unit);
    }
    return Double.parseDouble(digits.strip());
  }

  private static <Q extends javax.measure.Quantity<Q>> Measure<Q> checkedPositive(Measure<Q> read) {
    if (!(read.getValue() > 0)) {
      throw new IllegalArgumentException(read + " is too little, it must be more than zero");
    }
    return read;
  }

  private static <Q extends javax.measure.Quantity<Q>> Measure<Q> checkedNotNegative(
      Measure<Q> read) {
    if (read.getValue() < 0) {
      throw new IllegalArgumentException(read + " is too little, it must not be negative");
    }
    return read;
  }

  private String text(OrderItem item) {
    return texts.getOrDefault(item, "");
  }
}
