package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Angle;
import org.hammerscale.examples.latch.HookItem;
import org.hammerscale.examples.latch.HookOrder;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.units.Measure;

/** What the hinges of an order say that their sets have in common with them. */
final class SetValues {
  private final List<OrderColumn> hinges = new ArrayList<>();
  private final List<HingeOrder> made = new ArrayList<>();
  private boolean isUnsure;

  /** Adds hinges, once they have been read. */
  void add(OrderColumn job) {
    hinges.add(job);
    isUnsure |= job.said(SetItem.NAME).isEmpty();
  }

  /** Some hinges cannot be told by their names, so that any may be meant. */
  void setUnsure() {
    isUnsure = true;
  }

  /**
   * Holds a job against the hinges of its name, if they are made already.
   *
   * @throws Blame if they do not let it do what it shall
   */
  void check(Order order) {
    if (order instanceof HingeOrder pair) {
      made.add(pair);
    } else if (order instanceof HookOrder hooks) {
      Measure<Angle> opening = hooks.hook().opening();
      made.stream()
          .filter(pair -> pair.name().equals(order.name()))
          .map(pair -> pair.pair().opening())
          .filter(opening::isGreaterThan)
          .findFirst()
          .ifPresent(most -> Blame.on(HookItem.HELD_OPEN, () -> refused(opening, most)));
    }
  }

  private static Measure<Angle> refused(Measure<Angle> opening, Measure<Angle> most) {
    throw new IllegalArgumentException(
        "held open must be at most what its hinges open, "
            + most
            + ", was "
            + opening
            + "; hold it less open, or deepen the notch of the hinges");
  }

  /**
   * Puts what the hinges say in the place of {@code as hinges}.
   *
   * @return whether all is there; if not, the cells are left out, and the cause is told once
   */
  boolean putInto(Map<OrderItem, OrderColumn.Cell> cells, List<Fault> faults) {
    OrderColumn.Cell cell = cells.get(SetItem.NAME);
    String name = cell == null ? "" : cell.text();
    List<OrderColumn> same = named(name);
    // Of a job whose name is not known, or may be that of hinges whose name is not, nothing is
    // said.
    boolean isTold = name.isEmpty() || (same.isEmpty() && isUnsure);
    boolean whole = true;
    for (Map.Entry<OrderItem, OrderColumn.Cell> each : new LinkedHashMap<>(cells).entrySet()) {
      OrderItem item = each.getKey();
      if (!item.isOfSet() || !each.getValue().text().equals(OrderColumn.AS_HINGES)) {
        continue;
      }
      int line = each.getValue().line();
      Set<String> values = new LinkedHashSet<>();
      same.forEach(job -> text(job, item).ifPresent(values::add));
      if (values.size() == 1) {
        cells.put(item, new OrderColumn.Cell(line, values.iterator().next()));
        continue;
      }
      whole = false;
      cells.remove(item);
      if (values.size() > 1) {
        faults.add(fault(line, item, name, "the strap hinges of this name differ in it"));
      } else if (same.isEmpty() && !isTold) {
        isTold = true;
        faults.add(fault(line, item, name, "no strap hinges have this name to take it from"));
      }
    }
    return whole;
  }

  private static Fault fault(int line, OrderItem item, String name, String problem) {
    String accepted = "; accepted: " + item.reading().accepted();
    return new Fault(line, item.label() + " of " + shown(name), problem + accepted);
  }

  private static String shown(String name) {
    String echo = Fault.echo(name);
    return echo.substring(1, echo.length() - 1);
  }

  private List<OrderColumn> named(String name) {
    return hinges.stream()
        .filter(job -> job.said(SetItem.NAME).filter(name::equals).isPresent())
        .toList();
  }

  /** What hinges say of an item; nothing if there is a fault in it, which is told there. */
  private static Optional<String> text(OrderColumn job, OrderItem item) {
    if (item != SetItem.BAR) {
      return job.said(item);
    }
    return job.said(HingeItem.BAR_WIDTH)
        .flatMap(
            width ->
                job.said(HingeItem.BAR_THICKNESS)
                    .map(thickness -> width + " × " + thickness + " flat"));
  }
}
