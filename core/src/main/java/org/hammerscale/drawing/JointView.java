package org.hammerscale.drawing;

import java.util.Optional;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.Board;
import org.hammerscale.hinge.Contact;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.hinge.LeafProfile;
import org.hammerscale.hinge.Swing;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Turned;

/**
 * A section through a knuckle of the moving leaf, looking along the pin: the fixed leaf to the
 * left, cut back by its notch, the moving one turned by an angle from flat. Millimetres, up
 * positive.
 */
final class JointView {
  private static final double ZIGZAG = 1.5;
  private static final int PIECES = 48;

  final double outer;
  final double inner;
  final double notch;
  final double face;
  final double back;

  /** How much of each leaf is shown, from the pin. */
  final double shown;

  private final Pen pen;
  private final double x;
  private final double y;
  private final double open;
  private final boolean centred;
  private final double pinRadius;
  private final Optional<Board> board;
  private final boolean boardsBehind;
  private final double[] lengths;

  JointView(Pen pen, HingePair pair, Swing swing, Optional<Board> board, double x, double y) {
    Barrel barrel = pair.barrel();
    LeafProfile leaf = swing.fixed();
    this.pen = pen;
    this.x = x;
    this.y = y;
    this.outer = Scale.millimetres(barrel.outsideDiameter()) / 2;
    this.inner = Scale.millimetres(barrel.insideDiameter()) / 2;
    this.notch = Scale.millimetres(pair.notchDepth());
    this.face = Scale.millimetres(leaf.faceAbovePin());
    this.back = Scale.millimetres(leaf.backAbovePin());
    this.open = Math.toRadians(barrel.closing().uncovered().getValue());
    this.centred = barrel.isCentred();
    this.pinRadius = Scale.millimetres(pair.bore().pin()) / 2;
    this.board = board;
    this.boardsBehind = pair.hasProudBarrels();
    this.shown =
        Math.max(
            outer + 20,
            Math.max(
                notch + 10, board.map(b -> Scale.millimetres(b.edgeFromPin()) + 15).orElse(0.0)));
    this.lengths =
        new double[] {
          Math.min(shown, Scale.millimetres(pair.lengthFromPin(Leaf.FIRST))),
          Math.min(shown, Scale.millimetres(pair.lengthFromPin(Leaf.SECOND)))
        };
  }

  /** How far from the pin anything is drawn at most. */
  double reach() {
    double thick = board.map(b -> Scale.millimetres(b.thickness())).orElse(0.0);
    double high = Math.max(Math.max(Math.abs(face), Math.abs(back)), outer) + thick;
    return Math.hypot(shown + ZIGZAG, high);
  }

  private Turned fixed() {
    return new Turned(x, y, 0, true);
  }

  private Turned moving(double degrees) {
    return new Turned(x, y, Math.toRadians(degrees), false);
  }

  /** Draws the leaves with the moving one so far from flat. */
  void draw(double degrees) {
    Turned fixed = fixed();
    Turned moving = moving(degrees);
    plate(fixed, "fixed", notch, lengths[0], shown > lengths[0]);
    curl(moving);
    plate(moving, "moving", start(), lengths[1], shown > lengths[1]);
    board.ifPresent(
        wood -> {
          board(fixed, wood);
          board(moving, wood);
        });
    pen.circle(Line.NARROW, "pin", x, y, pinRadius);
    pen.cross("centre", x, y, outer + 2);
  }

  private double start() {
    return centred ? Math.sqrt(outer * outer - face * face) : 0;
  }

  private void plate(Turned at, String leaf, double from, double to, boolean whole) {
    Path path = at.from(to, face);
    at.to(path, from, face);
    if (leaf.equals("fixed")) {
      at.to(path, from, back);
      at.to(path, to, back);
      if (whole) {
        path.close();
      }
      pen.draw(Line.WIDE, leaf, path);
    } else {
      double[] begin = at.point(from, back);
      path.from(begin[0], begin[1]);
      at.to(path, to, back);
      if (whole) {
        at.to(path, to, face);
      }
      pen.draw(Line.WIDE, leaf, path);
    }
    pen.hatch(leaf, leaf.equals("fixed"), at.corners(from, face, to, face, to, back, from, back));
    if (!whole) {
      broken(at, to);
    }
  }

  /** A leaf that goes on beyond the picture. */
  private void broken(Turned at, double to) {
    double middle = (face + back) / 2;
    Path path = at.from(to, face + ZIGZAG);
    at.to(path, to, middle + ZIGZAG / 2);
    at.to(path, to + ZIGZAG, middle + ZIGZAG / 4);
    at.to(path, to - ZIGZAG, middle - ZIGZAG / 4);
    at.to(path, to, middle - ZIGZAG / 2);
    at.to(path, to, back - ZIGZAG);
    pen.draw(Line.NARROW, "broken", path);
  }

  /** The strap round the pin, from the top of it all round to where its end meets the leaf. */
  private void curl(Turned at) {
    if (centred) {
      double neck = Math.asin(face / outer);
      pen.draw(
          Line.WIDE,
          "barrel",
          new Path()
              .arc(x, y, outer, at.direction(neck), at.direction(neck + 2 * Math.PI - 2 * neck)));
      pen.circle(Line.WIDE, "bore", x, y, inner);
      pen.hatch("moving", false, ring(outer, 0, 2 * Math.PI), ring(inner, 0, 2 * Math.PI));
      return;
    }
    double side = face > -back ? 1 : -1; // the plate lies above the pin, or below it
    double from = at.direction(side * Math.PI / 2);
    double to = at.direction(side * (Math.PI / 2 + 2 * Math.PI - open));
    Path path = new Path().arc(x, y, outer, from, to);
    path.to(x + inner * Math.cos(to), y + inner * Math.sin(to));
    pen.draw(Line.WIDE, "barrel", path.arc(x, y, inner, to, from));
    double[] around = ring(outer, from, to);
    double[] within = ring(inner, to, from);
    double[] strap = new double[around.length + within.length];
    System.arraycopy(around, 0, strap, 0, around.length);
    System.arraycopy(within, 0, strap, around.length, within.length);
    pen.hatch("moving", false, strap);
  }

  private double[] ring(double radius, double from, double to) {
    double[] points = new double[2 * PIECES + 2];
    for (int i = 0; i <= PIECES; i++) {
      double angle = from + (to - from) * i / PIECES;
      points[2 * i] = x + radius * Math.cos(angle);
      points[2 * i + 1] = y + radius * Math.sin(angle);
    }
    return points;
  }

  /** Wood on the upper face, let out round the barrel; behind a leaf whose barrel stands proud. */
  private void board(Turned at, Board wood) {
    double edge = Scale.millimetres(wood.edgeFromPin());
    double thick = Scale.millimetres(wood.thickness());
    double near = boardsBehind ? back : face;
    double far = boardsBehind ? back - thick : face + thick;
    double end = boardsBehind ? edge : Math.max(edge, across(far));
    double low = boardsBehind ? near : Math.min(Math.max(face, across(end)), far);
    Path path = at.from(shown, far);
    at.to(path, end, far);
    at.to(path, end, low);
    if (Math.abs(low - near) > 1e-9) {
      for (int i = 1; i <= PIECES; i++) {
        double up = low + (near - low) * i / PIECES;
        at.to(path, across(up), up);
      }
    }
    at.to(path, shown, near);
    pen.draw(Line.WIDE, "board", path);
    for (double share = 0.25; share < 1; share += 0.25) {
      double level = near + (far - near) * share;
      Path grain = at.from(Math.max(end, across(level)) + 2, level);
      at.to(grain, shown - 2, level);
      pen.draw(Line.HATCH, "grain", grain);
    }
  }

  private double across(double height) {
    return Math.sqrt(Math.max((outer - height) * (outer + height), 0));
  }

  /**
   * Where the leaves stop each other, the moving one being so far from flat: to the right of the
   * pin and up; not a number if it is not in the picture.
   */
  double[] stop(Contact contact, double degrees) {
    return switch (contact) {
      case FACE_CORNER -> new double[] {-notch, face};
      case BACK_CORNER -> new double[] {-notch, back};
      case BOARDS -> boards(degrees);
      default -> new double[] {Double.NaN, Double.NaN};
    };
  }

  /** A slab as {along, low, high}: its end stands so far along, between two heights. */
  private double[][] slabs() {
    Board wood = board.orElseThrow();
    double top = face + Scale.millimetres(wood.thickness());
    double end = Math.max(Scale.millimetres(wood.edgeFromPin()), across(top));
    double low = Math.min(Math.max(face, across(end)), top);
    return new double[][] {{end, low, top}, {across(face), face, face}};
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
