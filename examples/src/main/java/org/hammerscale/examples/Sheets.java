package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.piece.Layout;
import org.hammerscale.piece.Mark;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Working;

/** Writes the sheets: for each order a front for the anvil and a back with the working. */
final class Sheets {
  private static final List<String> DANGERS =
      List.of(
          "Black-hot iron burns and does not show it. Wear eye protection; keep the place aired.",
          "Geometry only: no scale or saw kerf is counted. Cut the first strap generously, write"
              + " down what was trimmed, then cut the rest.");

  private static final List<String> OVERLEAF =
      List.of(
          "Burns: hot iron, scale and flux. Keep water and a way out at hand.",
          "Fumes: never heat zinc-coated or painted stock. A fire needs air: carbon monoxide kills.",
          "Unknown scrap and reinforcing bar vary: use stock you know for what bears a load.",
          "This sheet does not say what the hinge carries. Have overhead and public-safety hardware"
              + " checked by a licensed engineer. Local codes govern.");

  private static final int WIDTH = 72;

  private final StringBuilder text = new StringBuilder();

  private Sheets() {}

  static String of(List<HingeOrder> orders) {
    Sheets sheets = new Sheets();
    for (HingeOrder order : orders) {
      sheets.front(order);
      sheets.back(order);
    }
    sheets.barNeeded(orders);
    return sheets.text.toString();
  }

  private void front(HingeOrder order) {
    Layout layout = order.strap().layout();
    Barrel barrel = order.barrel();
    LengthFormat rule = LengthFormat.to(order.graduation());
    rule('=');
    line("%s: strap hinges, %d %s of two", order.name(), order.sets(), plural(order.sets(), "set"));
    line("bar %s", layout.piece().bar());
    line("");
    line("    CUT   %s   ×   %d", rule.format(order.cut()), order.straps());
    line("          expect about %s to trim off the curl", rule.format(toTrim(layout)));
    line("");
    line("Punch cold, from the barrel end, on a rule of %s:", order.graduation());
    for (Mark mark : layout.marks()) {
      line("    %-12s %s", at(order, mark, rule), mark.label());
    }
    line("");
    text.append(picture(order, layout, rule));
    line("");
    line(
        "Barrel    pin %s, mandrel %s, over the barrel %s",
        order.pin(), barrel.insideDiameter(), barrel.outsideDiameter());
    line("Swage     bottom swage %s", barrel.outsideDiameter());
    line(
        "Check     pin centre to tip %s, over all %s",
        rule.format(layout.finishedLength().subtract(barrel.reach())),
        rule.format(layout.finishedLength()));
    line("Weight    %s a strap as cut", layout.piece().bar().mass(order.cut()));
    line("");
    line("Cut ____________   trimmed ____________   found ____________");
    line("");
    DANGERS.forEach(this::caution);
    layout.cautions().forEach(caution -> caution(caution.text()));
    line("");
  }

  private void back(HingeOrder order) {
    Layout layout = order.strap().layout();
    rule('-');
    line("Overleaf: how the numbers came about");
    line("");
    for (Working working : workings(order, layout)) {
      line("%s", working);
      line("");
    }
    Barrel barrel = order.barrel();
    line(
        "The bench rule gives %s for the barrel: %s %s than a full turn.",
        barrel.benchLength(),
        barrel.benchError().getValue() < 0 ? barrel.benchError().negate() : barrel.benchError(),
        barrel.benchError().getValue() < 0 ? "less" : "more");
    line("Weights: %s; rolled bars differ from it.", layout.piece().bar().material());
    line("");
    OVERLEAF.forEach(this::caution);
    line("");
  }

  private static List<Working> workings(HingeOrder order, Layout layout) {
    List<Working> workings = new ArrayList<>();
    for (Feature feature : layout.piece().features()) {
      workings.add(feature.working());
    }
    workings.add(order.barrel().benchWorking());
    workings.add(layout.working());
    return workings;
  }

  private void barNeeded(List<HingeOrder> orders) {
    Map<Bar, Measure<Length>> lengths = new LinkedHashMap<>();
    for (HingeOrder order : orders) {
      Bar bar = order.strap().bar();
      lengths.merge(bar, order.cut().multiply(order.straps()), Measure::add);
    }
    rule('=');
    line("Bar for the whole order, saw kerf and offcuts not counted:");
    lengths.forEach(
        (bar, length) -> {
          Measure<Mass> mass = bar.mass(length);
          line("    %-40s %s, %s", bar, length, mass);
        });
  }

  private static String picture(HingeOrder order, Layout layout, LengthFormat rule) {
    List<Double> positions = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (Mark mark : layout.marks()) {
      Measure<Length> position = mark.position().high();
      positions.add(position.in(layout.cutLength().likely().getUnit()));
      labels.add(at(order, mark, rule));
    }
    layout.piece().features().forEach(feature -> names.add(feature.name()));
    return BarPicture.of(positions, labels, names);
  }

  /**
   * Where the rule is read: the nearest mark; the cut itself rounded up. The bar is cut long enough
   * for a full turn of the barrel, so every mark allows for it too: what is left over is at the
   * marked end, and is trimmed off the curl.
   */
  private static String at(HingeOrder order, Mark mark, LengthFormat rule) {
    return rule.format(mark.isCut() ? order.cut() : mark.position().high());
  }

  private static Measure<Length> toTrim(Layout layout) {
    return layout.cutLength().high().subtract(layout.cutLength().likely());
  }

  private static String plural(int count, String word) {
    return count == 1 ? word : word + "s";
  }

  private void rule(char c) {
    line("%s", String.valueOf(c).repeat(WIDTH));
  }

  /** A caution behind its mark, on as many lines as it needs. */
  private void caution(String words) {
    StringBuilder line = new StringBuilder("!");
    for (String word : words.split(" ", -1)) {
      if (line.length() + 1 + word.length() > WIDTH) {
        line("%s", line);
        line = new StringBuilder(" ");
      }
      line.append(' ').append(word);
    }
    line("%s", line);
  }

  private void line(String format, Object... arguments) {
    text.append(String.format(Locale.ROOT, format, arguments)).append('\n');
  }
}
