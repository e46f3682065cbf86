package org.hammerscale.examples;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * One row of an order file while it is read: each fault is noted, and reading goes on, so that the
 * customer hears of all of them at once.
 */
final class OrderRow {
  static final List<String> LENGTHS =
      List.of(
          "bar width",
          "bar thickness",
          "pin",
          "clearance",
          "leaf length",
          "tip width",
          "tip thickness",
          "taper length");

  private static final int MOST_SETS = 1000;
  private static final Map<String, Graduation<Length>> GRADUATIONS =
      Map.of(
          "1/8 in", Graduation.EIGHTH,
          "1/16 in", Graduation.SIXTEENTH,
          "1/32 in", Graduation.THIRTY_SECOND,
          "1/64 in", Graduation.SIXTY_FOURTH,
          "1 mm", Graduation.MILLIMETRE,
          "0.5 mm", Graduation.HALF_MILLIMETRE,
          "0.1 mm", Graduation.TENTH_MILLIMETRE);

  private final int line;
  private final Map<String, String> texts;
  private final List<Fault> faults;
  private final Map<String, Measure<Length>> lengths = new HashMap<>();
  private String name = "";
  private int sets;
  private Graduation<Length> graduation = Graduation.SIXTEENTH;

  OrderRow(int line, Map<String, String> texts, List<Fault> faults) {
    this.line = line;
    this.texts = texts;
    this.faults = faults;
  }

  /** Reads the row; gives nothing to a list that has heard of a fault. */
  void readInto(List<HingeOrder> orders) {
    int before = faults.size();
    readName();
    LENGTHS.forEach(this::readLength);
    readSets();
    readGraduation();
    if (faults.size() == before) {
      compare();
    }
    if (faults.size() == before) {
      Section section = Section.flat(length("bar width"), length("bar thickness"));
      orders.add(HingeOrder.from(this, Bar.of(section, Material.MILD_STEEL)));
    }
  }

  String name() {
    return name;
  }

  Measure<Length> length(String column) {
    Measure<Length> read = lengths.get(column);
    if (read == null) {
      throw new IllegalStateException("no length was read for " + column);
    }
    return read;
  }

  int sets() {
    return sets;
  }

  Graduation<Length> graduation() {
    return graduation;
  }

  private void readName() {
    name = text("name");
    if (name.isEmpty()) {
      fault("name", "there is none; accepted: any text that names the job");
    }
  }

  private void readLength(String column) {
    try {
      Measure<Length> read = Measures.length(text(column));
      boolean mayBeZero = column.equals("clearance");
      if (read.getValue() < 0 || (read.getValue() == 0 && !mayBeZero)) {
        fault(
            column,
            read + " is too little; accepted: " + (mayBeZero ? "zero or more" : "more than zero"));
      }
      lengths.put(column, read);
    } catch (IllegalArgumentException e) {
      fault(column, e.getMessage() + "; accepted: a length such as 1 1/2 in or 40 mm");
    }
  }

  private void readSets() {
    String text = text("sets");
    // Four digits at most, so that the number cannot overflow.
    sets = text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : 0;
    if (sets < 1 || sets > MOST_SETS) {
      fault(
          "sets", "\"" + text + "\" is no count; accepted: a whole number from 1 to " + MOST_SETS);
    }
  }

  private void readGraduation() {
    Graduation<Length> read = GRADUATIONS.get(text("graduation"));
    if (read == null) {
      fault(
          "graduation",
          "\""
              + text("graduation")
              + "\" is no rule; accepted: 1/8 in, 1/16 in, 1/32 in, 1/64 in, 1 mm, 0.5 mm or"
              + " 0.1 mm");
    } else {
      graduation = read;
    }
  }

  /** What each value by itself cannot tell. */
  private void compare() {
    atMost("bar thickness", "bar width");
    atMost("tip width", "bar width");
    atMost("tip thickness", "bar thickness");
    atMost("taper length", "leaf length");
  }

  private void atMost(String column, String limit) {
    if (length(column).isGreaterThan(length(limit))) {
      fault(
          column,
          length(column) + " is more than the " + limit + "; accepted: at most " + length(limit));
    }
  }

  private String text(String column) {
    return texts.getOrDefault(column, "");
  }

  private void fault(String column, String problem) {
    faults.add(new Fault(line, column, problem));
  }
}
