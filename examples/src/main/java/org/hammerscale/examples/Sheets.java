package org.hammerscale.examples;

import java.util.List;

/** The sheets of an order: for each job a front and a back, then the cut list of them all. */
final class Sheets {
  private static final int FRONT_WIDTH = 80;
  private static final int BACK_WIDTH = 100;

  private Sheets() {}

  static String of(List<HingeOrder> orders, CutSheet cuts) {
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
      List<String> pieces = FrontSheet.pieces(order);
      pieces
          .subList(pieces.size() - left, pieces.size())
          .forEach(piece -> FrontSheet.blank(back, piece));
      sheets.append(page).append(back);
    }
    SheetText last = new SheetText(FRONT_WIDTH);
    cuts.write(last);
    return sheets.append(last).toString();
  }
}
