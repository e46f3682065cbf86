package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Spike;
import org.hammerscale.forging.Taper;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Turned;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.latch.Staple;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.HingeHook;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * What is driven, from the side, in a section through the wood that it is driven into: a spike or a
 * drift bolt through what it fixes, a staple, the tail of a pintle in its post.
 *
 * <pre>{@code
 * Spike spike = Spike.of(Section.square(inches("3/8"))).through(inches(2)).driven(inches("4 3/4"));
 * Measure<Length> drill = PilotHole.pulledOut(spike, Wood.named("oak")).drill(SIXTY_FOURTH);
 * Drawing drawing = DrivenDrawing.of(spike).inHole(drill).on(SIXTEENTH).drawing();
 * drawing                          // spike of 3/8 in square, 6 3/4 in under the head, scale 1 : 1
 * drawing.sheets(Paper.A4).size()  // 1
 * }</pre>
 *
 * <p>In true scale unless told otherwise. The iron is drawn whole, the hole bored for it is dashed.
 * A chisel point is seen on the side that it is drawn thin on, so that its edge stands upright on
 * the sheet and the grain runs along it.
 */
public final class DrivenDrawing {
  private static final double OFF = 9;
  private static final double WOOD = 12;

  private final Spike spike;
  private final @Nullable HingeHook hook;
  private final @Nullable Staple staple;
  private final @Nullable Measure<Length> hole;
  private final Scale scale;
  private final @Nullable Graduation<Length> rule;

  private DrivenDrawing(
      Spike spike,
      @Nullable HingeHook hook,
      @Nullable Staple staple,
      @Nullable Measure<Length> hole,
      Scale scale,
      @Nullable Graduation<Length> rule) {
    this.spike = spike;
    this.hook = hook;
    this.staple = staple;
    this.hole = hole;
    this.scale = scale;
    this.rule = rule;
  }

  /**
   * A spike in all that it goes through; a drift bolt by its rod.
   *
   * @param spike the spike, driven or clenched
   * @return what can be drawn
   * @throws IllegalArgumentException if it is not driven yet
   */
  public static DrivenDrawing of(Spike spike) {
    Objects.requireNonNull(spike, "spike").length();
    return new DrivenDrawing(spike, null, null, null, Scale.TRUE, null);
  }

  /**
   * A pintle in its post.
   *
   * @param hook the hook
   * @param tail its shank in the post, driven or clenched
   * @return what can be drawn
   * @throws IllegalArgumentException if the tail is not that of the hook, see {@link
   *     HingeHook#piece(Material, Spike)}
   */
  public static DrivenDrawing of(HingeHook hook, Spike tail) {
    Objects.requireNonNull(hook, "hook").piece(Material.MILD_STEEL, tail);
    return new DrivenDrawing(tail, hook, null, null, Scale.TRUE, null);
  }

  /**
   * A staple in the wood, each leg in its hole, and from above. A {@link LatchDrawing} shows it
   * without holes, as what a latch needs of it.
   *
   * @param staple the staple
   * @return what can be drawn
   * @throws IllegalArgumentException if its rod is neither square nor round
   */
  public static DrivenDrawing of(Staple staple) {
    Objects.requireNonNull(staple, "staple");
    Section rod = staple.rod().section();
    Spike leg = Spike.of(rod).withPoint(Taper.toPoint(rod, staple.pointLength()));
    Spike driven =
        staple.isClenched()
            ? leg.clenchedThrough(staple.holdingLength())
            : leg.driven(staple.inWood());
    return new DrivenDrawing(driven, null, staple, null, Scale.TRUE, null);
  }

  /**
   * The same with the hole that is bored for it, as deep as it asks.
   *
   * @param diameter of the drill, more than zero and no more than what is driven
   * @return what can be drawn
   * @throws IllegalArgumentException if it is out of range
   */
  public DrivenDrawing inHole(Quantity<Length> diameter) {
    Measure<Length> drill = Arguments.positive("diameter", diameter);
    Arguments.atMost(
        "diameter", drill, "what is driven", spike.diameter(), "it would hold nothing");
    return new DrivenDrawing(spike, hook, staple, drill, scale, rule);
  }

  /**
   * The same with its sizes read on a rule.
   *
   * @param marks the rule
   * @return what can be drawn
   */
  public DrivenDrawing on(Graduation<Length> marks) {
    return new DrivenDrawing(
        spike, hook, staple, hole, scale, Objects.requireNonNull(marks, "marks"));
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public DrivenDrawing reducedTo(int reduction) {
    return new DrivenDrawing(spike, hook, staple, hole, Scale.oneTo(reduction), rule);
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if a size is more than 100 m or less than 0.001 mm on the
   *     paper
   */
  public Drawing drawing() {
    Draft draft = new Draft(scale, rule);
    scale.size("thickness of the shank", spike.shank().thickness());
    scale.size("length of the spike", spike.length());
    if (hook != null) {
      scale.size("height of the pin", hook.pin().height());
      scale.size("projection", hook.projection());
      HingeHook drawn = hook;
      draft.row((d, x, y) -> level(d, x, y, drawn));
    } else if (staple != null) {
      scale.size("width of the staple", staple.legCentres());
      scale.size("height of the staple", staple.heightOverAll());
      Staple drawn = staple;
      draft.row((d, x, y) -> astride(d, x, y, drawn));
    } else {
      draft.row(this::upright);
    }
    draft.pen.say(notes(draft));
    List<String> unseen =
        thing() == spike ? List.of() : List.of(Words.sentence(thing().toString()));
    return Drawing.of(title(), unseen, scale, draft.pen);
  }

  private Object thing() {
    return hook != null ? hook : staple != null ? staple : spike;
  }

  private String title() {
    if (hook != null) {
      return "pintle " + hook.pin().diameter() + " thick, of " + hook.shank();
    }
    return staple != null ? new StapleView(staple).title() : spike.toString();
  }

  /** Driven downwards; the middle of the first face. */
  private void upright(Draft d, double x, double y) {
    Turned at = new Turned(x, y, -Math.PI / 2, false);
    DrivenIron iron = DrivenIron.whole(d, spike);
    double[] extent = iron.extent();
    double wide = extent[2] + WOOD;
    List<Callout> faces = new ArrayList<>();
    Measure<Length> deep = spike.length().withValue(0);
    iron.face(at, 0, iron.half(), wide);
    for (Measure<Length> layer : spike.layers()) {
      deep = deep.add(layer);
      iron.face(at, d.of(deep), iron.half(), wide);
      faces.add(new Callout(x + wide, y + d.of(deep), d.text(deep)));
    }
    double end = d.of(spike.boringDepth());
    String bored = hole == null ? "" : ", bored " + hole;
    if (spike.isClenched()) {
      iron.face(at, end, iron.half(), wide);
    }
    if (spike.isClenched() || hole != null) {
      double from = spike.isClenched() ? x + wide : x + iron.half();
      faces.add(new Callout(from, y + end, d.text(spike.boringDepth()) + bored));
    }
    iron.bored(at, hole, end);
    iron.draw(at, "spike");
    if (!faces.isEmpty()) {
      d.sizes.runningDown(new Callout(x + wide, y, "face"), faces, x + wide + 6);
    }
    List<Callout> lengths = lengths(d, iron, x, y, extent[0]);
    if (!lengths.isEmpty()) {
      d.sizes.runningDown(new Callout(x - wide, y, "face"), lengths, x - wide - 6);
    }
    double top = y + extent[0];
    double head = d.of(spike.head().widest().thickness()) / 2;
    if (!DrivenIron.isRose(spike.head())) {
      String across = d.text(spike.head().widest().thickness()) + " head";
      double over = Math.min(top, d.pen.box().top()) - OFF;
      d.sizes.across(x - head, x + head, over, top, top, across);
    }
  }

  /** The iron by itself: its head, where the point begins, its tip. */
  private List<Callout> lengths(Draft d, DrivenIron iron, double x, double y, double top) {
    List<Callout> lengths = new ArrayList<>();
    if (!DrivenIron.isRose(spike.head()) && spike.head().reach().getValue() > 0) {
      lengths.add(new Callout(x, y + top, d.text(spike.head().reach())));
    }
    if (!spike.isClenched()) {
      Measure<Length> shank = spike.length().subtract(spike.point().reach());
      lengths.add(new Callout(x - iron.half(), y + d.of(shank), d.text(shank)));
      lengths.add(new Callout(x, y + d.of(spike.length()), d.text(spike.length())));
    }
    return lengths;
  }

  /** Driven to the right into a post; the middle of the shank on the post's face. */
  private void level(Draft d, double x, double y, HingeHook drawn) {
    Turned at = Turned.level(x, y);
    DrivenIron iron = DrivenIron.tail(d, spike);
    double half = iron.half();
    double out = d.of(drawn.projection());
    double pin = d.of(drawn.pin().diameter()) / 2;
    double top = half + d.of(drawn.pin().height());
    double beyond = Math.max(half + WOOD, iron.extent()[2] + WOOD / 2);
    double wood = Math.max(top, beyond);
    Path path =
        at.path(
            -out - half,
            -half,
            -out - half,
            half,
            -out - pin,
            half,
            -out - pin,
            top,
            -out + pin,
            top,
            -out + pin,
            half);
    for (int side = 1; side >= -1; side -= 2) {
      double[] points = at.corners(iron.side(side));
      for (int i = 0; i < points.length; i += 2) {
        int from = side > 0 ? i : points.length - 2 - i;
        path.to(points[from], points[from + 1]);
      }
    }
    d.pen.draw(Line.WIDE, "hook", path.close());
    d.pen.line(Line.CENTRE, "pin", x - out, y - top - 4, x - out, y + half + 4);
    d.pen.draw(Line.WIDE, "wood", at.path(0, half, 0, wood));
    d.pen.draw(Line.WIDE, "wood", at.path(0, -half, 0, -beyond));
    double deep = d.of(spike.boringDepth());
    List<Callout> places = new ArrayList<>();
    places.add(new Callout(x - out, y + half + 4, d.text(drawn.projection())));
    if (spike.isClenched()) {
      d.pen.draw(Line.WIDE, "wood", at.path(deep, half, deep, wood));
      d.pen.draw(Line.WIDE, "wood", at.path(deep, -half, deep, -beyond));
      places.add(new Callout(x + deep, y + beyond, d.text(spike.boringDepth())));
    } else {
      places.add(
          new Callout(x + d.of(spike.holdingLength()), y + half, d.text(spike.holdingLength())));
      places.add(new Callout(x + d.of(spike.inWood()), y, d.text(spike.inWood())));
    }
    iron.bored(at, hole, deep);
    d.sizes.running(new Callout(x, y + beyond, "post"), places, y + beyond + OFF);
    String thick = "Ø " + drawn.pin().diameter();
    d.sizes.across(x - out - pin, x - out + pin, y - wood - OFF, y - top, y - top, thick);
    double left = x - out - half;
    List<Callout> levels =
        List.of(
            new Callout(x - out - pin, y - top, d.text(drawn.pin().height())),
            new Callout(left, y + half, d.text(drawn.shank().thickness())));
    d.sizes.runningDown(new Callout(left, y - half, "shoulder"), levels, left - OFF);
  }

  /** Both legs driven downwards, and from above; the middle on the face of the wood. */
  private void astride(Draft d, double x, double y, Staple drawn) {
    StapleView.sized(d, x, y, drawn, Line.WIDE);
    double legs = d.of(drawn.legCentres()) / 2;
    for (int side = -1; side <= 1; side += 2) {
      Turned at = new Turned(x + side * legs, y, -Math.PI / 2, false);
      DrivenIron.leg(d, drawn).bored(at, hole, d.of(spike.boringDepth()));
    }
    double half = d.of(drawn.rod().section().width()) / 2;
    double above = d.pen.box().bottom() + OFF + half;
    StapleView.above(d, Turned.level(x, above), drawn, "crown");
  }

  private List<String> notes(Draft d) {
    List<String> notes = new ArrayList<>();
    String of = staple == null ? "bore for it" : "bore for each leg";
    String bored = hole == null ? of : of + " " + hole;
    if (spike.isClenched()) {
      Measure<Length> over = staple == null ? spike.clench() : staple.clench();
      notes.add(bored + ", right through; the point is turned over " + d.text(over));
      notes.add("it is drawn turned over in the sheet: turn it over across the grain");
    } else {
      notes.add(
          bored
              + ", "
              + d.text(spike.boringDepth())
              + " deep, dashed"
              + (spike.boringDepth().isLessThan(spike.length())
                  ? ": as far as its full shank goes; the point makes its own way"
                  : ""));
      notes.add(
          "reaches "
              + d.text(spike.inWood())
              + " into the wood that holds it; "
              + d.text(spike.holdingLength())
              + " of full shank count");
    }
    if (thing() == spike && DrivenIron.isRose(spike.head())) {
      notes.add("the rose head is drawn as a pyramid of its metal, twice as wide as the shank");
    }
    return notes;
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of what is driven, " + scale + "\n  " + thing();
  }
}
