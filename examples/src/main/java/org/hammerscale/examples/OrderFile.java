package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An order file: a header that names the columns, in any order, and a row for each kind of hinge
 * set. Empty lines and lines that begin with {@code #} are passed over.
 */
final class OrderFile {
  static final List<String> COLUMNS = columns();

  private final List<HingeOrder> orders = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();

  private OrderFile() {}

  /** Reads all lines and notes all faults. */
  static OrderFile of(List<String> lines) {
    OrderFile file = new OrderFile();
    List<String> header = null;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (i == 0 && line.startsWith("\uFEFF")) {
        line = line.substring(1); // some editors begin a file with a byte order mark
      }
      if (line.isBlank() || line.stripLeading().startsWith("#")) {
        continue;
      }
      if (header == null) {
        header = file.header(i + 1, CsvLine.fields(line));
        if (!file.faults.isEmpty()) {
          return file; // without its header no row can be read
        }
      } else {
        file.row(i + 1, header, CsvLine.fields(line));
      }
    }
    file.checkComplete(lines.size(), header);
    return file;
  }

  /** What was ordered; to be used only if there are no faults. */
  List<HingeOrder> orders() {
    return orders;
  }

  List<Fault> faults() {
    return faults;
  }

  private List<String> header(int line, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!COLUMNS.contains(name)) {
        faults.add(new Fault(line, name, "is no column; accepted: " + String.join(", ", COLUMNS)));
      } else if (!seen.add(name)) {
        faults.add(new Fault(line, name, "stands twice in the header; accepted: once"));
      }
    }
    for (String column : COLUMNS) {
      if (!names.contains(column)) {
        faults.add(
            new Fault(
                line,
                column,
                "is missing in the header; accepted: all of " + String.join(", ", COLUMNS)));
      }
    }
    return names;
  }

  private void row(int line, List<String> header, List<String> fields) {
    if (fields.size() != header.size()) {
      faults.add(
          new Fault(
              line,
              "",
              "has "
                  + fields.size()
                  + " fields; accepted: "
                  + header.size()
                  + ", as in the header (a length has a point, not a comma)"));
      return;
    }
    Map<String, String> texts = new HashMap<>();
    for (int i = 0; i < header.size(); i++) {
      texts.put(header.get(i), fields.get(i));
    }
    new OrderRow(line, texts, faults).readInto(orders);
  }

  private void checkComplete(int lines, @Nullable List<String> header) {
    if (header == null) {
      faults.add(
          new Fault(
              Math.max(lines, 1),
              "",
              "there is no header; accepted: " + String.join(", ", COLUMNS)));
    } else if (orders.isEmpty() && faults.isEmpty()) {
      faults.add(
          new Fault(lines, "", "nothing is ordered; accepted: a row for each kind of hinge set"));
    }
  }

  private static List<String> columns() {
    List<String> names = new ArrayList<>();
    names.add("name");
    names.addAll(OrderRow.LENGTHS);
    names.add("sets");
    names.add("graduation");
    return List.copyOf(names);
  }
}
