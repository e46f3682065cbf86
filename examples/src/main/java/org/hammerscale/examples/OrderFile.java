package org.hammerscale.examples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hammerscale.piece.TrialBook;

/**
 * An order file: a row for each {@linkplain OrderItem item}, its name first, then a column for each
 * job. Lines that begin with {@code #} are remarks. All faults of the file are found in one
 * reading, each told once for its cause and in the order of the lines.
 */
final class OrderFile {
  /** A row is one line, so each line is read by itself: an open quotation mark ends with it. */
  private static final CSVFormat ROW =
      CSVFormat.DEFAULT.builder().setIgnoreSurroundingSpaces(true).get();

  private static final int MOST_JOBS = 100;

  private final List<HingeOrder> orders = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();
  private final Map<OrderItem, Row> rows = new EnumMap<>(OrderItem.class);

  /** Items that have a fault already, so that nothing more is said of them. */
  private final Set<OrderItem> told = EnumSet.noneOf(OrderItem.class);

  private record Row(int line, List<String> values) {}

  private final Optional<TrialBook> trials;

  private OrderFile(Optional<TrialBook> trials) {
    this.trials = trials;
  }

  /** Reads the lines of a file, of which no log is kept. */
  static OrderFile of(List<String> lines) {
    return of(lines, Optional.empty());
  }

  /** Reads the lines of a file, with the log of what its finished pieces took if one is kept. */
  static OrderFile of(List<String> lines, Optional<TrialBook> trials) {
    OrderFile file = new OrderFile(trials);
    Map<Integer, String> strangers = new HashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      // Some programs begin a file with a byte order mark.
      String line = (i == 0 ? lines.get(i).replace("\uFEFF", "") : lines.get(i)).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        file.row(i + 1, line, strangers);
      }
    }
    strangers.forEach(file::stranger);
    file.jobs(Math.max(lines.size(), 1));
    file.faults.sort(Comparator.comparingInt(Fault::line));
    return file;
  }

  /** What was ordered; to be used only if there are no faults. */
  List<HingeOrder> orders() {
    return orders;
  }

  List<Fault> faults() {
    return faults;
  }

  private void row(int number, String line, Map<Integer, String> strangers) {
    List<String> cells = cells(number, line);
    if (cells.isEmpty()) {
      return; // told already
    }
    String name = cells.get(0);
    OrderItem item = OrderItem.named(name);
    if (item == null) {
      strangers.put(number, name);
    } else if (rows.containsKey(item)) {
      fault(number, item, "stands a second time; accepted: once, with a value for each job");
    } else {
      rows.put(item, new Row(number, cells.subList(1, cells.size())));
    }
  }

  /** The cells of a line; none of one that cannot be read, which is told. */
  private List<String> cells(int number, String line) {
    try (CSVParser parser = CSVParser.parse(line, ROW)) {
      List<CSVRecord> records = parser.getRecords();
      return records.get(0).toList();
    } catch (IOException | UncheckedIOException e) {
      int comma = line.indexOf(',');
      String name = comma < 0 ? line : line.substring(0, comma).strip();
      OrderItem item = OrderItem.named(name);
      String problem =
          "a quotation mark begins a cell and does not end it; accepted: quotation marks round a"
              + " whole cell, or 1 1/2 in";
      if (item == null) {
        faults.add(new Fault(number, Fault.echo(name), problem));
      } else {
        fault(number, item, problem);
      }
      return List.of();
    }
  }

  private void fault(int line, OrderItem item, String problem) {
    if (told.add(item)) {
      faults.add(new Fault(line, item.label(), problem));
    }
  }

  /** A row whose name is none: it stands for the missing item that is written most like it. */
  private void stranger(int line, String name) {
    OrderItem meant = null;
    int least = 3;
    for (OrderItem item : OrderItem.values()) {
      int typing = Typing.errors(name, item.label());
      if (!rows.containsKey(item) && !told.contains(item) && typing < least) {
        least = typing;
        meant = item;
      }
    }
    String problem = "is no item; ";
    if (meant == null) {
      problem += "accepted: " + OrderItem.names();
    } else {
      told.add(meant);
      problem += "write " + meant.label();
    }
    faults.add(new Fault(line, Fault.echo(name), problem));
  }

  private void jobs(int lastLine) {
    if (rows.isEmpty() && faults.isEmpty()) {
      faults.add(
          new Fault(lastLine, "name", "there is no job; accepted: a row of names, one for each"));
      return;
    }
    int jobs = usualCount(rows.values());
    for (OrderItem item : OrderItem.values()) {
      Row row = rows.get(item);
      if (row == null) {
        fault(lastLine, item, "is missing; accepted: " + item.accepted());
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
    if (jobs > MOST_JOBS) {
      faults.add(new Fault(1, "", "has " + jobs + " jobs; accepted: at most " + MOST_JOBS));
      return;
    }
    for (int job = 0; job < jobs; job++) {
      job(job);
    }
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

  private void job(int column) {
    Map<OrderItem, OrderColumn.Cell> cells = new EnumMap<>(OrderItem.class);
    rows.forEach(
        (item, row) -> {
          if (!told.contains(item)) {
            cells.put(item, new OrderColumn.Cell(row.line, row.values.get(column)));
          }
        });
    OrderColumn job = new OrderColumn(cells, faults);
    if (job.isSound() && told.isEmpty()) {
      try {
        orders.add(HingeOrder.from(job, trials));
      } catch (Blame e) {
        job.fault(e.item(), "cannot be made: " + e.getMessage());
      }
    }
  }
}
