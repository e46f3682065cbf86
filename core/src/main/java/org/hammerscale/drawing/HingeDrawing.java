package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Board;
import org.hammerscale.hinge.Contact;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Swing;
import org.hammerscale.internal.pen.Dimensions;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.jspecify.annotations.Nullable;

/**
 * A hinge at its pin, cut across: the leaves shut, flat, and as far open as they go, with what
 * stops them marked, and the sizes that hang the door. Other name: {@index "section through the
 * joint"}.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * HingePairBuilder asked = HingePair.of(strap, Bore.forPin(inches("1/2")).clearing(inches("1/64")));
 * HingePair pair = asked.leaves(Plain.of(strap.section(), inches(12))).opening(degrees(270), Hanging.JOINT).pair();
 * Drawing joint = HingeDrawing.of(pair).on(SIXTEENTH).drawing();
 * joint.title()                                              // "hinge at the pin, hung in the joint"
 * Drawing wood = HingeDrawing.of(pair).withBoards(Board.of(inches(1))).drawing();
 * }</pre>
 *
 * <p>Always in true scale. The cut goes through a knuckle of the moving leaf, where the fixed one
 * on the left is cut back; at the other knuckles it is the other way round, and looks the same from
 * behind. Boards lie on the faces that turn toward each other, or behind leaves whose barrels stand
 * proud; what they let the hinge open is a {@link Swing} with boards.
 */
public final class HingeDrawing {
  private static final double OFF = 12;
  private static final double BETWEEN = 26;

  /** The same beside a view with a size on its right. */
  private static final double WIDER = 46;

  private static final double NOISE = 1e-6;

  private final HingePair pair;
  private final Optional<Board> board;
  private final @Nullable Graduation<Length> rule;
  private final Swing swing;

  private HingeDrawing(HingePair pair, Optional<Board> board, @Nullable Graduation<Length> rule) {
    this.pair = pair;
    this.board = board;
    this.rule = rule;
    boolean inTheWay = board.isPresent() && !pair.hasProudBarrels();
    this.swing = inTheWay ? pair.swing().withBoards(board.orElseThrow()) : pair.swing();
  }

  /**
   * The drawing of a pair.
   *
   * @param pair the pair
   * @return what can be drawn
   */
  public static HingeDrawing of(HingePair pair) {
    return new HingeDrawing(Objects.requireNonNull(pair, "pair"), Optional.empty(), null);
  }

  /**
   * The same with the wood that the leaves are screwed to.
   *
   * @param each the board of either leaf
   * @return what can be drawn
   */
  public HingeDrawing withBoards(Board each) {
    return new HingeDrawing(pair, Optional.of(Objects.requireNonNull(each, "each")), rule);
  }

  /**
   * The same with its sizes read on a rule.
   *
   * @param marks the rule
   * @return what can be drawn
   */
  public HingeDrawing on(Graduation<Length> marks) {
    return new HingeDrawing(pair, board, Objects.requireNonNull(marks, "marks"));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if a size is more than 100 m or less than 0.001 mm
   */
  public Drawing drawing() {
    Scale.TRUE.size("diameter over the barrel", pair.barrel().outsideDiameter());
    Scale.TRUE.size("thickness of the leaf", pair.barrel().section().thickness());
    Scale.TRUE.size("depth of notch", pair.notchDepth());
    board.ifPresent(wood -> Scale.TRUE.size("thickness of board", wood.thickness()));
    board.ifPresent(wood -> Scale.TRUE.sizeOrNone("edge of board from pin", wood.edgeFromPin()));
    Pen pen = new Pen();
    double shut = -pair.hanging().folded().getValue();
    double opened = swing.opening().getValue();
    JointView first = new JointView(pen, pair, swing, board, 0, 0);
    double apart = 2 * first.reach() + (pair.hanging() == Hanging.FACE ? WIDER : BETWEEN);
    first.draw(shut);
    hungSizes(pen, first);
    List<Callout> captions = new ArrayList<>();
    captions.add(new Callout(0, 0, "shut"));
    double x = 0;
    if (pair.hanging() != Hanging.FACE) {
      x += apart;
      new JointView(pen, pair, swing, board, x, 0).draw(0);
      captions.add(new Callout(x, 0, "flat"));
    }
    notchSize(pen, first, x);
    x += apart;
    JointView last = new JointView(pen, pair, swing, board, x, 0);
    last.draw(opened);
    captions.add(new Callout(x, 0, "as far open as it goes"));
    openingSize(pen, last, x, shut, opened);
    stop(pen, last, x, opened);
    double level = pen.box().bottom() + Pen.LEADING;
    captions.forEach(caption -> pen.middle(caption.text(), caption.x(), level));
    pen.say(notes());
    String title = "hinge at the pin, hung " + pair.hanging();
    return Drawing.of(title, Scale.TRUE, pen);
  }

  /** Barrel over all; how far the pin stands off the wood, or how thick the folded hinge is. */
  private void hungSizes(Pen pen, JointView view) {
    Dimensions dimensions = new Dimensions(pen);
    Measure<Length> over = pair.barrel().outsideDiameter();
    double left = -view.shown - OFF;
    if (pair.hanging() == Hanging.JOINT) {
      double half = Math.max(view.outer, Math.max(view.face, -view.back));
      dimensions.upright(-half, half, left, -2, -2, text(over));
      return;
    }
    if (pair.hanging() == Hanging.FACE) {
      double right = view.shown + OFF;
      if (view.back < 0) {
        String off = text(swing.fixed().backAbovePin().negate());
        dimensions.upright(0, -view.back, right, view.outer + 2, view.shown + 2, off);
      } else {
        String off = text(swing.fixed().faceAbovePin());
        dimensions.upright(-view.face, 0, right, view.shown + 2, view.outer + 2, off);
      }
    }
    dimensions.upright(-view.outer, view.outer, left, -2, -2, text(over));
  }

  private void notchSize(Pen pen, JointView view, double x) {
    double under = Math.max(view.outer, -view.back);
    double corner = -view.back;
    if (board.isPresent() && pair.hasProudBarrels()) {
      under += Scale.millimetres(board.get().thickness());
      corner = under;
    }
    String size = text(pair.notchDepth());
    new Dimensions(pen).across(x - view.notch, x, under + OFF, corner, under, size);
  }

  /** An arc from where the moving leaf lies when shut to where it stops. */
  private void openingSize(Pen pen, JointView view, double x, double shut, double opened) {
    String text = degrees(pair.hanging().fromShut(swing.opening()).getValue());
    new Dimensions(pen)
        .angle(x, 0, view.reach() + 4, Math.toRadians(shut), Math.toRadians(opened), text);
  }

  private void stop(Pen pen, JointView view, double x, double opened) {
    Contact contact = swing.contact();
    double[] at = view.stop(contact, opened);
    if (Double.isNaN(at[0])) {
      return; // beyond the picture, as the notes say
    }
    double px = x + at[0];
    double py = -at[1];
    pen.draw(Line.SOLID, "stop", new Path().arc(px, py, 0.9, 0, 2 * Math.PI).close());
    pen.circle(Line.NARROW, "stop", px, py, 3.5);
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "opens "
            + degrees(pair.hanging().fromShut(swing.opening()).getValue())
            + " from shut, stopped by the "
            + swing.contact()
            + (swing.contact() == Contact.TIPS ? ", beyond the picture" : " in the ring"));
    notes.add(
        "barrel "
            + pair.barrel().outsideDiameter()
            + " over, pin "
            + pair.bore().pin()
            + ", leaf "
            + pair.barrel().section().thickness()
            + " thick, notch "
            + text(pair.notchDepth())
            + " behind the pin");
    if (pair.hanging() == Hanging.JOINT) {
      notes.add(
          "folded "
              + pair.barrel().outsideDiameter()
              + " thick, with "
              + swing.roomWhenFolded()
              + " between the leaves");
    } else if (pair.hanging() == Hanging.FACE) {
      notes.add(
          "the size on the right is how far the pin's centre stands off the side of the leaf that"
              + " lies on the wood");
    }
    board.ifPresent(wood -> notes.add("wood: " + wood));
    return notes;
  }

  /** Down to a tenth, so that no more is promised than the hinge opens. */
  private static String degrees(double degrees) {
    return Measure.of(Math.floor(degrees * 10 + NOISE) / 10, ShopUnits.DEGREE).toString();
  }

  private String text(Measure<Length> size) {
    return rule == null ? size.toString() : LengthFormat.to(rule).format(size);
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "section through a hinge\n  " + pair;
  }
}
