package org.hammerscale.examples;

import java.util.List;
import org.hammerscale.examples.order.CutSheet;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.OrderSet;
import org.hammerscale.examples.order.SheetText;

/** The sheets of an order: for each job a front and a back, then the cut list of them all. */
final class Sheets {
  private static final int FRONT_WIDTH = 80;
  private static final int BACK_WIDTH = 100;
  private static final int MOST_LINES = 60;

  private Sheets() {}

  static String of(List<? extends Order> orders, CutSheet cuts) {
    StringBuilder sheets = new StringBuilder();
    for (OrderSet set : OrderSet.of(orders)) {
      for (Order order : set.orders()) {
        SheetText page = new SheetText(FRONT_WIDTH);
        page.rule('=');
        set.write(page, order);
        order.front(page);
        List<String> blanks = order.blanks();
        int here = Math.max(0, Math.min(blanks.size(), MOST_LINES - page.lines() - 1));
        blanks.subList(0, here).forEach(page::fillIn);
        page.overleaf(here < blanks.size());
        SheetText back = new SheetText(BACK_WIDTH);
        back.rule('-');
        order.back(back);
        if (here < blanks.size()) {
          back.rule('-');
          back.line("%s: blanks", order.name());
          blanks.subList(here, blanks.size()).forEach(back::fillIn);
        }
        sheets.append(page).append(back);
      }
    }
    SheetText last = new SheetText(FRONT_WIDTH);
    cuts.write(last);
    return sheets.append(last).toString();
  }
}
