package org.hammerscale.piece;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** A line of a {@link TrialBook}. */
record TrialLine(String piece, Optional<Trial> trial) {
  private static final List<String> NAMES =
      List.of("piece", "cut", "mark", "off first", "off last", "remark");
  private static final int NEEDED = 5;
  private static final Pattern SECTION =
      Pattern.compile("(.*?) of (?:(.*) [x×] (.*)|(.*) (round|square))");

  /**
   * Reads one.
   *
   * @throws IllegalArgumentException with the cell and what is wrong with it
   */
  static TrialLine parse(String line) {
    List<String> cells = cells(line);
    if (cells.size() < NEEDED || cells.size() > NAMES.size()) {
      throw new IllegalArgumentException(
          "must have the cells "
              + String.join(", ", NAMES)
              + ", had "
              + cells.size()
              + "; part them by commas, and put a cell that holds one in quotation marks");
    }
    String piece = cells.get(0);
    if (piece.isEmpty()) {
      throw new IllegalArgumentException("piece: must not be blank; name the piece");
    }
    if (cells.get(3).isEmpty() && cells.get(4).isEmpty()) {
      return new TrialLine(piece, Optional.empty());
    }
    Trial trial = told(1, () -> Trial.cut(length(cells.get(1))));
    if (!cells.get(2).isEmpty()) {
      Trial cut = trial;
      trial = told(2, () -> cut.marked(length(cells.get(2))));
    }
    for (PieceEnd end : PieceEnd.values()) {
      int cell = end == PieceEnd.FIRST ? 3 : 4;
      if (!cells.get(cell).isEmpty()) {
        Trial before = trial;
        trial = told(cell, () -> off(before, end, cells.get(cell)));
      }
    }
    return new TrialLine(piece, Optional.of(trial));
  }

  private static Trial told(int cell, Supplier<Trial> reading) {
    try {
      return reading.get();
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(NAMES.get(cell) + ": " + e.getMessage(), e);
    }
  }

  private static Measure<Length> length(String cell) {
    return Measures.length(cell);
  }

  private static Trial off(Trial trial, PieceEnd end, String cell) {
    Matcher other = SECTION.matcher(cell);
    if (!other.matches()) {
      return trial.off(end, length(cell));
    }
    Section section =
        other.group(5) == null
            ? rectangle(length(other.group(2)), length(other.group(3)))
            : other.group(5).equals("round")
                ? Section.round(length(other.group(4)))
                : Section.square(length(other.group(4)));
    return trial.off(end, length(other.group(1)), section);
  }

  private static Section rectangle(Measure<Length> width, Measure<Length> thickness) {
    return width.isLessThan(thickness)
        ? Section.onEdge(width, thickness)
        : Section.flat(width, thickness);
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        boolean twice = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
        if (twice) {
          cell.append(c);
          i++;
        } else {
          quoted = !quoted;
        }
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    if (quoted) {
      throw new IllegalArgumentException(
          "must end what a quotation mark begins; put one at the end of the cell, or two for an"
              + " inch sign within it");
    }
    cells.add(cell.toString().strip());
    return cells;
  }

  /** Writes one. */
  static String of(String piece, Trial trial) {
    return String.join(
        ",",
        quoted(piece),
        written(trial.cutLength()),
        trial.reference().map(TrialLine::written).orElse(""),
        off(trial, PieceEnd.FIRST),
        off(trial, PieceEnd.LAST),
        "");
  }

  private static String off(Trial trial, PieceEnd end) {
    return trial
        .off(end)
        .map(length -> written(length) + trial.sectionOff(end).map(TrialLine::written).orElse(""))
        .orElse("");
  }

  /** A section by its two sides; what is none of the three shapes by a square of the same area. */
  private static String written(Section section) {
    String text = section.toString();
    if (text.endsWith(" round")) {
      return " of " + written(section.width()) + " round";
    } else if (text.endsWith(" square")) {
      return " of " + written(section.width()) + " square";
    } else if (text.endsWith(" flat") || text.endsWith(" on edge")) {
      return " of " + written(section.width()) + " x " + written(section.thickness());
    }
    Unit<Length> unit = section.width().getUnit();
    double area = section.area().ratio(Measures.area(Measure.of(1, unit), Measure.of(1, unit)));
    return " of " + written(Measure.of(Math.sqrt(area), unit)) + " square";
  }

  /** As it prints, if that reads back to the same; else with all its digits. */
  private static String written(Measure<Length> length) {
    String printed = length.toString();
    try {
      if (Measures.length(printed).equals(length)) {
        return printed;
      }
    } catch (IllegalArgumentException e) {
      return digits(length.to(ShopUnits.MILLIMETRE)); // someone else's unit
    }
    return digits(length);
  }

  private static String digits(Measure<Length> length) {
    return BigDecimal.valueOf(length.getValue()).toPlainString() + " " + length.getUnit();
  }

  private static String quoted(String cell) {
    return cell.contains(",") || cell.contains("\"") || cell.startsWith("#")
        ? "\"" + cell.replace("\"", "\"\"") + "\""
        : cell;
  }
}
