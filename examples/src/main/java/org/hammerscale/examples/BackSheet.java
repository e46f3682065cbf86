package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hammerscale.heat.FireCautions;
import org.hammerscale.heat.HeatColour;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.stock.Feature;
import org.hammerscale.working.Caution;
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

  BackSheet(SheetText sheet, HingeOrder order) {
    this.sheet = sheet;
    this.order = order;
  }

  void write() {
    sheet.rule('-');
    sheet.line("Overleaf: how the numbers came about");
    sheet.blank();
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

  private List<Working> workings() {
    HingePair pair = order.pair();
    List<Working> all = new ArrayList<>();
    all.add(pair.bore().working());
    all.add(pair.barrel().benchWorking());
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
    all.add(pair.drift(order.contraction()).working());
    all.add(pair.swage(order.contraction()).working());
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
