package org.hammerscale.examples.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.heat.Cooling;
import org.hammerscale.piece.BenchMark;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** A job of a few parts, each cut and forged by itself: what the sheets of all such have alike. */
public abstract class PartsOrder implements Order {
  private static final int MOST_CAUTIONS = 3;
  private static final int MOST_SHEETS = 3;

  private final String name;
  private final String one;
  private final String many;
  private final int count;
  private final Graduation<Length> graduation;
  private final LengthFormat rule;
  private final Measure<Length> kerf;
  private final Measure<Length> coat;
  private final Optional<Measure<Temperature>> heat;

  /**
   * A job.
   *
   * @param job its column
   * @param one what one of it is called
   * @param many what several are
   */
  protected PartsOrder(OrderColumn job, String one, String many) {
    this.name = job.name();
    this.one = one;
    this.many = many;
    this.count = job.count(SetItem.COUNT);
    this.graduation = job.graduation();
    this.rule = LengthFormat.to(graduation);
    this.kerf = job.length(SetItem.KERF);
    this.coat =
        job.said(SetItem.COAT).map(text -> job.length(SetItem.COAT)).orElse(kerf.withValue(0));
    this.heat = job.said(SetItem.HEAT).map(text -> job.measure(SetItem.HEAT, Temperature.class));
  }

  /**
   * Refuses a heat that iron is not forged at.
   *
   * @param bar the item that tells of a bar that is heated
   * @throws Blame if it is none
   */
  protected static void checkHeat(OrderColumn job, OrderItem bar) {
    Measure<Temperature> hot = job.measure(SetItem.HEAT, Temperature.class);
    Blame.on(SetItem.HEAT, () -> Cooling.from(hot, job.bar(bar)));
  }

  /** What is cut for all of them, the main piece first. */
  protected abstract List<Part> parts();

  /** Writes marks, tools, sizes and places: what the front says between cuts and cautions. */
  protected abstract void work(SheetText sheet);

  /** Writes what finds no room on the front. */
  protected void more(SheetText sheet) {}

  /** How the answers on the front were found. */
  protected abstract List<Working> workings();

  /** All cautions, the first of them for the front. */
  protected abstract List<Caution> warnings();

  @Override
  public final String name() {
    return name;
  }

  @Override
  public final String what() {
    return count == 1 ? one : count + " " + many;
  }

  /** How many are ordered. */
  public final int count() {
    return count;
  }

  protected final Graduation<Length> graduation() {
    return graduation;
  }

  /** A length as the rule reads it, at the nearest mark. */
  protected final String told(Measure<Length> length) {
    return rule.format(length);
  }

  /** What must be there at least, on the next mark. */
  protected final String up(Measure<Length> length) {
    return rule.format(graduation.upTo(length));
  }

  /** What there is at least, on the mark before. */
  protected final String down(Measure<Length> length) {
    return rule.format(graduation.downTo(length));
  }

  @Override
  public boolean isInches() {
    return parts().get(0).bar().section().width().getUnit().equals(ShopUnits.INCH);
  }

  @Override
  public final void front(SheetText sheet) {
    sheet.line("%s: %s", name, what());
    sheet.line("bar %s", parts().get(0).bar());
    int wide = parts().stream().mapToInt(part -> part.name().length()).max().orElse(0);
    int longest = parts().stream().mapToInt(part -> told(part.length()).length()).max().orElse(0);
    for (Part part : parts()) {
      boolean other = !part.bar().equals(parts().get(0).bar());
      sheet.line(
          "    CUT   %s   %s long   ×  %d%s%s",
          part.name() + " ".repeat(wide - part.name().length()),
          " ".repeat(longest - told(part.length()).length()) + told(part.length()),
          part.count(),
          other ? "      of " + part.bar().section() : "",
          part.isEstimated() ? "      (enough 19 times in 20)" : "");
    }
    if (parts().stream().anyMatch(part -> part.isForged() && !part.isEstimated())) {
      sheet.line("    bends and points are by geometry, without a hand's allowance");
    }
    work(sheet);
    heat.ifPresent(hot -> sheet.entry("Heat", "%s, %s; at the anvil:", hot, HeatText.colour(hot)));
    coolings().forEach((bar, cooling) -> heat(sheet, bar, cooling));
    cautions().forEach(sheet::caution);
  }

  /** The pieces whose marks are told from R, to be drawn as cold bars too: one that is alone. */
  protected List<Part> marked() {
    List<Part> forged = parts().stream().filter(Part::isForged).toList();
    boolean isAlone = forged.size() == 1 && forged.get(0).piece().features().size() > 1;
    return isAlone ? forged : List.of();
  }

  /** How each bar cools that parts are forged from. */
  private Map<Bar, Cooling> coolings() {
    Map<Bar, Cooling> coolings = new LinkedHashMap<>();
    for (Part part : parts()) {
      if (heat.isPresent() && part.isForged()) {
        coolings.computeIfAbsent(part.bar(), bar -> Cooling.from(heat.get(), bar));
      }
    }
    return coolings;
  }

  private static void heat(SheetText sheet, Bar bar, Cooling cooling) {
    sheet.entry("", "%s keeps it for %s", bar.section(), HeatText.window(cooling));
  }

  /** Writes the marks of a cold bar from its reference mark R, with a picture of it. */
  protected final void marks(SheetText sheet, Part part, String where) {
    MarkedBar bar = part.marked();
    boolean atEnd = bar.reference().getValue() == 0;
    List<String> punched = new ArrayList<>();
    for (BenchMark mark : bar.marks()) {
      if (!mark.isReference()) {
        punched.add(told(mark.fromReference()) + " (" + mark.label() + ")");
      }
    }
    sheet.heading(
        part.name(),
        "cold, from R, "
            + where
            + (atEnd ? "" : ", " + told(bar.reference()) + " of bar before it"));
    sheet.block(BarPicture.of(bar, rule));
    // A page shows no picture of characters; what stands under it is said as well.
    sheet.entry("Punch", "%s", String.join(", ", punched));
  }

  @Override
  public final List<String> cautions() {
    return warnings().stream().map(Caution::text).distinct().limit(MOST_CAUTIONS).toList();
  }

  @Override
  public final void back(SheetText sheet) {
    Reasons reasons = new Reasons(sheet, isInches());
    Set<Caution> cautions = new LinkedHashSet<>(warnings());
    more(sheet);
    if (parts().stream().anyMatch(Part::isEstimated) || heat.isPresent()) {
      reasons.estimates(name);
    }
    for (Part part : parts()) {
      if (part.isEstimated()) {
        reasons.estimate(
            "bar used by the " + part.name(),
            part.marked().layout().cutLength(),
            part.marked().layout().working());
      }
      cautions.addAll(part.marked().layout().cautions());
      cautions.addAll(part.marked().cautions());
    }
    coolings()
        .forEach(
            (bar, cooling) -> {
              reasons.estimate(
                  "window, " + bar.section(), cooling.window(), cooling.windowWorking());
              cautions.addAll(cooling.cautions());
            });
    workings().forEach(reasons::working);
    coolings().values().forEach(cooling -> reasons.working(cooling.windowWorking()));
    parts().stream()
        .filter(Part::isForged)
        .forEach(part -> reasons.working(part.name(), part.marked().layout().working()));
    sheet.wrapped("", 2, Reasons.ONCE);
    reasons.sources();
    reasons.cautions(cautions, cautions());
  }

  @Override
  public List<String> blanks() {
    List<String> blanks = new ArrayList<>();
    for (Part part : parts()) {
      for (int number = 1; part.isForged() && number <= part.count(); number++) {
        String which = part.count() == 1 ? part.name() : part.name() + " " + number;
        blanks.add(which + ": cut ________ left over ________ found ________");
      }
    }
    return blanks;
  }

  @Override
  public final List<Cut> cuts() {
    return parts().stream()
        .map(
            part ->
                new Cut(
                    part.bar(),
                    name + ", " + (parts().size() == 1 ? "" : one + ": ") + part.name(),
                    part.length(),
                    part.count(),
                    kerf,
                    graduation))
        .toList();
  }

  @Override
  public List<Drawing> bars() {
    return marked().stream()
        .flatMap(part -> Pictures.small(part.marked(), part.name() + ", cold bar").stream())
        .toList();
  }

  /** Its drawing, so many times smaller. */
  protected abstract Drawing drawing(int reduction);

  /** At true scale if that takes few sheets, else as large as finds room on one. */
  @Override
  public final List<Drawing> drawings() {
    for (int reduction : new int[] {1, 2, 3, 4, 5, 10, 20, 50, 100}) {
      int most = reduction == 1 ? MOST_SHEETS : 1;
      Optional<Drawing> drawing = Pictures.onSheets(most, () -> drawing(reduction));
      if (drawing.isPresent()) {
        return List.of(drawing.get());
      }
    }
    return List.of();
  }

  @Override
  public final Measure<Length> coat() {
    return coat;
  }

  @Override
  public Map<Screw, Integer> screws() {
    return Map.of();
  }
}
