package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;

/** Bars to draw: usual ones in both units, and the longest, stoutest and busiest. */
final class Bars {
  private Bars() {}

  static MarkedBar gate() {
    Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
    Section tip = Section.flat(inches("3/4"), inches("1/8"));
    Barrel eye = Barrel.around(inches("1/2"), strap.section());
    return leaf(
            strap,
            eye,
            Plain.of(strap.section(), inches(9)),
            Taper.between(strap.section(), tip, inches(6)))
        .layout()
        .on(Graduation.SIXTEENTH);
  }

  static MarkedBar boathouse() {
    Bar strap = Bar.of(Section.flat(millimetres(40), millimetres(6)), Material.MILD_STEEL);
    Barrel eye = Barrel.around(millimetres(14), strap.section());
    Section tip = Section.flat(millimetres(20), millimetres(4));
    return leaf(
            strap,
            eye,
            Plain.of(strap.section(), millimetres(240)),
            Taper.between(strap.section(), tip, millimetres(180)))
        .layout()
        .on(Graduation.MILLIMETRE);
  }

  /** Two millimetres thin and a metre long. */
  static MarkedBar longest() {
    Bar strap = Bar.of(Section.flat(millimetres(20), millimetres(2)), Material.MILD_STEEL);
    Barrel eye = Barrel.around(millimetres(6), strap.section());
    return leaf(strap, eye, Plain.of(strap.section(), millimetres(1000)))
        .layout()
        .on(Graduation.MILLIMETRE);
  }

  /** Twelve millimetres thick and sixty long. */
  static MarkedBar stoutest() {
    Bar strap = Bar.of(Section.flat(millimetres(40), millimetres(12)), Material.MILD_STEEL);
    Barrel eye = Barrel.around(millimetres(16), strap.section());
    return leaf(strap, eye, Plain.of(strap.section(), millimetres(60)))
        .layout()
        .on(Graduation.MILLIMETRE);
  }

  /** Forty short stretches. */
  static MarkedBar busiest() {
    Bar bar = Bar.of(Section.flat(millimetres(20), millimetres(2)), Material.MILD_STEEL);
    Section section = bar.section();
    List<Feature> many = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      many.add(Plain.of(section, millimetres(5)));
      many.add(Taper.between(section, section, millimetres(4)));
    }
    return Piece.of(bar, many.toArray(new Feature[0])).layout().on(Graduation.MILLIMETRE);
  }

  static Piece leaf(Bar bar, Feature... features) {
    return Piece.of(bar, features).withReferenceAfter(1).trimmedAt(PieceEnd.FIRST, PieceEnd.LAST);
  }
}
