package org.hammerscale.forging;

import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.working.Notes;

/**
 * The solid between two sections, joined by straight lines: a frustum, a wedge, a cone, a blend.
 * Works in the unit given, its square and its cube.
 *
 * <p>From any solid section to a round the lines sweep the Minkowski blend: half-way its area is
 * (A₁ + A₂ + P r) / 4, with the perimeter P of the one and the radius r of the other (Steiner's
 * formula).
 */
final class Prismoid {
  private final Section from;
  private final Section to;
  private final Unit<Length> unit;
  private final Unit<Area> square;

  private Prismoid(Section from, Section to, Unit<Length> unit) {
    this.from = from;
    this.to = to;
    this.unit = unit;
    this.square = Solid.square(unit);
  }

  static Prismoid between(Section from, Section to, Unit<Length> unit) {
    if (!from.isSimilarTo(to) && !(isBlend(from, to) || isBlend(to, from))) {
      throw new IllegalArgumentException(
          "sections at base and top of a taper must be similar, or one of them round and the other"
              + " solid, was from "
              + from
              + " to "
              + to
              + "; forge the change of shape by way of a round or as stretches of their own");
    }
    return new Prismoid(from, to, unit);
  }

  /** Its mean area: (A₁ + 4 Aₘ + A₂) / 6. */
  double meanArea(Notes n) {
    double a1 = n.givenArea("A₁", "section where it begins", from.area().in(square));
    double a2 = n.givenArea("A₂", "section where it ends", to.area().in(square));
    double am = from.isSimilarTo(to) ? halfway(n) : blend(n, a1, a2);
    return n.area("A", "mean section", "(A₁ + 4 Aₘ + A₂) / 6", (a1 + 4 * am + a2) / 6);
  }

  /** The area that it begins with, without a note. */
  double firstArea() {
    return from.area().in(square);
  }

  private double halfway(Notes n) {
    return n.givenArea("Aₘ", "section half-way", from.halfwayTo(to).area().in(square));
  }

  private double blend(Notes n, double a1, double a2) {
    Section round = to.isRound() ? to : from;
    Section other = to.isRound() ? from : to;
    double p = n.given("P", "way round the " + other, other.perimeter().in(unit));
    double r = n.given("r", "radius of the " + round, round.width().in(unit) / 2);
    return n.area("Aₘ", "blend half-way", "(A₁ + A₂ + P r) / 4", (a1 + a2 + p * r) / 4);
  }

  private static boolean isBlend(Section round, Section other) {
    return round.isRound() && !other.isTube();
  }
}
