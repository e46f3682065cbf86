package org.hammerscale.examples;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Measure;

/** The sheets of an order: for each job a front and a back, then the bar for all of them. */
final class Sheets {
  private static final int FRONT_WIDTH = 80;
  private static final int BACK_WIDTH = 100;

  private Sheets() {}

  static String of(List<HingeOrder> orders) {
    StringBuilder sheets = new StringBuilder();
    for (HingeOrder order : orders) {
      SheetText page = new SheetText(FRONT_WIDTH);
      FrontSheet front = new FrontSheet(page, order);
      int left = front.write();
      SheetText back = new SheetText(BACK_WIDTH);
      new BackSheet(back, order, front.cautions()).write();
      if (left > 0) {
        back.rule('-');
        back.line("%s: blanks", order.name());
      }
      for (int piece = 2 * order.pairs() - left; piece < 2 * order.pairs(); piece++) {
        FrontSheet.blank(back, piece);
      }
      sheets.append(page).append(back);
    }
    SheetText last = new SheetText(FRONT_WIDTH);
    barNeeded(last, orders);
    return sheets.append(last).toString();
  }

  private static void barNeeded(SheetText sheet, List<HingeOrder> orders) {
    Map<Bar, Measure<Length>> lengths = new LinkedHashMap<>();
    for (HingeOrder order : orders) {
      for (Leaf leaf : Leaf.values()) {
        lengths.merge(
            order.pair().strap(),
            order.bar(leaf).cutLength().multiply(order.pairs()),
            Measure::add);
      }
    }
    sheet.rule('=');
    sheet.line("Bar for the whole order, the saw's kerf and offcuts not counted:");
    lengths.forEach((bar, length) -> sheet.line("    %-40s %s, %s", bar, length, bar.mass(length)));
  }
}
