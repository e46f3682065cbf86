package org.hammerscale.examples.drive;

import java.util.Locale;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Upset;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;

/** What the head of a spike looks like. */
enum SpikeHead {
  /** Four facets that meet in a point. */
  ROSE {
    @Override
    Upset on(Section shank, Measure<Length> across, Measure<Length> high) {
      Section base = Section.square(across);
      return Head.tapered(shank, base, base.point(), high);
    }
  },
  /** A segment of a ball. */
  DOME {
    @Override
    Upset on(Section shank, Measure<Length> across, Measure<Length> high) {
      return Head.dome(shank, Section.round(across), high);
    }
  },
  /** As thick throughout. */
  FLAT {
    @Override
    Upset on(Section shank, Measure<Length> across, Measure<Length> high) {
      return Upset.to(
          shank, shank.isRound() ? Section.round(across) : Section.square(across), high);
    }
  };

  /** More bar than this is no head of a spike. */
  private static final int MOST_THICKNESSES = 12;

  abstract Upset on(Section shank, Measure<Length> across, Measure<Length> high);

  /**
   * The head of a shank.
   *
   * @throws IllegalArgumentException if it is none
   */
  Upset of(Section shank, Measure<Length> across, Measure<Length> high) {
    if (!across.isGreaterThan(shank.width())) {
      throw new IllegalArgumentException(
          "base must be wider than the shank of "
              + shank.width()
              + ", was "
              + across
              + "; make the head wider");
    }
    Upset head = on(shank, across, high);
    if (head.slenderness() > MOST_THICKNESSES) {
      throw new IllegalArgumentException(
          "base must take at most "
              + MOST_THICKNESSES
              + " thicknesses of bar to be jumped up, was "
              + across
              + ", which takes "
              + Math.round(head.slenderness())
              + "; make the head smaller, or weld it on");
    }
    return head;
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
