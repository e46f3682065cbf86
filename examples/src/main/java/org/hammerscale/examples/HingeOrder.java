package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.Cut;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.Pictures;
import org.hammerscale.examples.order.Screw;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Drift;
import org.hammerscale.hinge.Hand;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.HingePairBuilder;
import org.hammerscale.hinge.Knuckles;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.hinge.Pin;
import org.hammerscale.hinge.Swage;
import org.hammerscale.hinge.ToolChoice;
import org.hammerscale.hinge.ToolRack;
import org.hammerscale.piece.TrialBook;
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
final class HingeOrder implements Order {
  /** The door leaf is the first on a sheet. */
  static final List<Leaf> LEAVES = List.of(Leaf.SECOND, Leaf.FIRST);

  private final String name;
  private final int pairs;
  private final Graduation<Length> graduation;
  private final LengthFormat rule;
  private final HingePair pair;
  private final Measure<Length> gapAsked;
  private final Measure<Length> kerf;
  private final Optional<Measure<Length>> centres;
  private final Contraction contraction;
  private final WorkRate taperWork;
  private final Heats barrelHeats;
  private final Map<Leaf, LeafPlan> leaves = new EnumMap<>(Leaf.class);
  private final Drift drift;
  private final ToolChoice driftChoice;
  private final Swage swage;
  private final ToolChoice swageChoice;

  private HingeOrder(OrderColumn job, HingePair pair, Section tip, Optional<TrialBook> trials) {
    this.name = job.name();
    this.pairs = job.count(HingeItem.PAIRS);
    this.graduation = job.graduation();
    this.rule = LengthFormat.to(graduation);
    this.pair = pair;
    this.gapAsked = job.length(HingeItem.JOINT_GAP);
    this.centres = job.lengthIfAny(HingeItem.CENTRES);
    this.taperWork = job.as(WorkRate.class, HingeItem.TAPER_WORK);
    this.kerf = job.length(SetItem.KERF);
    Blame.on(SetItem.KERF, () -> tongues(kerf));
    this.contraction =
        Blame.on(
            SetItem.HEAT,
            () ->
                Contraction.from(
                    job.measure(SetItem.HEAT, Temperature.class), pair.strap().material()));
    // The barrel cools as the bar does; at the taper the thin tip is cold first.
    Cooling bar =
        Blame.on(
            SetItem.HEAT,
            () -> Cooling.from(job.measure(SetItem.HEAT, Temperature.class), pair.strap()));
    this.barrelHeats =
        Blame.on(
            SetItem.HEAT, () -> Heats.forWork(job.measure(HingeItem.BARREL_WORK, Time.class), bar));
    for (Leaf leaf : Leaf.values()) {
      String piece = name + " " + called(leaf);
      leaves.put(leaf, new LeafPlan(piece, job, pair, leaf, bar.withThinnest(tip), trials));
    }
    this.drift = pair.drift(contraction);
    this.swage = pair.swage(contraction);
    ToolRack rack = ToolRack.every(toolSteps());
    this.driftChoice = Blame.on(SetItem.CLEARANCE, () -> drift.chosenFrom(rack, pair.bore()));
    this.swageChoice = swage.chosenFrom(rack);
  }

  /** What is punched out beside the saw cuts; a saw that is too coarse is refused. */
  private List<Measure<Length>> tongues(Measure<Length> kerf) {
    List<Measure<Length>> tongues = new ArrayList<>();
    for (Leaf leaf : Leaf.values()) {
      pair.slotsOf(leaf).forEach(slot -> tongues.add(slot.tongue(kerf)));
    }
    return tongues;
  }

  /**
   * The job in a column of an order file.
   *
   * @param trials what finished pieces took; empty if no log is kept
   * @throws Blame if its values cannot be put together
   */
  static HingeOrder from(OrderColumn job, Optional<TrialBook> trials) {
    Section section =
        Section.flat(job.length(HingeItem.BAR_WIDTH), job.length(HingeItem.BAR_THICKNESS));
    Section tip = rectangle(job.length(HingeItem.TIP_WIDTH), job.length(HingeItem.TIP_THICKNESS));
    Bore bore =
        Bore.forPin(job.length(HingeItem.PIN))
            .clearing(job.length(SetItem.CLEARANCE))
            .coated(job.length(SetItem.COAT));
    Knuckles knuckles =
        Blame.on(
            HingeItem.JOINT_GAP,
            () ->
                Knuckles.across(section.width())
                    .into(job.count(HingeItem.KNUCKLES))
                    .withGap(job.length(HingeItem.JOINT_GAP)));
    HingePairBuilder asked =
        HingePair.of(Bar.of(section, Material.MILD_STEEL), bore)
            .knuckles(knuckles)
            .opening(
                job.measure(HingeItem.OPENING, Angle.class), job.as(Hanging.class, HingeItem.HUNG))
            .handed(job.as(Hand.class, HingeItem.HAND))
            .leaf(Leaf.SECOND, leaf(section, tip, job, HingeItem.DOOR_LEAF, HingeItem.DOOR_TAPER))
            .leaf(Leaf.FIRST, leaf(section, tip, job, HingeItem.POST_LEAF, HingeItem.POST_TAPER));
    Blame.on(HingeItem.OPENING, asked::pair);
    Graduation<Length> marks = job.graduation();
    return new HingeOrder(job, Blame.on(SetItem.GRADUATION, asked.on(marks)::pair), tip, trials);
  }

  private static Feature[] leaf(
      Section section, Section tip, OrderColumn job, OrderItem length, OrderItem tapered) {
    Measure<Length> whole = job.length(length);
    Measure<Length> taper = job.length(tapered);
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

  @Override
  public String name() {
    return name;
  }

  @Override
  public String what() {
    return pairs == 1 ? "a pair of strap hinges" : pairs + " pairs of strap hinges";
  }

  @Override
  public void front(SheetText sheet) {
    new FrontSheet(sheet, this).write();
  }

  @Override
  public List<String> cautions() {
    return FrontSheet.cautions(this);
  }

  @Override
  public void back(SheetText sheet) {
    new BackSheet(sheet, this).write();
  }

  @Override
  public List<String> blanks() {
    return FrontSheet.blanks(this);
  }

  @Override
  public List<Cut> cuts() {
    List<Cut> cuts = new ArrayList<>();
    for (Leaf leaf : LEAVES) {
      String piece = name + ", " + called(leaf);
      cuts.add(
          new Cut(
              pair.strap(),
              piece,
              leaf(leaf).bar().cutLength(),
              leaf(leaf).toCut(),
              kerf,
              graduation));
    }
    // One pin with each door leaf.
    int pins = leaf(Leaf.SECOND).toCut();
    cuts.add(new Cut(pinBar(), name + ", pin", pinCut(), pins, kerf, graduation));
    return cuts.stream().filter(cut -> cut.count() > 0).toList();
  }

  @Override
  public List<Drawing> bars() {
    return LEAVES.stream()
        .flatMap(leaf -> Pictures.small(leaf(leaf).bar(), called(leaf) + ", cold bar").stream())
        .toList();
  }

  @Override
  public List<Drawing> drawings() {
    return HingeDrawings.of(this);
  }

  @Override
  public Measure<Length> coat() {
    return pair.bore().coat();
  }

  @Override
  public Map<Screw, Integer> screws() {
    int each =
        LEAVES.stream().mapToInt(leaf -> leaf(leaf).holes().layout().positions().size()).sum();
    return Map.of(leaf(Leaf.FIRST).holes().screw(), pairs * each);
  }

  @Override
  public List<Part> trialPieces() {
    return LEAVES.stream()
        .map(leaf -> new Part(leaf(leaf).name(), leaf(leaf).bar(), leaf(leaf).toCut()))
        .toList();
  }

  int pairs() {
    return pairs;
  }

  Graduation<Length> graduation() {
    return graduation;
  }

  /** The rule as its readings are written. */
  LengthFormat rule() {
    return rule;
  }

  HingePair pair() {
    return pair;
  }

  /** The gap that the order asks for; that of the pair lies on the rule. */
  Measure<Length> gapAsked() {
    return gapAsked;
  }

  /** What the saw takes, of a slot and of a bar. */
  Measure<Length> kerf() {
    return kerf;
  }

  /** From one hinge of the door to the next. */
  Optional<Measure<Length>> centres() {
    return centres;
  }

  Contraction contraction() {
    return contraction;
  }

  WorkRate taperWork() {
    return taperWork;
  }

  Heats barrelHeats() {
    return barrelHeats;
  }

  /** One of its leaves. */
  LeafPlan leaf(Leaf leaf) {
    return Objects.requireNonNull(leaves.get(leaf));
  }

  @Override
  public List<String> trialFaults() {
    return LEAVES.stream().flatMap(leaf -> leaf(leaf).trialFaults().stream()).toList();
  }

  @Override
  public boolean isInches() {
    return pair.bore().pin().getUnit().equals(ShopUnits.INCH);
  }

  Drift drift() {
    return drift;
  }

  /** The drift as the shop has it: the size that leaves the clearance nearest to that asked for. */
  ToolChoice driftChoice() {
    return driftChoice;
  }

  Swage swage() {
    return swage;
  }

  /** The swage as the shop has it: the nearest size. */
  ToolChoice swageChoice() {
    return swageChoice;
  }

  /** The pin as it is cut: a head forged on one end beforehand, the other peened over low. */
  Pin pin() {
    return pair.pin().headed(Pin.Head.FORGED, Pin.Head.LOW_PEEN);
  }

  Estimate<Length> pinLength() {
    return pin().length(pair.knuckles().width());
  }

  /** The pin's length on the rule, enough for both heads. */
  Measure<Length> pinCut() {
    return pinLength().high().upTo(graduation);
  }

  /** The round bar that the pin is cut from. */
  Bar pinBar() {
    return Bar.of(Section.round(pair.bore().pin()), Material.MILD_STEEL);
  }
}
