package org.hammerscale.examples;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hammerscale.cutting.Aim;
import org.hammerscale.cutting.CutList;
import org.hammerscale.cutting.CuttingPlan;
import org.hammerscale.cutting.Rack;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.SectionText;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/**
 * Prices a batch of orders, each cut by itself from the bars of a {@linkplain RackFile rack file}:
 * lines {@code order, section, piece, length, count} in, those of an order one below the other; for
 * each order and section a line with bars, money and longest leftover out. A saw of 3 mm and an end
 * trim of 20 mm are counted. Only one order is held at a time, so that a batch of any length runs
 * in the same memory.
 *
 * <p>Usage: {@code BatchQuote lines.csv rack.csv}; {@code -} reads the lines from the standard
 * input. Progress and faulty lines go to the error stream. A line that cannot be read costs that
 * line alone: its order is priced without it, and says how many of its lines were left out; the
 * exit code is then 2. A quotation mark ends with its line.
 */
public final class BatchQuote {
  private static final int FAULTY = 2;
  private static final int TELL_EVERY = 1000;
  private static final long MOST_STEPS = 20_000_000;
  private static final Measure<Length> KERF = Measures.millimetres(3);
  private static final Measure<Length> END_TRIM = Measures.millimetres(20);
  private static final CSVFormat FORMAT =
      RackFile.FORMAT.builder().setHeader("order", "section", "piece", "length", "count").get();

  private final Rack rack;
  private final PrintStream out;
  private final PrintStream err;
  private final Map<Bar, CutList> lists = new LinkedHashMap<>();
  private String order = "";
  private int leftOut;
  private boolean allSound = true;

  private BatchQuote(Rack rack, PrintStream out, PrintStream err) {
    this.rack = rack;
    this.out = out;
    this.err = err;
  }

  /**
   * Runs the program.
   *
   * @param args the lines and the rack
   * @throws IOException if a file breaks off
   */
  public static void main(String[] args) throws IOException {
    PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    int exit = run(List.of(args), out, err);
    out.flush();
    if (exit != 0) {
      System.exit(exit);
    }
  }

  /** The program without its exit, for tests. */
  static int run(List<String> args, PrintStream out, PrintStream err) throws IOException {
    if (args.size() != 2) {
      err.println("give the file of lines and the rack file, not " + args.size() + " files");
      return FAULTY;
    }
    try (Reader rackReader = Files.newBufferedReader(Path.of(args.get(1)));
        BufferedReader lines = lines(args.get(0))) {
      RackFile file = RackFile.of(rackReader);
      file.faults().forEach(fault -> err.println(args.get(1) + ", " + fault));
      return file.faults().isEmpty() && new BatchQuote(file.rack(), out, err).quote(lines)
          ? 0
          : FAULTY;
    } catch (NoSuchFileException e) {
      err.println(e.getFile() + ": there is no such file");
      return FAULTY;
    }
  }

  private static BufferedReader lines(String name) throws IOException {
    return name.equals("-")
        ? new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))
        : Files.newBufferedReader(Path.of(name));
  }

  private boolean quote(BufferedReader lines) throws IOException {
    out.println("order,section,pieces,bars,money,longest leftover,proved,lines left out");
    long number = 0;
    boolean begun = false;
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      if (++number % TELL_EVERY == 0) {
        err.println(number + " lines read, at order " + Fault.echo(order));
      }
      if (begun) {
        read(number, line);
      }
      begun |= !line.isBlank() && !line.startsWith("#"); // the header
    }
    finish();
    err.println(number + " lines read, done");
    return allSound;
  }

  /** Each line is a table of its own, so that a stray quotation mark does not swallow the next. */
  private void read(long number, String text) throws IOException {
    try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
      for (CSVRecord line : parser) { // none if it is blank or a remark
        line(line);
      }
    } catch (UncheckedIOException e) { // how the parser tells of both
      fault(number, "has a quotation mark that is not closed, or text behind one");
    } catch (IllegalArgumentException e) {
      fault(number, String.valueOf(e.getMessage()));
    }
  }

  private void line(CSVRecord line) {
    if (line.isConsistent() && !line.get("order").equals(order)) {
      finish();
      order = line.get("order");
    }
    if (!line.isConsistent()) {
      throw new IllegalArgumentException(
          "has " + line.size() + " fields; accepted: order, section, piece, length, count");
    }
    Bar bar = Bar.of(SectionText.parse(line.get("section")), Material.MILD_STEEL);
    Measure<Length> length = Measures.length(line.get("length"));
    CutList list = lists.containsKey(bar) ? lists.get(bar) : begun(bar, length);
    lists.put(bar, list.pieces(line.get("piece"), length, count(line.get("count"))));
  }

  /** Chalked in sixteenths if the first piece is in inches, else in millimetres. */
  private CutList begun(Bar bar, Measure<Length> length) {
    boolean inches = length.getUnit().equals(ShopUnits.INCH);
    return rack.cutList(bar, inches ? Graduation.SIXTEENTH : Graduation.MILLIMETRE)
        .kerf(KERF)
        .endTrim(END_TRIM);
  }

  private static int count(String text) {
    if (!text.matches("[0-9]{1,4}")) {
      throw new IllegalArgumentException("\"" + text + "\" is no count; accepted: 1 to 9999");
    }
    return Integer.parseInt(text);
  }

  private void finish() {
    lists.forEach(this::quote);
    lists.clear();
    leftOut = 0;
  }

  private void quote(Bar bar, CutList list) {
    try {
      CuttingPlan plan = list.plan(MOST_STEPS, steps -> true);
      int pieces = plan.bars().stream().mapToInt(b -> b.count() * b.marks().size()).sum();
      out.println(
          CSVFormat.DEFAULT.format(
              order,
              bar.section(),
              pieces,
              plan.barCount(),
              plan.money().toPlainString(),
              plan.longestLeftover(),
              plan.reached(Aim.LEAST_MONEY).isProven() ? "yes" : "no",
              leftOut));
    } catch (IllegalArgumentException e) {
      err.println("order " + Fault.echo(order) + ": " + e.getMessage());
      allSound = false;
    }
  }

  private void fault(long number, String what) {
    err.println("line " + number + ", order " + Fault.echo(order) + ": " + what);
    leftOut++;
    allSound = false;
  }
}
