package org.hammerscale.drawing;

import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.latch.CabinHook;
import org.hammerscale.latch.FittedSpring;
import org.hammerscale.latch.Hasp;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.StaplePlate;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.units.Graduation;
import org.jspecify.annotations.Nullable;

/**
 * What closes a door, with the places that are marked on the wood: a slide bolt in its staples, a
 * thumb latch, a hasp that swings over its staple, a cabin hook between its eyes, a staple alone, a
 * latch's spring. Other name: {@index "marking-out drawing"}.
 *
 * <pre>{@code
 * Bar rod = Bar.of(Section.round(millimetres(12)), Material.MILD_STEEL);
 * SlideBolt bolt = SlideBolt.thrown(millimetres(40), rod).across(millimetres(4)).on(MILLIMETRE).bolt();
 * Drawing drawing = LatchDrawing.of(bolt).drawing().titled("Boathouse door");
 * drawing                            // Boathouse door, scale 1 : 1
 * LatchDrawing.of(bolt.staple()).drawing().sheets(Paper.A4).size()   // 1
 * }</pre>
 *
 * <p>In true scale unless told otherwise. What moves is drawn at rest in wide lines and at the
 * other end of its way in narrow ones of dashes and two dots; hidden edges are dashed. Sizes are
 * those of the answers, and are read on the rule if one is told. A whole door is best reduced; the
 * hook on it is laid on a {@link BentDrawing} of its line.
 */
public final class LatchDrawing {
  /** How one kind is shown. */
  interface Kind {
    String title();

    /** Draws its views. */
    void draw(Draft draft);

    /** What is said of it beside the drawing. */
    List<String> notes(Draft draft);
  }

  private final Object thing;
  private final Kind kind;
  private final Scale scale;
  private final @Nullable Graduation<Length> rule;

  private LatchDrawing(Object thing, Kind kind, Scale scale, @Nullable Graduation<Length> rule) {
    this.thing = thing;
    this.kind = kind;
    this.scale = scale;
    this.rule = rule;
  }

  private static LatchDrawing of(Object thing, Kind kind) {
    return new LatchDrawing(thing, kind, Scale.TRUE, null);
  }

  /**
   * A bolt from the front of the door, thrown and drawn back, with the places of its staples; and
   * from the edge in a staple and in the keeper.
   *
   * @param bolt the bolt
   * @return what can be drawn
   */
  public static LatchDrawing of(SlideBolt bolt) {
    return of(Objects.requireNonNull(bolt, "bolt"), new SlideBoltView(bolt));
  }

  /**
   * A latch in a section through the door, at rest and pressed; and its bar from inside, with the
   * lift that is needed and the one that there is.
   *
   * @param latch the latch
   * @return what can be drawn
   */
  public static LatchDrawing of(ThumbLatch latch) {
    return of(Objects.requireNonNull(latch, "latch"), new ThumbLatchView(latch));
  }

  /**
   * A hasp from the side, with the arcs in which the ends of its slot pass the staple; and from
   * above.
   *
   * @param hasp the hasp
   * @return what can be drawn
   */
  public static LatchDrawing of(Hasp hasp) {
    return of(Objects.requireNonNull(hasp, "hasp"), new HaspView(hasp));
  }

  /**
   * A hook in a plan of the door, shut and held open, with the places of its eyes; and by itself on
   * its mean line.
   *
   * @param hook the hook
   * @return what can be drawn
   */
  public static LatchDrawing of(CabinHook hook) {
    return of(Objects.requireNonNull(hook, "hook"), new CabinHookView(hook));
  }

  /**
   * A staple in the wood, and the holes for its legs.
   *
   * @param staple the staple
   * @return what can be drawn
   */
  public static LatchDrawing of(Staple staple) {
    return of(Objects.requireNonNull(staple, "staple"), new StapleView(staple));
  }

  /**
   * A staple's loop riveted on its plate, from the side; and the plate from above with its holes.
   *
   * @param eye the loop on its plate
   * @return what can be drawn
   */
  public static LatchDrawing of(StaplePlate eye) {
    return of(Objects.requireNonNull(eye, "eye"), new StapleView.OnPlate(eye));
  }

  /**
   * A latch's spring as it is cut, with its foot; and from the side, free, at rest and pressed.
   *
   * @param spring the spring
   * @return what can be drawn
   */
  public static LatchDrawing of(FittedSpring spring) {
    return of(Objects.requireNonNull(spring, "spring"), new LatchSpringView(spring));
  }

  /**
   * The same with its sizes read on a rule.
   *
   * @param marks the rule
   * @return what can be drawn
   */
  public LatchDrawing on(Graduation<Length> marks) {
    return new LatchDrawing(thing, kind, scale, Objects.requireNonNull(marks, "marks"));
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public LatchDrawing reducedTo(int reduction) {
    return new LatchDrawing(thing, kind, Scale.oneTo(reduction), rule);
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
    kind.draw(draft);
    draft.pen.say(kind.notes(draft));
    List<String> unseen = List.of(Words.sentence(thing.toString()));
    return Drawing.of(kind.title(), unseen, scale, draft.pen);
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of a latch, " + scale + "\n  " + thing;
  }
}
