package org.hammerscale.piece;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class TrialTest {
  private static final Section FLAT = Section.flat(inches(1), inches("1/4"));

  @Test
  void tellsWhatWasWrittenDown() {
    Section tip = Section.flat(inches("3/4"), inches("1/8"));
    Trial trial =
        Trial.cut(inches(15))
            .marked(inches("2 3/8"))
            .off(PieceEnd.LAST, inches("5/16"), tip)
            .off(PieceEnd.FIRST, millimetres(0));
    assertEquals(inches(15), trial.cutLength());
    assertEquals(Optional.of(inches("2 3/8")), trial.reference());
    assertEquals(Optional.of(inches("5/16")), trial.off(PieceEnd.LAST));
    assertEquals(Optional.of(tip), trial.sectionOff(PieceEnd.LAST));
    assertEquals(Optional.of(millimetres(0)), trial.off(PieceEnd.FIRST));
    assertEquals(Optional.empty(), trial.sectionOff(PieceEnd.FIRST));
    assertEquals(
        "cut 15 in, marked at 2 3/8 in; 0 mm off at the first end; 5/16 in of 3/4 in × 1/8 in flat"
            + " off at the last end",
        trial.toString());
    assertEquals(Optional.empty(), Trial.cut(inches(15)).off(PieceEnd.LAST));
    assertEquals(Optional.empty(), Trial.cut(inches(15)).reference());
  }

  @Test
  void takesThePlannedCutAndMark() {
    Bar bar = Bar.of(FLAT, Material.MILD_STEEL);
    Piece piece =
        Piece.of(bar, Plain.of(FLAT, inches(2)), Plain.of(FLAT, inches(5))).withReferenceAfter(1);
    Trial trial = Trial.of(piece.layout().on(Graduation.SIXTEENTH));
    assertEquals("cut 7 in, marked at 2 in", trial.toString());
  }

  @Test
  void refusesWhatCannotBe() {
    Trial trial = Trial.cut(inches(15));
    assertEquals(
        "fromFirstEnd must be at most the cut length of 15 in, was 16 in; measure from the first"
            + " end",
        message(() -> trial.marked(inches(16))));
    assertEquals(
        "length must not be negative, was -1 in; give zero if there is none",
        message(() -> trial.off(PieceEnd.LAST, inches(-1))));
    assertThrows(
        IllegalArgumentException.class, () -> trial.off(PieceEnd.LAST, inches(1), FLAT.point()));
    assertThrows(IllegalArgumentException.class, () -> Trial.cut(inches(0)));
  }

  private static String message(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
