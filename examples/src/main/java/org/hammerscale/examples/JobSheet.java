package org.hammerscale.examples;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hammerscale.examples.card.BenchCard;
import org.hammerscale.examples.order.CutSheet;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.hammerscale.piece.TrialBook;

/**
 * Prints the job sheets for an order file: what to cut, where to punch, what to true the barrel in;
 * then which bars of the rack to cut it from.
 *
 * <p>Usage: {@code JobSheet [order=order.csv] [rack=rack.csv] [trials=trials.csv]
 * [card=card.html]}; without an order it prints a sample one, and without a rack it assumes bars of
 * a usual length. With a file of trials the sheets plan the first of each piece, and once that is
 * filled in the others by it; what a run plans is added to the file. The card is the same sheets
 * with drawings, as a page for a browser. An order or a rack with faults prints one line for each
 * on the error stream, nothing else, and ends with exit code 2; a damaged line of the trials is
 * told likewise, and the sheets go by the others.
 */
public final class JobSheet {
  private static final int FAULTY = 2;
  private static final String ORDER = "order=";
  private static final String RACK = "rack=";
  private static final String CARD = "card=";
  private static final String TRIALS = "trials=";

  private JobSheet() {}

  /**
   * Runs the program.
   *
   * @param args the files, each behind its kind; none for the sample
   * @throws IOException if the sample cannot be read from the class path
   */
  public static void main(String[] args) throws IOException {
    // The sheets hold signs such as × and π whatever the terminal's locale.
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    int exit = run(List.of(args), out, err);
    if (exit != 0) {
      System.exit(exit);
    }
  }

  /** The program without its exit, for tests. */
  static int run(List<String> args, PrintStream out, PrintStream err) throws IOException {
    for (String arg : args) {
      if (Stream.of(ORDER, RACK, TRIALS, CARD).noneMatch(arg::startsWith)) {
        err.println(
            Fault.echo(arg)
                + " is no file for this; accepted: order=file, rack=file, trials=file, card=file");
        return FAULTY;
      }
    }
    String orderName = named(args, ORDER);
    String rackName = named(args, RACK);
    String trialsName = named(args, TRIALS);
    Optional<TrialBook> trials = Optional.empty();
    List<String> lines = sampleLines();
    String rackText = RackFile.NOTHING;
    try {
      if (!orderName.isEmpty()) {
        lines = TextFile.read(orderName, "an order file").lines().toList();
      }
      if (!rackName.isEmpty()) {
        rackText = TextFile.read(rackName, "a rack file");
      }
      if (!trialsName.isEmpty()) {
        trials = Optional.of(TrialFile.read(trialsName));
      }
    } catch (IOException e) {
      err.println(e.getMessage());
      return FAULTY;
    }
    OrderFile order = OrderFile.of(lines, trials);
    String called = orderName.isEmpty() ? "the sample order" : orderName;
    order.faults().forEach(fault -> err.println(called + ", " + fault));
    RackFile rack = RackFile.of(new StringReader(rackText));
    rack.faults().forEach(fault -> err.println(rackName + ", " + fault));
    if (!order.faults().isEmpty() || !rack.faults().isEmpty()) {
      return FAULTY;
    }
    CutSheet cuts = CutSheet.of(order.orders(), rack.rack());
    out.print(Sheets.of(order.orders(), cuts));
    String card = named(args, CARD);
    if (!card.isEmpty()) {
      try {
        TextFile.write(card, BenchCard.of(order.orders(), cuts));
      } catch (IOException e) {
        err.println(e.getMessage());
        return FAULTY;
      }
      out.println("Bench card with drawings, for a browser or to print: " + card);
    }
    return trials.isEmpty() ? 0 : trials(trialsName, trials.get(), order.orders(), err);
  }

  /**
   * Adds the pieces of the sheets to the file of trials, to be filled in, or tells what is wrong
   * with what is written there.
   */
  private static int trials(String name, TrialBook trials, List<Order> orders, PrintStream err) {
    List<String> faults = new ArrayList<>(trials.faults());
    orders.forEach(order -> faults.addAll(order.trialFaults()));
    faults.forEach(fault -> err.println(name + ", " + fault));
    if (!faults.isEmpty()) {
      return FAULTY;
    }
    TrialBook planned = TrialFile.planned(trials, orders);
    if (!planned.text().equals(trials.text())) {
      try {
        TrialFile.write(Path.of(name), planned);
      } catch (IOException e) {
        err.println(name + ": cannot be written (" + e.getMessage() + "); name another file");
        return FAULTY;
      }
    }
    return 0;
  }

  /** The last file of a kind; blank is none. */
  private static String named(List<String> args, String kind) {
    return args.stream()
        .filter(arg -> arg.startsWith(kind))
        .map(arg -> arg.substring(kind.length()))
        .filter(name -> !name.isBlank())
        .reduce("", (before, name) -> name);
  }

  /** The order that is printed when no file is named. */
  static List<String> sampleLines() throws IOException {
    return sampleLines("order.csv");
  }

  /** One of the orders on the class path. */
  static List<String> sampleLines(String name) throws IOException {
    try (InputStream in = JobSheet.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException(name + " is missing on the class path");
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList();
    }
  }
}
