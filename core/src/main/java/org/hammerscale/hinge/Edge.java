package org.hammerscale.hinge;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Stops.Stop;
import org.hammerscale.working.Notes;

/**
 * Boards as stops: a corner of one slab against the face or against the end of another. A slab is a
 * board, or the bare stretch of a leaf from where it leaves the barrel; so wide that its other end
 * never matters: at 180° two of them lie parallel. A board is let out round the larger barrel, so
 * that its end begins where that circle ends.
 */
final class Edge implements Stop {
  /** Relative rounding of a square that was put together in two ways. */
  private static final double ROUNDING = 1e-12;

  private final double end;
  private final double corner;
  private final boolean onFace;
  private final double other;

  private Edge(double end, double corner, boolean onFace, double other) {
    this.end = end;
    this.corner = corner;
    this.onFace = onFace;
    this.other = other;
  }

  /** A slab from its end outward; the end runs between two heights above the pin. */
  private record Slab(double end, double low, double high, boolean isBoard) {}

  /** All places where boards can stop these leaves; empty if neither has one. */
  static List<Stop> of(LeafProfile one, LeafProfile other, Unit<Length> unit) {
    double barrel = Math.max(one.outsideDiameter().in(unit), other.outsideDiameter().in(unit)) / 2;
    List<Stop> all = new ArrayList<>();
    for (Slab first : slabs(one, barrel, unit)) {
      for (Slab second : slabs(other, barrel, unit)) {
        if (first.isBoard || second.isBoard) { // iron on iron is reckoned knuckle by knuckle
          add(all, first, second);
          add(all, second, first);
        }
      }
    }
    return all;
  }

  private static List<Slab> slabs(LeafProfile leaf, double barrel, Unit<Length> unit) {
    double face = leaf.faceAbovePin().in(unit);
    double out = across(leaf.outsideDiameter().in(unit) / 2, face);
    List<Slab> all = new ArrayList<>();
    all.add(new Slab(out, face, face, false));
    leaf.board()
        .ifPresent(
            board -> {
              double top = face + board.thickness().in(unit);
              double end = Math.max(board.edgeFromPin().in(unit), across(barrel, top));
              double low = Math.min(Math.max(face, across(barrel, end)), top);
              all.add(new Slab(end, low, top, true));
            });
    return all;
  }

  /** Half the width of a circle at a height, or half its height at a width; nothing beyond it. */
  private static double across(double radius, double height) {
    return Math.sqrt(Math.max((radius - height) * (radius + height), 0));
  }

  private static void add(List<Stop> all, Slab moving, Slab met) {
    if (moving.high + met.high <= 0) {
      all.add(new Edge(0, 0, true, 0));
      return;
    }
    for (double corner : new double[] {moving.high, moving.low}) {
      // Corners on the let-out circle meet just where a leaf leaves its barrel: equal but for
      // noise.
      double noise = ROUNDING * (moving.end * moving.end + corner * corner);
      double along = square(moving.end, corner, met.high);
      if (along >= met.end * met.end - noise) {
        all.add(new Edge(moving.end, corner, true, met.high));
      }
      double up = square(corner, moving.end, met.end);
      double least = Math.max(met.low, 0);
      boolean onEnd =
          up > noise && up >= least * least - noise && up <= met.high * met.high + noise;
      if (met.isBoard && met.high > 0 && onEnd) {
        all.add(new Edge(moving.end, corner, false, met.end));
      }
    }
  }

  /** a² + b² − c². */
  private static double square(double a, double b, double c) {
    return a * a + (b - c) * (b + c);
  }

  @Override
  public Contact contact() {
    return Contact.BOARDS;
  }

  @Override
  public double angle(Notes n) {
    if (end == 0 && corner == 0) {
      return Stop.inDegrees(n, "180", Math.PI); // they fold, and lie parallel
    }
    double w = n.given("w", "from the pin to the end of one", end);
    double s = n.given("s", "its corner above the pin", corner);
    if (onFace) {
      double f = n.given("f", "face of the other above the pin", other);
      double p =
          n.length(
              "p",
              "from the pin along that face to the corner",
              "√(w² + (s − f) (s + f))",
              Math.sqrt(square(w, s, f)));
      return Stop.inDegrees(
          n, "(atan2(w, s) + atan2(p, f)) × 180 / π", Math.atan2(w, s) + Math.atan2(p, f));
    }
    double v = n.given("v", "from the pin to the end of the other", other);
    double p =
        n.length(
            "p",
            "height on that end at which the corner meets it",
            "√(s² + (w − v) (w + v))",
            Math.sqrt(square(s, w, v)));
    return Stop.inDegrees(
        n, "(atan2(w, s) + atan2(v, p)) × 180 / π", Math.atan2(w, s) + Math.atan2(v, p));
  }
}
