package org.hammerscale.drawing;

import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Label;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Stroke;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * A drawing that prints true: SVG in millimetres, black on white, with a check bar of 100 mm and
 * one of 4 in on each sheet. It is asked of what it shows, such as a {@link BarDrawing}, and
 * printed as one sheet or on {@linkplain #sheets paper}.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * Piece leaf = Piece.of(strap, Barrel.around(inches("1/2"), strap.section()), Plain.of(strap.section(), inches(16)));
 * Drawing drawing = BarDrawing.of(leaf.layout().on(SIXTEENTH)).drawing().titled("Chapel cupboard");
 * drawing                          // Chapel cupboard, scale 1 : 1
 * drawing.sheets(Paper.A4).size()  // 2
 * drawing.svg().startsWith("<svg") // true
 * }</pre>
 *
 * <p>Lines are 0.5 mm wide where iron is seen and 0.25 mm else, letters 5 mm high over all, to be
 * read at arm's length; line kinds and dimensions follow the habits of ISO 128 and ISO 129. Print
 * at 100 %, not fitted to the page, and lay a rule on the check bars first. What is drawn lies
 * within 0.000001 mm of the answer it shows; paper stretches by more.
 */
public final class Drawing {
  /** A title that leaves no room behind it at a prompt. */
  private static final int LONG = 60;

  private final String title;
  private final String description;
  private final Scale scale;

  /** What is drawn, and the same with its notes below it. */
  private final Pen drawn;

  private final Pen pen;
  private final Box box;

  private Drawing(String title, String description, Scale scale, Pen drawn, Pen pen) {
    this.title = title;
    this.description = description;
    this.scale = scale;
    this.drawn = drawn;
    this.pen = pen;
    this.box = pen.box().grown(2);
  }

  /** What a pen has drawn and said; the pen is not used any more. */
  static Drawing of(String title, Scale scale, Pen pen) {
    return of(title, List.of(), scale, pen);
  }

  /** The same with more for those who do not see it than its notes say. */
  static Drawing of(String title, List<String> unseen, Scale scale, Pen pen) {
    StringBuilder description = new StringBuilder(title);
    unseen.forEach(note -> description.append(". ").append(note));
    pen.said().forEach(note -> description.append(". ").append(note));
    return new Drawing(title, description.toString(), scale, pen.silent(), pen.written());
  }

  /**
   * The same with another title.
   *
   * @param newTitle the job and the piece, at most 200 characters
   * @return the drawing
   * @throws IllegalArgumentException if the title is blank, too long, or has control characters
   */
  public Drawing titled(String newTitle) {
    Objects.requireNonNull(newTitle, "newTitle");
    return new Drawing(Words.title(newTitle), description, scale, drawn, pen);
  }

  /** {@return the same without the notes below it, for a page that says elsewhere what they say} */
  public Drawing withoutNotes() {
    return new Drawing(title, description, scale, drawn, drawn);
  }

  /** {@return what stands above it} */
  public String title() {
    return title;
  }

  /** {@return what it shows in words, for those who do not see it} */
  public String description() {
    return description;
  }

  /** {@return the width of the sheet that {@link #svg} gives, in millimetres} */
  public Measure<Length> width() {
    return Measures.millimetres(SheetPlan.whole(this).width());
  }

  /** {@return the height of the sheet that {@link #svg} gives, in millimetres} */
  public Measure<Length> height() {
    return Measures.millimetres(SheetPlan.whole(this).height());
  }

  /** {@return the whole of it on one sheet, as large as it takes, as the text of an SVG file} */
  public String svg() {
    return SheetPlan.whole(this).sheets().get(0);
  }

  /**
   * The drawing alone, without title and check bars, for a page that has a caption and a check of
   * its own.
   *
   * @return the text of an SVG file, as large as what is drawn
   */
  public String figure() {
    return SheetPlan.figure(this);
  }

  /**
   * The drawing on paper. What is larger goes on several sheets that overlap by 10 mm: lay the
   * crosses in circles over one another. Sheets are turned so that there are fewest.
   *
   * @param paper what it is printed on
   * @return the text of an SVG file for each sheet, row by row
   * @throws IllegalArgumentException if it takes more than 200 sheets
   */
  public List<String> sheets(Paper paper) {
    return SheetPlan.on(this, Objects.requireNonNull(paper, "paper")).sheets();
  }

  /**
   * Whether {@link #sheets} turns a paper, so that it is wider than high.
   *
   * @param paper what it is printed on
   * @return whether its sheets lie
   * @throws IllegalArgumentException if it takes more than 200 sheets
   */
  public boolean isTurnedOn(Paper paper) {
    SheetPlan plan = SheetPlan.on(this, Objects.requireNonNull(paper, "paper"));
    return plan.width() > plan.height();
  }

  Scale scale() {
    return scale;
  }

  /** What is drawn on, with a little air round it. */
  Box box() {
    return box;
  }

  List<Stroke> strokes() {
    return pen.strokes();
  }

  List<Label> labels() {
    return pen.labels();
  }

  /** Title and scale. */
  @Override
  public String toString() {
    return title + (title.length() > LONG ? "\n  " : ", ") + scale;
  }
}
