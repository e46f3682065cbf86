package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.HingeDrawing;
import org.hammerscale.drawing.LeafDrawing;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;

/** The drawings of a pair of hinges at true scale: each leaf with its holes, and the joint. */
final class HingeDrawings {
  private HingeDrawings() {}

  static List<Drawing> of(HingeOrder order) {
    HingePair pair = order.pair();
    List<Drawing> drawings = new ArrayList<>();
    for (Leaf leaf : HingeOrder.LEAVES) {
      HolePlan holes = order.leaf(leaf).holes();
      Drawing drawing =
          LeafDrawing.of(pair, leaf)
              .withHoles(holes.layout(), holes.screw().head())
              .on(order.graduation())
              .drawing();
      drawings.add(drawing.titled(HingeOrder.called(leaf) + ", " + pair.hand()));
    }
    drawings.add(HingeDrawing.of(pair).on(order.graduation()).drawing());
    return drawings;
  }
}
