package org.hammerscale.drawing;

import java.util.Optional;
import org.hammerscale.hinge.Board;
import org.hammerscale.hinge.Contact;

/** Where two leaves stop each other, in millimetres from the pin, to the right and up. */
final class Stopping {
  private final JointView view;
  private final Optional<Board> board;

  Stopping(JointView view, Optional<Board> board) {
    this.view = view;
    this.board = board;
  }

  /**
   * The place, the moving leaf being so far from flat; not a number if it is not in the picture.
   */
  double[] point(Contact contact, double degrees) {
    return switch (contact) {
      case FACE_CORNER -> new double[] {-view.notch, view.face};
      case BACK_CORNER -> new double[] {-view.notch, view.back};
      case BOARDS -> boards(degrees);
      default -> new double[] {Double.NaN, Double.NaN};
    };
  }

  /** A slab as {along, low, high}: its end stands so far along, between two heights. */
  private double[][] slabs() {
    Board wood = board.orElseThrow();
    double top = view.face + Scale.millimetres(wood.thickness());
    double end = Math.max(Scale.millimetres(wood.edgeFromPin()), across(top));
    double low = Math.min(Math.max(view.face, across(end)), top);
    return new double[][] {{end, low, top}, {across(view.face), view.face, view.face}};
  }

  private double across(double height) {
    return Math.sqrt(Math.max((view.outer - height) * (view.outer + height), 0));
  }

  /**
   * The corner of a slab of one leaf that lies nearest to a slab of the other. The leaves are
   * alike, so that it is looked for on one side alone.
   */
  private double[] boards(double degrees) {
    double turn = Math.toRadians(degrees);
    double[] best = {Double.NaN, Double.NaN};
    double least = Double.POSITIVE_INFINITY;
    for (double[] moving : slabs()) {
      for (double height : new double[] {moving[1], moving[2]}) {
        double x = moving[0] * Math.cos(turn) - height * Math.sin(turn);
        double y = moving[0] * Math.sin(turn) + height * Math.cos(turn);
        for (double[] fixed : slabs()) {
          double onFace = -x >= fixed[0] - 1e-6 ? Math.abs(y - fixed[2]) : Double.MAX_VALUE;
          boolean beside = y >= fixed[1] - 1e-6 && y <= fixed[2] + 1e-6;
          double onEnd = beside ? Math.abs(x + fixed[0]) : Double.MAX_VALUE;
          double distance = Math.min(onFace, onEnd);
          if (distance < least) {
            least = distance;
            best = new double[] {x, y};
          }
        }
      }
    }
    return best;
  }
}
