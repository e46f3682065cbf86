package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.hammerscale.examples.order.BarPicture;
import org.hammerscale.examples.order.HeatText;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.fastening.Countersink;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.hinge.ToolChoice;
import org.hammerscale.piece.BenchMark;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.piece.Trim;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;

/** The front of a job sheet, for the anvil, in the order of the work: decisions, no reasons. */
final class FrontSheet {
  private static final int MOST_CAUTIONS = 3;
  private static final Graduation<Angle> WHOLE_DEGREE = Graduation.of(Measures.degrees(1));

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
    job();
    barrelEnd();
    HingeOrder.LEAVES.forEach(this::marks);
    tools();
    slots();
    checks();
    heats();
    HingeOrder.LEAVES.forEach(this::holes);
    screws();
    hanging();
    cautions(order).forEach(sheet::caution);
  }

  private void job() {
    sheet.line(
        "%s: %s, %d %s",
        order.name(), pair.hand(), order.pairs(), order.pairs() == 1 ? "pair" : "pairs");
    sheet.line("bar %s", pair.strap());
    for (Leaf leaf : HingeOrder.LEAVES) {
      sheet.line(
          "    CUT   %s   %s long   ×  %d      (enough 19 times in 20)",
          HingeOrder.called(leaf),
          rule.format(order.leaf(leaf).bar().cutLength()),
          order.leaf(leaf).toCut());
      if (order.leaf(leaf).isTrial()) {
        sheet.line("          %s", trial());
      } else if (order.leaf(leaf).done() > 0) {
        sheet.line("          %s", learned(leaf));
      }
    }
  }

  private String trial() {
    return "the first: write in the log what comes off"
        + (order.pairs() == 1 ? "" : ", then print this again");
  }

  private String learned(Leaf leaf) {
    Measure<Length> saved = order.leaf(leaf).saved();
    boolean less = saved.getValue() >= 0;
    Measure<Length> each = less ? saved : saved.negate();
    return order.leaf(leaf).done()
        + (less ? " done; the log saves " : " done; the log adds ")
        + rule.format(each)
        + " a piece, "
        + rule.format(each.multiply(order.leaf(leaf).left()))
        + " of bar together";
  }

  /** What is alike in both leaves, since both are rolled to one barrel. */
  private void barrelEnd() {
    MarkedBar bar = order.leaf(Leaf.FIRST).bar();
    sheet.entry(
        "R",
        "leaf meets barrel, %s from the barrel end; measure all from R",
        rule.format(bar.reference()));
    strip(bar)
        .ifPresent(
            trim ->
                sheet.entry(
                    "Strip",
                    "before rolling, cut the strip to %s from R (%s goes)",
                    rule.format(trim.keptFromReference()),
                    rule.format(trim.length().likely())));
  }

  private static Optional<Trim> strip(MarkedBar bar) {
    return bar.trims().stream().filter(trim -> trim.when() == Trimming.BEFORE_WORK).findFirst();
  }

  private void marks(Leaf leaf) {
    MarkedBar bar = order.leaf(leaf).bar();
    sheet.heading(HingeOrder.called(leaf), "cold, from R");
    sheet.block(BarPicture.of(bar, rule));
    for (BenchMark mark : bar.marks()) {
      if (!mark.isReference()) {
        String holds =
            mark.movedBy().map(f -> "lost with the " + f.name()).orElse("holds to the last");
        sheet.entry(
            "", "punch at %s: %s; %s", rule.format(mark.fromReference()), mark.label(), holds);
      }
    }
    for (Trim trim : bar.trims()) {
      if (trim.when() == Trimming.AFTER_WORK) {
        tip(trim);
      }
    }
  }

  /** What is too long at the tip; of a leaf that nobody draws there is nothing. */
  private void tip(Trim trim) {
    if (trim.length().high().getValue() == 0) {
      return;
    }
    sheet.entry(
        "Tip",
        "once drawn cut it %s from R; about %s of %s × %s goes",
        rule.format(trim.keptFromReference()),
        rule.format(trim.length().likely()),
        rule.format(trim.section().width()),
        rule.format(trim.section().thickness()));
  }

  private void tools() {
    ToolChoice drift = order.driftChoice();
    ToolChoice swage = order.swageChoice();
    String measured = order.isInches() ? " (" + order.calliper(drift.size()) + ")" : "";
    strip(order.leaf(Leaf.FIRST).bar())
        .ifPresent(
            trim ->
                sheet.entry(
                    "Curl",
                    "%s of strip, %s",
                    rule.format(trim.keptFromReference()),
                    pair.barrel().closing().end()));
    sheet.entry(
        "Drift",
        "%s%s, driven hot: bore %s, the pin plays %s",
        drift.size(),
        measured,
        order.calliper(drift.leaves()),
        order.calliper(pair.bore().clearanceLeftBy(drift.leaves())));
    sheet.entry("Swage", "%s: barrel %s over", swage.size(), order.calliper(swage.leaves()));
  }

  private void slots() {
    for (Leaf leaf : HingeOrder.LEAVES) {
      String slots = pair.slotsOf(leaf).stream().map(this::edges).collect(Collectors.joining("; "));
      sheet.entry(
          leaf == Leaf.SECOND ? "Slots" : "",
          "%s: %s, across from the %s",
          HingeOrder.called(leaf),
          slots,
          pair.markedFrom(leaf));
    }
    sheet.entry("", "seen side up, barrel to the left; saw inside the lines");
    sheet.entry(
        "",
        "floor %s past R, %s from the uncut barrel end",
        rule.format(pair.slotFloor()),
        rule.format(order.leaf(Leaf.FIRST).bar().reference().add(pair.slotFloor())));
  }

  private String edges(KnuckleSlot slot) {
    return rule.format(slot.start()) + " to " + rule.format(slot.end());
  }

  private void checks() {
    Measure<Temperature> red = order.isInches() ? Measures.fahrenheit(1200) : Measures.celsius(650);
    Contraction dull = Contraction.from(red, pair.strap().material());
    Measure<Length> bore = order.driftChoice().leaves();
    Measure<Length> over = order.swageChoice().leaves();
    sheet.entry(
        "Check",
        "bore %s cold, %s hot, at dull red (about %s)",
        order.calliper(bore),
        order.calliper(dull.hot(bore)),
        red);
    sheet.entry(
        "", "barrel %s over cold, %s hot", order.calliper(over), order.calliper(dull.hot(over)));
    for (Leaf leaf : HingeOrder.LEAVES) {
      sheet.entry(
          "",
          "%s %s from pin to tip, %s over all",
          HingeOrder.called(leaf),
          rule.format(pair.lengthFromPin(leaf)),
          rule.format(order.leaf(leaf).bar().layout().finishedLength()));
    }
  }

  private void heats() {
    Measure<Temperature> heat = order.contraction().heat();
    sheet.entry("Heat", "%s, %s; at the anvil:", heat, HeatText.colour(heat));
    heats("barrel of each leaf", order.barrelHeats());
    for (Leaf leaf : HingeOrder.LEAVES) {
      String stretches =
          order.leaf(leaf).stretches() > 1
              ? ", each of " + order.leaf(leaf).stretches() + " stretches"
              : "";
      order
          .leaf(leaf)
          .taperHeats()
          .ifPresent(heats -> heats("taper of the " + HingeOrder.called(leaf) + stretches, heats));
    }
  }

  private void heats(String stretch, Heats heats) {
    sheet.entry(
        "",
        "%s: about %s, %s each",
        stretch,
        heats.count().likely(),
        HeatText.window(heats.cooling()));
  }

  private void holes(Leaf leaf) {
    HolePlan holes = order.leaf(leaf).holes();
    String places =
        holes.layout().positions().stream().map(rule::format).collect(Collectors.joining(", "));
    sheet.entry(
        leaf == Leaf.SECOND ? "Holes" : "",
        "%s, from the pin's centre%s: %s",
        HingeOrder.called(leaf),
        holes.isClearOfSeams() ? " (clear of joints)" : "",
        places);
  }

  private void screws() {
    HolePlan holes = order.leaf(Leaf.SECOND).holes();
    Countersink sunk = holes.countersinks().get(0);
    Measure<Length> least =
        HingeOrder.LEAVES.stream()
            .map(leaf -> order.leaf(leaf).holes().thinnest().land())
            .min(Measure::compareTo)
            .orElseThrow();
    sheet.entry("Screw", "%s", holes.screw());
    sheet.entry(
        "Iron",
        "drill %s, sink %s to %s; %s or more is left below",
        order.toolSteps().upTo(sunk.hole()),
        sunk.angle(),
        order.calliper(sunk.diameter()),
        order.calliper(least));
    sheet.entry(
        "Wood",
        "drill %s for the thread, %s for the shank",
        order.toolSteps().nearest(holes.pilot().threadHole()),
        order.toolSteps().nearest(holes.pilot().shankHole()));
  }

  private void hanging() {
    Measure<Length> over = pair.barrel().outsideDiameter();
    sheet.entry(
        "Hang",
        "%s, pin centre %s off the wood; folded %s thick",
        pair.hanging(),
        rule.format(over.divide(2)),
        rule.format(over));
    order
        .centres()
        .ifPresent(c -> sheet.entry("", "hinges %s from centre to centre", rule.format(c)));
    sheet.entry(
        "",
        "opens %s (asked %s), stopped there by the %s",
        WHOLE_DEGREE.downTo(pair.opening()),
        pair.wantedOpening(),
        pair.swing().contact());
    sheet.entry(
        "Gap",
        "%s in each joint (asked %s); the door drops %s",
        rule.format(pair.knuckles().gap()),
        order.isInches() ? order.gapAsked() : order.calliper(order.gapAsked()),
        rule.format(pair.knuckles().drop()));
    sheet.entry(
        "Pin",
        "%s round, cut %s: forge one head, peen the other end over",
        pair.bore().pin(),
        rule.format(order.pinCut()));
  }

  /** The cautions of this job, of its iron, its wood and its fire the first. */
  static List<String> cautions(HingeOrder order) {
    return Stream.of(
            order.pair().cautions().stream(),
            order.leaf(Leaf.SECOND).holes().cautions().stream(),
            HingeOrder.LEAVES.stream()
                .flatMap(l -> order.leaf(l).taperHeats().stream())
                .flatMap(FrontSheet::reheats))
        .map(Stream::findFirst)
        .flatMap(Optional::stream)
        .limit(MOST_CAUTIONS)
        .map(Caution::text)
        .toList();
  }

  /** What is said of going into the fire again, beyond what the cooling itself says. */
  private static Stream<Caution> reheats(Heats heats) {
    List<Caution> cooling = heats.cooling().cautions();
    return heats.cautions().stream().filter(caution -> !cooling.contains(caution));
  }

  /** A line to fill in for each piece that is to be forged now, in the order of the work. */
  static List<String> blanks(HingeOrder order) {
    List<String> pieces = new ArrayList<>();
    for (int number = 1; number <= order.pairs(); number++) {
      for (Leaf leaf : HingeOrder.LEAVES) {
        if (number > order.leaf(leaf).done()
            && number <= order.leaf(leaf).done() + order.leaf(leaf).toCut()) {
          pieces.add(
              (leaf == Leaf.SECOND ? "door " : "post ")
                  + number
                  + ": cut ________ off at barrel ________ off at tip ________ found ________");
        }
      }
    }
    return pieces;
  }
}
