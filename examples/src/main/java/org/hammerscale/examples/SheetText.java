package org.hammerscale.examples;

import java.util.Locale;

/** The lines of a sheet, in a width that can be read at arm's length. */
final class SheetText {
  private static final int WIDTH = 72;

  private final StringBuilder text = new StringBuilder();

  /** A line, formatted the same in every country. */
  void line(String format, Object... arguments) {
    text.append(String.format(Locale.ROOT, format, arguments).stripTrailing()).append('\n');
  }

  void blank() {
    text.append('\n');
  }

  /** Text that is laid out already. */
  void block(String lines) {
    text.append(lines);
  }

  void rule(char c) {
    line("%s", String.valueOf(c).repeat(WIDTH));
  }

  /** A labelled entry: the label in front, the words behind it, on as many lines as they need. */
  void entry(String label, String format, Object... arguments) {
    wrapped(String.format("%-10s", label), String.format(Locale.ROOT, format, arguments));
  }

  /** A caution behind its mark. */
  void caution(String words) {
    wrapped("! ", words);
  }

  private void wrapped(String first, String words) {
    String indent = " ".repeat(first.length());
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : words.split(" ", -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        line("%s", line);
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    line("%s", line);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
