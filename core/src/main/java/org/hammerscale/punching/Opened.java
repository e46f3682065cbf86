package org.hammerscale.punching;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** What holes, slots and cuts share: a stretch of the bar that is opened in its own section. */
abstract class Opened implements Feature {
  private final Section section;

  Opened(Section section) {
    this.section = Section.requireArea("section", section);
  }

  /** The length of the bar's own section that is opened, with all that is lost of it. */
  abstract Measure<Length> stretch();

  /** {@return the section of the bar} */
  public final Section section() {
    return section;
  }

  @Override
  public final Section start() {
    return section;
  }

  @Override
  public final Section end() {
    return section;
  }

  /** {@return the stretch that is opened, exact; to the last bit if the parent has its section} */
  @Override
  public final Estimate<Length> stock(Section parent) {
    Section.requireArea("parent", parent);
    return Estimate.exact(
        section.equals(parent)
            ? stretch()
            : Measures.length(Measures.volume(stretch(), section.area()), parent.area()));
  }
}
