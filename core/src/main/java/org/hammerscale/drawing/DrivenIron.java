package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Spike;
import org.hammerscale.forging.Upset;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Turned;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.jspecify.annotations.Nullable;

/**
 * The outline of what is driven, seen on the side that a chisel point is drawn thin on, along its
 * own line: from the first face that it goes through, its head before it.
 */
final class DrivenIron {
  private static final int ARC = 24;

  private final Draft draft;
  private final Spike spike;

  /** How far along, and half the thickness there, on the paper. */
  private final List<double[]> places = new ArrayList<>();

  private DrivenIron(Draft draft, Spike spike) {
    this.draft = draft;
    this.spike = spike;
  }

  /** With its head. */
  static DrivenIron whole(Draft draft, Spike spike) {
    DrivenIron iron = new DrivenIron(draft, spike);
    iron.head();
    iron.shank();
    return iron;
  }

  /** From the face of the wood on, as the tail of something. */
  static DrivenIron tail(Draft draft, Spike spike) {
    DrivenIron iron = new DrivenIron(draft, spike);
    iron.shank();
    return iron;
  }

  /** Whether its rose head is left to the hammer, of so much metal and no certain size. */
  static boolean isRose(Upset head) {
    return head.reach().getValue() == 0 && head.widest().meets(head.start());
  }

  private void head() {
    Upset head = spike.head();
    if (isRose(head)) {
      // Drawn as a pyramid twice as wide as the shank that holds its metal.
      double wide = 2 * head.start().width().in(ShopUnits.MILLIMETRE);
      double metal = head.metalKept().likely().in(ShopUnits.CUBIC_MILLIMETRE);
      add(-3 * metal / (wide * wide) / draft.scale.reduction(), 0);
      add(0, wide / 2 / draft.scale.reduction());
      return;
    }
    double[] edge = Silhouette.of(head).edge(ShopUnits.MILLIMETRE);
    for (int i = edge.length - 2; i >= 0; i -= 2) {
      add(-edge[i] / draft.scale.reduction(), edge[i + 1] / 2 / draft.scale.reduction());
    }
  }

  private void shank() {
    double half = half();
    double straight = shankLength();
    add(0, half);
    if (spike.isClenched()) {
      for (int i = 0; i <= ARC; i++) {
        double along = back() + half * Math.PI / 2 * i / ARC;
        if (along > 0 && along < straight) {
          add(along, half);
        }
      }
    }
    add(straight, half);
    double[] edge = Silhouette.of(spike.point()).edge(ShopUnits.MILLIMETRE);
    double long1 = edge[edge.length - 2] / draft.scale.reduction();
    int steps = spike.isClenched() ? ARC : 1; // it may be bent
    for (int i = 1; i <= steps; i++) {
      double share = (double) i / steps;
      double thick = edge[1] + (edge[edge.length - 1] - edge[1]) * share;
      add(straight + long1 * share, thick / 2 / draft.scale.reduction());
    }
  }

  private void add(double along, double half) {
    places.add(new double[] {along, half});
  }

  /** Half its thickness. */
  double half() {
    return draft.of(spike.shank().thickness()) / 2;
  }

  /** From the first face to where the point begins. */
  double shankLength() {
    return draft.of(spike.length().subtract(spike.point().reach()));
  }

  /** From the first face to the far one of the wood that it is clenched through. */
  private double back() {
    return draft.of(spike.length().subtract(spike.clench()));
  }

  /** How far beyond the first face it reaches, and how far to the left and right of its line. */
  double[] extent() {
    double aside = 0;
    double beyond = 0;
    double before = 0;
    for (int side = -1; side <= 1; side += 2) {
      double[] points = side(side);
      for (int i = 0; i < points.length; i += 2) {
        before = Math.min(before, points[i]);
        beyond = Math.max(beyond, points[i]);
        aside = Math.max(aside, Math.abs(points[i + 1]));
      }
    }
    return new double[] {before, beyond, aside};
  }

  /** One of its sides from head to tip, along and up by turns. */
  double[] side(int side) {
    double[] points = new double[2 * places.size()];
    for (int i = 0; i < places.size(); i++) {
      double[] at = turned(places.get(i)[0], side * places.get(i)[1]);
      points[2 * i] = at[0];
      points[2 * i + 1] = at[1];
    }
    return points;
  }

  /** A place beside its line, which turns up behind the wood if it is clenched. */
  private double[] turned(double along, double aside) {
    double beyond = spike.isClenched() ? along - back() : -1;
    if (beyond <= 0) {
      return new double[] {along, aside};
    }
    double radius = half();
    double angle = Math.min(beyond / radius, Math.PI / 2);
    double on = beyond - radius * angle;
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new double[] {
      back() + radius * sin + on * cos - aside * sin, radius * (1 - cos) + on * sin + aside * cos
    };
  }

  /** Its whole outline. */
  void draw(Turned at, String part) {
    Path path = Draft.band(at, side(1), side(-1));
    draft.pen.draw(Line.WIDE, part, path.close());
  }

  /** The hole that is bored for it, if there is one. */
  void bored(Turned at, @Nullable Measure<Length> hole) {
    if (hole == null) {
      return;
    }
    double half = draft.of(hole) / 2;
    double deep = draft.of(spike.boringDepth());
    if (spike.isClenched()) {
      draft.pen.draw(Line.HIDDEN, "hole", at.path(0, half, deep, half));
      draft.pen.draw(Line.HIDDEN, "hole", at.path(0, -half, deep, -half));
    } else {
      draft.pen.draw(Line.HIDDEN, "hole", at.path(0, half, deep, half, deep, -half, 0, -half));
    }
  }

  /** A face of wood on both sides of it, so far along. */
  void face(Turned at, double along, double from, double to) {
    for (int side = -1; side <= 1; side += 2) {
      draft.pen.draw(Line.WIDE, "wood", at.path(along, side * from, along, side * to));
    }
  }
}
