package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.FireCautions;
import org.hammerscale.heat.HeatColour;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;
import org.hammerscale.working.Step;
import org.hammerscale.working.Working;

/** The back of a job sheet: each estimate, each working once, each source once, every caution. */
final class BackSheet {
  private static final List<String> LAST =
      List.of(
          "unknown scrap and reinforcing bar vary: use stock you know. Do not quench a load-bearing"
              + " pin",
          "what it carries is not said here: have overhead and public-safety hardware checked by a"
              + " licensed engineer. Local codes govern.");

  private final SheetText sheet;
  private final HingeOrder order;
  private final HingePair pair;
  private final List<String> inFront;
  private final List<Source> sources = new ArrayList<>();
  private final Set<Estimate<?>> windows = new HashSet<>();
  private final Set<String> printed = new HashSet<>();

  BackSheet(SheetText sheet, HingeOrder order, List<String> inFront) {
    this.sheet = sheet;
    this.inFront = inFront;
    this.order = order;
    this.pair = order.pair();
  }

  void write() {
    sheet.rule('-');
    estimates();
    workings();
    String colours =
        HeatColour.at(order.contraction().heat()).stream()
            .map(colour -> colour.name() + " [" + number(colour.source()) + "]")
            .collect(Collectors.joining(", "));
    sheet.wrapped(
        "",
        2,
        "What stands in one working is not said again in the next. Tapers: "
            + order.taperWork()
            + ", a hand's breadth at a time. Weights: "
            + pair.strap().material()
            + ". "
            + order.contraction().heat()
            + " is "
            + colours
            + " in published tables.");
    List<String> numbered = new ArrayList<>(List.of("Sources:"));
    for (int i = 0; i < sources.size(); i++) {
      numbered.add("[" + (i + 1) + "] " + sources.get(i) + ";");
    }
    sheet.wrapped("", 2, String.join(" ", numbered));
    cautions().forEach(sheet::caution);
  }

  /** What fire and hand decide: nine of ten outcomes lie between low and high. */
  private void estimates() {
    sheet.cells(
        "%-29s %-12s %-12s %-12s %s",
        "Estimated, nine of ten within", "low", "likely", "high", order.name());
    for (Leaf leaf : HingeOrder.LEAVES) {
      Working working = order.bar(leaf).layout().working();
      String called = HingeOrder.called(leaf);
      estimate("bar used by the " + called, order.bar(leaf).layout().cutLength(), working);
      estimate("of it, scale takes", order.bar(leaf).layout().scaleAllowance(), working);
      order.taperHeats(leaf).ifPresent(heats -> heats("taper of the " + called, heats));
    }
    heats("barrel", order.barrelHeats());
    estimate(
        "bore left by the drift",
        order.drift().boreLeftByEye(order.driftChoice().size()),
        order.drift().boreWorking(order.driftChoice().size()));
    estimate(
        "barrel left by the swage",
        order.swage().outsideLeftByEye(order.swageChoice().size()),
        order.swage().outsideWorking(order.swageChoice().size()));
    estimate("pin to cut", order.pinLength(), order.pin().lengthWorking(pair.knuckles().width()));
  }

  private void heats(String part, Heats heats) {
    estimate("heats, " + part, heats.count(), heats.working());
    if (windows.add(heats.cooling().window())) {
      estimate("window in each", heats.cooling().window(), heats.cooling().windowWorking());
    }
  }

  private void estimate(String what, Estimate<?> estimate, Working working) {
    sheet.cells(
        "%-29s %-12s %-12s %-12s %s",
        what, estimate.low(), estimate.likely(), estimate.high(), numbers(working));
  }

  private void workings() {
    working(pair.bore().working());
    working(pair.barrel().working());
    working(pair.swing().openingWorking());
    // The rule is the same for both leaves: it is told of the first that is tapered.
    HingeOrder.LEAVES.stream()
        .flatMap(leaf -> pair.leaf(leaf).features().stream())
        .filter(Taper.class::isInstance)
        .findFirst()
        .ifPresent(taper -> working(taper.working()));
    for (Leaf leaf : HingeOrder.LEAVES) {
      working(order.bar(leaf).layout().working());
    }
    working(order.drift().working());
    working(order.swage().working());
    working(order.barrelHeats().working());
    HingeOrder.LEAVES.forEach(
        leaf -> order.taperHeats(leaf).ifPresent(heats -> working(heats.working())));
    working(order.holes(Leaf.SECOND).thinnest().working());
    working(order.holes(Leaf.SECOND).pilot().threadHoleWorking());
  }

  /** A working without the steps that an earlier one has in the same words. */
  private void working(Working working) {
    List<String> steps = steps(working).stream().filter(printed::add).toList();
    if (steps.isEmpty()) {
      return;
    }
    List<String> parts = new ArrayList<>();
    parts.add(working.title() + " " + numbers(working) + ":");
    steps.forEach(step -> parts.add(step + ";"));
    sheet.packed(parts);
  }

  /** Each step as the working prints it, on one line, its meaning in brackets behind it. */
  private List<String> steps(Working working) {
    List<String> lines = working.toString().lines().skip(1).limit(working.steps().size()).toList();
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
    Unit<?> unit = order.isInches() ? own.get(value.getUnit()) : null;
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

  private int number(Source source) {
    if (!sources.contains(source)) {
      sources.add(source);
    }
    return sources.indexOf(source) + 1;
  }

  private Set<String> cautions() {
    Set<String> all = new LinkedHashSet<>();
    List<Caution> cautions = new ArrayList<>(pair.cautions());
    for (Leaf leaf : HingeOrder.LEAVES) {
      cautions.addAll(order.bar(leaf).layout().cautions());
      cautions.addAll(order.bar(leaf).cautions());
      cautions.addAll(order.holes(leaf).cautions());
      order.taperHeats(leaf).ifPresent(heats -> cautions.addAll(heats.cautions()));
    }
    cautions.addAll(order.barrelHeats().cautions());
    cautions.addAll(FireCautions.all());
    cautions.forEach(caution -> all.add(caution.text()));
    all.addAll(LAST);
    all.removeAll(inFront);
    all.removeIf(words -> words.startsWith("local rules")); // said at the end
    return all;
  }
}
