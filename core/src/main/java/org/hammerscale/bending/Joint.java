package org.hammerscale.bending;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/** How the two ends of a closed form meet, and the bar that this takes. */
final class Joint {
  static final Joint BUTTED = new Joint("butted", null, null);
  static final Joint TURNED = new Joint("turned", null, null);
  static final Joint SCARFED = new Joint("scarf-welded", null, null);
  static final Joint WELDLESS = new Joint("weldless", null, null);

  private final String word;
  private final @Nullable WeldAllowance weld;
  private final @Nullable Measure<Length> lap;

  private Joint(String word, @Nullable WeldAllowance weld, @Nullable Measure<Length> lap) {
    this.word = word;
    this.weld = weld;
    this.lap = lap;
  }

  static Joint welded(WeldAllowance allowance) {
    return new Joint("welded", Objects.requireNonNull(allowance, "allowance"), null);
  }

  static Joint lapped(Quantity<Length> lap) {
    return new Joint("lapped", null, Arguments.positive("lap", lap));
  }

  boolean weld() {
    return weld != null;
  }

  String word() {
    return word;
  }

  /** The bar that stays: the mean line L, less the neck or with the lap. L and t are noted. */
  double kept(Notes n, double length, double t, Unit<Length> unit) {
    if (this == SCARFED) {
      return n.length("M", "bend mark from the scarfed end", "L − t", length - t);
    }
    if (lap == null) {
      return length;
    }
    double o = n.given("o", "lap", lap.in(unit));
    return n.length("B", "bar with the lap", "L + o", length + o);
  }

  /** The bar likely to be cut: what stays and what the weld takes. L and t must be noted. */
  double cut(Notes n, double kept, double t) {
    return weld == null
        ? kept
        : n.length("C", "bar to cut", "L + w", kept + weld.likely(n, t, kept));
  }

  /** The mean line of the form that likely uses up a length of bar. */
  double meanLine(double used, double t, Unit<Length> unit) {
    if (this == SCARFED) {
      return used + t;
    }
    return weld != null ? weld.finished(used, t) : lap != null ? used - lap.in(unit) : used;
  }

  /** What the weld takes beyond the length that stays. */
  Estimate<Length> allowance(Section section, Measure<Length> kept) {
    return weld == null ? Estimate.exact(kept.withValue(0)) : weld.on(section, kept);
  }

  Working sourced(Working working) {
    return weld == null ? working : working.withSource(weld.source());
  }

  List<Caution> cautions() {
    return weld == null && this != SCARFED
        ? List.of()
        : List.of(
            Caution.danger(
                "the strength of a forge weld cannot be computed: proof-test it before it carries"
                    + " a load"));
  }
}
