package org.hammerscale.examples.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.BracketDrawing;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.PilotText;
import org.hammerscale.examples.order.Screw;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.fastening.Wood;
import org.hammerscale.stock.Bar;
import org.hammerscale.strength.AngleBracket;
import org.hammerscale.strength.Bracket;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many brackets, each a bar bent square: the plate on the wall below, the arm on top. */
public final class BracketOrder extends PartsOrder {
  private static final Graduation<Angle> WHOLE_DEGREE = Graduation.of(Measures.degrees(1));
  private static final Map<String, OrderItem> ITEMS =
      Map.ofEntries(
          Map.entry("load", BracketItem.LOAD),
          Map.entry("distance", BracketItem.LOAD_OUT),
          Map.entry("arm", BracketItem.ARM),
          Map.entry("plate", BracketItem.PLATE),
          Map.entry("insideRadius", BracketItem.BEND),
          Map.entry("number", BracketItem.SCREWS_AT),
          Map.entry("height", BracketItem.SCREWS_AT),
          Map.entry("screw", SetItem.SCREW),
          Map.entry("series", SetItem.SCREW),
          Map.entry("fromReference", SetItem.SCREW),
          Map.entry("angle", BracketItem.BRACE_DOWN),
          Map.entry("down", BracketItem.BRACE_DOWN),
          Map.entry("out", BracketItem.BRACE_OUT),
          Map.entry("upper", BracketItem.BRACE_OUT),
          Map.entry("brace", BracketItem.BRACE_OUT),
          Map.entry("sign", BracketItem.SIGN_WIDE));

  private final BracketLoad bearing;
  private final WallScrews screws;
  private final AngleBracket iron;
  private final BracketDrawing picture;
  private final List<Part> parts = new ArrayList<>();

  private BracketOrder(OrderColumn job) {
    super(job, "bracket", "brackets");
    Bar bar = job.bar(SetItem.BAR);
    this.iron = iron(job, bar);
    parts.add(Part.of("bracket", iron.piece(), count(), graduation()));
    iron.brace().ifPresent(it -> parts.add(Part.of("brace", it.piece(), count(), graduation())));
    Measure<Force> load = job.measure(BracketItem.LOAD, Force.class);
    Measure<Length> out = job.length(BracketItem.LOAD_OUT);
    int safety = job.count(BracketItem.SAFETY);
    Measure<Length>[] heights = array(job.lengths(BracketItem.SCREWS_AT));
    Optional<SignWind> wind = SignWind.of(job, bar.section(), heights.length);
    this.bearing = new BracketLoad(bar, load, out, safety, iron.brace(), wind);
    Bracket bracket = Bracket.carrying(load, out).screwedAt(heights);
    this.screws =
        WallScrews.of(
            job.as(Screw.class, SetItem.SCREW),
            bracket,
            wind,
            bar,
            iron.straightPlate(),
            job.as(Wood.class, SetItem.WOOD),
            job.length(BracketItem.WALL),
            safety);
    this.picture = BracketDrawing.of(bracket).madeOf(iron);
    bearing.require(screws);
    iron.brace().ifPresent(this::requireClear);
  }

  private static AngleBracket iron(OrderColumn job, Bar bar) {
    Optional<Measure<Length>> out = job.lengthIfAny(BracketItem.BRACE_OUT);
    Optional<Measure<Length>> down = job.lengthIfAny(BracketItem.BRACE_DOWN);
    if (out.isPresent() != down.isPresent()) {
      throw new IllegalArgumentException(
          "brace must be told out and down, or none in both, was told once; tell the other too");
    }
    AngleBracket bent =
        AngleBracket.ofArmAndPlate(job.length(BracketItem.ARM), job.length(BracketItem.PLATE), bar)
            .bentTo(job.length(BracketItem.BEND));
    return out.map(it -> bent.bracedOutAndDown(it, down.orElseThrow())).orElse(bent);
  }

  /**
   * Refuses a screw whose head the brace would cover.
   *
   * @throws IllegalArgumentException if there is one
   */
  private void requireClear(AngleBracket.Brace brace) {
    for (Measure<Length> height : screws.bracket().heights()) {
      if (!brace.isClearOf(height, screws.screw().head().headDiameter())) {
        throw new IllegalArgumentException(
            "height of each screw must leave its head clear of the brace, was "
                + height
                + "; move it or the brace");
      }
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type
  static Measure<Length>[] array(List<Measure<Length>> all) {
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
  protected void work(SheetText sheet) {
    marks(sheet, parts.get(0), "the plate's foot");
    sheet.entry(
        "Bend", "square between the marks, %s of radius inside", told(iron.bend().insideRadius()));
    sheet.entry(
        "Check",
        "cold, outside: plate %s from the arm's top, arm %s from the wall",
        told(iron.plate()),
        told(iron.arm()));
    iron.brace().ifPresent(it -> brace(sheet, it));
    sheet.entry("Holes", "in the plate's middle, from its foot: %s", screws.places(this::told));
    sheet.entry("Screw", "%s", screws.screw());
    sheet.entry(
        "Iron",
        "drill %s, sink %s to %s",
        toolSteps().upTo(screws.countersink().hole()),
        screws.countersink().angle(),
        calliper(screws.countersink().diameter()));
    sheet.entry(
        "Wood", "upright; drill %s", PilotText.of(screws.screw(), screws.wood(), toolSteps()));
    bearing.write(sheet, screws, this::told);
  }

  private void brace(SheetText sheet, AngleBracket.Brace brace) {
    Measure<Angle> toArm = WHOLE_DEGREE.nearest(brace.angleToArm());
    sheet.entry(
        "Brace",
        "lower edge %s from the wall under the arm, %s below the arm's top; bevel it %s to the arm,"
            + " %s to the plate",
        told(brace.out()),
        told(brace.down()),
        toArm,
        Measures.degrees(90).subtract(toArm));
  }

  @Override
  protected void more(SheetText sheet) {
    bearing.more(sheet);
  }

  @Override
  protected List<Working> workings() {
    List<Working> workings = new ArrayList<>(bearing.workings(screws));
    iron.brace().ifPresent(it -> workings.add(it.working()));
    return workings;
  }

  @Override
  protected List<Caution> warnings() {
    List<Caution> cautions = new ArrayList<>();
    screws.wind().ifPresent(it -> cautions.addAll(it.sideways().cautions()));
    cautions.addAll(screws.bracket().cautions());
    cautions.addAll(screws.top().cautions());
    cautions.addAll(iron.cautions());
    return cautions;
  }

  @Override
  protected Drawing drawing(int reduction) {
    return picture.reducedTo(reduction).drawing();
  }

  @Override
  public Map<Screw, Integer> screws() {
    return Map.of(screws.screw(), screws.bracket().heights().size() * count());
  }
}
