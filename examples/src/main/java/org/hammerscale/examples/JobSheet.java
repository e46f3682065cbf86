package org.hammerscale.examples;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/**
 * Prints the job sheets for an order file: what to cut, where to punch, what to true the barrel in.
 *
 * <p>Usage: {@code JobSheet [order.csv]}; without a file it prints a sample order. A file with
 * faults prints one line for each on the error stream, nothing else, and ends with exit code 2.
 */
public final class JobSheet {
  private static final int FAULTY = 2;

  private JobSheet() {}

  /**
   * Runs the program.
   *
   * @param args the order file; none for the sample
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
    if (args.size() > 1) {
      err.println("give one order file or none, not " + args.size());
      return FAULTY;
    }
    boolean sample = args.isEmpty() || args.get(0).isBlank();
    String name = sample ? "the sample order" : args.get(0);
    OrderFile file;
    try {
      file = OrderFile.of(sample ? sampleLines() : Files.readAllLines(Path.of(name)));
    } catch (InvalidPathException e) {
      err.println(
          Fault.echo(name)
              + ": the terminal's character set does not hold this name; set LC_ALL=C.UTF-8, or"
              + " give the file a plain name");
      return FAULTY;
    } catch (NoSuchFileException e) {
      err.println(name + ": there is no such file; give the path of an order file");
      return FAULTY;
    } catch (CharacterCodingException e) {
      err.println(name + ": is not text in UTF-8; save it as UTF-8");
      return FAULTY;
    } catch (IOException e) {
      err.println(name + ": cannot be read (" + e.getMessage() + "); give an order file");
      return FAULTY;
    }
    if (!file.faults().isEmpty()) {
      file.faults().forEach(fault -> err.println(name + ", " + fault));
      return FAULTY;
    }
    out.print(Sheets.of(file.orders()));
    return 0;
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
