package org.hammerscale.examples.drive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;

/** What the fronts of all that is driven say alike. */
final class DriveText {
  private DriveText() {}

  /** What one may count on, told apart from the load at which it comes out. */
  static void holds(
      SheetText sheet, Measure<Force> reference, String by, Estimate<Force> ultimate) {
    Unit<Force> unit = reference.getUnit();
    sheet.entry(
        "Holds",
        "%s %s: the reference value, before the code's adjustments",
        LoadText.down(reference),
        by);
    sheet.entry("", "%s", comesOut(ultimate, unit));
  }

  /** The load of tests, which is no working load. */
  static String comesOut(Estimate<Force> ultimate, Unit<Force> unit) {
    return "comes out at about "
        + LoadText.down(ultimate.likely().to(unit))
        + " ("
        + LoadText.down(ultimate.low().to(unit))
        + " to "
        + LoadText.up(ultimate.high().to(unit))
        + "): no working load";
  }

  /** The first danger of each, then all of them. */
  @SafeVarargs
  static List<Caution> dangersFirst(List<Caution>... all) {
    Set<Caution> first = new LinkedHashSet<>();
    for (List<Caution> cautions : all) {
      cautions.stream().filter(Caution::isDanger).findFirst().ifPresent(first::add);
    }
    for (List<Caution> cautions : all) {
      first.addAll(cautions);
    }
    return new ArrayList<>(first);
  }
}
