package org.hammerscale.examples.order;

import java.util.Optional;
import java.util.function.Supplier;
import org.hammerscale.drawing.BarDrawing;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.Paper;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.units.ShopUnits;

/** Drawings that a card has room for: what is too large for any paper is left out. */
public final class Pictures {
  /** How wide a picture of a bar may be beside another one, in millimetres. */
  private static final double BESIDE = 80;

  private Pictures() {}

  /** A drawing, if paper holds it on so many sheets. */
  public static Optional<Drawing> onSheets(int most, Supplier<Drawing> draws) {
    try {
      Drawing drawing = draws.get();
      int sheets = drawing.withoutNotes().sheets(Paper.A4).size();
      return sheets <= most ? Optional.of(drawing) : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty(); // larger than any paper
    }
  }

  /** A cold bar as small as it must be to stand beside another on the front of a sheet. */
  public static Optional<Drawing> small(MarkedBar bar, String title) {
    double wide = bar.cutLength().in(ShopUnits.MILLIMETRE);
    for (int reduction : new int[] {2, 5, 10, 20, 50, 100}) {
      if (wide / reduction <= BESIDE) {
        return Optional.of(BarDrawing.of(bar).reducedTo(reduction).drawing().titled(title));
      }
    }
    return Optional.empty();
  }
}
