package org.hammerscale.examples;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Prints the job sheets for an order file: what to cut, where to punch, what to true the barrel in;
 * then which bars of the rack to cut it from.
 *
 * <p>Usage: {@code JobSheet [order.csv [rack.csv]]}; without a file, or with a blank for one, it
 * prints a sample order, and assumes bars of a usual length. A file with faults prints one line for
 * each on the error stream, nothing else, and ends with exit code 2.
 */
public final class JobSheet {
  private static final int FAULTY = 2;
  private static final int MOST_FILES = 2;

  private JobSheet() {}

  /**
   * Runs the program.
   *
   * @param args the order file and the rack file; none for the sample
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
    if (args.size() > MOST_FILES) {
      err.println("give an order file and a rack file, or none, not " + args.size() + " files");
      return FAULTY;
    }
    String orderName = named(args, 0);
    String rackName = named(args, 1);
    List<String> lines = sampleLines();
    String rackText = RackFile.NOTHING;
    try {
      if (!orderName.isEmpty()) {
        lines = TextFile.read(orderName, "an order file").lines().toList();
      }
      if (!rackName.isEmpty()) {
        rackText = TextFile.read(rackName, "a rack file");
      }
    } catch (IOException e) {
      err.println(e.getMessage());
      return FAULTY;
    }
    OrderFile order = OrderFile.of(lines);
    String called = orderName.isEmpty() ? "the sample order" : orderName;
    order.faults().forEach(fault -> err.println(called + ", " + fault));
    RackFile rack = RackFile.of(new StringReader(rackText));
    rack.faults().forEach(fault -> err.println(rackName + ", " + fault));
    if (!order.faults().isEmpty() || !rack.faults().isEmpty()) {
      return FAULTY;
    }
    out.print(Sheets.of(order.orders(), rack.rack()));
    return 0;
  }

  private static String named(List<String> args, int at) {
    return args.size() > at && !args.get(at).isBlank() ? args.get(at) : "";
  }

  /** The order that is printed when no file is named. */
  static List<String> sampleLines() throws IOException {
    try (InputStream in = JobSheet.class.getResourceAsStream("order.csv")) {
      if (in == null) {
        throw new IOException("order.csv is missing on the class path");
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList();
    }
  }
}
