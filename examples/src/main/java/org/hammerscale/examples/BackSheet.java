package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.measure.quantity.Length;
import org.hammerscale.heat.FireCautions;
import org.hammerscale.heat.HeatColour;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.Drift;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.hinge.Swage;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/** The back of a job sheet: workings, sources and every caution. */
final class BackSheet {
  private static final List<String> LAST =
      List.of(
          "Unknown scrap and reinforcing bar vary: use stock you know for what bears a load. Do not"
              + " quench a load-bearing pin.",
          "This sheet does not say what the hinge carries. Have overhead and public-safety hardware"
              + " checked by a licensed engineer. Local codes govern.");

  private final SheetText sheet;
  private final HingeOrder order;
  private final List<Source> sources = new ArrayList<>();

  BackSheet(SheetText sheet, HingeOrder order) {
    this.sheet = sheet;
    this.order = order;
  }

  void write() {
    sheet.rule('-');
    sheet.line("Overleaf: how the numbers came about");
    sheet.blank();
    estimates();
    for (Working working : workings()) {
      sheet.block(working + "\n");
      sheet.blank();
    }
    sheet.line("The heat by its colour, as published tables name it:");
    HeatColour.at(order.contraction().heat())
        .forEach(colour -> sheet.line("  %s (%s)", colour, colour.source()));
    sheet.line("Weights: %s; rolled bars differ from it.", order.pair().strap().material());
    sheet.blank();
    cautions().forEach(sheet::caution);
    sheet.blank();
  }

  /** What fire and hand decide: nine of ten outcomes lie between low and high. */
  private void estimates() {
    HingePair pair = order.pair();
    Drift drift = order.drift();
    Swage swage = order.swage();
    Measure<Length> body = order.driftSize();
    Measure<Length> groove = order.grooveSize();
    sheet.line("Estimated: low, likely, high; nine of ten outcomes lie between. [n]: its sources");
    sheet.blank();
    for (Leaf leaf : List.of(Leaf.SECOND, Leaf.FIRST)) {
      Working working = order.layout(leaf).working();
      estimate("cut of the " + HingeOrder.called(leaf), order.layout(leaf).cutLength(), working);
      estimate("of it, scale takes", order.layout(leaf).scaleAllowance(), working);
    }
    heats("barrel", order.barrelHeats());
    heats("taper", order.taperHeats());
    Measure<Length> bore = pair.bore().diameter();
    Measure<Length> over = pair.barrel().outsideDiameter();
    estimate("bore, hot", order.contraction().hotByEye(bore), order.contraction().hotWorking(bore));
    estimate(
        "barrel, hot", order.contraction().hotByEye(over), order.contraction().hotWorking(over));
    estimate("bore left by the drift", drift.boreLeftByEye(body), drift.boreWorking(body));
    estimate(
        "barrel left by the swage", swage.outsideLeftByEye(groove), swage.outsideWorking(groove));
    estimate("pin to cut", order.pinLength(), order.pin().lengthWorking(pair.knuckles().width()));
    sheet.blank();
    for (int i = 0; i < sources.size(); i++) {
      sheet.entry("  [" + (i + 1) + "]", "%s", sources.get(i));
    }
    sheet.blank();
  }

  private void heats(String part, Heats heats) {
    estimate("heats for the " + part, heats.count(), heats.working());
    estimate("window in each", heats.cooling().window(), heats.cooling().windowWorking());
  }

  private void estimate(String what, Estimate<?> estimate, Working working) {
    StringBuilder numbers = new StringBuilder();
    for (Source source : working.sources()) {
      if (!sources.contains(source)) {
        sources.add(source);
      }
      numbers.append(numbers.isEmpty() ? "" : ", ").append(sources.indexOf(source) + 1);
    }
    sheet.line(
        "  %-25s %-11s %-11s %-11s [%s]",
        what, estimate.low(), estimate.likely(), estimate.high(), numbers);
  }

  private List<Working> workings() {
    HingePair pair = order.pair();
    List<Working> all = new ArrayList<>();
    all.add(pair.bore().working());
    all.add(pair.barrel().ruleOfThreeWorking());
    for (Leaf leaf : List.of(Leaf.SECOND, Leaf.FIRST)) {
      for (Feature feature : pair.leaf(leaf).features()) {
        all.add(feature.working());
      }
      all.add(order.layout(leaf).working());
      all.add(order.holes(leaf).layout().moveWorking());
    }
    for (KnuckleSlot slot : pair.slotsOf(Leaf.SECOND)) {
      all.add(slot.tongueWorking(order.kerf()));
    }
    all.add(pair.barrel().closing().slotFloorWorking(pair.notchDepth()));
    all.add(pair.swing().openingWorking());
    all.add(order.drift().working());
    all.add(order.swage().working());
    for (Heats heats : List.of(order.barrelHeats(), order.taperHeats())) {
      all.add(heats.cooling().windowWorking());
      all.add(heats.working());
    }
    all.add(order.holes(Leaf.SECOND).countersink().working());
    all.add(order.holes(Leaf.SECOND).pilot().threadHoleWorking());
    // Both leaves share what is alike in them.
    return List.copyOf(new LinkedHashSet<>(all));
  }

  private Set<String> cautions() {
    Set<String> all = new LinkedHashSet<>();
    List<Caution> cautions = new ArrayList<>(order.pair().cautions());
    for (Leaf leaf : Leaf.values()) {
      cautions.addAll(order.layout(leaf).cautions());
      cautions.addAll(order.holes(leaf).cautions());
    }
    cautions.addAll(order.barrelHeats().cautions());
    cautions.addAll(order.taperHeats().cautions());
    cautions.addAll(FireCautions.all());
    cautions.forEach(caution -> all.add(caution.text()));
    all.addAll(LAST);
    return all;
  }
}
