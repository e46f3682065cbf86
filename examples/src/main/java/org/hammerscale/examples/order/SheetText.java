package org.hammerscale.examples.order;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** The lines of a sheet; no number is parted from its unit at the end of one. */
public class SheetText {
  private static final char JOIN = '\u00A0';

  /** Between a number and its fraction or unit, and round the sign between two sides of a bar. */
  private static final Pattern JOINED =
      Pattern.compile(
          "(?<=[0-9]) (?=[0-9]+/[0-9])"
              + "|(?<=[0-9]) (?=(?:in|mm|min|s|rad|lb|kg|MPa|ksi|%|°[CF])[²³]?(?:[ ,.;:)/]|$))"
              + "|(?<=[a-z0-9]) (?=× [0-9])|(?<=×) (?=[0-9])");

  private final int width;
  private final StringBuilder text = new StringBuilder();
  private int lines;

  /** A sheet whose wrapped lines are at most so wide. */
  public SheetText(int width) {
    this.width = width;
  }

  /** How many lines there are. */
  public int lines() {
    return lines;
  }

  /** A line, formatted the same in every country. */
  public void line(String format, Object... arguments) {
    text.append(String.format(Locale.ROOT, format, arguments).stripTrailing()).append('\n');
    lines++;
  }

  /** One of several lines that are laid out alike: each argument is a cell. */
  public void cells(String format, Object... cells) {
    line(format, cells);
  }

  /** What the entries below it are about. */
  public void heading(String label, String words) {
    line("%s, %s:", label, words);
  }

  /** A line with gaps to write in. */
  public void fillIn(String words) {
    line("%s", words);
  }

  /** The last line of a front. */
  public void overleaf(boolean hasMoreBlanks) {
    line("Reasons overleaf%s.", hasMoreBlanks ? ", blanks for the other pieces behind them" : "");
  }

  public void blank() {
    line("");
  }

  /** Lines that are laid out already. */
  public void block(String block) {
    block.lines().forEach(each -> line("%s", each));
  }

  public void rule(char c) {
    line("%s", String.valueOf(c).repeat(72));
  }

  /** A labelled entry: the label in front, the words behind it, on as many lines as they need. */
  public void entry(String label, String format, Object... arguments) {
    wrapped(String.format("%-10s", label), String.format(Locale.ROOT, format, arguments));
  }

  /** A caution behind its mark. */
  public void caution(String words) {
    wrapped("! ", words);
  }

  /** Words behind a beginning; further lines begin as far in. */
  public void wrapped(String first, String words) {
    wrapped(first, first.length(), words);
  }

  /** The same, further lines beginning so far in. */
  public void wrapped(String first, int indent, String words) {
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : joined(words).split(" ", -1)) {
      if (!empty && line.length() + 1 + word.length() > width) {
        line("%s", line.toString().replace(JOIN, ' '));
        line = new StringBuilder(" ".repeat(indent));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    line("%s", line.toString().replace(JOIN, ' '));
  }

  /** Parts one behind the other, broken before one or within its remark in brackets. */
  public void packed(List<String> parts) {
    String line = "";
    for (String part : parts) {
      String words = joined(part);
      int remark = words.lastIndexOf(" (");
      int together = remark < 0 ? words.length() : remark;
      if (!line.isEmpty() && line.length() + 1 + together > width) {
        line("%s", line.replace(JOIN, ' '));
        line = "  ";
      } else if (!line.isEmpty()) {
        line += " ";
      }
      line += words;
      while (line.length() > width && line.lastIndexOf(' ', width) > 4) {
        int end = line.lastIndexOf(' ', width);
        line("%s", line.substring(0, end).replace(JOIN, ' '));
        line = "    " + line.substring(end + 1);
      }
    }
    line("%s", line.replace(JOIN, ' '));
  }

  /** Words in which no line ends between a number and its unit. */
  protected static String joined(String words) {
    return JOINED.matcher(words).replaceAll(String.valueOf(JOIN));
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
