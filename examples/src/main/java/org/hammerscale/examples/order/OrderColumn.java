package org.hammerscale.examples.order;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;

/**
 * One job of an order file while it is read: each fault is noted and a harmless value put in its
 * place, so that the customer hears of all faults at once.
 */
public final class OrderColumn {
  /** How what is shared with the hinges of the same name is told. */
  public static final String AS_HINGES = "as hinges";

  private static final int LONGEST_NAME = 60;
  private static final int LONGEST_VALUE = 120;

  /** What stands in one place of the file. */
  public record Cell(int line, String text) {}

  private final Map<OrderItem, Cell> cells;
  private final boolean besideHinges;
  private final List<Fault> faults;
  private final Set<OrderItem> faulty = new HashSet<>();

  /**
   * A job.
   *
   * @param cells what the file says of it
   * @param besideHinges whether it may be told to be as the hinges are
   * @param faults where faults are noted
   */
  public OrderColumn(Map<OrderItem, Cell> cells, boolean besideHinges, List<Fault> faults) {
    this.cells = cells;
    this.besideHinges = besideHinges;
    this.faults = faults;
  }

  /** Reads every item that stands in the file once; whether there was no fault in them. */
  public boolean isSound() {
    cells.keySet().forEach(this::value);
    if (faulty.isEmpty()) {
      cells.keySet().forEach(item -> item.limit().ifPresent(limit -> atMost(item, limit)));
    }
    return faulty.isEmpty();
  }

  /** What each value by itself cannot tell. */
  private void atMost(OrderItem item, OrderItem limit) {
    if (!cells.containsKey(limit)) {
      return;
    }
    Measure<Length> most = length(limit);
    Measure<Length> value = length(item);
    if (value.isGreaterThan(most)) {
      fault(item, value + " is more than the " + limit.label() + "; accepted: at most " + most);
    }
  }

  /** Notes a fault of an item, in this job. */
  public void fault(OrderItem item, String problem) {
    faulty.add(item);
    Cell name = cells.get(SetItem.NAME);
    String job = name == null || isBad(name.text) || item == SetItem.NAME ? "" : name.text;
    String where = item.label() + (job.isEmpty() ? "" : " of " + job);
    faults.add(new Fault(cells.getOrDefault(item, new Cell(0, "")).line, where, problem));
  }

  /** What is accepted for an item, where there may be hinges to take it from or not. */
  public static String accepted(OrderItem item, boolean besideHinges) {
    return item.reading().accepted() + (besideHinges && item.isOfSet() ? ", or " + AS_HINGES : "");
  }

  /** What the file says, if it was read without a fault. */
  public Optional<String> said(OrderItem item) {
    return cells.containsKey(item) && !faulty.contains(item)
        ? Optional.of(text(item))
        : Optional.empty();
  }

  private static boolean isBad(String text) {
    return text.length() > LONGEST_NAME || !isPrintable(text);
  }

  private static boolean isPrintable(String text) {
    return text.chars().allMatch(c -> Fault.isPrintable((char) c));
  }

  public String name() {
    String name = text(SetItem.NAME);
    if (name.isEmpty()) {
      fault(SetItem.NAME, "there is none; accepted: " + SetItem.NAME.reading().accepted());
    } else if (isBad(name)) {
      fault(SetItem.NAME, Fault.echo(name) + " is no name; accepted: 60 letters, no controls");
    }
    return name;
  }

  public Measure<Length> length(OrderItem item) {
    return measure(item, Length.class);
  }

  /** A quantity of another kind than a length. */
  public <Q extends Quantity<Q>> Measure<Q> measure(OrderItem item, Class<Q> kind) {
    return ((Measure<?>) value(item)).asType(kind);
  }

  public List<Measure<Length>> lengths(OrderItem item) {
    return ((List<?>) value(item))
        .stream().map(each -> ((Measure<?>) each).asType(Length.class)).toList();
  }

  /** A length, if it is not none. */
  public Optional<Measure<Length>> lengthIfAny(OrderItem item) {
    return measureIfAny(item, Length.class);
  }

  /** A measure of a kind, if it is not none. */
  public <Q extends Quantity<Q>> Optional<Measure<Q>> measureIfAny(OrderItem item, Class<Q> kind) {
    return ((Optional<?>) value(item)).map(each -> ((Measure<?>) each).asType(kind));
  }

  public int count(OrderItem item) {
    return as(Integer.class, item);
  }

  @SuppressWarnings("unchecked") // of lengths, as its reading says
  public Graduation<Length> graduation() {
    return (Graduation<Length>) value(SetItem.GRADUATION);
  }

  /** A bar of mild steel. */
  public Bar bar(OrderItem item) {
    return Bar.of(as(Section.class, item), Material.MILD_STEEL);
  }

  /** What is neither a quantity nor has a method of its own. */
  public <T> T as(Class<T> kind, OrderItem item) {
    return kind.cast(value(item));
  }

  private Object value(OrderItem item) {
    if (item == SetItem.NAME) {
      return name();
    }
    Reading<?> reading = item.reading();
    String text = text(item);
    String accepted = "; accepted: " + accepted(item, besideHinges);
    if (text.isEmpty()) {
      fault(item, "there is nothing" + accepted);
    } else if (text.length() > LONGEST_VALUE || !isPrintable(text)) {
      fault(item, Fault.echo(text) + " is not to be read" + accepted);
    } else {
      try {
        return reading.reader().apply(text);
      } catch (IllegalArgumentException e) {
        fault(item, e.getMessage() + accepted);
      }
    }
    return reading.instead();
  }

  private String text(OrderItem item) {
    return cells.getOrDefault(item, new Cell(0, "")).text;
  }
}
