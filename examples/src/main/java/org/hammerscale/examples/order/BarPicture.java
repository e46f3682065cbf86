package org.hammerscale.examples.order;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.piece.BenchMark;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.LengthFormat;

/** A bar drawn with characters: its marks to scale, their labels below, names between them. */
public final class BarPicture {
  private static final int WIDTH = 64;
  private static final int MOST = 76;

  private BarPicture() {}

  /** A cold bar, its marks told from its reference mark R. */
  public static String of(MarkedBar bar, LengthFormat rule) {
    List<Double> positions = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    for (BenchMark mark : bar.marks()) {
      positions.add(mark.fromFirstEnd().getValue());
      labels.add(mark.isReference() ? "R" : rule.format(mark.fromReference()));
    }
    positions.add(bar.cutLength().getValue());
    labels.add(rule.format(bar.cutLength().subtract(bar.reference())));
    String start = bar.reference().getValue() == 0 ? "R" : rule.format(bar.reference());
    List<String> names = bar.layout().piece().features().stream().map(Feature::name).toList();
    return of(positions, start, labels, names);
  }

  /**
   * Draws it.
   *
   * @param positions the marks in ascending order, the last one the end, in any one unit
   * @param start what to write at the beginning
   * @param labels what to write at each mark
   * @param names what lies before each mark
   */
  static String of(List<Double> positions, String start, List<String> labels, List<String> names) {
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
    List<StringBuilder> above = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < columns.size(); i++) {
      name(above, (from + columns.get(i)) / 2, names.get(i));
      from = columns.get(i);
    }
    StringBuilder text = new StringBuilder();
    for (int i = above.size() - 1; i >= 0; i--) {
      text.append("    ").append(above.get(i)).append('\n');
    }
    text.append("    ").append(bar).append('\n');
    below.forEach(line -> text.append("    ").append(line).append('\n'));
    return text.toString();
  }

  /** Writes a name over a column, or as near to its right as the page has room, else higher up. */
  private static void name(List<StringBuilder> lines, int middle, String name) {
    int wanted = Math.max(middle - name.length() / 2, 0);
    for (StringBuilder line : lines) {
      int column = Math.max(line.length() + 2, wanted);
      if (column + name.length() <= MOST) {
        line.append(" ".repeat(column - line.length())).append(name);
        return;
      }
    }
    int column = Math.max(Math.min(wanted, MOST - name.length()), 0);
    lines.add(new StringBuilder(" ".repeat(column)).append(name));
  }

  /** Writes a label at a column, on the first line that still has room there. */
  private static void write(List<StringBuilder> lines, int mark, String label) {
    int column = Math.max(Math.min(mark, MOST - label.length()), 0);
    for (StringBuilder line : lines) {
      if (line.length() + 1 < column) {
        line.append(" ".repeat(column - line.length())).append(label);
        return;
      }
    }
    lines.add(new StringBuilder(" ".repeat(column)).append(label));
  }
}
