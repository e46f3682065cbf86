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
  private Sheets() {}

  static String of(List<HingeOrder> orders) {
    SheetText sheet = new SheetText();
    for (HingeOrder order : orders) {
      new FrontSheet(sheet, order).write();
      new BackSheet(sheet, order).write();
    }
    barNeeded(sheet, orders);
    return sheet.toString();
  }

  private static void barNeeded(SheetText sheet, List<HingeOrder> orders) {
    Map<Bar, Measure<Length>> lengths = new LinkedHashMap<>();
    for (HingeOrder order : orders) {
      for (Leaf leaf : Leaf.values()) {
        lengths.merge(order.pair().strap(), order.cut(leaf).multiply(order.pairs()), Measure::add);
      }
    }
    sheet.rule('=');
    sheet.line("Bar for the whole order, the saw's kerf and offcuts not counted:");
    lengths.forEach((bar, length) -> sheet.line("    %-40s %s, %s", bar, length, bar.mass(length)));
  }
}
