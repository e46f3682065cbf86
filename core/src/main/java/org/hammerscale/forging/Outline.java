package org.hammerscale.forging;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.exception.MaxCountExceededException;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/** The outline of an end in plan: widths along the length, and the metal within it. */
final class Outline {
  private static final double NOISE = 1e-12;
  private static final int NODES = 12;
  private static final double RELATIVE = 1e-10;
  private static final double ABSOLUTE = 1e-300;
  private static final int FEWEST = 3;
  private static final int MOST = 64;
  private static final int POINTS = 96;
  private static final int EVALUATIONS = 1 << 15;

  private final Section neck;
  private final List<Measure<Length>> distances;
  private final List<Measure<Length>> widths;

  private Outline(Section neck, List<Measure<Length>> distances, List<Measure<Length>> widths) {
    this.neck = neck;
    this.distances = distances;
    this.widths = widths;
  }

  static Outline from(Section neck) {
    return new Outline(neck, List.of(), List.of());
  }

  /** The outline with a straight line added. */
  Outline to(Measure<Length> distance, Measure<Length> width) {
    List<Measure<Length>> allDistances = new ArrayList<>(distances);
    List<Measure<Length>> allWidths = new ArrayList<>(widths);
    allDistances.add(distance);
    allWidths.add(width);
    return new Outline(neck, List.copyOf(allDistances), List.copyOf(allWidths));
  }

  static Outline measured(
      Section neck, Map<? extends Quantity<Length>, ? extends Quantity<Length>> widths) {
    if (Objects.requireNonNull(widths, "widths").isEmpty()) {
      throw new IllegalArgumentException(
          "widths must be at least one, was none; measure the width at the tip");
    }
    TreeMap<Measure<Length>, Measure<Length>> sorted = new TreeMap<>();
    widths.forEach(
        (distance, width) -> {
          Measure<Length> at = Arguments.positive("distance of widths", distance);
          if (sorted.put(at, Arguments.notNegative("width", width)) != null) {
            throw new IllegalArgumentException(
                "distance of widths must be given once, was twice "
                    + at
                    + "; give one width for each");
          }
        });
    return new Outline(neck, List.copyOf(sorted.keySet()), List.copyOf(sorted.values()));
  }

  Section neck() {
    return neck;
  }

  Measure<Length> length() {
    return distances.get(distances.size() - 1);
  }

  Section tip() {
    return section(neck, widths.get(widths.size() - 1));
  }

  /** A flat of the neck's thickness, or nothing where it runs out to a point. */
  static Section section(Section neck, Measure<Length> width) {
    boolean isPoint = width.ratio(neck.width()) < NOISE; // a cosine never quite comes to nothing
    return isPoint ? neck.point() : Flats.of(width, neck.thickness());
  }

  /** Straight from one measured width to the next. */
  Silhouette look() {
    Silhouette look = Silhouette.from(neck);
    for (int i = 0; i < widths.size(); i++) {
      look = look.to(distances.get(i), widths.get(i));
    }
    return look;
  }

  /** An oval from where it is as wide as the neck. */
  static Silhouette ovalLook(Section neck, Measure<Length> wide, Measure<Length> along) {
    Unit<Length> unit = along.getUnit();
    double start = neckAngle(Notes.NONE, neck.width().in(unit), wide.in(unit));
    Silhouette look = Silhouette.from(neck);
    for (int i = 1; i <= POINTS; i++) {
      double angle = start + (Math.PI - start) * i / POINTS;
      double width = i == POINTS ? 0 : Math.sin(angle);
      look = look.to(along.multiply((Math.cos(start) - Math.cos(angle)) / 2), wide.multiply(width));
    }
    return look;
  }

  /** Widths by their rule, closer where a rounded tip stands upright. */
  static Silhouette curveLook(
      Section neck,
      Measure<Length> along,
      Function<Measure<Length>, ? extends Quantity<Length>> width) {
    Silhouette look = Silhouette.from(neck);
    for (int i = 0; i <= POINTS; i++) {
      Measure<Length> at = along.multiply((1 - Math.cos(Math.PI * i / POINTS)) / 2);
      look = look.to(at, width(width, at));
    }
    return look;
  }

  /** Trapezia between the measured widths. */
  Solid solid() {
    return (n, unit) -> {
      double x = 0;
      double w = n.given("w₀", "width at the neck", neck.width().in(unit));
      double sum = 0;
      StringBuilder formula = new StringBuilder("(");
      for (int i = 0; i < widths.size(); i++) {
        String at = Subscripts.of(i);
        String next = Subscripts.of(i + 1);
        double nextX = n.given("x" + next, "distance from the neck", distances.get(i).in(unit));
        double nextW = n.given("w" + next, "width there", widths.get(i).in(unit));
        sum += (w + nextW) * (nextX - x);
        formula.append(i == 0 ? "" : " + ").append("(w").append(at).append(" + w").append(next);
        formula.append(") ");
        formula.append(i == 0 ? "x" + next : "(x" + next + " − x" + at + ")");
        x = nextX;
        w = nextW;
      }
      double area = n.area("A", "area of the outline", formula.append(") / 2").toString(), sum / 2);
      return times(n, area, unit);
    };
  }

  /** An oval of width W and length L, cut off by a chord of the neck's width. */
  static Solid oval(Section neck, Measure<Length> wide, Measure<Length> along) {
    Outline outline = from(neck);
    return (n, unit) -> {
      double w0 = n.given("w₀", "width of the neck", neck.width().in(unit));
      double w = n.given("W", "width of the oval", wide.in(unit));
      double l = n.given("L", "length of the oval", along.in(unit));
      double f = neckAngle(n, w0, w);
      double area =
          n.area(
              "A",
              "area of the oval beyond the neck",
              "W L (π − φ + sin(φ) cos(φ)) / 4",
              w * l * (Math.PI - f + Math.sin(f) * Math.cos(f)) / 4);
      return outline.times(n, area, unit);
    };
  }

  /** Half the angle that the neck takes of the oval, drawn out to a circle. */
  static double neckAngle(Notes n, double neck, double wide) {
    return n.number(
        "φ",
        "half angle of the neck, radians",
        "asin(w₀ / W)",
        Math.asin(Math.min(1, neck / wide)));
  }

  /** Any outline, by quadrature. */
  static Solid curve(
      Section neck,
      Measure<Length> along,
      Function<Measure<Length>, ? extends Quantity<Length>> width) {
    double area = integral(along, width);
    Unit<Length> own = along.getUnit();
    Outline outline = from(neck);
    return (n, unit) -> {
      double scale = Measure.of(1, own).in(unit);
      double a = n.givenArea("A", "area of the outline", area * scale * scale);
      return outline.times(n, a, unit);
    };
  }

  /**
   * Over the angle θ of x = L (1 − cos θ) / 2 instead of x: a rounded tip, where the outline stands
   * upright, becomes smooth, and Gauss and Legendre's rule is good for it.
   */
  private static double integral(
      Measure<Length> along, Function<Measure<Length>, ? extends Quantity<Length>> width) {
    Unit<Length> unit = along.getUnit();
    double half = along.getValue() / 2;
    IterativeLegendreGaussIntegrator rule =
        new IterativeLegendreGaussIntegrator(NODES, RELATIVE, ABSOLUTE, FEWEST, MOST);
    try {
      return rule.integrate(
          EVALUATIONS,
          angle ->
              width(width, along.withValue(half * (1 - Math.cos(angle)))).in(unit)
                  * (half * Math.sin(angle)),
          0,
          Math.PI);
    } catch (MaxCountExceededException e) {
      throw new IllegalArgumentException(
          "width must run smoothly along the end for its area to be found; give the widths to"
              + " End.measured",
          e);
    }
  }

  static Measure<Length> width(
      Function<Measure<Length>, ? extends Quantity<Length>> width, Measure<Length> distance) {
    return Arguments.notNegative("width at " + distance, width.apply(distance));
  }

  private double times(Notes n, double area, Unit<Length> unit) {
    double t = n.given("t", "thickness", neck.thickness().in(unit));
    return n.volume("V", "metal kept", "A t", area * t);
  }
}
