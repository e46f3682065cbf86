package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.piece.BenchMark;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.piece.Trim;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;

/**
 * The cold bar as it goes to the bench: its stretches, the centre-punch marks told from the
 * reference mark R, what is trimmed hatched, and where it is cut off.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * Barrel eye = Barrel.around(inches("1/2"), strap.section());
 * Piece leaf = Piece.of(strap, eye, Plain.of(strap.section(), inches(9))).withReferenceAfter(1).trimmedAt(PieceEnd.FIRST);
 * Drawing bar = BarDrawing.of(leaf.layout().on(SIXTEENTH)).reducedTo(5).drawing();
 * bar.title()    // "cold bar, 1 1/2 in × 1/4 in flat: cut 11 3/8 in"
 * }</pre>
 *
 * <p>Drawn as wide as it lies, in true scale unless told otherwise. Sizes are on the rule of the
 * marked bar. A trim after the work is shown as the likely length of cold bar that it comes from.
 */
public final class BarDrawing {
  /** From an edge of the bar to the first line of sizes. */
  private static final double OFF = 12;

  private final MarkedBar bar;
  private final Scale scale;

  private BarDrawing(MarkedBar bar, Scale scale) {
    this.bar = bar;
    this.scale = scale;
  }

  /**
   * The drawing of a bar, in true scale.
   *
   * @param bar the bar on its rule
   * @return what can be drawn
   */
  public static BarDrawing of(MarkedBar bar) {
    return new BarDrawing(Objects.requireNonNull(bar, "bar"), Scale.TRUE);
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public BarDrawing reducedTo(int reduction) {
    return new BarDrawing(bar, Scale.oneTo(reduction));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if a size of the bar is more than 100 m or less than 0.001 mm
   *     on the paper
   */
  public Drawing drawing() {
    Pen pen = new Pen();
    Section section = bar.layout().piece().bar().section();
    double wide = scale.size("width of the bar", section.width());
    double length = scale.size("cut length of the bar", bar.cutLength());
    pen.draw(Line.WIDE, "bar", Path.rectangle(new Box(0, 0, length, wide)));
    double beyond = 4;
    pen.line(Line.CUT, "cut", length, -beyond, length, wide + beyond);
    List<Callout> names = stretches();
    trims(pen, names, wide, length);
    marks(pen, wide);
    Dimensions dimensions = new Dimensions(pen);
    names.sort((one, other) -> Double.compare(one.x(), other.x()));
    dimensions.callouts(names, -beyond);
    LengthFormat rule = LengthFormat.to(bar.rule());
    double reference = scale.of(bar.reference());
    dimensions.running(new Callout(reference, wide, "R"), sizes(rule, wide, reference), wide + OFF);
    double row = pen.box().bottom();
    String cut = rule.format(bar.cutLength());
    dimensions.across(0, length, row + OFF, row, row, "cut " + cut);
    pen.say(notes(rule));
    String title = "cold bar, " + section + ": cut " + cut;
    return Drawing.of(title, scale, pen);
  }

  /** The names of the stretches, each over the middle of its own. */
  private List<Callout> stretches() {
    List<Callout> names = new ArrayList<>();
    List<Feature> features = bar.layout().piece().features();
    double from = 0;
    for (int i = 0; i < features.size(); i++) {
      double to =
          scale.of(i < features.size() - 1 ? bar.marks().get(i).fromFirstEnd() : bar.cutLength());
      names.add(new Callout((from + to) / 2, 0, Words.name(features.get(i).name())));
      from = to;
    }
    return names;
  }

  private void trims(Pen pen, List<Callout> names, double wide, double length) {
    for (Trim trim : bar.trims()) {
      double off = scale.of(trim.inBar().likely());
      if (!(off > 0)) {
        continue;
      }
      double from = trim.end() == PieceEnd.FIRST ? 0 : length - off;
      double to = from + off;
      pen.hatch("trim", true, new double[] {from, 0, to, 0, to, wide, from, wide});
      double edge = trim.end() == PieceEnd.FIRST ? to : from;
      Line line = trim.when() == Trimming.BEFORE_WORK ? Line.CUT : Line.NARROW;
      pen.line(line, "trim", edge, 0, edge, wide);
      names.add(new Callout((from + to) / 2, 0, "trim"));
    }
  }

  /** Lines across where a punch mark goes, and the mark itself in the middle. */
  private void marks(Pen pen, double wide) {
    for (BenchMark mark : bar.marks()) {
      double x = scale.of(mark.fromFirstEnd());
      pen.line(mark.isReference() ? Line.WIDE : Line.NARROW, "mark", x, 0, x, wide);
      pen.cross("punch", x, wide / 2, 1.5);
    }
  }

  private List<Callout> sizes(LengthFormat rule, double wide, double reference) {
    List<Callout> places = new ArrayList<>();
    if (reference > 0) {
      places.add(new Callout(0, wide, rule.format(bar.reference())));
    }
    for (BenchMark mark : bar.marks()) {
      if (!mark.isReference()) {
        double x = scale.of(mark.fromFirstEnd());
        places.add(new Callout(x, wide, rule.format(mark.fromReference())));
      }
    }
    for (Trim trim : bar.trims()) {
      if (trim.when() == Trimming.BEFORE_WORK && trim.inBar().likely().getValue() > 0) {
        double kept = scale.of(trim.keptFromReference());
        double x = trim.end() == PieceEnd.FIRST ? reference - kept : reference + kept;
        places.add(new Callout(x, wide, rule.format(trim.keptFromReference())));
      }
    }
    Measure<Length> behind = bar.cutLength().subtract(bar.reference());
    if (behind.getValue() > 0) {
      places.add(new Callout(scale.of(bar.cutLength()), wide, rule.format(behind)));
    }
    return places;
  }

  private List<String> notes(LengthFormat rule) {
    List<String> notes = new ArrayList<>();
    notes.add("R reference mark: all sizes on the line count from it, along the cold bar");
    for (Trim trim : bar.trims()) {
      if (!(bar.rule().nearest(trim.length().likely()).getValue() > 0)) {
        continue;
      }
      notes.add(
          "hatched at the "
              + trim.end()
              + ": "
              + trim.when()
              + " cut to "
              + rule.format(trim.keptFromReference())
              + " from R, about "
              + rule.format(trim.length().likely())
              + " of "
              + trim.section()
              + " goes");
    }
    return notes;
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of a bar, " + scale + "\n  " + bar;
  }
}
