package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.latch.FittedSpring;
import org.hammerscale.latch.LatchSpring;
import org.hammerscale.units.Measure;

/** A latch spring from above, as it is cut; and from the side, free, at rest and pressed. */
final class LatchSpringView implements LatchDrawing.Kind {
  private static final double OFF = 9;
  private static final int STEPS = 64;

  private final FittedSpring fitted;
  private final LatchSpring spring;

  LatchSpringView(FittedSpring fitted) {
    this.fitted = fitted;
    this.spring = fitted.spring();
  }

  @Override
  public String title() {
    return "latch spring "
        + spring.length()
        + " long, of "
        + spring.width()
        + " × "
        + spring.thickness();
  }

  @Override
  public void draw(Draft draft) {
    draft.scale.size("length of the spring", spring.length());
    draft.scale.size("width of the spring", spring.width());
    draft.scale.size("thickness of the spring", spring.thickness());
    draft.scale.size("foot of the spring", fitted.foot());
    draft.scale.sizeOrNone("deflection of the spring", fitted.deflection());
    draft.row(this::both);
  }

  @Override
  public List<String> notes(Draft draft) {
    List<String> notes = new ArrayList<>();
    notes.add("above: as it is cut, " + spring.thickness() + " thick throughout");
    notes.add(
        "below: from the side; wide, the latch at rest, pressed by "
            + draft.text(fitted.set())
            + " from where the tip stands free; dashes and dots, free, and pressed by "
            + draft.text(fitted.travel())
            + " more");
    return notes;
  }

  /** One below the other, so that what is said of the length holds in both; root at the point. */
  private void both(Draft d, double x, double y) {
    plan(d, x, y);
    double thick = d.of(spring.thickness());
    side(d, x, d.pen.box().bottom() + OFF + thick);
  }

  private void plan(Draft d, double x, double y) {
    double foot = x - d.of(fitted.foot());
    double tip = x + d.of(spring.length());
    double half = d.of(spring.width()) / 2;
    double narrow = d.of(spring.tipWidth()) / 2;
    Path outline = Path.through(x, y - half, foot, y - half, foot, y + half, x, y + half);
    d.pen.draw(Line.WIDE, "outline", outline.to(tip, y + narrow).to(tip, y - narrow).close());
    d.pen.line(Line.NARROW, "root", x, y - half, x, y + half);
    List<Callout> places = new ArrayList<>();
    for (Measure<Length> place : fitted.holes()) {
      double at = foot + d.of(place);
      double radius = d.of(fitted.hole()) / 2;
      d.pen.circle(Line.WIDE, "hole", at, y, radius);
      d.pen.cross("hole", at, y, radius + 1.5);
      places.add(new Callout(at, y + half, "Ø " + fitted.hole() + " at " + d.text(place)));
    }
    places.add(new Callout(x, y + half, "foot " + d.text(fitted.foot())));
    places.add(new Callout(tip, y + half, d.text(fitted.foot().add(spring.length()))));
    Box over = d.pen.box();
    String wide = d.text(spring.width());
    d.sizes.upright(y - half, y + half, over.left() - OFF, foot, foot, wide);
    if (narrow > 0) {
      String end = d.text(spring.tipWidth());
      d.sizes.upright(y - narrow, y + narrow, over.right() + OFF, tip, tip, end);
    }
    String long1 = d.text(spring.length());
    d.sizes.across(x, tip, over.top() - OFF, y - half, y - narrow, long1);
    d.sizes.running(new Callout(foot, y + half, "end"), places, over.bottom() + 6);
  }

  /** Its middle free on a level, the foot cut through. */
  private void side(Draft d, double x, double y) {
    double foot = x - d.of(fitted.foot());
    double half = d.of(spring.thickness()) / 2;
    double tip = x + d.of(spring.length());
    Path free = Path.through(x, y - half, tip, y - half, tip, y + half, x, y + half);
    d.pen.draw(Line.MOVED, "free", free);
    d.pen.draw(Line.WIDE, "foot", Path.rectangle(new Box(foot, y - half, x, y + half)));
    d.pen.hatch(
        "foot", true, new double[] {foot, y - half, x, y - half, x, y + half, foot, y + half});
    blade(d, x, y, Line.WIDE, "rest", fitted.forceAtRest());
    blade(d, x, y, Line.MOVED, "pressed", fitted.forceAtTravel());
    List<Callout> levels = new ArrayList<>();
    boolean isFree = fitted.set().getValue() == 0;
    if (!isFree) {
      levels.add(new Callout(tip, y + d.of(fitted.set()), d.text(fitted.set()) + " at rest"));
    }
    if (fitted.travel().getValue() > 0) {
      String all = d.text(fitted.deflection()) + " pressed";
      levels.add(new Callout(tip, y + d.of(fitted.deflection()), all));
    }
    String origin = isFree ? "free, at rest" : "free";
    d.sizes.runningDown(new Callout(tip, y, origin), levels, tip + OFF);
  }

  /** Both faces along the line that it bends to, and its tip. */
  private void blade(Draft d, double x, double y, Line line, String part, Measure<Force> force) {
    double length = d.of(spring.length());
    double half = d.of(spring.thickness()) / 2;
    double[] down = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      Measure<Length> place = spring.length().multiply((double) i / STEPS);
      down[i] = d.of(spring.deflectionAt(place, force));
    }
    double[] upper = new double[2 * STEPS + 2];
    double[] lower = new double[2 * STEPS + 2];
    for (int i = 0; i <= STEPS; i++) {
      int last = Math.max(i - 1, 0);
      int next = Math.min(i + 1, STEPS);
      double along = length * (next - last) / STEPS;
      // It leaves its foot level.
      double fall = i == 0 ? 0 : down[next] - down[last];
      double size = Math.hypot(along, fall);
      double px = x + length * i / STEPS;
      upper[2 * i] = px + half * fall / size;
      upper[2 * i + 1] = y + down[i] - half * along / size;
      lower[2 * i] = px - half * fall / size;
      lower[2 * i + 1] = y + down[i] + half * along / size;
    }
    d.pen.draw(line, part, Path.through(upper));
    d.pen.draw(line, part, Path.through(lower));
    int n = upper.length;
    d.pen.line(line, part, upper[n - 2], upper[n - 1], lower[n - 2], lower[n - 1]);
  }
}
