package org.hammerscale.examples.order;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.hammerscale.heat.FireCautions;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;
import org.hammerscale.working.Step;
import org.hammerscale.working.Working;

/** The reasons on the back of a sheet: each working once, each source once, every caution. */
public final class Reasons {
  /** What a reader of several workings must know. */
  public static final String ONCE = "What stands in one working is not said again in the next.";

  private static final List<String> LAST =
      List.of(
          "unknown scrap and reinforcing bar vary: use stock you know. Do not quench a load-bearing"
              + " pin",
          "what it carries is not said here: have overhead and public-safety hardware checked by a"
              + " licensed engineer. Local codes govern.");

  private final SheetText sheet;
  private final boolean inches;
  private final List<Source> sources = new ArrayList<>();
  private final Set<String> printed = new HashSet<>();

  /** Reasons that are written on a sheet, in inches or in millimetres. */
  public Reasons(SheetText sheet, boolean inches) {
    this.sheet = sheet;
    this.inches = inches;
  }

  /** What fire and hand decide: nine of ten outcomes lie between low and high. */
  public void estimate(String what, Estimate<?> estimate, Working working) {
    sheet.cells(
        "%-29s %-12s %-12s %-12s %s",
        what, estimate.low(), estimate.likely(), estimate.high(), numbers(working));
  }

  /** The line above the estimates of a job. */
  public void estimates(String name) {
    sheet.cells(
        "%-29s %-12s %-12s %-12s %s",
        "Estimated, nine of ten within", "low", "likely", "high", name);
  }

  /** A working without the steps that an earlier one has in the same words. */
  public void working(Working working) {
    working("", working);
  }

  /** The same, of one of several pieces that have such a working. */
  public void working(String piece, Working working) {
    List<String> steps = steps(working).stream().filter(printed::add).toList();
    if (steps.isEmpty()) {
      return;
    }
    List<String> parts = new ArrayList<>();
    String of = piece.isEmpty() ? "" : piece + ", ";
    parts.add(of + working.title().replaceAll("\\s+", " ") + " " + numbers(working) + ":");
    steps.forEach(step -> parts.add(step + ";"));
    sheet.packed(parts);
  }

  /** Each step as the working prints it, on one line, its meaning in brackets behind it. */
  private List<String> steps(Working working) {
    List<String> lines =
        working
            .toString()
            .lines()
            .skip(working.title().lines().count())
            .limit(working.steps().size())
            .toList();
    List<String> steps = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String meaning = working.steps().get(i).meaning();
      String formula = lines.get(i).strip();
      formula = formula.substring(0, formula.length() - meaning.length()).strip();
      Step step = working.steps().get(i);
      if (isOnlyRenamed(working, step)) {
        continue;
      }
      steps.add((step.isGiven() ? inOwnUnit(step) : formula) + " (" + meaning + ")");
    }
    return steps;
  }

  /** Whether it is the step before it under another name, at the end of a sum of one. */
  private static boolean isOnlyRenamed(Working working, Step step) {
    List<Step> all = working.steps();
    int before = all.indexOf(step) - 1;
    return before >= 0
        && !all.get(before).isGiven()
        && step.formula().equals(all.get(before).symbol());
  }

  /** What was given, first in the units of the job where the formula wants others. */
  private String inOwnUnit(Step step) {
    Measure<?> value = step.value();
    Map<Unit<?>, Unit<?>> own =
        Map.of(
            ShopUnits.MILLIMETRE,
            ShopUnits.INCH,
            ShopUnits.SQUARE_MILLIMETRE,
            ShopUnits.SQUARE_INCH,
            ShopUnits.CELSIUS,
            ShopUnits.FAHRENHEIT);
    Unit<?> unit = inches ? own.get(value.getUnit()) : null;
    String first = unit == null ? "" : to(value, unit) + " = ";
    return step.symbol() + " = " + first + value;
  }

  /** Only for two units of one dimension, as the table has them. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Measure<Q> to(Measure<?> value, Unit<?> unit) {
    return ((Measure<Q>) value).to((Unit<Q>) unit);
  }

  private String numbers(Working working) {
    return working.sources().stream()
        .map(source -> String.valueOf(number(source)))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  /** The number of a source in the list at the end. */
  public int number(Source source) {
    if (!sources.contains(source)) {
      sources.add(source);
    }
    return sources.indexOf(source) + 1;
  }

  /** The sources of all that was written before. */
  public void sources() {
    List<String> numbered = new ArrayList<>(List.of("Sources:"));
    for (int i = 0; i < sources.size(); i++) {
      numbered.add("[" + (i + 1) + "] " + sources.get(i) + ";");
    }
    sheet.wrapped("", 2, String.join(" ", numbered));
  }

  /** The cautions of a job, of the fire and of the iron, but for those on the front. */
  public void cautions(Collection<Caution> cautions, List<String> inFront) {
    Set<String> all = new LinkedHashSet<>();
    cautions.forEach(caution -> all.add(caution.text()));
    FireCautions.all().forEach(caution -> all.add(caution.text()));
    all.addAll(LAST);
    inFront.forEach(all::remove);
    all.removeIf(words -> words.startsWith("local rules")); // said at the end
    all.forEach(sheet::caution);
  }
}
