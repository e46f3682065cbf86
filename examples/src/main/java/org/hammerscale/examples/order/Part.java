package org.hammerscale.examples.order;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.piece.BenchMark;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;

/**
 * A piece of a job: what it is called, its bar on the rule, and how many there are in all.
 *
 * @param name what it is called
 * @param marked its bar
 * @param count how many
 */
public record Part(String name, MarkedBar marked, int count) {
  /** A piece as the rule marks it. */
  public static Part of(String name, Piece piece, int count, Graduation<Length> rule) {
    return new Part(name, piece.layout().on(rule), count);
  }

  public Piece piece() {
    return marked.layout().piece();
  }

  public Bar bar() {
    return piece().bar();
  }

  public Measure<Length> length() {
    return marked.cutLength();
  }

  /** Whether hand and fire decide how much bar it takes. */
  public boolean isEstimated() {
    return !marked.layout().cutLength().isExact();
  }

  /** Whether it is more than a length of bar. */
  public boolean isForged() {
    return piece().features().stream().anyMatch(feature -> !(feature instanceof Plain));
  }

  /** Where the marks between its stretches are, from the first end of the cold bar. */
  public List<Measure<Length>> marks() {
    List<Measure<Length>> marks = new ArrayList<>();
    marked.marks().stream().map(BenchMark::fromFirstEnd).forEach(marks::add);
    return marks;
  }

  /** The last stretch of the cold bar, behind its last mark. */
  public Measure<Length> lastStretch() {
    List<Measure<Length>> marks = marks();
    return length().subtract(marks.get(marks.size() - 1));
  }
}
