package org.hammerscale.bending;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;

/** What rings, links, ovals and welded eyes share: the bar comes back to itself at a joint. */
abstract class ClosedBar extends BentBar {
  private final Joint joint;

  ClosedBar(Section section, Unit<Length> unit, Joint joint) {
    super(section, unit);
    this.joint = joint;
  }

  /** The length of the form on the mean line, noted as L, with t noted before. */
  abstract double meanLine(Notes n);

  /** The smallest diameter inside, for the caution on tight curls. */
  abstract Measure<Length> tightest();

  final Joint joint() {
    return joint;
  }

  /**
   * The length of bar of this section to cut: what stays in the finished form, and what the weld
   * takes if it is welded.
   *
   * @return the length, exact unless it is welded, in the unit of its sizes
   */
  public final Estimate<Length> cutLength() {
    Measure<Length> kept = developedLength();
    return joint.weld() ? joint.allowance(section(), kept).add(kept) : Estimate.exact(kept);
  }

  /** {@return how the likely length to cut was found} */
  public final Working cutWorking() {
    return joint
        .sourced(Notes.taken("bar to cut for a " + this, unit(), this::cut))
        .withSource(MEAN_LINE)
        .withCautions(cautions());
  }

  /** {@return what the weld takes, if it is welded; else nothing} */
  @Override
  public final Losses metalLost() {
    if (!joint.weld()) {
      return Losses.NONE;
    }
    Estimate<Length> weld = joint.allowance(section(), developedLength());
    return Losses.NONE.and(
        "weld",
        Estimate.of(
            Measures.volume(weld.low(), section().area()),
            Measures.volume(weld.likely(), section().area()),
            Measures.volume(weld.high(), section().area())));
  }

  /** {@return the length to cut, to the last bit if the parent has its section} */
  @Override
  public final Estimate<Length> stock(Section parent) {
    Section.requireArea("parent", parent);
    return section().equals(parent) ? cutLength() : super.stock(parent);
  }

  /** {@return how it is joined and what it is, such as {@code welded ring}} */
  @Override
  public String name() {
    return joint.word() + " " + noun();
  }

  /** {@return never: its ends meet each other} */
  @Override
  public Trimming trimming() {
    return Trimming.NEVER;
  }

  /** The noun alone. */
  abstract String noun();

  /** {@return cautions if it is bent very tight, or forge-welded} */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(joint.cautions());
    cautions.addAll(tightCurl(tightest()));
    return List.copyOf(cautions);
  }

  @Override
  final double developed(Notes n) {
    return joint.kept(n, meanLine(n), thickness(), unit());
  }

  private double cut(Notes n) {
    return joint.cut(n, developed(n), thickness());
  }

  /** The mean line of the same form in the size that likely uses up this length of bar. */
  final double meanLineOf(String name, Quantity<Length> bar, double least) {
    double used = Arguments.positive(name, bar).in(unit());
    double line = joint.meanLine(used, thickness(), unit());
    if (!(line > least)) {
      throw new IllegalArgumentException(
          name
              + " must be more than "
              + measure(used - line + least)
              + " to close a "
              + name()
              + " of this section, was "
              + measure(used)
              + "; take a longer or a thinner bar");
    }
    return line;
  }
}
