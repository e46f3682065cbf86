package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.hammerscale.internal.Arguments;

/**
 * Trials of several pieces as text, a line each, for a file beside the order. Reading and writing
 * the file is the caller's.
 *
 * <pre>{@code
 * TrialBook book = TrialBook.parse("piece,cut,mark,off first,off last,remark\nhook,10 in,,,5/16 in,second heat too hot\n");
 * book.of("hook")     // [cut 10 in; 5/16 in off at the last end]
 * book.with("hook", Trial.cut(inches(10)).off(PieceEnd.LAST, inches("1/4"))).of("hook").size()   // 2
 * }</pre>
 *
 * <p>The format is plain CSV. The cells are: {@code piece}, its name; {@code cut}, the length sawn
 * off; {@code mark}, the reference mark from the first end, or nothing; {@code off first} and
 * {@code off last}, what was cut off at either end, or nothing if it was not measured; {@code
 * remark}, whatever one likes. Lengths have their unit. A cut-off piece of a section other than
 * that of the finished end tells it: {@code 5/16 in of 3/4 in x 1/8 in}, {@code 8 mm of 12 mm
 * round}, {@code 8 mm of 12 mm square}. A cell with a comma or a quotation mark stands in quotation
 * marks, the mark itself twice. Lines that are empty or begin with {@code #} are remarks; one that
 * tells nothing of either end is a piece that is still to be forged.
 *
 * <p>A damaged line is a fault by its number and costs no other line. The text is never written
 * anew: what was read stands in front of what is added, faults and remarks included.
 */
public final class TrialBook {
  private static final String HEADER = "piece,cut,mark,off first,off last,remark";
  private static final Pattern LINE_END = Pattern.compile("\\r\\n|\\n|\\r");
  private static final int MOST = 1_000_000;

  private final String text;
  private final Map<String, List<Trial>> trials;
  private final Map<String, Integer> waiting;
  private final List<String> faults;

  private TrialBook(
      String text,
      Map<String, List<Trial>> trials,
      Map<String, Integer> waiting,
      List<String> faults) {
    this.text = text;
    this.trials = trials;
    this.waiting = waiting;
    this.faults = faults;
  }

  /** {@return a book that holds nothing but the names of its cells} */
  public static TrialBook empty() {
    return parse(HEADER + '\n');
  }

  /**
   * Reads a text, line by line.
   *
   * @param text what was read from a file, up to a million characters
   * @return the trials that can be read and the faults of those that cannot
   * @throws IllegalArgumentException if the text is longer
   */
  public static TrialBook parse(String text) {
    Arguments.count(
        "text", Objects.requireNonNull(text, "text").length(), 0, MOST, "split the file");
    Map<String, List<Trial>> trials = new LinkedHashMap<>();
    Map<String, Integer> waiting = new HashMap<>();
    List<String> faults = new ArrayList<>();
    int number = 0;
    for (String line : LINE_END.split(text, -1)) {
      number++;
      // Some programs begin a file with a byte order mark.
      String words = (number == 1 ? line.replace("\uFEFF", "") : line).strip();
      if (words.isEmpty() || words.startsWith("#") || words.equals(HEADER)) {
        continue;
      }
      try {
        TrialLine read = TrialLine.parse(words);
        read.trial()
            .ifPresentOrElse(
                trial -> trials.computeIfAbsent(read.piece(), key -> new ArrayList<>()).add(trial),
                () -> waiting.merge(read.piece(), 1, Integer::sum));
      } catch (IllegalArgumentException e) {
        faults.add("line " + number + ", " + e.getMessage());
      }
    }
    return new TrialBook(text, trials, waiting, List.copyOf(faults));
  }

  /**
   * The same book with one more line at its end.
   *
   * @param piece the name of the piece, on one line
   * @param trial what it took; one that tells of neither end is a piece still to be forged, whose
   *     line waits to be filled in
   * @return the book
   * @throws IllegalArgumentException if the name is blank or goes over more lines
   */
  public TrialBook with(String piece, Trial trial) {
    Arguments.text("piece", piece);
    if (piece.chars().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException(
          "piece must be on one line, was " + piece.strip() + "; give it a short name");
    }
    Objects.requireNonNull(trial, "trial");
    String end = text.indexOf('\r') < 0 ? String.valueOf('\n') : "\r\n";
    boolean open = !text.isEmpty() && "\r\n".indexOf(text.charAt(text.length() - 1)) < 0;
    return parse(text + (open ? end : "") + TrialLine.of(piece.strip(), trial) + end);
  }

  /** {@return the names of the pieces that have trials, in the order they are first met} */
  public List<String> pieces() {
    return List.copyOf(trials.keySet());
  }

  /**
   * The trials of a piece.
   *
   * @param piece its name
   * @return its trials in the order of the lines; none if there are none
   */
  public List<Trial> of(String piece) {
    return List.copyOf(trials.getOrDefault(Objects.requireNonNull(piece, "piece"), List.of()));
  }

  /**
   * How many lines of a piece wait to be filled in.
   *
   * @param piece its name
   * @return how many tell of neither end yet
   */
  public int waiting(String piece) {
    return waiting.getOrDefault(Objects.requireNonNull(piece, "piece"), 0);
  }

  /** {@return what is wrong with the lines that cannot be read, each by its number} */
  public List<String> faults() {
    return faults;
  }

  /** {@return the text as it was read, what was added behind it} */
  public String text() {
    return text;
  }

  /** How many trials of how many pieces, and how many faults. */
  @Override
  public String toString() {
    int count = trials.values().stream().mapToInt(List::size).sum();
    return "book of "
        + count
        + (count == 1 ? " trial of " : " trials of ")
        + trials.size()
        + (trials.size() == 1 ? " piece" : " pieces")
        + (faults.isEmpty() ? "" : ", lines with faults: " + faults.size());
  }
}
