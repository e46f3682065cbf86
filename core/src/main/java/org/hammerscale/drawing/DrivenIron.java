package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Spike;
import org.hammerscale.forging.Upset;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Turned;
import org.hammerscale.latch.Staple;
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

  /** Half its thickness. */
  private final double half;

  /** From the first face to the far one that it is turned over behind; none if it is not. */
  private final double back;

  /** How far along, and half the thickness there, on the paper. */
  private final List<double[]> places = new ArrayList<>();

  private DrivenIron(Draft draft, Measure<Length> thickness, double back) {
    this.draft = draft;
    this.half = draft.of(thickness) / 2;
    this.back = back;
  }

  /** With its head. */
  static DrivenIron whole(Draft draft, Spike spike) {
    DrivenIron iron = bare(draft, spike);
    iron.head(spike.head());
    iron.shank(spike);
    return iron;
  }

  /** From the face of the wood on, as the tail of something. */
  static DrivenIron tail(Draft draft, Spike spike) {
    DrivenIron iron = bare(draft, spike);
    iron.shank(spike);
    return iron;
  }

  private static DrivenIron bare(Draft draft, Spike spike) {
    double back = draft.of(spike.length().subtract(spike.clench()));
    return new DrivenIron(
        draft, spike.shank().thickness(), spike.isClenched() ? back : Double.POSITIVE_INFINITY);
  }

  /** A leg of a staple, from the face of the wood on. */
  static DrivenIron leg(Draft draft, Staple staple) {
    double back = draft.of(staple.inWood().subtract(staple.clench()));
    DrivenIron iron =
        new DrivenIron(
            draft,
            staple.rod().section().thickness(),
            staple.isClenched() ? back : Double.POSITIVE_INFINITY);
    iron.shank(
        draft.of(staple.inWood().subtract(staple.pointLength())),
        draft.of(staple.pointLength()),
        0);
    return iron;
  }

  /** Whether its rose head is left to the hammer, of so much metal and no certain size. */
  static boolean isRose(Upset head) {
    return head.reach().getValue() == 0 && head.widest().meets(head.start());
  }

  private void head(Upset head) {
    double reduction = draft.scale.reduction();
    if (isRose(head)) {
      // Drawn as a pyramid twice as wide as the shank that holds its metal.
      double wide = 2 * head.start().width().in(ShopUnits.MILLIMETRE);
      double metal = head.metalKept().likely().in(ShopUnits.CUBIC_MILLIMETRE);
      add(-3 * metal / (wide * wide) / reduction, 0);
      add(0, wide / 2 / reduction);
      return;
    }
    double[] edge = Silhouette.of(head).edge(ShopUnits.MILLIMETRE);
    for (int i = edge.length - 2; i >= 0; i -= 2) {
      add(-edge[i] / reduction, edge[i + 1] / 2 / reduction);
    }
  }

  private void shank(Spike spike) {
    Measure<Length> pointed = spike.point().reach();
    shank(
        draft.of(spike.length().subtract(pointed)),
        draft.of(pointed),
        draft.of(spike.point().end().thickness()) / 2);
  }

  /** Straight so far, then a point so long to half the thickness of its end. */
  private void shank(double straight, double pointed, double end) {
    add(0, half);
    boolean isTurned = back < straight + pointed;
    for (int i = 0; isTurned && i <= ARC; i++) {
      double along = back + half * Math.PI / 2 * i / ARC;
      if (along < straight) {
        add(along, half);
      }
    }
    int steps = isTurned ? ARC : 1;
    for (int i = 0; i <= steps; i++) {
      double share = (double) i / steps;
      add(straight + pointed * share, half + (end - half) * share);
    }
  }

  private void add(double along, double half) {
    places.add(new double[] {along, half});
  }

  /** Half its thickness. */
  double half() {
    return half;
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
    double beyond = along - back;
    if (beyond <= 0) {
      return new double[] {along, aside};
    }
    double radius = half;
    double angle = Math.min(beyond / radius, Math.PI / 2);
    double on = beyond - radius * angle;
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new double[] {
      back + radius * sin + on * cos - aside * sin, radius * (1 - cos) + on * sin + aside * cos
    };
  }

  /** Its whole outline. */
  void draw(Turned at, String part) {
    Path path = Draft.band(at, side(1), side(-1));
    draft.pen.draw(Line.WIDE, part, path.close());
  }

  /** The hole that is bored for it, if there is one, as deep as told. */
  void bored(Turned at, @Nullable Measure<Length> hole, double deep) {
    if (hole == null) {
      return;
    }
    double side = draft.of(hole) / 2;
    if (back < Double.POSITIVE_INFINITY) {
      draft.pen.draw(Line.HIDDEN, "hole", at.path(0, side, deep, side));
      draft.pen.draw(Line.HIDDEN, "hole", at.path(0, -side, deep, -side));
    } else {
      draft.pen.draw(Line.HIDDEN, "hole", at.path(0, side, deep, side, deep, -side, 0, -side));
    }
  }

  /** A face of wood on both sides of it, so far along. */
  void face(Turned at, double along, double from, double to) {
    for (int side = -1; side <= 1; side += 2) {
      draft.pen.draw(Line.WIDE, "wood", at.path(along, side * from, along, side * to));
    }
  }
}
