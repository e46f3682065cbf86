package org.hammerscale.hinge;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/** All that can end the swing of two leaves, and which of it comes first. Angles in degrees. */
final class Stops {
  /** What can end a swing: one part of a leaf against one of the other. */
  interface Stop {
    /** What meets what. */
    Contact contact();

    /** The angle past flat, in degrees, at which it ends. */
    double angle(Notes n);

    /** Notes an angle found in radians as degrees, with its formula for degrees. */
    static double inDegrees(Notes n, String formula, double radians) {
      return n.value("θ", "opening past flat", formula, radians * 180 / Math.PI, ShopUnits.DEGREE);
    }
  }

  static final double MOST = 360;
  private static final double HALF_TURN = 180;
  private static final double ROUNDING = 1e-9;
  private static final double STEEP = 5;
  private static final Measure<Length> IN_INCHES = Measure.of(1 / 64d, ShopUnits.INCH);
  private static final Measure<Length> IN_MILLIMETRES = Measure.of(0.4, ShopUnits.MILLIMETRE);

  private final LeafProfile fixed;
  private final LeafProfile moving;
  private final Unit<Length> unit;
  private final Station atMoving;
  private final Station atFixed;

  Stops(LeafProfile fixed, LeafProfile moving, Measure<Length> gap, Unit<Length> unit) {
    this.fixed = fixed;
    this.moving = moving;
    this.unit = unit;
    this.atMoving = Station.of(fixed, moving, gap, unit);
    this.atFixed = fixed == moving ? atMoving : Station.of(moving, fixed, gap, unit);
  }

  /** Where the moving leaf's knuckle stands behind the fixed leaf's notch. */
  Station atMoving() {
    return atMoving;
  }

  /** The angle of the first stop. */
  double angle() {
    if (atFixed != atMoving && facesMeet() && !hasBoards()) {
      return Math.min(atMoving.angle(Notes.NONE), atFixed.angle(Notes.NONE));
    }
    return first().angle(Notes.NONE);
  }

  Stop first() {
    Stop first = facesMeet() ? atMoving : folded();
    if (facesMeet() && atFixed != atMoving) {
      first = lesser(first, atFixed);
    }
    for (Stop edge : edges()) {
      first = lesser(first, edge);
    }
    return first;
  }

  private static Stop lesser(Stop one, Stop other) {
    return other.angle(Notes.NONE) < one.angle(Notes.NONE) ? other : one;
  }

  boolean clear(Measure<Angle> angle) {
    double wanted = angle.in(ShopUnits.DEGREE);
    boolean iron =
        facesMeet()
            ? wanted < HALF_TURN && atMoving.clears(wanted) && atFixed.clears(wanted)
            : wanted <= folded().angle(Notes.NONE) + ROUNDING;
    return iron && edges().stream().allMatch(edge -> wanted <= edge.angle(Notes.NONE) + ROUNDING);
  }

  /** An opening in degrees that some notch gives; any other is refused. */
  double reachable(Quantity<Angle> pastFlat) {
    Measure<Angle> angle = Arguments.angle("opening past flat", pastFlat, MOST);
    double wanted = angle.in(ShopUnits.DEGREE);
    // A deeper notch opens further up to flat, but less beyond: there the barrel's is the best.
    Stop first = facesMeet() ? atMoving : lesser(tips(), atMoving.cutForTheBarrel());
    double most = facesMeet() ? MOST : first.angle(Notes.NONE);
    for (Stop edge : edges()) {
      double reached = edge.angle(Notes.NONE);
      if (reached < most) {
        first = edge;
        most = reached;
      }
    }
    if (wanted > most + ROUNDING) {
      throw new IllegalArgumentException(
          "opening past flat must be at most "
              + Measure.of(most, ShopUnits.DEGREE)
              + ", where "
              + (first instanceof Station
                  ? "the edge of the notch keeps no more than the gap from the other leaf"
                  : "the " + first.contact() + " meet")
              + ", was "
              + angle
              + "; no notch helps, "
              + (first.contact() == Contact.BOARDS
                  ? "set the boards' edges further from the pin"
                  : "leave more room between the folded leaves"));
    }
    if (facesMeet() && wanted >= HALF_TURN) {
      throw new IllegalArgumentException(
          "opening past flat must be less than 180° for leaves whose faces meet, was "
              + angle
              + "; turn the leaves over, or joggle them so that the faces lie below the pin");
    }
    return wanted;
  }

  double leastNotch(Notes n, double wanted) {
    return facesMeet() ? atMoving.leastNotch(n, wanted) : atMoving.barrelNotch(n);
  }

  Contact notchContact(double wanted) {
    return facesMeet() && wanted > 0 ? atMoving.notchContact(wanted) : Contact.BARREL;
  }

  /** Where a notch was cut for the gap, and where little more of it gives much more opening. */
  List<Caution> cautions(Source source) {
    List<Caution> all = new ArrayList<>();
    if (atMoving.isCutForTheGap() || atFixed.isCutForTheGap()) {
      Station cut = atMoving.isCutForTheGap() ? atMoving : atFixed;
      all.add(
          Caution.limit(
              "no depth of notch was given: it is taken as "
                  + Measure.of(cut.barrelNotch(), unit)
                  + ", what the other's barrel needs with the gap, and opens further than one"
                  + " without; give the depth that the leaf has with notchedBehindPin(…)",
              source));
    }
    if (first().contact() == Contact.BACK_CORNER) {
      aboutSteepness(all, source);
    }
    return List.copyOf(all);
  }

  private void aboutSteepness(List<Caution> all, Source source) {
    Measure<Length> more = unit.equals(ShopUnits.INCH) ? IN_INCHES : IN_MILLIMETRES;
    double deeper =
        Math.min(
            atMoving.deepenedBy(more.in(unit)).angle(Notes.NONE),
            atFixed.deepenedBy(more.in(unit)).angle(Notes.NONE));
    for (Stop edge : edges()) {
      deeper = Math.min(deeper, edge.angle(Notes.NONE));
    }
    if (deeper - angle() >= STEEP) {
      all.add(
          Caution.limit(
              "the opening is steep in the depth of the notch here: "
                  + more
                  + " deeper gives "
                  + Measure.of(deeper, ShopUnits.DEGREE)
                  + " for "
                  + Measure.of(angle(), ShopUnits.DEGREE)
                  + "; file to the opening, not to the depth",
              source));
    }
  }

  private boolean facesMeet() {
    return atMoving.facesMeet();
  }

  /**
   * What ends a swing past 180°: the tips, which meet without a gap, or sooner the edge of a notch
   * that must keep one. Without a gap the tips are always first.
   */
  private Stop folded() {
    return atMoving.hasGap() ? lesser(tips(), lesser(atMoving, atFixed)) : tips();
  }

  private Stop tips() {
    return Tips.of(fixed, moving, unit);
  }

  private List<Stop> edges() {
    return hasBoards() ? Edge.of(fixed, moving, unit) : List.of();
  }

  private boolean hasBoards() {
    return fixed.hasBoard() || moving.hasBoard();
  }

  /**
   * The tip of the shorter leaf against the other leaf's face, of leaves that fold flat with room
   * between: past 180° they lean together. Leaves without a length are long: they stop at 180°.
   */
  private static final class Tips implements Stop {
    private final double length;
    private final double tip;
    private final double face;

    private Tips(double length, double tip, double face) {
      this.length = length;
      this.tip = tip;
      this.face = face;
    }

    static Tips of(LeafProfile one, LeafProfile other, Unit<Length> unit) {
      double first = Math.hypot(one.lengthIn(unit), one.faceAbovePin().in(unit));
      double second = Math.hypot(other.lengthIn(unit), other.faceAbovePin().in(unit));
      LeafProfile shorter = first <= second ? one : other;
      LeafProfile longer = first <= second ? other : one;
      return new Tips(
          shorter.lengthIn(unit), shorter.faceAbovePin().in(unit), longer.faceAbovePin().in(unit));
    }

    @Override
    public Contact contact() {
      return Contact.TIPS;
    }

    @Override
    public double angle(Notes n) {
      if (Double.isInfinite(length)) {
        return Stop.inDegrees(n, "180", Math.PI);
      }
      double l = n.given("L", "length of the shorter leaf from the pin", length);
      double s = n.given("s", "its face above the pin", tip);
      double f = n.given("f", "the other's face above the pin", face);
      double p =
          n.length(
              "p",
              "from the pin along the other's face to the tip",
              "√(L² + (s − f) (s + f))",
              Math.sqrt(l * l + (s - f) * (s + f)));
      return Stop.inDegrees(
          n, "(atan2(L, s) + atan2(p, f)) × 180 / π", Math.atan2(l, s) + Math.atan2(p, f));
    }
  }
}
