package org.hammerscale.internal.pen;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** Two axes with their words and numbers, and lines between them: 150 mm by 100 mm. */
public final class Plot {
  public static final double WIDTH = 150;
  public static final double HEIGHT = 100;
  private static final double TICK = 2;
  private static final double MOST_STEPS = 8;
  private static final double MARK = 2.5;

  /** What one axis counts, from where to where. */
  private static final class Axis {
    final double low;
    final double high;
    final double step;

    Axis(double least, double most) {
      double run = most > least ? most - least : Math.max(Math.abs(most), 1);
      double rough = run / MOST_STEPS;
      double power = Math.pow(10, Math.floor(Math.log10(rough)));
      double lead = rough / power;
      step = power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
      low = Math.floor(least / step + 1e-9) * step;
      high = Math.max(Math.ceil((least + run) / step - 1e-9) * step, low + step);
    }

    double share(double value) {
      return (value - low) / (high - low);
    }
  }

  private final Pen pen;
  private final Axis across;
  private final Axis up;

  public Plot(Pen pen, double leastX, double mostX, double leastY, double mostY) {
    this.pen = pen;
    this.across = new Axis(leastX, mostX);
    this.up = new Axis(leastY, mostY);
  }

  public double x(double value) {
    return WIDTH * across.share(value);
  }

  public double y(double value) {
    return -HEIGHT * up.share(value);
  }

  /** What a unit prints behind a number. */
  public static String symbol(Unit<?> unit) {
    String one = Measure.of(1, unit).toString();
    return one.substring(one.indexOf(' ') + 1);
  }

  public void axes(String alongWords, String upWords) {
    pen.draw(Line.WIDE, "axis", new Path().from(0, -HEIGHT).to(0, 0).to(WIDTH, 0));
    int steps = (int) Math.round((across.high - across.low) / across.step);
    for (int i = 0; i <= steps; i++) {
      double at = WIDTH * i / steps;
      pen.line(Line.NARROW, "tick", at, 0, at, TICK);
      pen.middle(number(across.low + i * across.step, across.step), at, TICK + 4);
    }
    int rises = (int) Math.round((up.high - up.low) / up.step);
    for (int i = 0; i <= rises; i++) {
      double at = -HEIGHT * i / rises;
      pen.line(Line.NARROW, "tick", -TICK, at, 0, at);
      pen.wordsUpTo(number(up.low + i * up.step, up.step), -TICK - 1, at);
    }
    double left = pen.box().left() - 5;
    pen.middle(alongWords, WIDTH / 2, TICK + 12);
    pen.upwards(upWords, left, -HEIGHT / 2 + FontMetric.width(upWords, Pen.SIZE) / 2);
  }

  /** To the digits of a step, without the noise of adding them up. */
  private static String number(double value, double step) {
    return Measure.of(Math.rint(value / step) * step, ShopUnits.ONE).toString();
  }

  public void curve(Line line, String part, List<double[]> points) {
    Path path = new Path();
    for (int i = 0; i < points.size(); i++) {
      double x = x(points.get(i)[0]);
      double y = y(points.get(i)[1]);
      if (i == 0) {
        path.from(x, y);
      } else {
        path.to(x, y);
      }
    }
    pen.draw(line, part, path);
  }

  /** Hatches what lies under a curve up to a place across. */
  public void under(String part, List<double[]> points, double until) {
    List<Double> corners = new ArrayList<>();
    corners.add(x(points.get(0)[0]));
    corners.add(0.0);
    double[] last = points.get(0);
    for (double[] point : points) {
      if (point[0] > until) {
        double share = (until - last[0]) / (point[0] - last[0]);
        corners.add(x(until));
        corners.add(y(last[1] + share * (point[1] - last[1])));
        break;
      }
      corners.add(x(point[0]));
      corners.add(y(point[1]));
      last = point;
    }
    corners.add(corners.get(corners.size() - 2));
    corners.add(0.0);
    pen.hatch(part, true, corners.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** Where an answer was read: a ring, and lines from it to both axes. */
  public void read(String part, double valueX, double valueY) {
    double x = x(valueX);
    double y = y(valueY);
    pen.draw(Line.NARROW, part, new Path().from(x, 0).to(x, y).to(0, y));
    pen.circle(Line.WIDE, part, x, y, MARK);
  }

  public void upright(String part, double valueX, double lowY, double highY) {
    double x = x(valueX);
    pen.line(Line.NARROW, part, x, y(lowY), x, y(highY));
    pen.line(Line.NARROW, part, x - 1, y(lowY), x + 1, y(lowY));
    pen.line(Line.NARROW, part, x - 1, y(highY), x + 1, y(highY));
  }
}
