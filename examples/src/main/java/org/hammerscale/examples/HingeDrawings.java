package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.HingeDrawing;
import org.hammerscale.drawing.LeafDrawing;
import org.hammerscale.examples.order.Pictures;
import org.hammerscale.hinge.Leaf;

/** The drawings of a pair of hinges at true scale: each leaf with its holes, and the joint. */
final class HingeDrawings {
  private static final int MOST_SHEETS = 50;

  private HingeDrawings() {}

  static List<Drawing> of(HingeOrder order) {
    List<Drawing> drawings = new ArrayList<>();
    for (Leaf leaf : HingeOrder.LEAVES) {
      Pictures.onSheets(MOST_SHEETS, () -> leaf(order, leaf)).ifPresent(drawings::add);
    }
    Pictures.onSheets(MOST_SHEETS, () -> joint(order)).ifPresent(drawings::add);
    return drawings;
  }

  private static Drawing leaf(HingeOrder order, Leaf leaf) {
    HolePlan holes = order.leaf(leaf).holes();
    return LeafDrawing.of(order.pair(), leaf)
        .withHoles(holes.layout(), holes.screw().head())
        .on(order.graduation())
        .drawing()
        .titled(HingeOrder.called(leaf) + ", " + order.pair().hand());
  }

  private static Drawing joint(HingeOrder order) {
    return HingeDrawing.of(order.pair()).on(order.graduation()).drawing();
  }
}
