package org.hammerscale.examples.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.cutting.Aim;
import org.hammerscale.cutting.CutBar;
import org.hammerscale.cutting.CutList;
import org.hammerscale.cutting.CutMark;
import org.hammerscale.cutting.CuttingPlan;
import org.hammerscale.cutting.Rack;
import org.hammerscale.cutting.Reached;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/**
 * The cut list of a shop: for each section the bars with their chalk marks, what to buy, and
 * whether there is a cheaper way. Of a section that the rack has nothing of, bars of a usual length
 * are assumed and the sheet says so. The ends of the bars are taken as sawn square.
 */
public final class CutSheet {
  private final Rack rack;
  private final Map<Bar, List<Cut>> cuts = new LinkedHashMap<>();
  private final Map<Bar, Planned> plans = new LinkedHashMap<>();

  /** The plan of a bar's pieces; none if they cannot be cut, and then why. */
  private record Planned(Optional<CuttingPlan> plan, String refusal) {}

  /** A sheet without cuts. */
  public CutSheet(Rack rack) {
    this.rack = rack;
  }

  /** The cuts of an order. */
  public static CutSheet of(List<? extends Order> orders, Rack rack) {
    CutSheet sheet = new CutSheet(rack);
    orders.forEach(order -> order.cuts().forEach(sheet::add));
    return sheet;
  }

  /**
   * Adds pieces. The first of a bar tells by which rule its marks are chalked; the widest saw of a
   * bar's pieces is counted in all its cuts.
   *
   * @return this sheet
   */
  public CutSheet add(Cut cut) {
    cuts.computeIfAbsent(cut.bar(), bar -> new ArrayList<>()).add(cut);
    plans.remove(cut.bar()); // what was planned of it without them
    return this;
  }

  /** The plans of all bars that can be cut, to be drawn. */
  public List<CuttingPlan> plans() {
    return cuts.keySet().stream().map(this::planned).flatMap(p -> p.plan.stream()).toList();
  }

  /** Planned once, since a hard list takes the search some seconds. */
  private Planned planned(Bar bar) {
    return plans.computeIfAbsent(bar, this::plan);
  }

  private Planned plan(Bar bar) {
    List<Cut> pieces = cuts.getOrDefault(bar, List.of());
    CutList list = rack.cutList(bar, pieces.get(0).rule());
    list = list.kerf(pieces.stream().map(Cut::kerf).max(Measure::compareTo).orElseThrow());
    if (!rack.has(bar)) {
      list = list.buying(usual(bar));
    }
    for (Cut cut : pieces) {
      list = list.pieces(cut.name(), cut.length(), cut.count());
    }
    try {
      return new Planned(Optional.of(list.plan()), "");
    } catch (IllegalArgumentException e) {
      return new Planned(Optional.empty(), String.valueOf(e.getMessage()));
    }
  }

  /** Writes it. */
  public void write(SheetText sheet) {
    sheet.rule('=');
    sheet.line("Cut list of the whole order: the saw's kerf counted, bars taken as square-ended");
    cuts.forEach((bar, pieces) -> write(sheet, bar, pieces));
  }

  private void write(SheetText sheet, Bar bar, List<Cut> pieces) {
    sheet.rule('-');
    sheet.line("Cut from %s", bar);
    if (!rack.has(bar)) {
      sheet.line("The rack has none of it; bars of %s are assumed.", usual(bar));
    }
    Planned planned = planned(bar);
    if (planned.plan.isEmpty()) {
      sheet.caution(planned.refusal);
      return;
    }
    CuttingPlan plan = planned.plan.get();
    LengthFormat rule = LengthFormat.to(pieces.get(0).rule());
    plan.bars().forEach(cutBar -> write(sheet, cutBar, rule));
    sheet.line("%s", bought(plan));
    sheet.line("%s", judged(plan));
    Measure<Length> pieced =
        pieces.stream()
            .map(cut -> cut.length().multiply(cut.count()))
            .reduce(Measure::add)
            .orElseThrow();
    sheet.line("The pieces are %s long together, %s.", pieced, bar.mass(pieced));
  }

  /** One mark a line: it is read with the chalk in hand. */
  private void write(SheetText sheet, CutBar bar, LengthFormat rule) {
    sheet.line("%d × %s%s", bar.count(), bar.length(), bar.isOffcut() ? " offcut" : "");
    for (CutMark mark : bar.marks()) {
      sheet.cells(
          "    %12s  %s, %s", rule.format(mark.end()), mark.name(), rule.format(mark.length()));
    }
    sheet.line("    %12s  left over", rule.format(bar.leftover()));
  }

  private static String bought(CuttingPlan plan) {
    String lines = plan.buyingList("for the new bars");
    return plan.newStock().getValue() == 0
        ? "Buy nothing."
        : "Buy " + String.join(", ", lines.lines().toList()) + ".";
  }

  private static String judged(CuttingPlan plan) {
    Reached money = plan.reached(Aim.LEAST_MONEY);
    Reached stock = plan.reached(Aim.LEAST_NEW_STOCK);
    if (!money.isProven()) {
      return "Perhaps there is a cheaper way, but none for less than " + money.bound() + ".";
    }
    return stock.isProven()
        ? "There is no cheaper way, nor one with less new bar for the money."
        : "There is no cheaper way.";
  }

  private static Measure<Length> usual(Bar bar) {
    boolean inches = bar.section().width().getUnit().equals(ShopUnits.INCH);
    return inches ? Measures.feet(20) : Measures.metres(6);
  }
}
