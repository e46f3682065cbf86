package org.hammerscale.examples;

import javax.measure.quantity.Length;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;

/** One line of an order: sets of strap hinges, two straps alike in each, that hang on hooks. */
final class HingeOrder {
  private final String name;
  private final Piece strap;
  private final Barrel barrel;
  private final Measure<Length> pin;
  private final int sets;
  private final Graduation<Length> graduation;

  private HingeOrder(
      String name,
      Piece strap,
      Barrel barrel,
      Measure<Length> pin,
      int sets,
      Graduation<Length> graduation) {
    this.name = name;
    this.strap = strap;
    this.barrel = barrel;
    this.pin = pin;
    this.sets = sets;
    this.graduation = graduation;
  }

  /** From a row whose values were read, each by itself. */
  static HingeOrder from(OrderRow row, Bar bar) {
    Measure<Length> leaf = row.length("leaf length");
    Measure<Length> tapered = row.length("taper length");
    Measure<Length> pin = row.length("pin");
    Barrel barrel = Barrel.around(pin.add(row.length("clearance")), bar.section());
    Section tip = rectangle(row.length("tip width"), row.length("tip thickness"));
    Taper taper = Taper.between(bar.section(), tip, tapered);
    Plain plain = Plain.of(bar.section(), leaf.subtract(tapered));
    Piece strap = Piece.of(bar, barrel, plain, taper);
    return new HingeOrder(row.name(), strap, barrel, pin, row.sets(), row.graduation());
  }

  private static Section rectangle(Measure<Length> width, Measure<Length> thickness) {
    return width.isLessThan(thickness)
        ? Section.onEdge(width, thickness)
        : Section.flat(width, thickness);
  }

  String name() {
    return name;
  }

  Piece strap() {
    return strap;
  }

  Barrel barrel() {
    return barrel;
  }

  Measure<Length> pin() {
    return pin;
  }

  int sets() {
    return sets;
  }

  int straps() {
    return 2 * sets;
  }

  Graduation<Length> graduation() {
    return graduation;
  }

  /** The cut length, rounded up to a mark of the rule. */
  Measure<Length> cut() {
    return strap.layout().cutLength().high().upTo(graduation);
  }
}
