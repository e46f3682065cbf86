package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An order file: a row for each {@linkplain OrderItem item}, its name first, then a column for each
 * job. Lines that begin with {@code #} are remarks. All faults of the file are found in one
 * reading.
 */
final class OrderFile {
  private final List<HingeOrder> orders = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();
  private final Map<OrderItem, Row> rows = new LinkedHashMap<>();

  private record Row(int line, List<String> values) {}

  private OrderFile() {}

  /** Reads the lines of a file. */
  static OrderFile of(List<String> lines) {
    OrderFile file = new OrderFile();
    for (int i = 0; i < lines.size(); i++) {
      // Some programs begin a file with a byte order mark.
      String line = (i == 0 ? lines.get(i).replace("\uFEFF", "") : lines.get(i)).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        file.row(i + 1, CsvLine.fields(line));
      }
    }
    file.jobs(Math.max(lines.size(), 1));
    return file;
  }

  /** What was ordered; to be used only if there are no faults. */
  List<HingeOrder> orders() {
    return orders;
  }

  List<Fault> faults() {
    return faults;
  }

  private void row(int line, List<String> fields) {
    String name = fields.get(0);
    OrderItem item = OrderItem.named(name);
    if (item == null) {
      faults.add(new Fault(line, name, "is no item; accepted: " + OrderItem.names()));
    } else if (rows.containsKey(item)) {
      faults.add(
          new Fault(line, name, "stands a second time; accepted: once, with a value for each job"));
    } else {
      rows.put(item, new Row(line, fields.subList(1, fields.size())));
    }
  }

  private void jobs(int lastLine) {
    Row names = rows.get(OrderItem.NAME);
    if (names == null || names.values.isEmpty()) {
      faults.add(
          new Fault(lastLine, "name", "there is no job; accepted: a row of names, one for each"));
      return;
    }
    int jobs = names.values.size();
    for (OrderItem item : OrderItem.values()) {
      Row row = rows.get(item);
      if (row == null) {
        faults.add(new Fault(lastLine, item.label(), "is missing; accepted: " + item.accepted()));
      } else if (row.values.size() != jobs) {
        faults.add(
            new Fault(
                row.line,
                item.label(),
                "has "
                    + row.values.size()
                    + " values; accepted: "
                    + jobs
                    + ", one for each job (a length has a point, not a comma)"));
      }
    }
    if (faults.isEmpty()) {
      for (int job = 0; job < jobs; job++) {
        job(job);
      }
    }
  }

  private void job(int column) {
    Map<OrderItem, String> texts = new HashMap<>();
    Map<OrderItem, Integer> lines = new HashMap<>();
    rows.forEach(
        (item, row) -> {
          texts.put(item, row.values.get(column));
          lines.put(item, row.line);
        });
    OrderColumn job = new OrderColumn(texts, lines, faults);
    if (job.isSound()) {
      try {
        orders.add(HingeOrder.from(job));
      } catch (IllegalArgumentException e) {
        job.fault(OrderItem.NAME, "cannot be made: " + e.getMessage());
      }
    }
  }
}
