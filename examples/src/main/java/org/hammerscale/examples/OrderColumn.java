package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  private static final int LONGEST_NAME = 60;
  private static final int LONGEST_VALUE = 60;
  private static final double MOST_MINUTES = 60;

  /** What stands in one place of the file. */
  record Cell(int line, String text) {}

  private final Map<OrderItem, Cell> cells;
  private final List<Fault> faults;
  private final int before;

  OrderColumn(Map<OrderItem, Cell> cells, List<Fault> faults) {
    this.cells = cells;
    this.faults = faults;
    this.before = faults.size();
  }

  /** Reads every item that stands in the file once; whether there was no fault in them. */
  boolean isSound() {
    cells.keySet().forEach(this::check);
    if (faults.size() == before) {
      atMost(OrderItem.BAR_THICKNESS, OrderItem.BAR_WIDTH);
      atMost(OrderItem.TIP_WIDTH, OrderItem.BAR_WIDTH);
      atMost(OrderItem.TIP_THICKNESS, OrderItem.BAR_THICKNESS);
      atMost(OrderItem.DOOR_TAPER, OrderItem.DOOR_LEAF);
      atMost(OrderItem.POST_TAPER, OrderItem.POST_LEAF);
    }
    return faults.size() == before;
  }

  private void check(OrderItem item) {
    switch (item) {
      case NAME -> name();
      case HAND -> hand();
      case HUNG -> hanging();
      case OPENING -> opening();
      case HEAT -> heat();
      case SCREW -> screw();
      case WOOD -> wood();
      case GRADUATION -> graduation();
      case TAPER_WORK -> taperWork();
      case CENTRES -> centres();
      case PAIRS, KNUCKLES, DOOR_HOLES, POST_HOLES -> count(item);
      case TIME_AT_HEAT, BARREL_WORK -> minutes(item);
      case DOOR_SEAMS, POST_SEAMS -> lengths(item);
      case CLEARANCE, COAT, JOINT_GAP, KERF, SEAM_WIDTH, DOOR_TAPER, POST_TAPER ->
          lengthOrZero(item);
      case BAR_WIDTH, BAR_THICKNESS, PIN, DOOR_LEAF, POST_LEAF, TIP_WIDTH, TIP_THICKNESS ->
          length(item);
    }
  }

  /** What each value by itself cannot tell. */
  private void atMost(OrderItem item, OrderItem limit) {
    if (!cells.containsKey(item) || !cells.containsKey(limit)) {
      return;
    }
    Measure<Length> most = lengthOrZero(limit);
    Measure<Length> value = lengthOrZero(item);
    if (value.isGreaterThan(most)) {
      fault(item, value + " is more than the " + limit.label() + "; accepted: at most " + most);
    }
  }

  /** Notes a fault of an item, in this job. */
  void fault(OrderItem item, String problem) {
    Cell name = cells.get(OrderItem.NAME);
    String job = name == null || isBad(name.text) || item == OrderItem.NAME ? "" : name.text;
    String where = item.label() + (job.isEmpty() ? "" : " of " + job);
    faults.add(new Fault(cells.getOrDefault(item, new Cell(0, "")).line, where, problem));
  }

  private static boolean isBad(String name) {
    return name.length() > LONGEST_NAME || !name.chars().allMatch(c -> Fault.isPrintable((char) c));
  }

  String name() {
    String name = text(OrderItem.NAME);
    if (name.isEmpty()) {
      fault(OrderItem.NAME, "there is none; accepted: " + OrderItem.NAME.accepted());
    } else if (isBad(name)) {
      fault(OrderItem.NAME, Fault.echo(name) + " is no name; accepted: 60 letters, no controls");
    }
    return name;
  }

  Measure<Length> length(OrderItem item) {
    return read(item, text -> checkedPositive(Measures.length(text)), Measures.inches(1));
  }

  Measure<Length> lengthOrZero(OrderItem item) {
    return read(item, text -> checkedNotNegative(Measures.length(text)), Measures.inches(0));
  }

  List<Measure<Length>> lengths(OrderItem item) {
    List<Measure<Length>> all = new ArrayList<>();
    if (!text(item).equals("none")) {
      for (String one : text(item).split(";", -1)) {
        all.add(
            read(
                item,
                one.strip(),
                text -> checkedPositive(Measures.length(text)),
                Measures.inches(1)));
      }
    }
    return all;
  }

  /** From one hinge of the door to the next, if it has several. */
  Optional<Measure<Length>> centres() {
    return text(OrderItem.CENTRES).equals("none")
        ? Optional.empty()
        : Optional.of(length(OrderItem.CENTRES));
  }

  int count(OrderItem item) {
    int least = item == OrderItem.KNUCKLES ? 2 : 1;
    int most = item == OrderItem.KNUCKLES ? 15 : item == OrderItem.PAIRS ? 1000 : 50;
    String text = text(item);
    // Four digits at most, so that the number cannot overflow.
    int count = text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : -1;
    if (count < least || count > most) {
      fault(item, Fault.echo(text) + " is no count; accepted: " + item.accepted());
      return least;
    }
    return count;
  }

  Measure<Angle> opening() {
    return read(
        OrderItem.OPENING,
        text -> checkedPositive(Measures.degrees(number(text, "°", 360))),
        Measures.degrees(90));
  }

  Measure<Temperature> heat() {
    return read(
        OrderItem.HEAT,
        text ->
            text.endsWith("°F")
                ? Measures.fahrenheit(number(text, "°F", 9999))
                : Measures.celsius(number(text, "°C", 9999)),
        Measures.celsius(1100));
  }

  Measure<Time> minutes(OrderItem item) {
    return read(
        item,
        text -> checkedPositive(Measures.minutes(number(text, "min", MOST_MINUTES))),
        Measures.minutes(1));
  }

  WorkRate taperWork() {
    return read(OrderItem.TAPER_WORK, WorkRate::parse, WorkRate.USUAL);
  }

  Screw screw() {
    return read(OrderItem.SCREW, Screw::parse, Screw.parse("8 × 1 in"));
  }

  Wood wood() {
    return read(OrderItem.WOOD, Wood::named, Wood.species().get(0));
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
      fault(item, Fault.echo(text(item)) + " is not known; accepted: " + item.accepted());
      return instead;
    }
    return value;
  }

  private <T> T read(OrderItem item, Function<String, ? extends T> reader, T instead) {
    return read(item, text(item), reader, instead);
  }

  private <T> T read(OrderItem item, String text, Function<String, ? extends T> reader, T instead) {
    if (text.isEmpty()) {
      fault(item, "there is nothing; accepted: " + item.accepted());
    } else if (text.length() > LONGEST_VALUE || isBad(text)) {
      fault(item, Fault.echo(text) + " is not to be read; accepted: " + item.accepted());
    } else {
      try {
        return reader.apply(text);
      } catch (IllegalArgumentException e) {
        fault(item, e.getMessage() + "; accepted: " + item.accepted());
      }
    }
    return instead;
  }

  private static double number(String text, String unit, double most) {
    String digits = text.endsWith(unit) ? text.substring(0, text.length() - unit.length()) : "";
    if (!digits.strip().matches("[0-9]{1,12}(\\.[0-9]{1,12})?")) {
      throw new IllegalArgumentException(Fault.echo(text) + " is no number in " + unit);
    }
    double number = Double.parseDouble(digits.strip());
    if (number > most) {
      throw new IllegalArgumentException(Fault.echo(text) + " is too much");
    }
    return number;
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
    return cells.getOrDefault(item, new Cell(0, "")).text;
  }
}
