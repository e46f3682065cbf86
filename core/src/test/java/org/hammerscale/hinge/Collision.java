package org.hammerscale.hinge;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Length;

/**
 * The hinge in cardboard: plates as convex polygons that turn about the pin, and whether they
 * overlap, by separating axes. How far they turn is found by small steps and halving. It knows
 * nothing of corners and faces, so that it can judge the closed forms.
 */
final class Collision {
  /** How deep two polygons must overlap, of a length unit, to be in each other's way. */
  private static final double SLACK = 1e-12;

  private static final double STEP = 0.5;
  private static final double FINEST = 1e-11;
  private static final int STRIPS = 12;
  private static final double SKIN = 1e-9;

  private Collision() {}

  /** A convex polygon; the pin is the origin. */
  static final class Plate {
    private final double[] x;
    private final double[] y;

    private Plate(double[] x, double[] y) {
      this.x = x;
      this.y = y;
    }

    static Plate rectangle(double left, double right, double bottom, double top) {
      return new Plate(
          new double[] {left, right, right, left}, new double[] {bottom, bottom, top, top});
    }

    /** Turned anticlockwise about the pin. */
    Plate turned(double degrees) {
      double sine = Math.sin(Math.toRadians(degrees));
      double cosine = Math.cos(Math.toRadians(degrees));
      double[] newX = new double[x.length];
      double[] newY = new double[x.length];
      for (int i = 0; i < x.length; i++) {
        newX[i] = x[i] * cosine - y[i] * sine;
        newY[i] = x[i] * sine + y[i] * cosine;
      }
      return new Plate(newX, newY);
    }

    boolean overlaps(Plate other) {
      return !isApartAlongSidesOf(this, other) && !isApartAlongSidesOf(other, this);
    }

    private static boolean isApartAlongSidesOf(Plate one, Plate other) {
      for (int i = 0; i < one.x.length; i++) {
        int next = (i + 1) % one.x.length;
        double length = Math.hypot(one.x[next] - one.x[i], one.y[next] - one.y[i]);
        double outX = (one.y[next] - one.y[i]) / length;
        double outY = (one.x[i] - one.x[next]) / length;
        double nearest = Double.POSITIVE_INFINITY;
        for (int j = 0; j < other.x.length; j++) {
          double out = (other.x[j] - one.x[i]) * outX + (other.y[j] - one.y[i]) * outY;
          nearest = Math.min(nearest, out);
        }
        if (nearest > -SLACK) {
          return true;
        }
      }
      return false;
    }

    /**
     * The distance of two plates that do not overlap: from a corner of one to a side of the other.
     */
    double distanceTo(Plate other) {
      return Math.min(cornersToSides(this, other), cornersToSides(other, this));
    }

    private static double cornersToSides(Plate one, Plate other) {
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < one.x.length; i++) {
        for (int j = 0; j < other.x.length; j++) {
          int next = (j + 1) % other.x.length;
          least =
              Math.min(
                  least,
                  toSide(
                      one.x[i] - other.x[j],
                      one.y[i] - other.y[j],
                      other.x[next] - other.x[j],
                      other.y[next] - other.y[j]));
        }
      }
      return least;
    }

    private static double toSide(double px, double py, double sx, double sy) {
      double along = Math.max(0, Math.min(1, (px * sx + py * sy) / (sx * sx + sy * sy)));
      return Math.hypot(px - along * sx, py - along * sy);
    }

    /** The distance of its nearest point from the pin. */
    double distanceFromPin() {
      return distanceTo(new Plate(new double[] {0, 1e-13}, new double[] {0, 0}));
    }
  }

  /** The plates of a fixed and of a moving leaf in one section across the pin, lying flat. */
  record Section(List<Plate> fixed, List<Plate> moving) {
    /** Whether nothing comes nearer than a gap when the moving leaf is turned by an angle. */
    boolean isFree(double degrees, double gap) {
      for (Plate plate : moving) {
        Plate turned = plate.turned(degrees);
        for (Plate other : fixed) {
          if (other.overlaps(turned) || (gap > 0 && other.distanceTo(turned) < gap - SLACK)) {
            return false;
          }
        }
      }
      return true;
    }

    /** The first angle at which something meets, up to a most. */
    double limit(double gap, double most) {
      for (double angle = 0; angle < most; angle += STEP) {
        if (!isFree(angle + STEP, gap)) {
          double low = angle;
          double high = angle + STEP;
          while (high - low > FINEST) {
            double middle = (low + high) / 2;
            if (isFree(middle, gap)) {
              low = middle;
            } else {
              high = middle;
            }
          }
          return low;
        }
      }
      return most;
    }
  }

  /**
   * The two sections of a hinge: through a knuckle of the moving leaf, where the fixed one is
   * notched, and the other way round. Both leaves need a notch and a length. Where there are
   * boards, they are let out round the larger barrel, and a leaf begins where it leaves its barrel.
   */
  static List<Section> sections(LeafProfile fixed, LeafProfile moving, Unit<Length> unit) {
    double barrel =
        Math.max(fixed.outsideDiameter().in(unit), moving.outsideDiameter().in(unit)) / 2;
    boolean wood = fixed.board().isPresent() || moving.board().isPresent();
    double let = wood ? barrel : 0;
    return List.of(
        new Section(mirrored(plates(fixed, true, let, unit)), plates(moving, false, let, unit)),
        new Section(mirrored(plates(fixed, false, let, unit)), plates(moving, true, let, unit)));
  }

  /**
   * How far a hinge opens past flat, in degrees: until anything meets, or the edge of a notch comes
   * nearer than the gap.
   */
  static double opening(
      LeafProfile fixed, LeafProfile moving, double gap, double most, Unit<Length> unit) {
    double met = least(sections(fixed, moving, unit), 0, most);
    return gap > 0 ? Math.min(met, least(edges(fixed, moving, unit), gap, most)) : met;
  }

  private static double least(List<Section> sections, double gap, double most) {
    return sections.stream().mapToDouble(s -> s.limit(gap, most)).min().orElseThrow();
  }

  /** The same sections with no more of each notched leaf than a sliver along its notch. */
  private static List<Section> edges(LeafProfile fixed, LeafProfile moving, Unit<Length> unit) {
    return List.of(
        new Section(mirrored(List.of(edge(fixed, unit))), List.of(iron(moving, unit))),
        new Section(mirrored(List.of(iron(fixed, unit))), List.of(edge(moving, unit))));
  }

  private static Plate edge(LeafProfile leaf, Unit<Length> unit) {
    double notch = leaf.notch().orElseThrow().in(unit);
    return plate(leaf, notch, notch + SKIN, unit);
  }

  private static Plate iron(LeafProfile leaf, Unit<Length> unit) {
    return plate(leaf, 0, leaf.length().orElseThrow().in(unit), unit);
  }

  private static Plate plate(LeafProfile leaf, double from, double to, Unit<Length> unit) {
    return Plate.rectangle(from, to, leaf.backAbovePin().in(unit), leaf.faceAbovePin().in(unit));
  }

  private static List<Plate> plates(
      LeafProfile leaf, boolean notched, double let, Unit<Length> unit) {
    double face = leaf.faceAbovePin().in(unit);
    double start = let > 0 ? across(leaf.outsideDiameter().in(unit) / 2, face) : 0;
    double from = notched ? leaf.notch().orElseThrow().in(unit) : start;
    double to = leaf.length().orElseThrow().in(unit);
    List<Plate> all = new ArrayList<>();
    all.add(Plate.rectangle(from, to, leaf.backAbovePin().in(unit), face));
    leaf.board()
        .ifPresent(
            board -> {
              double top = face + board.thickness().in(unit);
              double edge = board.edgeFromPin().in(unit);
              // Strips, each as far from the pin as its edge or the barrel puts it.
              double low = face;
              for (int i = 1; i <= STRIPS; i++) {
                double high = i == STRIPS ? top - SKIN : face + (top - SKIN - face) * i / STRIPS;
                double widest = low * high <= 0 ? 0 : Math.min(Math.abs(low), Math.abs(high));
                double end = Math.max(edge, across(let, widest));
                all.add(Plate.rectangle(end, to, low, high));
                low = high;
              }
              all.add(Plate.rectangle(Math.max(edge, across(let, top)), to, low, top));
              double above = across(let, edge);
              if (above > face && above < top) {
                all.add(Plate.rectangle(edge, to, above, top));
              }
            });
    return all;
  }

  private static double across(double radius, double height) {
    return Math.sqrt(Math.max((radius - height) * (radius + height), 0));
  }

  private static List<Plate> mirrored(List<Plate> plates) {
    return plates.stream()
        .map(plate -> Plate.rectangle(-plate.x[1], -plate.x[0], plate.y[0], plate.y[2]))
        .toList();
  }
}
