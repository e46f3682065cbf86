package org.hammerscale.examples.latch;

import java.util.Locale;
import javax.measure.quantity.Length;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.latch.Staple;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;

/** What a front says of a staple: its inside, how it is forged, the holes for its legs. */
final class StapleText {
  /** Diameters in the wood that the NDS asks of a nail before it counts what it holds. */
  private static final double COUNTED = 6;

  private StapleText() {}

  /** Of a staple that is driven into something thicker than it is deep. */
  static void driven(
      SheetText sheet, Part part, Staple staple, boolean isSquare, Graduation<Length> rule) {
    inside(sheet, part, staple, isSquare, LengthFormat.to(rule));
    String deep = LengthFormat.to(rule).format(rule.upTo(staple.inWood())) + " deep";
    sheet.entry("", "bore for its legs %s, %s", apart(staple, rule), deep);
    Measure<Length> least = staple.rod().section().width().multiply(COUNTED);
    if (staple.holdingLength().isLessThan(least)) {
      sheet.entry(
          "",
          "only %s of full rod are in the wood, and no rule counts on less than %s: clench it, or"
              + " rivet it on a plate, where somebody pulls",
          LengthFormat.to(rule).format(staple.holdingLength()),
          LengthFormat.to(rule).format(rule.upTo(least)));
    }
  }

  /** Of a square one that comes out behind a board: clenched if enough of it does. */
  static void through(
      SheetText sheet, Part part, Staple staple, Measure<Length> board, Graduation<Length> rule) {
    inside(sheet, part, staple, true, LengthFormat.to(rule));
    Measure<Length> beyond = staple.inWood().subtract(board);
    boolean isLong = !beyond.isLessThan(staple.rod().section().width().multiply(3));
    sheet.entry(
        "",
        "bore for its legs %s, right through; %s the %s that stand out behind",
        apart(staple, rule),
        isLong ? "clench" : "cut off",
        LengthFormat.to(rule).format(beyond));
  }

  /** The holes guard the inside: no leg may come nearer to the other. */
  private static String apart(Staple staple, Graduation<Length> rule) {
    Measure<Length> apart = rule.upTo(staple.legCentres());
    return LengthFormat.to(rule).format(apart) + " apart in the middle";
  }

  private static void inside(
      SheetText sheet, Part part, Staple staple, boolean isSquare, LengthFormat told) {
    boolean isLow = staple.insideHeight().isLessThan(staple.insideWidth().divide(2));
    sheet.entry(
        part.name().substring(0, 1).toUpperCase(Locale.ROOT) + part.name().substring(1),
        "%s wide and %s high inside, %s; draw %s at either end to a point of %s",
        told.format(staple.insideWidth()),
        told.format(staple.insideHeight()),
        isSquare ? "corners square" : isLow ? "corners round" : "crown round",
        told.format(part.marked().reference()),
        told.format(part.piece().features().get(0).reach()));
  }
}
