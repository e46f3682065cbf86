package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Drift;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.HingePairBuilder;
import org.hammerscale.hinge.Knuckles;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.hinge.Pin;
import org.hammerscale.hinge.Swage;
import org.hammerscale.hinge.ToolRack;
import org.hammerscale.piece.Layout;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** One job of an order: so many pairs of leaves, all alike, and what the fire does to them. */
final class HingeOrder {
  private final String name;
  private final int pairs;
  private final Graduation<Length> graduation;
  private final HingePair pair;
  private final Measure<Length> kerf;
  private final Contraction contraction;
  private final Heats barrelHeats;
  private final Heats taperHeats;
  private final Layout doorLayout;
  private final Layout postLayout;
  private final Drift drift;
  private final Swage swage;
  private final HolePlan doorHoles;
  private final HolePlan postHoles;

  private HingeOrder(OrderColumn job, HingePair pair, Section tip) {
    this.name = job.name();
    this.pairs = job.count(OrderItem.PAIRS);
    this.graduation = job.graduation();
    this.pair = pair;
    this.kerf = job.lengthOrZero(OrderItem.KERF);
    for (Leaf leaf : Leaf.values()) {
      pair.slotsOf(leaf).forEach(slot -> slot.tongue(kerf)); // refuses a saw that is too coarse
    }
    this.contraction = Contraction.from(job.heat(), pair.strap().material());
    // The barrel cools as the bar does; at the taper the thin tip is cold first.
    Cooling bar = Cooling.from(job.heat(), pair.strap());
    this.barrelHeats = Heats.forWork(job.minutes(OrderItem.BARREL_WORK), bar);
    this.taperHeats = Heats.forWork(job.minutes(OrderItem.TAPER_WORK), bar.withThinnest(tip));
    // What is drawn thinner is what loses length to scale: the taper, in its own heats.
    HeatPlan plan =
        HeatPlan.soaking(job.heat(), job.minutes(OrderItem.TIME_AT_HEAT))
            .inHeats(taperHeats.count());
    this.doorLayout = pair.leaf(Leaf.SECOND).layout(plan);
    this.postLayout = pair.leaf(Leaf.FIRST).layout(plan);
    this.drift = pair.drift(contraction);
    this.swage = pair.swage(contraction);
    this.doorHoles = HolePlan.of(job, pair, Leaf.SECOND);
    this.postHoles = HolePlan.of(job, pair, Leaf.FIRST);
  }

  /**
   * The job in a column of an order file.
   *
   * @throws IllegalArgumentException if its values cannot be put together
   */
  static HingeOrder from(OrderColumn job) {
    Section section =
        Section.flat(job.length(OrderItem.BAR_WIDTH), job.length(OrderItem.BAR_THICKNESS));
    Section tip = rectangle(job.length(OrderItem.TIP_WIDTH), job.length(OrderItem.TIP_THICKNESS));
    Bore bore =
        Bore.forPin(job.length(OrderItem.PIN))
            .clearing(job.lengthOrZero(OrderItem.CLEARANCE))
            .coated(job.lengthOrZero(OrderItem.COAT));
    HingePairBuilder asked =
        HingePair.of(Bar.of(section, Material.MILD_STEEL), bore)
            .knuckles(
                Knuckles.across(section.width())
                    .into(job.count(OrderItem.KNUCKLES))
                    .withGap(job.lengthOrZero(OrderItem.JOINT_GAP)))
            .opening(job.opening(), job.hanging())
            .handed(job.hand())
            .leaf(Leaf.SECOND, leaf(section, tip, job, OrderItem.DOOR_LEAF, OrderItem.DOOR_TAPER))
            .leaf(Leaf.FIRST, leaf(section, tip, job, OrderItem.POST_LEAF, OrderItem.POST_TAPER));
    // The notch is sawn to a mark of the rule, so the opening is that of the rounded depth.
    Measure<Length> depth = asked.pair().notchDepth().upTo(job.graduation());
    return new HingeOrder(job, asked.notchedBehindPin(depth).pair(), tip);
  }

  private static Feature[] leaf(
      Section section, Section tip, OrderColumn job, OrderItem length, OrderItem tapered) {
    Measure<Length> whole = job.length(length);
    Measure<Length> taper = job.lengthOrZero(tapered);
    List<Feature> features = new ArrayList<>();
    if (taper.isLessThan(whole)) {
      features.add(Plain.of(section, whole.subtract(taper)));
    }
    if (taper.getValue() > 0) {
      features.add(Taper.between(section, tip, taper));
    }
    return features.toArray(new Feature[0]);
  }

  private static Section rectangle(Measure<Length> width, Measure<Length> thickness) {
    return width.isLessThan(thickness)
        ? Section.onEdge(width, thickness)
        : Section.flat(width, thickness);
  }

  /** What the customer calls a leaf. */
  static String called(Leaf leaf) {
    return leaf == Leaf.FIRST ? "post leaf" : "door leaf";
  }

  String name() {
    return name;
  }

  int pairs() {
    return pairs;
  }

  Graduation<Length> graduation() {
    return graduation;
  }

  /** The rule as its readings are written. */
  LengthFormat rule() {
    return LengthFormat.to(graduation);
  }

  HingePair pair() {
    return pair;
  }

  Measure<Length> kerf() {
    return kerf;
  }

  Contraction contraction() {
    return contraction;
  }

  Heats barrelHeats() {
    return barrelHeats;
  }

  Heats taperHeats() {
    return taperHeats;
  }

  HolePlan holes(Leaf leaf) {
    return leaf == Leaf.FIRST ? postHoles : doorHoles;
  }

  /** A leaf on its bar, with what the fire takes. */
  Layout layout(Leaf leaf) {
    return leaf == Leaf.FIRST ? postLayout : doorLayout;
  }

  boolean isInches() {
    return pair.bore().pin().getUnit().equals(ShopUnits.INCH);
  }

  /** Tools come in sixty-fourths or half millimetres. */
  Graduation<Length> toolSteps() {
    return isInches() ? Graduation.SIXTY_FOURTH : Graduation.HALF_MILLIMETRE;
  }

  Drift drift() {
    return drift;
  }

  /** The drift as the shop has it: the size that leaves the clearance nearest to that asked for. */
  Measure<Length> driftSize() {
    return drift.chosenFrom(ToolRack.every(toolSteps()), pair.bore()).size();
  }

  Swage swage() {
    return swage;
  }

  /** The swage's groove as the shop has it: the nearest size. */
  Measure<Length> grooveSize() {
    return swage.chosenFrom(ToolRack.every(toolSteps())).size();
  }

  /** The pin as it is cut: a head made beforehand on one end, the other peened over low. */
  Pin pin() {
    return pair.pin().headed(Pin.Head.NONE, Pin.Head.LOW_PEEN);
  }

  Estimate<Length> pinLength() {
    return pin().length(pair.knuckles().width());
  }

  /** What to saw off for a leaf, rounded up to a mark of the rule: enough 19 times in 20. */
  Measure<Length> cut(Leaf leaf) {
    return layout(leaf).cutLength().high().upTo(graduation);
  }

  /** What will probably be left to trim. */
  Measure<Length> trim(Leaf leaf) {
    return cut(leaf).subtract(layout(leaf).cutLength().likely());
  }
}
