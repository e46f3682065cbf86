package org.hammerscale.internal.pen;

import java.util.ArrayList;
import java.util.List;

/**
 * Sizes beside a drawing, after the habits of ISO 129: extension lines that leave a gap, arrows on
 * a narrow line, the text above it and read from below or from the right; and running sizes, which
 * all count from one origin.
 */
public final class Dimensions {
  /** A word or a size that belongs to a place: where its line begins, and what it says. */
  public record Callout(double x, double y, String text) {}

  private static final double GAP = 1;
  private static final double OVER = 2;
  private static final double ARROW = 3;
  private static final double HALF_ARROW = 0.5;
  private static final double TICK = 1.2;
  private static final double ORIGIN = 1.5;
  private static final double JOG = 5;

  /** Lines to labels that were moved are no flatter, so that each is told from the next. */
  private static final double LEAST_SLOPE = 0.35;

  /** A label that would move further than this is turned upright instead. */
  private static final double FARTHEST = 18;

  private static final double TEXT_ABOVE = 1.5 + FontMetric.HALF_CAPITAL * Pen.SIZE;

  private final Pen pen;

  public Dimensions(Pen pen) {
    this.pen = pen;
  }

  /** A size along the sheet, its line on a level, its extension lines from two edges. */
  public void across(double x1, double x2, double y, double edge1, double edge2, String text) {
    extension(x1, edge1, y);
    extension(x2, edge2, y);
    double wide = FontMetric.width(text, Pen.SIZE);
    double room = x2 - x1;
    boolean inside = room >= wide + 2 * ARROW + 2;
    boolean arrowsInside = room >= 2.5 * ARROW;
    double from = arrowsInside ? x1 : x1 - 2 * ARROW;
    double to = inside ? x2 : x2 + (arrowsInside ? GAP : 2 * ARROW) + wide;
    pen.line(Line.NARROW, "dimension", from, y, to, y);
    arrow(x1, y, arrowsInside ? 1 : -1, 0);
    arrow(x2, y, arrowsInside ? -1 : 1, 0);
    double middle = inside ? (x1 + x2) / 2 : to - wide / 2;
    pen.middle(text, middle, y - TEXT_ABOVE);
  }

  /**
   * A size up the sheet, its text on the left of its line, read from the right; a short one has it
   * level, on the side away from the thing.
   */
  public void upright(double y1, double y2, double x, double edge1, double edge2, String text) {
    levelExtension(y1, edge1, x);
    levelExtension(y2, edge2, x);
    double room = y2 - y1;
    boolean arrowsInside = room >= 2.5 * ARROW;
    double out = arrowsInside ? 0 : 2 * ARROW;
    pen.line(Line.NARROW, "dimension", x, y1 - out, x, y2 + out);
    arrow(x, y1, 0, arrowsInside ? 1 : -1);
    arrow(x, y2, 0, arrowsInside ? -1 : 1);
    double wide = FontMetric.width(text, Pen.SIZE);
    if (room >= wide + OVER) {
      pen.upwards(text, x - TEXT_ABOVE, (y1 + y2 + wide) / 2);
    } else if (x > edge1) {
      pen.words(text, x + OVER + 1, (y1 + y2) / 2);
    } else {
      pen.wordsUpTo(text, x - OVER - 1, (y1 + y2) / 2);
    }
  }

  /** A size that a line with an arrow leads to: of a circle, or of a point. */
  public void leader(double x, double y, double toX, double toY, String text) {
    double length = Math.hypot(toX - x, toY - y);
    arrow(x, y, (toX - x) / length, (toY - y) / length);
    double wide = FontMetric.width(text, Pen.SIZE);
    double end = toX < x ? toX - wide - 2 : toX + wide + 2;
    pen.draw(Line.NARROW, "leader", new Path().from(x, y).to(toX, toY).to(end, toY));
    pen.middle(text, (toX + end) / 2, toY - TEXT_ABOVE);
  }

  /**
   * An angle: an arc about a point, from one direction to another, in radians from the right
   * upwards, and its text beyond the middle of it.
   */
  public void angle(double x, double y, double radius, double from, double to, String text) {
    pen.draw(Line.NARROW, "opening", new Path().arc(x, y, radius, -from, -to));
    for (double at : new double[] {from, to}) {
      double cos = Math.cos(at);
      double sin = Math.sin(at);
      double near = radius - 3;
      double far = radius + OVER;
      pen.line(
          Line.NARROW, "extension", x + near * cos, y - near * sin, x + far * cos, y - far * sin);
      double back = (at == from) == (to > from) ? 1 : -1; // arrows point outwards along the arc
      arrow(x + radius * cos, y - radius * sin, -back * sin, -back * cos);
    }
    // Beyond a short arc there is no room beside the lines to its ends.
    boolean isShort = Math.abs(to - from) * radius < 2 * Pen.SIZE;
    double middle = isShort ? to + Math.signum(to - from) * Pen.SIZE / radius : (from + to) / 2;
    double half = FontMetric.width(text, Pen.SIZE) / 2;
    double out = radius + 3 + half * Math.abs(Math.cos(middle)) + 3 * Math.abs(Math.sin(middle));
    pen.middle(text, x + out * Math.cos(middle), y - out * Math.sin(middle));
  }

  /**
   * Running sizes on a level line: a ring at the origin, a stroke at each place, its size beyond.
   *
   * @param origin where they count from, and its word
   * @param places the others, in any order
   * @param y the level of the line, below the thing or above it
   */
  public void running(Callout origin, List<Callout> places, double y) {
    List<Callout> all = new ArrayList<>(places);
    all.add(origin);
    all.sort((one, other) -> Double.compare(one.x(), other.x()));
    double down = y > origin.y() ? 1 : -1;
    pen.line(Line.NARROW, "dimension", all.get(0).x(), y, all.get(all.size() - 1).x(), y);
    pen.circle(Line.NARROW, "origin", origin.x(), y, ORIGIN);
    for (Callout place : places) {
      pen.line(Line.NARROW, "tick", place.x() - TICK, y + TICK, place.x() + TICK, y - TICK);
    }
    callouts(all, y + down * OVER);
  }

  /**
   * Texts in a row beyond a level, each at the end of a line from its place; moved apart where they
   * would lie over one another, and turned upright where that would move them far.
   */
  public void callouts(List<Callout> inOrder, double level) {
    int n = inOrder.size();
    double[] wanted = new double[n];
    double[] widths = new double[n];
    double[] heights = new double[n];
    for (int i = 0; i < n; i++) {
      wanted[i] = inOrder.get(i).x();
      widths[i] = FontMetric.width(inOrder.get(i).text(), Pen.SIZE);
      heights[i] = Pen.SIZE;
    }
    double[] places = Spread.apart(wanted, widths, 2.5);
    boolean lying = Spread.farthest(wanted, places) <= FARTHEST;
    if (!lying) {
      places = Spread.apart(wanted, heights, 0.8);
    }
    double jog = Math.max(JOG, Spread.farthest(wanted, places) * LEAST_SLOPE);
    for (int i = 0; i < n; i++) {
      Callout each = inOrder.get(i);
      double down = level > each.y() ? 1 : -1;
      double end = level + down * jog;
      Path path = new Path().from(each.x(), each.y() + down * GAP).to(each.x(), level);
      pen.draw(Line.NARROW, "extension", path.to(places[i], end));
      if (lying) {
        pen.middle(each.text(), places[i], end + down * Pen.LEADING / 2);
      } else {
        pen.upwards(each.text(), places[i], down > 0 ? end + 1 + widths[i] : end - 1);
      }
    }
  }

  /** Running sizes on an upright line, at the left of the thing or at its right. */
  public void runningDown(Callout origin, List<Callout> places, double x) {
    List<Callout> all = new ArrayList<>(places);
    all.add(origin);
    all.sort((one, other) -> Double.compare(one.y(), other.y()));
    int n = all.size();
    double[] wanted = new double[n];
    double[] heights = new double[n];
    for (int i = 0; i < n; i++) {
      wanted[i] = all.get(i).y();
      heights[i] = Pen.SIZE;
    }
    double[] levels = Spread.apart(wanted, heights, 1);
    pen.line(Line.NARROW, "dimension", x, wanted[0], x, wanted[n - 1]);
    pen.circle(Line.NARROW, "origin", x, origin.y(), ORIGIN);
    for (Callout place : places) {
      pen.line(Line.NARROW, "tick", x - TICK, place.y() + TICK, x + TICK, place.y() - TICK);
    }
    for (int i = 0; i < n; i++) {
      Callout each = all.get(i);
      double right = x > each.x() ? 1 : -1;
      Path path = new Path().from(each.x() + right * GAP, each.y()).to(x + right * OVER, each.y());
      double end = x + right * (OVER + JOG);
      pen.draw(Line.NARROW, "extension", path.to(end, levels[i]));
      if (right > 0) {
        pen.words(each.text(), end + 1, levels[i]);
      } else {
        pen.wordsUpTo(each.text(), end - 1, levels[i]);
      }
    }
  }

  /** An arrowhead with its point at a place, its tail in a direction. */
  public void arrow(double x, double y, double dx, double dy) {
    double tailX = x + ARROW * dx;
    double tailY = y + ARROW * dy;
    pen.draw(
        Line.SOLID,
        "arrow",
        new Path()
            .from(x, y)
            .to(tailX - HALF_ARROW * dy, tailY + HALF_ARROW * dx)
            .to(tailX + HALF_ARROW * dy, tailY - HALF_ARROW * dx)
            .close());
  }

  private void extension(double x, double edge, double y) {
    double down = y > edge ? 1 : -1;
    pen.line(Line.NARROW, "extension", x, edge + down * GAP, x, y + down * OVER);
  }

  private void levelExtension(double y, double edge, double x) {
    double right = x > edge ? 1 : -1;
    pen.line(Line.NARROW, "extension", edge + right * GAP, y, x + right * OVER, y);
  }
}
