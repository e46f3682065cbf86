package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.hammerscale.fastening.Countersink;
import org.hammerscale.heat.HeatColour;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.piece.Layout;
import org.hammerscale.piece.Mark;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;

/** The front of a job sheet, for the anvil, in the order of the work. */
final class FrontSheet {
  private static final int MOST_CAUTIONS = 3;
  private static final Graduation<Length> THOUSANDTH = Graduation.of(Measures.inches(0.001));
  private static final Graduation<Time> WHOLE_SECOND = Graduation.of(Measures.seconds(1));
  private static final Graduation<Angle> WHOLE_DEGREE = Graduation.of(Measures.degrees(1));
  private static final List<Leaf> LEAVES = List.of(Leaf.SECOND, Leaf.FIRST);

  private final SheetText sheet;
  private final HingeOrder order;
  private final HingePair pair;
  private final LengthFormat rule;

  FrontSheet(SheetText sheet, HingeOrder order) {
    this.sheet = sheet;
    this.order = order;
    this.pair = order.pair();
    this.rule = order.rule();
  }

  void write() {
    sheet.rule('=');
    job();
    LEAVES.forEach(this::marks);
    tools();
    slots();
    checks();
    heats();
    LEAVES.forEach(this::holes);
    hanging();
    sheet.blank();
    sheet.line("Cut ______________   trimmed ______________   found ______________");
    sheet.blank();
    cautions();
    sheet.blank();
  }

  private void job() {
    sheet.line("%s: %s, %d %s", order.name(), pair.hand(), order.pairs(), pairs());
    sheet.line("bar %s", pair.strap());
    sheet.blank();
    for (Leaf leaf : LEAVES) {
      sheet.line(
          "    CUT   %-10s %s   ×   %d",
          HingeOrder.called(leaf), rule.format(order.cut(leaf)), order.pairs());
      sheet.line("          expect about %s to trim", rule.format(order.trim(leaf)));
    }
    sheet.blank();
  }

  private String pairs() {
    return order.pairs() == 1 ? "pair" : "pairs";
  }

  private void marks(Leaf leaf) {
    sheet.line("Punch the %s cold, from the barrel end:", HingeOrder.called(leaf));
    Layout layout = order.layout(leaf);
    List<Double> positions = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    for (Mark mark : layout.marks()) {
      String place = rule.format(mark.isCut() ? order.cut(leaf) : mark.position().high());
      sheet.line("    %-12s %s", place, mark.label());
      positions.add(mark.position().high().in(layout.cutLength().high().getUnit()));
      labels.add(place);
    }
    List<String> names = layout.piece().features().stream().map(f -> f.name()).toList();
    sheet.blank();
    sheet.block(BarPicture.of(positions, labels, names));
    sheet.blank();
  }

  private void tools() {
    Barrel barrel = pair.barrel();
    Measure<Length> body = order.driftSize();
    Measure<Length> groove = order.grooveSize();
    sheet.entry("Curl", "%s of bar, %s", rule.format(curl().high()), barrel.closing().end());
    sheet.entry(
        "Drift",
        "%s, driven hot; leaves a bore of %s",
        body,
        calliper(order.drift().boreLeftBy(body)));
    sheet.entry(
        "Swage",
        "%s; leaves %s over the barrel",
        groove,
        calliper(order.swage().outsideLeftBy(groove)));
  }

  /** A size as a calliper reads it: thousandths of an inch or tenths of a millimetre. */
  private Measure<Length> calliper(Measure<Length> size) {
    return order.isInches() ? THOUSANDTH.nearest(size) : Graduation.TENTH_MILLIMETRE.nearest(size);
  }

  private Estimate<Length> curl() {
    return pair.barrel().stock(pair.strap().section());
  }

  private void slots() {
    for (Leaf leaf : LEAVES) {
      for (KnuckleSlot slot : pair.slotsOf(leaf)) {
        sheet.entry(
            leaf == LEAVES.get(0) ? "Door slot" : "Post slot",
            "from %s to %s across, from the %s; punch out %s",
            rule.format(slot.start()),
            rule.format(slot.end()),
            pair.markedFrom(leaf),
            rule.format(slot.tongue(order.kerf()).downTo(order.graduation())));
      }
    }
    sheet.entry(
        "",
        "saw %s past the barrel's mark, which is %s behind the pin; front face up, barrel to the"
            + " left",
        rule.format(pair.slotFloor()),
        rule.format(pair.notchDepth()));
  }

  private void checks() {
    coldAndHot("Bore", "", pair.bore().diameter());
    coldAndHot("Barrel", " over", pair.barrel().outsideDiameter());
    for (Leaf leaf : LEAVES) {
      sheet.entry(
          "Check",
          "%s %s from pin to tip, %s over all",
          HingeOrder.called(leaf),
          rule.format(pair.lengthFromPin(leaf)),
          rule.format(order.layout(leaf).finishedLength()));
    }
  }

  private void coldAndHot(String label, String across, Measure<Length> cold) {
    Measure<Length> hot = order.contraction().hot(cold);
    sheet.entry(label, "%s%s cold, reads %s hot", calliper(cold), across, calliper(hot));
  }

  private void heats() {
    String colours =
        HeatColour.at(order.contraction().heat()).stream()
            .map(HeatColour::name)
            .distinct()
            .collect(Collectors.joining(" or "));
    sheet.entry("Heat", "%s: %s", order.contraction().heat(), colours);
    heats("barrel", order.barrelHeats());
    heats("taper", order.taperHeats());
    for (Leaf leaf : LEAVES) {
      sheet.entry(
          "Scale",
          "takes about %s of the %s's cut",
          rule.format(order.layout(leaf).scaleAllowance().likely()),
          HingeOrder.called(leaf));
    }
  }

  private void heats(String part, Heats heats) {
    sheet.entry(
        "Heats",
        "%s: about %s a leaf, each %s to %s at the anvil",
        part,
        heats.count().likely(),
        WHOLE_SECOND.downTo(heats.cooling().window().low()),
        WHOLE_SECOND.downTo(heats.cooling().window().high()));
  }

  private void holes(Leaf leaf) {
    HolePlan holes = order.holes(leaf);
    String places =
        holes.layout().positions().stream().map(rule::format).collect(Collectors.joining(", "));
    sheet.entry("Holes", "%s, from the pin: %s", HingeOrder.called(leaf), places);
    if (leaf == LEAVES.get(LEAVES.size() - 1)) {
      Countersink sunk = holes.countersink();
      sheet.entry("Screw", "%s", holes.screw());
      sheet.entry("Iron", "drill %s", order.toolSteps().upTo(sunk.hole()));
      sheet.entry(
          "",
          "countersink %s, %s wide, %s deep",
          sunk.angle(),
          calliper(sunk.diameter()),
          calliper(sunk.depth()));
      if (!sunk.fits()) {
        sheet.entry("", "THE HEAD DOES NOT FIT the iron: see below");
      }
      sheet.entry(
          "Wood",
          "drill %s for the thread, %s for the shank",
          order.toolSteps().nearest(holes.pilot().threadHole()),
          order.toolSteps().nearest(holes.pilot().shankHole()));
    }
  }

  private void hanging() {
    sheet.entry(
        "Hang",
        "%s; to open %s, can open %s from shut",
        pair.hanging(),
        pair.wantedOpening(),
        WHOLE_DEGREE.downTo(pair.opening()));
    sheet.entry("", "stopped there by the %s", pair.swing().contact());
    sheet.entry("Gap", "%s in each joint; the door drops as much", pair.knuckles().gap());
    sheet.entry(
        "Pin",
        "%s round, cut %s, one end to peen over",
        pair.bore().pin(),
        rule.format(order.pinLength().high().upTo(order.graduation())));
  }

  private void cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.addAll(order.holes(Leaf.SECOND).cautions());
    cautions.addAll(pair.cautions());
    cautions.addAll(order.taperHeats().cautions());
    cautions.stream().limit(MOST_CAUTIONS).map(Caution::text).forEach(sheet::caution);
    sheet.line("All cautions, and how each number came about, stand overleaf.");
  }
}
