package org.hammerscale.latch;

import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Bend;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.forging.Taper;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** What a thumb latch is forged from, each part by itself. */
final class LatchParts {
  private static final Measure<Angle> CORNER = Measures.degrees(90);

  private final Bar bar;
  private final Bar lever;
  private final Bar handle;
  private final Unit<Length> unit;
  private final Measure<Length> length;
  private final Measure<Length> thumb;
  private final Measure<Length> reach;
  private final Measure<Length> room;
  private final Measure<Length> fingers;
  private final Measure<Length> grip;

  /** The parts, the lever's pivot so far from the bar's far face. */
  LatchParts(ThumbLatchBuilder asked, Measure<Length> reach) {
    this.bar = asked.bar;
    this.lever = asked.lever;
    this.handle = asked.handle;
    this.unit = asked.unit;
    this.length = asked.length;
    this.thumb = asked.thumb;
    this.reach = reach;
    this.room = asked.room;
    this.fingers = asked.fingers;
    this.grip = asked.grip;
  }

  Piece bar() {
    return Piece.of(bar, Plain.of(bar.section(), length.add(depth())));
  }

  Piece thumbPiece() {
    Measure<Length> tip = lever.section().thickness().to(unit);
    return Piece.of(lever, Plain.of(lever.section(), thumb.add(reach).add(tip)));
  }

  Piece handle() {
    Section section = handle.section();
    Plain foot = Plain.of(section, foot());
    Plain leg = Plain.of(section, leg());
    Bend corner = Bend.of(CORNER, thickness().divide(2), section);
    Plain held = Plain.of(section, held());
    return Piece.of(handle, foot, corner, leg, corner, held, corner, leg, corner, foot)
        .withReferenceAfter(5)
        .trimmedAt(PieceEnd.FIRST, PieceEnd.LAST);
  }

  /** Its corners are bent round half a thickness, so that the middle runs round a whole one. */
  MeanLine handleLine() {
    Measure<Length> round = thickness();
    return MeanLine.straight(foot())
        .bentRight(round, CORNER)
        .straightOn(leg())
        .bentLeft(round, CORNER)
        .straightOn(held())
        .bentLeft(round, CORNER)
        .straightOn(leg())
        .bentRight(round, CORNER)
        .straightOn(foot());
  }

  Piece catchPiece() {
    Measure<Length> out = bar.section().thickness().to(unit).multiply(3).add(room);
    Taper point = Taper.toPoint(bar.section(), depth().multiply(3));
    return Piece.of(bar, Plain.of(bar.section(), out), point);
  }

  /** What the handle of a Norfolk latch stands on. */
  Piece plate() {
    Section of = handle.section();
    Section plate = Section.flat(of.width().multiply(2), of.thickness().divide(2));
    Measure<Length> high = grip.add(foot().multiply(2)).add(thickness().multiply(4));
    return Piece.of(Bar.of(plate, handle.material()), Plain.of(plate, high));
  }

  private Measure<Length> depth() {
    return bar.section().width().to(unit);
  }

  private Measure<Length> thickness() {
    return handle.section().thickness().to(unit);
  }

  private Measure<Length> foot() {
    return handle.section().width().to(unit).multiply(2);
  }

  private Measure<Length> leg() {
    return fingers.subtract(thickness().multiply(2));
  }

  private Measure<Length> held() {
    return grip.subtract(thickness());
  }
}
