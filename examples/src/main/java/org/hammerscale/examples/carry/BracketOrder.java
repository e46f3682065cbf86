package org.hammerscale.examples.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Bend;
import org.hammerscale.drawing.BracketDrawing;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.Screw;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.fastening.Wood;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.strength.Bracket;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many brackets, each a bar bent square: the plate on the wall below, the arm on top. */
public final class BracketOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "load", BracketItem.LOAD,
          "outside", BracketItem.PLATE,
          "number", BracketItem.SCREWS_AT,
          "height", BracketItem.SCREWS_AT,
          "screw", SetItem.SCREW,
          "series", SetItem.SCREW,
          "fromReference", SetItem.SCREW,
          "angle", BracketItem.BRACE_DOWN,
          "brace", BracketItem.BRACE_OUT);

  private final BracketLoad bearing;
  private final WallScrews screws;
  private final Optional<Brace> brace;
  private final Measure<Length> arm;
  private final Measure<Length> plate;
  private final Bend bend;
  private final List<Part> parts = new ArrayList<>();

  private BracketOrder(OrderColumn job) {
    super(job, "bracket", "brackets");
    Bar bar = job.bar(SetItem.BAR);
    this.arm = job.length(BracketItem.ARM);
    this.plate = job.length(BracketItem.PLATE);
    this.bend = Bend.of(Measures.degrees(90), job.length(BracketItem.BEND), bar.section());
    Measure<Length> straight = bend.straightLeg(plate);
    Plain below = Plain.of(bar.section(), straight);
    Plain level = Plain.of(bar.section(), bend.straightLeg(arm));
    parts.add(Part.of("bracket", Piece.of(bar, below, bend, level), count(), graduation()));
    this.brace = Brace.of(job, bar);
    brace.ifPresent(it -> parts.add(Part.of("brace", it.piece(), count(), graduation())));
    Measure<Force> load = job.measure(BracketItem.LOAD, Force.class);
    Measure<Length> out = job.length(BracketItem.LOAD_OUT);
    int safety = job.count(BracketItem.SAFETY);
    this.bearing = new BracketLoad(bar, load, out, safety, brace);
    Measure<Length>[] heights = array(job.lengths(BracketItem.SCREWS_AT));
    Bracket bracket = Bracket.carrying(load, out).screwedAt(heights);
    this.screws =
        WallScrews.of(
            job.as(Screw.class, SetItem.SCREW),
            bracket,
            bar,
            straight,
            job.as(Wood.class, SetItem.WOOD),
            job.length(BracketItem.WALL),
            safety);
    bearing.require(screws);
    brace.ifPresent(it -> it.requireClear(screws, plate));
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type
  private static Measure<Length>[] array(List<Measure<Length>> all) {
    return all.toArray(new Measure[0]);
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if it cannot be made or cannot carry what is asked
   */
  public static BracketOrder from(OrderColumn job) {
    checkHeat(job, SetItem.BAR);
    return Blame.by(ITEMS, SetItem.BAR, () -> new BracketOrder(job));
  }

  @Override
  protected List<Part> parts() {
    return parts;
  }

  @Override
  protected List<Part> marked() {
    return parts.subList(0, 1);
  }

  @Override
  protected void work(SheetText sheet) {
    marks(sheet, parts.get(0), "the plate's foot");
    sheet.entry("Bend", "square between the marks, %s of radius inside", told(bend.insideRadius()));
    sheet.entry(
        "Check",
        "cold, outside: plate %s from the arm's top, arm %s from the wall",
        told(plate),
        told(arm));
    brace.ifPresent(it -> it.write(sheet, this::told));
    sheet.entry("Holes", "in the plate's middle, from its foot: %s", screws.places(this::told));
    sheet.entry("Screw", "%s", screws.screw());
    sheet.entry(
        "Iron",
        "drill %s, sink %s to %s",
        toolSteps().upTo(screws.countersink().hole()),
        screws.countersink().angle(),
        calliper(screws.countersink().diameter()));
    sheet.entry("Wood", "upright; drill %s", pilotHoles());
    bearing.write(sheet, screws, this::told);
  }

  private String pilotHoles() {
    Measure<Length> thread = toolSteps().nearest(screws.pilot().threadHole());
    return (thread.getValue() > 0 ? thread + " for the thread" : "nothing for the thread")
        + ", "
        + toolSteps().nearest(screws.shankHole())
        + " for the shank";
  }

  @Override
  protected void more(SheetText sheet) {
    bearing.more(sheet);
  }

  @Override
  protected List<Working> workings() {
    return bearing.workings(screws);
  }

  @Override
  protected List<Caution> warnings() {
    List<Caution> cautions = new ArrayList<>(screws.bracket().cautions());
    cautions.addAll(screws.top().cautions());
    return cautions;
  }

  @Override
  protected Drawing drawing(int reduction) {
    return BracketDrawing.of(screws.bracket()).reducedTo(reduction).drawing();
  }

  @Override
  public Map<Screw, Integer> screws() {
    return Map.of(screws.screw(), screws.bracket().heights().size() * count());
  }
}
