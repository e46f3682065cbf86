package org.hammerscale.examples.carry;

import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.strength.StayedArm;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** A straight brace, mitred to lie in the corner under an arm: where its lower edge meets both. */
record Brace(Bar bar, Measure<Length> out, Measure<Length> down) {
  private static final Graduation<Angle> WHOLE_DEGREE = Graduation.of(Measures.degrees(1));

  /**
   * That of an order, if there is one.
   *
   * @throws IllegalArgumentException if it is told by half, or arm and plate are too short for it
   */
  static Optional<Brace> of(OrderColumn job, Bar bar) {
    Optional<Measure<Length>> out = job.lengthIfAny(BracketItem.BRACE_OUT);
    Optional<Measure<Length>> down = job.lengthIfAny(BracketItem.BRACE_DOWN);
    if (out.isPresent() != down.isPresent()) {
      throw new IllegalArgumentException(
          "brace must be told out and down, or none in both, was told once; tell the other too");
    }
    Optional<Brace> brace = out.map(it -> new Brace(bar, it, down.orElseThrow()));
    brace.ifPresent(
        it -> it.requireWithin(job.length(BracketItem.ARM), job.length(BracketItem.PLATE)));
    return brace;
  }

  /** From the inner face of the plate along the arm. */
  private double level() {
    return out.subtract(thickness()).in(out.getUnit());
  }

  /** From the underside of the arm down the plate. */
  private double upright() {
    return down.subtract(thickness()).in(out.getUnit());
  }

  private Measure<Length> thickness() {
    return bar.section().thickness();
  }

  /**
   * The bar, as long as its lower edge.
   *
   * @throws IllegalArgumentException if it does not clear the corner
   */
  Piece piece() {
    Measure<Length> least = thickness().multiply(4);
    if (out.isLessThan(least) || down.isLessThan(least)) {
      throw new IllegalArgumentException(
          "brace must meet arm and plate at least "
              + least
              + " from the corner, was "
              + out
              + " and "
              + down
              + "; set it farther off");
    }
    Measure<Length> edge = out.withValue(Math.hypot(level(), upright()));
    return Piece.of(bar, Plain.of(bar.section(), edge));
  }

  /**
   * Refuses a brace that arm or plate is too short for.
   *
   * @throws IllegalArgumentException if one is
   */
  private void requireWithin(Measure<Length> arm, Measure<Length> plate) {
    if (out.isGreaterThan(arm) || down.isGreaterThan(plate)) {
      throw new IllegalArgumentException(
          "brace must meet arm and plate within "
              + arm
              + " and "
              + plate
              + ", was "
              + out
              + " and "
              + down
              + "; set it nearer the corner");
    }
  }

  /**
   * Refuses a screw whose head it would cover.
   *
   * @throws IllegalArgumentException if there is one
   */
  void requireClear(WallScrews screws, Measure<Length> plate) {
    Measure<Length> edge = plate.subtract(down);
    Measure<Length> head = screws.screw().head().headDiameter().divide(2);
    for (Measure<Length> height : screws.bracket().heights()) {
      if (height.isGreaterThan(edge.subtract(head))
          && height.isLessThan(edge.add(seat()).add(head))) {
        throw new IllegalArgumentException(
            "height of each screw must leave its head clear of the brace, was "
                + height
                + "; move it or the brace");
      }
    }
  }

  /** Between brace and arm. */
  Measure<Angle> angle() {
    return Measure.of(Math.atan2(upright(), level()), ShopUnits.RADIAN).to(ShopUnits.DEGREE);
  }

  /** How high on the plate its end reaches above its lower edge. */
  private Measure<Length> seat() {
    return thickness().divide(Math.cos(angle().in(ShopUnits.RADIAN)));
  }

  /** The arm that rests on it. */
  StayedArm under(Measure<Force> load, Measure<Length> distance) {
    return StayedArm.carrying(load, distance).heldAt(out, angle());
  }

  /** The lever that bends the arm as much as it is bent, by a load at that distance. */
  Measure<Length> lever(Measure<Length> distance) {
    return distance.isGreaterThan(out)
        ? distance.subtract(out)
        : out.subtract(distance).multiply(distance.ratio(out));
  }

  void write(SheetText sheet, Function<Measure<Length>, String> told) {
    Measure<Angle> toArm = WHOLE_DEGREE.nearest(angle());
    sheet.entry(
        "Brace",
        "lower edge %s from the wall under the arm, %s below the arm's top; bevel it %s to the arm,"
            + " %s to the plate",
        told.apply(out),
        told.apply(down),
        toArm,
        Measures.degrees(90).subtract(toArm));
  }
}
