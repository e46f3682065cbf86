package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.Typing;

/** The rows of an order file that say one kind of thing: each item once, a column for each job. */
final class OrderBlock {
  private record Row(int line, List<String> values) {}

  private final OrderKind kind;
  private final int line;
  private final List<Fault> faults;
  private final Map<OrderItem, Row> rows = new LinkedHashMap<>();
  private final Map<Integer, String> strangers = new LinkedHashMap<>();

  /** Items that have a fault already, so that nothing more is said of them. */
  private final Set<OrderItem> told = new HashSet<>();

  private int last;
  private boolean isBroken;

  /** A block that begins at a line. */
  OrderBlock(OrderKind kind, int line, List<Fault> faults) {
    this.kind = kind;
    this.line = line;
    this.last = line;
    this.faults = faults;
  }

  OrderKind kind() {
    return kind;
  }

  int line() {
    return line;
  }

  /** A row: the name of an item, then a value for each job. */
  void row(int number, List<String> cells) {
    if (isBroken) {
      return;
    }
    last = number;
    String name = cells.get(0);
    OrderItem item = kind.item(name);
    if (item == null) {
      strangers.put(number, name);
    } else if (!rows.containsKey(item)) {
      rows.put(item, new Row(number, cells.subList(1, cells.size())));
    } else if (item == SetItem.NAME) {
      // Jobs of another kind begin with their names: all below is a stranger to this one.
      fault(
          number,
          item,
          "stands a second time; write make, and what is made, above it if another kind begins");
      isBroken = true;
    } else {
      fault(number, item, "stands a second time; accepted: once, with a value for each job");
    }
  }

  /** A row that cannot be read, of which the beginning may be an item. */
  void unreadable(int number, String name, String problem) {
    last = number;
    OrderItem item = kind.item(name);
    if (item == null) {
      faults.add(new Fault(number, Fault.echo(name), problem));
    } else {
      fault(number, item, problem);
    }
  }

  private void fault(int number, OrderItem item, String problem) {
    if (told.add(item)) {
      faults.add(new Fault(number, item.label(), problem));
    }
  }

  /** Tells what is wrong with its rows, once it has them all. */
  void close() {
    if (rows.isEmpty() && strangers.isEmpty() && told.isEmpty()) {
      String problem = "nothing stands below it; accepted: a row for each of " + kind.itemNames();
      faults.add(new Fault(line, "make", problem));
      isBroken = true;
      return;
    }
    strangers.forEach(this::stranger);
    int jobs = jobs();
    for (OrderItem item : kind.items()) {
      Row row = rows.get(item);
      if (row == null) {
        missing(item);
      } else if (row.values.size() != jobs) {
        fault(
            row.line,
            item,
            "has "
                + row.values.size()
                + (row.values.size() == 1 ? " value" : " values")
                + "; accepted: "
                + jobs
                + ", one for each job (a length has a point, not a comma)");
      }
    }
  }

  private void missing(OrderItem item) {
    if (!isBroken) {
      String accepted = OrderColumn.accepted(item, kind.isBesideHinges());
      fault(last, item, "is missing; accepted: " + accepted);
    }
  }

  /** A row whose name is none: it stands for the missing item that is written most like it. */
  private void stranger(int number, String name) {
    OrderItem meant = null;
    int least = 3;
    for (OrderItem item : kind.items()) {
      int typing = Typing.errors(name, item.label());
      if (!rows.containsKey(item) && !told.contains(item) && typing < least) {
        least = typing;
        meant = item;
      }
    }
    String problem = "is no item of " + kind.label() + "; ";
    if (meant == null) {
      problem += "accepted: " + kind.itemNames();
    } else {
      told.add(meant);
      problem += "write " + meant.label();
    }
    faults.add(new Fault(number, Fault.echo(name), problem));
  }

  /** How many jobs its rows have. */
  int jobs() {
    int jobs = usualCount(rows.values());
    while (jobs > 1 && isEmpty(jobs - 1)) {
      trim(jobs);
      jobs--;
    }
    return jobs;
  }

  /** Whether a column has nothing: a spreadsheet fills up rows to the width of the widest block. */
  private boolean isEmpty(int column) {
    return rows.values().stream()
        .allMatch(row -> row.values.size() <= column || row.values.get(column).isEmpty());
  }

  private void trim(int width) {
    rows.replaceAll(
        (item, row) ->
            row.values.size() == width ? new Row(row.line, row.values.subList(0, width - 1)) : row);
  }

  /** How many values most rows have, so that one comma too many is one fault. */
  private static int usualCount(Collection<Row> rows) {
    Map<Integer, Integer> counts = new HashMap<>();
    rows.forEach(row -> counts.merge(row.values.size(), 1, Integer::sum));
    return counts.entrySet().stream()
        .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .orElse(0);
  }

  /** Whether each item stands there once, with a value for each job. */
  boolean isWhole() {
    return !isBroken && told.isEmpty();
  }

  /** Whether its jobs are named, each with a name of its own place. */
  boolean isNamed() {
    return rows.containsKey(SetItem.NAME) && !told.contains(SetItem.NAME);
  }

  /** What the file says of each job, of the items that stand there rightly. */
  List<Map<OrderItem, OrderColumn.Cell>> columns() {
    List<Map<OrderItem, OrderColumn.Cell>> columns = new ArrayList<>();
    for (int job = 0; job < jobs(); job++) {
      Map<OrderItem, OrderColumn.Cell> cells = new LinkedHashMap<>();
      for (Map.Entry<OrderItem, Row> row : rows.entrySet()) {
        if (!told.contains(row.getKey())) {
          String text = row.getValue().values.get(job);
          cells.put(row.getKey(), new OrderColumn.Cell(row.getValue().line, text));
        }
      }
      columns.add(cells);
    }
    return columns;
  }
}
