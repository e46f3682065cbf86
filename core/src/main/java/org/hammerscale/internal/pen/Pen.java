package org.hammerscale.internal.pen;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;

/** Collects what a drawing shows, in millimetres on the paper, x to the right and y downwards. */
public final class Pen {
  /** The size of letters: capitals of 3.6 mm, to be read at arm's length. */
  public static final double SIZE = 5;

  /** From one line of text to the next. */
  public static final double LEADING = 6.5;

  private static final double NOTES = 170;
  private static final char JOIN = '\u00A0';

  /** Where a line must not end: between a number and its fraction or unit. */
  private static final Pattern JOINED =
      Pattern.compile("(?<=[0-9]) (?=[0-9]+/[0-9]|(?:in|mm|°)\\b|×)|(?<=×) (?=[0-9])");

  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Label> labels = new ArrayList<>();
  private Box box = Box.NONE;
  private List<String> notes = List.of();

  public List<Stroke> strokes() {
    return Collections.unmodifiableList(strokes);
  }

  public List<Label> labels() {
    return Collections.unmodifiableList(labels);
  }

  /** What it has been drawn on so far. */
  public Box box() {
    return box;
  }

  public void draw(Line line, String part, Path path) {
    if (path.box().width() >= 0) {
      add(Stroke.of(line, part, path));
    }
  }

  public void line(Line line, String part, double x1, double y1, double x2, double y2) {
    draw(line, part, Path.line(x1, y1, x2, y2));
  }

  public void circle(Line line, String part, double x, double y, double radius) {
    add(Stroke.circle(line, part, x, y, radius));
  }

  /** Centre lines through a point, so far to each side. */
  public void cross(String part, double x, double y, double arm) {
    draw(
        Line.NARROW,
        part,
        new Path().from(x - arm, y).to(x + arm, y).from(x, y - arm).to(x, y + arm));
  }

  public void hatch(String part, boolean rising, double[]... polygons) {
    draw(Line.HATCH, part, Hatching.of(List.of(polygons), rising));
  }

  /** A text with its middle at a point. */
  public void middle(String text, double x, double y) {
    sized(text, x - FontMetric.width(text, SIZE) / 2, y, SIZE);
  }

  /** A text that begins at a point, its capitals' middle on the level of it. */
  public void words(String text, double x, double y) {
    sized(text, x, y, SIZE);
  }

  /** A text that ends at a point. */
  public void wordsUpTo(String text, double x, double y) {
    sized(text, x - FontMetric.width(text, SIZE), y, SIZE);
  }

  public void sized(String text, double x, double y, double size) {
    add(new Label(text, x, y + FontMetric.HALF_CAPITAL * size, size, false));
  }

  /** A text that is read from the right side, running up from a point. */
  public void upwards(String text, double x, double bottom) {
    add(new Label(text, x + FontMetric.HALF_CAPITAL * SIZE, bottom, SIZE, true));
  }

  /** What is said of the drawing beside it, to be written last. */
  public void say(List<String> words) {
    notes = List.copyOf(words);
  }

  /** What is said of the drawing. */
  public List<String> said() {
    return notes;
  }

  /** The same drawing with nothing said of it. */
  public Pen silent() {
    Pen pen = new Pen();
    pen.take(this);
    return pen;
  }

  /** Draws what another pen has drawn. */
  public void take(Pen other) {
    other.strokes.forEach(this::add);
    other.labels.forEach(this::add);
  }

  /** The same with what is said below it, on lines that the first sheet of any paper holds. */
  public Pen written() {
    Pen pen = silent();
    pen.write(notes);
    return pen;
  }

  private void write(List<String> words) {
    double left = box.left();
    double y = box.bottom() + LEADING;
    for (String note : words) {
      for (String line : wrapped(note, NOTES)) {
        words(line, left, y);
        y += LEADING;
      }
      y += 1;
    }
  }

  /** Words in lines of a width; a word that is wider than it is cut. */
  public static List<String> wrapped(String text, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : JOINED.matcher(text).replaceAll(String.valueOf(JOIN)).split(" ", -1)) {
      String rest = word.replace(JOIN, ' ');
      if (line.length() > 0 && FontMetric.width(line + " " + rest, SIZE) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (FontMetric.width(rest, SIZE) > width) {
        int fits = (int) (width / SIZE); // an em a letter is more than enough
        lines.add(rest.substring(0, fits));
        rest = rest.substring(fits);
      }
      line.append(line.length() > 0 ? " " : "").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  private void add(Stroke stroke) {
    strokes.add(stroke);
    box = box.with(stroke.box());
  }

  private void add(Label label) {
    if (!label.text().isEmpty()) {
      labels.add(label);
      box = box.with(label.box());
    }
  }
}
