package org.hammerscale.examples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.OrderSet;
import org.hammerscale.examples.order.Typing;
import org.hammerscale.piece.TrialBook;
import org.jspecify.annotations.Nullable;

/**
 * An order file: a series of blocks, one for each {@linkplain OrderKind kind} that is ordered.
 *
 * <pre>
 * make, strap hinges
 * name, Boathouse door, Chapel cupboard
 * bar width, 40 mm, 20 mm
 * ...
 * make, thumb latch
 * name, Chapel cupboard
 * bar, as hinges
 * ...
 * </pre>
 *
 * <p>A row {@code make} begins a block and says what is made in it. Below it stands a row for each
 * item of that kind, its name first, then a column for each job, in any order. Jobs of one name are
 * a {@linkplain OrderSet set}: its latches may say {@code as hinges} of what they have in common
 * with its hinges. Lines that begin with {@code #} are remarks. All faults of the file are found in
 * one reading, each told once for its cause and in the order of the lines.
 */
final class OrderFile {
  /** A row is one line, so each line is read by itself: an open quotation mark ends with it. */
  private static final CSVFormat ROW =
      CSVFormat.DEFAULT.builder().setIgnoreSurroundingSpaces(true).get();

  private static final String MAKE = "make";
  private static final int MOST_JOBS = 100;

  private final Optional<TrialBook> trials;
  private final List<Order> orders = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();
  private final List<OrderBlock> blocks = new ArrayList<>();

  /** The block that rows go to; none before the first, or if nobody knows what it makes. */
  private @Nullable OrderBlock block;

  private boolean hasBegun;

  /** Whether there are rows of which nobody knows what they are of; it may be hinges. */
  private boolean hasLostRows;

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
    for (int i = 0; i < lines.size(); i++) {
      // Some programs begin a file with a byte order mark.
      String line = (i == 0 ? lines.get(i).replace("\uFEFF", "") : lines.get(i)).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        file.row(i + 1, line);
      }
    }
    file.close(Math.max(lines.size(), 1));
    file.faults.sort(Comparator.comparingInt(Fault::line));
    return file;
  }

  /** What was ordered, the jobs of a set together; to be used only if there are no faults. */
  List<Order> orders() {
    return OrderSet.of(orders).stream().flatMap(set -> set.orders().stream()).toList();
  }

  List<Fault> faults() {
    return faults;
  }

  private void row(int number, String line) {
    List<String> cells = cells(number, line);
    // Of a spreadsheet an empty line is a row of empty cells, and a remark may be in quotes.
    if (cells.stream().allMatch(String::isEmpty) || cells.get(0).startsWith("#")) {
      return;
    }
    if (cells.get(0).equals(MAKE) || isMisspeltMake(number, cells)) {
      begin(number, cells.subList(1, cells.size()));
    } else if (block != null) {
      block.row(number, cells);
    } else if (!hasBegun) {
      before(number, cells.get(0));
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
      String problem =
          "a quotation mark begins a cell and does not end it; accepted: quotation marks round a"
              + " whole cell, or 1 1/2 in";
      if (name.equals(MAKE)) {
        faults.add(new Fault(number, MAKE, problem));
        block = null;
        hasBegun = true;
        hasLostRows = true;
      } else if (block != null) {
        block.unreadable(number, name, problem);
      } else if (!hasBegun) {
        before(number, name);
      }
      return List.of();
    }
  }

  /** Rows that belong to nothing, told of the first. */
  private void before(int number, String name) {
    String problem =
        "stands above the first row make, which says what is made; write "
            + MAKE
            + ", "
            + OrderKind.STRAP_HINGES.label()
            + " above it, or another of "
            + OrderKind.names();
    faults.add(new Fault(number, Fault.echo(name), problem));
    hasBegun = true;
    hasLostRows = true;
  }

  private boolean isMisspeltMake(int number, List<String> cells) {
    boolean meant =
        cells.size() > 1
            && OrderKind.named(cells.get(1)) != null
            && Typing.errors(cells.get(0), MAKE) < 3
            && (block == null || block.kind().item(cells.get(0)) == null);
    if (meant) {
      faults.add(new Fault(number, Fault.echo(cells.get(0)), "is no item; write " + MAKE));
    }
    return meant;
  }

  private void begin(int number, List<String> values) {
    hasBegun = true;
    block = null;
    String wanted = values.isEmpty() ? "" : values.get(0);
    OrderKind kind = OrderKind.named(wanted);
    if (values.stream().skip(1).anyMatch(value -> !value.isEmpty())) {
      String problem = "has " + values.size() + " values; accepted: one of " + OrderKind.names();
      faults.add(new Fault(number, MAKE, problem));
    } else if (kind == null) {
      kind = nearest(wanted);
      String accepted =
          kind == null ? "; accepted: " + OrderKind.names() : "; write " + kind.label();
      String problem =
          wanted.isEmpty() ? "there is nothing" : Fault.echo(wanted) + " is nothing made here";
      faults.add(new Fault(number, MAKE, problem + accepted));
    }
    OrderKind known = kind;
    if (known == null) {
      hasLostRows = true;
      return;
    }
    for (OrderBlock earlier : blocks) {
      if (earlier.kind() == known) {
        String problem =
            known.label()
                + " stands on line "
                + earlier.line()
                + " already; write these jobs into columns there";
        faults.add(new Fault(number, MAKE, problem));
        return;
      }
    }
    block = new OrderBlock(known, number, faults);
    blocks.add(block);
  }

  private static @Nullable OrderKind nearest(String wanted) {
    OrderKind nearest = null;
    int least = 4;
    for (OrderKind kind : OrderKind.values()) {
      int typing = Typing.errors(wanted, kind.label());
      if (typing < least) {
        least = typing;
        nearest = kind;
      }
    }
    return nearest;
  }

  private void close(int lastLine) {
    if (blocks.isEmpty() && faults.isEmpty()) {
      String problem = "there is no job; accepted: a row make, then one of " + OrderKind.names();
      faults.add(new Fault(lastLine, MAKE, problem));
      return;
    }
    blocks.forEach(OrderBlock::close);
    long jobs = blocks.stream().mapToLong(OrderBlock::jobs).sum();
    if (jobs > MOST_JOBS) {
      faults.add(new Fault(1, "", "has " + jobs + " jobs; accepted: at most " + MOST_JOBS));
      return;
    }
    SetValues set = new SetValues();
    if (hasLostRows) {
      set.setUnsure();
    }
    // Hinges first, wherever they stand: others may be as they are. The file's order is kept.
    Map<OrderBlock, List<Order>> made = new LinkedHashMap<>();
    blocks.forEach(each -> made.put(each, new ArrayList<>()));
    made.forEach((each, jobsOf) -> jobs(each, set, jobsOf, false));
    made.forEach((each, jobsOf) -> jobs(each, set, jobsOf, true));
    made.values().forEach(orders::addAll);
  }

  private void jobs(OrderBlock each, SetValues set, List<Order> made, boolean besideHinges) {
    if (each.kind().isBesideHinges() != besideHinges) {
      return;
    }
    if (!besideHinges && !each.isNamed()) {
      set.setUnsure();
    }
    for (Map<OrderItem, OrderColumn.Cell> cells : each.columns()) {
      boolean whole = !besideHinges || set.putInto(cells, faults);
      OrderColumn job = new OrderColumn(cells, besideHinges, faults);
      boolean sound = job.isSound();
      if (!besideHinges) {
        set.add(job);
      }
      if (whole && sound && each.isWhole()) {
        try {
          Order order = each.kind().make(job, trials);
          set.check(order);
          made.add(order);
        } catch (Blame e) {
          job.fault(e.item(), "cannot be made: " + e.getMessage());
        }
      }
    }
  }
}
