package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;

import org.hammerscale.forging.End;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Hand;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Knuckles;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;

/** Pairs of leaves to draw: usual ones in both units, and the longest, stoutest and busiest. */
final class Leaves {
  private Leaves() {}

  /** In inches, on the face, with a penny end. */
  static HingePair gate() {
    Section strap = Section.flat(inches("1 1/2"), inches("1/4"));
    Section tip = Section.flat(inches("3/4"), inches("1/8"));
    return HingePair.of(
            Bar.of(strap, Material.MILD_STEEL),
            Bore.forPin(inches("1/2")).clearing(inches("1/64")).coated(inches(0.003)))
        .knuckles(Knuckles.across(strap.width()).withGap(inches("1/32")))
        .leaves(
            Plain.of(strap, inches(6)),
            Taper.between(strap, tip, inches(4)),
            End.penny(tip, inches(2)))
        .opening(degrees(110), Hanging.FACE)
        .handed(Hand.LEFT)
        .on(Graduation.SIXTEENTH)
        .pair();
  }

  static HoleLayout gateHoles() {
    return HoleRow.along(inches(10))
        .holes(4)
        .startingFrom(inches(2))
        .endingBefore(inches("1/2"))
        .layout()
        .on(Graduation.SIXTEENTH);
  }

  /** In millimetres, in the joint, with nine knuckles. */
  static HingePair boathouse() {
    Section strap = Section.flat(millimetres(80), millimetres(6));
    return HingePair.of(
            Bar.of(strap, Material.MILD_STEEL),
            Bore.forPin(millimetres(14)).clearing(millimetres(0.5)))
        .knuckles(Knuckles.across(strap.width()).into(9).withGap(millimetres(0.5)))
        .leaves(Plain.of(strap, millimetres(200)))
        .opening(degrees(220), Hanging.JOINT)
        .handed(Hand.RIGHT)
        .on(Graduation.MILLIMETRE)
        .pair();
  }

  static HingePair centred() {
    Section strap = Section.flat(millimetres(40), millimetres(6));
    return HingePair.of(Bar.of(strap, Material.MILD_STEEL), Bore.forPin(millimetres(14)))
        .centred()
        .leaves(Plain.of(strap, millimetres(120)))
        .pair();
  }

  /** Two millimetres thin and a metre long. */
  static HingePair longest() {
    Section strap = Section.flat(millimetres(20), millimetres(2));
    return HingePair.of(Bar.of(strap, Material.MILD_STEEL), Bore.forPin(millimetres(6)))
        .leaves(Plain.of(strap, millimetres(1000)))
        .on(Graduation.MILLIMETRE)
        .pair();
  }

  /** Twelve millimetres thick and sixty long. */
  static HingePair stoutest() {
    Section strap = Section.flat(millimetres(40), millimetres(12));
    return HingePair.of(Bar.of(strap, Material.MILD_STEEL), Bore.forPin(millimetres(16)))
        .leaves(Plain.of(strap, millimetres(60)))
        .on(Graduation.MILLIMETRE)
        .pair();
  }
}
