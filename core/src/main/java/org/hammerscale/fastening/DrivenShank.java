package org.hammerscale.fastening;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;

/** What nails and spikes share: a square or round shank that the wood feels as a nail's. */
abstract class DrivenShank implements WoodFastener {
  private final Section shank;

  DrivenShank(Section shank) {
    this.shank = requireDriven(shank);
  }

  /** Refuses what is neither square nor round. */
  static Section requireDriven(Section shank) {
    Section.requireArea("shank", shank);
    boolean square =
        shank.isSimilarTo(Section.square(shank.width()))
            && shank.width().isEquivalentTo(shank.thickness());
    if (!square && !shank.isRound()) {
      throw new IllegalArgumentException(
          "shank must be square or round, was " + shank + "; give a square as wide as its side");
    }
    return shank;
  }

  @Override
  public final Kind kind() {
    return Kind.NAIL;
  }

  /** {@return the diameter of a round shank, the side of a square one} */
  @Override
  public final Measure<Length> diameter() {
    return shank.width();
  }

  /** {@return the same as {@link #diameter}} */
  @Override
  public final Measure<Length> rootDiameter() {
    return diameter();
  }

  /** {@return its section in the wood, of a nail that below the head} */
  public final Section shank() {
    return shank;
  }
}
