package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamException;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Label;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Stroke;
import org.hammerscale.internal.pen.Svg;

/**
 * How a drawing lies on sheets of one size: a title above, check bars below, and between them a
 * window on the drawing. Neighbouring windows overlap, and both show the same register marks.
 */
final class SheetPlan {
  static final double OVERLAP = 10;
  private static final double MARGIN = 12;
  private static final double TITLE_SIZE = 6;
  private static final double TITLE_LEADING = 8;

  /** Above and below the window, where register marks stand. */
  private static final double STRIP = 7;

  private static final double CHECK = 16;
  private static final double NARROWEST = 176;
  private static final double MARK = 3;
  private static final int MOST_SHEETS = 200;

  private final Drawing drawing;
  private final double width;
  private final double height;
  private final List<String> title;
  private final int columns;
  private final int rows;

  private SheetPlan(Drawing drawing, double width, double height) {
    this.drawing = drawing;
    this.width = width;
    this.height = height;
    this.title = titleLines(drawing, width);
    this.columns = count(drawing.box().width(), windowWidth());
    this.rows = count(drawing.box().height(), windowHeight());
  }

  /** One sheet that is as large as it must be. */
  static SheetPlan whole(Drawing drawing) {
    double width = wholeWidth(drawing);
    double around = around(titleLines(drawing, width).size());
    return new SheetPlan(drawing, width, drawing.box().height() + around);
  }

  private static double wholeWidth(Drawing drawing) {
    return Math.max(drawing.box().width() + 2 * MARGIN, NARROWEST);
  }

  /** The sheets of a paper, turned so that there are fewest; upright if that is the same. */
  static SheetPlan on(Drawing drawing, Paper paper) {
    SheetPlan plan;
    if (paper.isRoll()) {
      plan = new SheetPlan(drawing, wholeWidth(drawing), paper.width());
    } else {
      SheetPlan upright = new SheetPlan(drawing, paper.width(), paper.height());
      SheetPlan lying = new SheetPlan(drawing, paper.height(), paper.width());
      plan = lying.count() < upright.count() ? lying : upright;
    }
    if (plan.count() > MOST_SHEETS) {
      throw new IllegalArgumentException(
          "paper must hold the drawing on at most "
              + MOST_SHEETS
              + " sheets, was "
              + paper
              + ", which takes "
              + plan.count()
              + "; take a wider roll, or draw it reduced");
    }
    return plan;
  }

  private static int count(double size, double window) {
    // What fits but for the rounding of its sizes fits.
    return Math.max(1, (int) Math.ceil((size - OVERLAP) / (window - OVERLAP) - 1e-9));
  }

  private static List<String> titleLines(Drawing drawing, double width) {
    return Pen.wrapped(drawing.title(), (width - 2 * MARGIN) * Pen.SIZE / TITLE_SIZE);
  }

  private static double around(int titleLines) {
    return 2 * MARGIN + titleLines * TITLE_LEADING + 2 * STRIP + CHECK;
  }

  private double windowWidth() {
    return width - 2 * MARGIN;
  }

  private double windowHeight() {
    return height - around(title.size());
  }

  private double windowTop() {
    return MARGIN + title.size() * TITLE_LEADING + STRIP;
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }

  int count() {
    return columns * rows;
  }

  /** The sheets, row by row. */
  List<String> sheets() {
    List<String> sheets = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int ofRow = row;
        int ofColumn = column;
        sheets.add(
            Svg.sheet(
                width,
                height,
                drawing.title() + (count() > 1 ? ", " + number(row, column) : ""),
                drawing.description(),
                svg -> write(svg, ofRow, ofColumn)));
      }
    }
    return List.copyOf(sheets);
  }

  private String number(int row, int column) {
    return "sheet " + (row * columns + column + 1) + " of " + count();
  }

  /** The drawing without anything round it. */
  static String figure(Drawing drawing) {
    Box all = drawing.box();
    return Svg.sheet(
        all.width(),
        all.height(),
        drawing.title(),
        drawing.description(),
        svg -> svg.window(0, 0, all, inside -> draw(inside, drawing, all)));
  }

  private static void draw(Svg svg, Drawing drawing, Box seen) throws XMLStreamException {
    for (Stroke stroke : drawing.strokes()) {
      if (stroke.box().grown(1).meets(seen)) {
        svg.stroke(stroke);
      }
    }
    for (Label label : drawing.labels()) {
      if (label.box().meets(seen)) {
        svg.label(label);
      }
    }
  }

  private void write(Svg svg, int row, int column) throws XMLStreamException {
    Box seen = window(row, column);
    svg.window(MARGIN, windowTop(), seen, inside -> draw(inside, drawing, seen));
    Pen pen = new Pen();
    registerMarks(pen, row, column);
    for (int i = 0; i < title.size(); i++) {
      pen.sized(title.get(i), MARGIN, MARGIN + (i + 0.5) * TITLE_LEADING, TITLE_SIZE);
    }
    checkBars(pen, count() > 1 ? number(row, column) : "");
    for (Stroke stroke : pen.strokes()) {
      svg.stroke(stroke);
    }
    for (Label label : pen.labels()) {
      svg.label(label);
    }
  }

  /** What a sheet shows of the drawing; what is smaller than the window lies in its middle. */
  private Box window(int row, int column) {
    Box all = drawing.box();
    double left = start(all.left(), all.width(), windowWidth(), columns, column);
    double top = start(all.top(), all.height(), windowHeight(), rows, row);
    return new Box(left, top, left + windowWidth(), top + windowHeight());
  }

  private static double start(double low, double size, double window, int count, int number) {
    return count == 1 ? low - (window - size) / 2 : low + number * (window - OVERLAP);
  }

  /** Crosses in circles on the middle of each overlap: laid over one another they join sheets. */
  private void registerMarks(Pen pen, int row, int column) {
    double top = windowTop() - STRIP / 2;
    double bottom = windowTop() + windowHeight() + STRIP / 2;
    double left = MARGIN / 2;
    double right = width - MARGIN / 2;
    for (int side = 0; side < 2; side++) {
      if (side == 0 ? column > 0 : column < columns - 1) {
        double x = side == 0 ? MARGIN + OVERLAP / 2 : width - MARGIN - OVERLAP / 2;
        registerMark(pen, x, top);
        registerMark(pen, x, bottom);
      }
      if (side == 0 ? row > 0 : row < rows - 1) {
        double y = side == 0 ? windowTop() : windowTop() + windowHeight();
        y += side == 0 ? OVERLAP / 2 : -OVERLAP / 2;
        registerMark(pen, left, y);
        registerMark(pen, right, y);
      }
    }
  }

  private static void registerMark(Pen pen, double x, double y) {
    pen.cross("register", x, y, MARK);
    pen.circle(Line.NARROW, "register", x, y, MARK / 2);
  }

  private void checkBars(Pen pen, String number) {
    double y = height - MARGIN - CHECK + 5;
    checkBar(pen, y, 10, 10, "100 mm");
    checkBar(pen, y + 9, 25.4, 4, "4 in");
    double x = MARGIN + 128;
    pen.words(drawing.scale().toString(), x, y - 1);
    pen.words(number, x, y + 8);
  }

  private static void checkBar(Pen pen, double y, double step, int steps, String text) {
    Path bar = Path.line(MARGIN, y, MARGIN + step * steps, y);
    for (int i = 0; i <= steps; i++) {
      double up = i % steps == 0 ? 4 : 2;
      bar.from(MARGIN + i * step, y).to(MARGIN + i * step, y - up);
    }
    pen.draw(Line.NARROW, "check", bar);
    pen.words(text, MARGIN + step * steps + 3, y - 1);
  }
}
