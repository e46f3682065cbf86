package org.hammerscale.drawing;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Basket;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.units.Measure;

/**
 * A basket of four rods from the side, to lay the hot one on as it is opened.
 *
 * <pre>{@code
 * Basket basket = Basket.ofFour(Section.round(millimetres(8)), millimetres(120), 1);
 * BasketDrawing.of(basket, millimetres(30)).drawing()   // basket of four rods of 8 mm round, 120 mm high, 1 turn, scale 1 : 1
 * }</pre>
 *
 * <p>In true scale unless told otherwise. Rods in front are wide lines, behind the axis dashed
 * ones; square rods are drawn as round ones of their thickness. The shape is the one that the
 * basket assumes, no rule of the trade.
 */
public final class BasketDrawing {
  private static final double OFF = 9;
  private static final int STEPS = 96;
  private static final int RODS = 4;

  private final Basket basket;
  private final Measure<Length> bulge;
  private final Scale scale;

  private BasketDrawing(Basket basket, Measure<Length> bulge, Scale scale) {
    this.basket = basket;
    this.bulge = bulge;
    this.scale = scale;
  }

  /**
   * The drawing of a basket, in true scale.
   *
   * @param basket the basket
   * @param bulge from the axis to the middle of a rod at the belly, at least as at the welds
   * @return what can be drawn
   * @throws IllegalArgumentException if the bulge is less than at the welds
   */
  public static BasketDrawing of(Basket basket, Quantity<Length> bulge) {
    Objects.requireNonNull(bulge, "bulge");
    Measure<Length> half = Objects.requireNonNull(basket, "basket").height().divide(2);
    return new BasketDrawing(basket, basket.radiusAt(half, bulge), Scale.TRUE);
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public BasketDrawing reducedTo(int reduction) {
    return new BasketDrawing(basket, bulge, Scale.oneTo(reduction));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if a size is more than 100 m or less than 0.001 mm on the
   *     paper
   */
  public Drawing drawing() {
    Draft draft = new Draft(scale, null);
    double height = scale.size("height of the basket", basket.height());
    double half = scale.size("thickness of the rods", basket.rod().thickness()) / 2;
    double belly = scale.size("bulge", bulge);
    int steps = (int) Math.ceil(STEPS * Math.max(1, basket.turns()));
    double[] radii = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      Measure<Length> above = basket.height().multiply((double) i / steps);
      radii[i] = draft.of(basket.radiusAt(above, bulge));
    }
    for (int rod = 0; rod < RODS; rod++) {
      rod(draft, radii, height, half, 2 * Math.PI * rod / RODS);
    }
    draft.pen.line(Line.CENTRE, "axis", 0, -height - 6, 0, 6);
    Box over = draft.pen.box();
    double left = over.left() - OFF;
    draft.sizes.upright(
        -height, 0, left, -radii[0] - half, -radii[0] - half, basket.height().toString());
    draft.sizes.across(
        0,
        belly,
        over.bottom() + OFF,
        over.bottom(),
        -height / 2,
        bulge + " to the middle of a rod");
    draft.pen.say(
        List.of(
            "each rod is " + basket.rodLength(bulge) + " long between the welds",
            "clear between neighbours at the belly " + basket.opening(bulge)));
    return Drawing.of(Words.sentence(basket.toString()), scale, draft.pen);
  }

  /** Both edges of a rod, in stretches before the axis and behind it. */
  private void rod(Draft d, double[] radii, double height, double half, double start) {
    int steps = radii.length - 1;
    double[] x = new double[steps + 1];
    boolean[] front = new boolean[steps + 1];
    for (int i = 0; i <= steps; i++) {
      double angle = start + Math.PI / RODS + 2 * Math.PI * basket.turns() * i / steps;
      x[i] = radii[i] * Math.cos(angle);
      front[i] = Math.sin(angle) >= 0;
    }
    for (int side = -1; side <= 1; side += 2) {
      int begun = 0;
      Path path = new Path();
      for (int i = 0; i <= steps; i++) {
        int last = Math.max(i - 1, 0);
        int next = Math.min(i + 1, steps);
        double across = x[next] - x[last];
        double up = height * (next - last) / steps;
        double size = Math.hypot(across, up);
        double px = x[i] + side * half * up / size;
        double py = -height * i / steps + side * half * across / size;
        path = i == begun ? path.from(px, py) : path.to(px, py);
        if (i == steps || (i > begun && front[i] != front[begun])) {
          d.pen.draw(front[begun] ? Line.WIDE : Line.HIDDEN, "rod", path);
          path = new Path().from(px, py);
          begun = i;
        }
      }
    }
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of a basket that bulges " + bulge + ", " + scale + "\n  " + basket;
  }
}
