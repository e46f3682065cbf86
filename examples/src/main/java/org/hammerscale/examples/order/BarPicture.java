package org.hammerscale.examples.order;

import java.util.ArrayList;
import java.util.List;

/** A bar drawn with characters: its marks to scale, their labels below, names between them. */
public final class BarPicture {
  private static final int WIDTH = 64;

  private BarPicture() {}

  /**
   * Draws it.
   *
   * @param positions the marks in ascending order, the last one the end, in any one unit
   * @param start what to write at the beginning
   * @param labels what to write at each mark
   * @param names what lies before each mark
   */
  public static String of(
      List<Double> positions, String start, List<String> labels, List<String> names) {
    double end = positions.get(positions.size() - 1);
    StringBuilder bar = new StringBuilder("|" + "=".repeat(WIDTH));
    List<Integer> columns = new ArrayList<>();
    for (double position : positions) {
      int column = (int) Math.round(position / end * WIDTH);
      bar.setCharAt(column, '|');
      columns.add(column);
    }
    List<StringBuilder> below = new ArrayList<>();
    write(below, 0, start);
    for (int i = 0; i < columns.size(); i++) {
      write(below, columns.get(i), labels.get(i));
    }
    StringBuilder above = new StringBuilder();
    int from = 0;
    for (int i = 0; i < columns.size(); i++) {
      int middle = (from + columns.get(i)) / 2 - names.get(i).length() / 2;
      int column = Math.max(above.length() + (above.isEmpty() ? 0 : 2), Math.max(middle, 0));
      above.append(" ".repeat(column - above.length())).append(names.get(i));
      from = columns.get(i);
    }
    StringBuilder text = new StringBuilder();
    text.append("    ").append(above).append("\n    ").append(bar).append('\n');
    below.forEach(line -> text.append("    ").append(line).append('\n'));
    return text.toString();
  }

  /** Writes a label at a column, on the first line that still has room there. */
  private static void write(List<StringBuilder> lines, int column, String label) {
    for (StringBuilder line : lines) {
      if (line.length() + 1 < column) {
        line.append(" ".repeat(column - line.length())).append(label);
        return;
      }
    }
    lines.add(new StringBuilder(" ".repeat(column)).append(label));
  }
}
