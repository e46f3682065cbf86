package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Countersink;
import org.hammerscale.fastening.CountersunkHead;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.internal.pen.Dimensions;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.piece.Piece;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * A finished leaf, or any other straight piece, on its wide side and from its edge: barrel with
 * knuckles and slots, tapers, ends and openings as each {@linkplain org.hammerscale.stock.Outlined
 * feature} knows them, screw holes with their countersinks.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * Bore bore = Bore.forPin(inches("1/2")).clearing(inches("1/64"));
 * HingePair pair = HingePair.of(strap, bore).leaves(Plain.of(strap.section(), inches(9)), End.penny(strap.section(), inches(2))).on(SIXTEENTH).pair();
 * HoleLayout holes = HoleRow.along(inches(10)).holes(3).startingFrom(inches(2)).endingBefore(inches(1)).layout().on(SIXTEENTH);
 * Drawing leaf = LeafDrawing.of(pair, Leaf.SECOND).withHoles(holes, WoodScrew.number(12)).on(SIXTEENTH).drawing();
 * leaf.title()    // "second leaf, left hand"
 * }</pre>
 *
 * <p>A leaf of a pair is seen on the side that shows when the door is seen from where it opens to,
 * its barrel to the left; slots are told from the edge that {@link HingePair#markedFrom} names. A
 * tangent barrel's plate keeps its outer face straight and thins from the other, a centred one from
 * both, and so does a rod, or what is jumped up. Sizes along count from the pin's centre if the
 * piece begins with a barrel, else from its first end, and are read on the rule if one is told;
 * widths and thicknesses are given as they are.
 */
public final class LeafDrawing {
  private static final double OFF = 12;
  private static final double SIDE = 9;
  private static final int MOST_NOTES = 12;

  private final Piece piece;
  private final @Nullable HingePair pair;
  private final Leaf leaf;
  private final @Nullable HoleLayout holes;
  private final @Nullable CountersunkHead head;
  private final @Nullable Graduation<Length> rule;
  private final Scale scale;

  private LeafDrawing(
      Piece piece,
      @Nullable HingePair pair,
      Leaf leaf,
      @Nullable HoleLayout holes,
      @Nullable CountersunkHead head,
      @Nullable Graduation<Length> rule,
      Scale scale) {
    this.piece = piece;
    this.pair = pair;
    this.leaf = leaf;
    this.holes = holes;
    this.head = head;
    this.rule = rule;
    this.scale = scale;
  }

  /**
   * The drawing of one leaf of a pair, in true scale.
   *
   * @param pair the pair
   * @param leaf which of its leaves
   * @return what can be drawn
   */
  public static LeafDrawing of(HingePair pair, Leaf leaf) {
    Objects.requireNonNull(leaf, "leaf");
    Objects.requireNonNull(pair, "pair");
    return new LeafDrawing(pair.leaf(leaf), pair, leaf, null, null, null, Scale.TRUE);
  }

  /**
   * The drawing of a piece by itself, in true scale. A barrel at its first end is not divided.
   *
   * @param piece the piece
   * @return what can be drawn
   */
  public static LeafDrawing of(Piece piece) {
    Objects.requireNonNull(piece, "piece");
    return new LeafDrawing(piece, null, Leaf.FIRST, null, null, null, Scale.TRUE);
  }

  /**
   * The same with countersunk holes, sunk on the side that is seen.
   *
   * @param layout where they go, along the middle line
   * @param screw what goes in
   * @return what can be drawn
   */
  public LeafDrawing withHoles(HoleLayout layout, CountersunkHead screw) {
    Objects.requireNonNull(screw, "screw");
    Objects.requireNonNull(layout, "layout");
    return new LeafDrawing(piece, pair, leaf, layout, screw, rule, scale);
  }

  /**
   * The same with its sizes read on a rule.
   *
   * @param marks the rule
   * @return what can be drawn
   */
  public LeafDrawing on(Graduation<Length> marks) {
    Objects.requireNonNull(marks, "marks");
    return new LeafDrawing(piece, pair, leaf, holes, head, marks, scale);
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public LeafDrawing reducedTo(int reduction) {
    return new LeafDrawing(piece, pair, leaf, holes, head, rule, Scale.oneTo(reduction));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if a size is more than 100 m or less than 0.001 mm on the
   *     paper, or a hole lies beyond the piece
   */
  public Drawing drawing() {
    Pen pen = new Pen();
    Dimensions dimensions = new Dimensions(pen);
    Stretches stretches = new Stretches(piece, scale);
    Unit<Length> unit = piece.bar().section().width().getUnit();
    double width =
        stretches.barrel().map(b -> scale.of(b.section().width())).orElse(stretches.widest());
    scale.size("width of the piece", stretches.measure(width, unit));
    PlanView plan = new PlanView(pen, scale, stretches, width);
    if (pair != null) {
      plan.divided(pair, leaf);
    } else {
      plan.whole();
    }
    holes(pen, dimensions, stretches, width / 2);
    double left = Math.min(pen.box().left(), 0);
    if (pair == null) {
      String wide = stretches.measure(width, unit).toString();
      dimensions.upright(0, width, left - SIDE, left, left, wide);
    } else {
      across(dimensions, plan, pair, width, left);
    }
    double last = stretches.widestAtTheEnd();
    if (last > 0) {
      double x = stretches.end();
      double top = (width - last) / 2;
      String wide = stretches.measure(last, unit).toString();
      dimensions.upright(top, top + last, x + SIDE, x, x, wide);
    }
    edge(pen, dimensions, stretches);
    pen.say(notes());
    return Drawing.of(title(), scale, pen);
  }

  private void holes(Pen pen, Dimensions dimensions, Stretches stretches, double middle) {
    if (holes == null) {
      return;
    }
    double top = pen.box().top();
    List<Callout> sizes = new ArrayList<>();
    double apart = scale.of(holes.betweenRows());
    for (int i = 0; i < holes.positions().size(); i++) {
      Measure<Length> place = holes.positions().get(i);
      Countersink sink = sinkAt(place);
      double x = scale.of(place);
      double y = middle + (i % 2 == 0 ? -apart : apart) / 2;
      double outer = scale.of(sink.diameter()) / 2;
      pen.cross("hole", x, y, outer + 2);
      pen.circle(Line.WIDE, "drill", x, y, scale.of(sink.hole()) / 2);
      pen.circle(Line.WIDE, "sunk", x, y, outer);
      sizes.add(new Callout(x, 0, text(place)));
    }
    dimensions.running(new Callout(0, 0, origin(stretches)), sizes, Math.min(top, 0) - OFF + 5);
  }

  /** The countersink in the iron that lies there. */
  private Countersink sinkAt(Measure<Length> fromPin) {
    CountersunkHead screw = Objects.requireNonNull(head);
    Measure<Length> along = fromPin;
    if (piece.features().get(0) instanceof Barrel barrel) {
      along = along.subtract(barrel.leafStart());
      for (int i = 1; i < piece.featuresBeforeReference(); i++) {
        along = along.subtract(piece.features().get(i).reach());
      }
      if (piece.featuresBeforeReference() == 0) {
        along = along.add(barrel.reach());
      }
    }
    return screw.countersinkIn(piece.sectionAt(along).thickness());
  }

  /** The edges of the slots, from the edge they are marked from. */
  private void across(
      Dimensions dimensions, PlanView plan, HingePair both, double width, double left) {
    boolean fromFar = both.markedFrom(leaf).startsWith("far");
    List<Callout> edges = new ArrayList<>();
    for (KnuckleSlot slot : both.slotsOf(leaf)) {
      if (slot.start().getValue() > 0) {
        edges.add(new Callout(left, plan.across(slot.start(), fromFar), text(slot.start())));
      }
      if (slot.end().isLessThan(both.knuckles().width())) {
        edges.add(new Callout(left, plan.across(slot.end(), fromFar), text(slot.end())));
      }
    }
    Measure<Length> whole = both.knuckles().width();
    edges.add(new Callout(left, plan.across(whole, fromFar), text(whole)));
    dimensions.runningDown(new Callout(left, fromFar ? 0 : width, "0"), edges, left - SIDE);
  }

  private void edge(Pen pen, Dimensions dimensions, Stretches stretches) {
    boolean proud = pair == null || pair.hasProudBarrels();
    Optional<Barrel> barrel = stretches.barrel();
    double radius = barrel.map(b -> scale.of(b.outsideDiameter()) / 2).orElse(0.0);
    EdgeView view = new EdgeView(pen, scale, stretches, pen.box().bottom() + OFF, proud);
    double level = view.level();
    view.draw(proud);
    if (holes != null) {
      holes.positions().forEach(place -> view.hole(scale.of(place), sinkAt(place)));
    }
    barrel.ifPresent(
        b ->
            dimensions.upright(
                level - radius, level + radius, -radius - SIDE, 0, 0, "Ø " + b.outsideDiameter()));
    double x = stretches.end();
    double thick = view.bottom(x) - view.top(x);
    if (thick > 0) {
      String size = stretches.measure(thick, piece.bar().section().width().getUnit()).toString();
      dimensions.upright(view.top(x), view.bottom(x), x + SIDE, x, x, size);
    }
    List<Callout> sizes = new ArrayList<>();
    for (Stretches.Stretch stretch : stretches.all()) {
      sizes.add(new Callout(stretch.to(), view.bottom(stretch.to()), text(stretch.end())));
    }
    double low = Math.max(level + radius, view.bottom(x));
    double line = pen.box().bottom() + OFF - 4;
    dimensions.running(new Callout(0, low, origin(stretches)), sizes, line);
  }

  private static String origin(Stretches stretches) {
    return stretches.barrel().isPresent() ? "pin" : "0";
  }

  private String text(Measure<Length> size) {
    return rule == null ? size.toString() : LengthFormat.to(rule).format(size);
  }

  private String title() {
    return pair == null ? Words.sentence(piece.toString()) : leaf + ", " + pair.hand();
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (pair != null) {
      notes.add(
          "seen from the side that the door opens toward, slots marked from the "
              + pair.markedFrom(leaf)
              + ", their floor "
              + text(pair.notchDepth())
              + " behind the pin");
    }
    StringBuilder along = new StringBuilder("bar ").append(piece.bar().section()).append(':');
    int count = piece.features().size();
    for (int i = 0; i < Math.min(count, MOST_NOTES); i++) {
      along.append(i == 0 ? " " : ", ").append(Words.name(piece.features().get(i).name()));
    }
    notes.add(along.append(count > MOST_NOTES ? " and more" : "").toString());
    if (holes != null) {
      Countersink sink = sinkAt(holes.positions().get(0));
      notes.add(
          "holes: drill "
              + sink.hole()
              + ", sink "
              + sink.angle()
              + " to "
              + sink.diameter()
              + " on the side seen");
    }
    return notes;
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of a leaf, " + scale + "\n  " + piece;
  }
}
