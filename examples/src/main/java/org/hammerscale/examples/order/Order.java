package org.hammerscale.examples.order;

import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** One job of an order, of whatever kind: its sheet, and what is cut for it. */
public interface Order {
  /** What a calliper in inches reads. */
  Graduation<Length> THOUSANDTH = Graduation.of(Measures.inches(0.001));

  /** What the customer calls it; jobs with one name are a set. */
  String name();

  /** What is made, such as {@code 2 pairs of strap hinges}. */
  String what();

  /** Whether it is measured in inches. */
  boolean isInches();

  /** Tools come in sixty-fourths or half millimetres. */
  default Graduation<Length> toolSteps() {
    return toolSteps(isInches());
  }

  /** The same where there is no order yet. */
  static Graduation<Length> toolSteps(boolean inches) {
    return inches ? Graduation.SIXTY_FOURTH : Graduation.HALF_MILLIMETRE;
  }

  /** A size as a calliper reads it: thousandths of an inch or tenths of a millimetre. */
  default Measure<Length> calliper(Measure<Length> size) {
    return isInches() ? THOUSANDTH.nearest(size) : Graduation.TENTH_MILLIMETRE.nearest(size);
  }

  /** Writes the front of its sheet, its name in the first line: decisions, no reasons. */
  void front(SheetText sheet);

  /** The cautions of the front. */
  List<String> cautions();

  /** Writes the back: estimates, workings, sources, every caution that is not on the front. */
  void back(SheetText sheet);

  /** A line to fill in for each piece that is still to be forged, in the order of the work. */
  List<String> blanks();

  /** What is cut for it. */
  List<Cut> cuts();

  /** Pictures of its cold bars, small enough to stand beside one another. */
  List<Drawing> bars();

  /** Its drawings, at true scale where paper has room for that. */
  List<Drawing> drawings();

  /** What one coat of its finish adds to a face; zero for bare iron. */
  Measure<Length> coat();

  /** How many of each screw it takes. */
  Map<Screw, Integer> screws();

  /** The pieces to cut now of which trials are written down, by their names in that file. */
  default List<Part> trialPieces() {
    return List.of();
  }

  /** Trials that do not fit their piece. */
  default List<String> trialFaults() {
    return List.of();
  }
}
