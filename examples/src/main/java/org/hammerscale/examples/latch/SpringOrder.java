package org.hammerscale.examples.latch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.LatchDrawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.HeatText;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.heat.FireCautions;
import org.hammerscale.latch.FittedSpring;
import org.hammerscale.latch.LatchSpring;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/** So many flat springs, each on a foot of its own strip, that press a latch shut. */
public final class SpringOrder extends PartsOrder {
  private static final Material SPRING_STEEL =
      Material.of(
          "spring steel",
          Measures.kilogramsPerCubicMetre(7850),
          Source.commonPractice("the nominal density of steel"));

  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "tipWidth", SpringItem.TIP_WIDTH,
          "diameter", SpringItem.HOLE,
          "set", SpringItem.SET,
          "travel", SpringItem.TRAVEL,
          "press", SpringItem.PRESS,
          "temper", SpringItem.TEMPER);

  private static final Caution OIL =
      Caution.danger(
          "a quench in oil flares: a lid for the tank at hand, nothing that burns near it, no water"
              + " on burning oil; stand aside, with eye protection and gloves");

  private final FittedSpring spring;
  private final Measure<Force> press;
  private final Measure<Pressure> limit;
  private final Measure<Temperature> harden;
  private final Measure<Temperature> temper;
  private final Part part;

  private SpringOrder(OrderColumn job, FittedSpring spring) {
    super(job, "latch spring", "latch springs");
    this.spring = spring;
    this.press = job.measure(SpringItem.PRESS, Force.class);
    this.limit = job.measure(SpringItem.LIMIT, Pressure.class);
    this.harden = job.measure(SpringItem.HARDEN, Temperature.class);
    this.temper = job.measure(SpringItem.TEMPER, Temperature.class);
    Bar strip = Bar.of(job.as(Section.class, SetItem.BAR), SPRING_STEEL);
    this.part = Part.of("spring", spring.piece(strip), count(), graduation());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if it bears less or presses less than is asked
   */
  public static SpringOrder from(OrderColumn job) {
    FittedSpring spring = Blame.by(ITEMS, SetItem.BAR, () -> spring(job));
    return new SpringOrder(job, Blame.by(ITEMS, SetItem.BAR, () -> checked(job, spring)));
  }

  private static FittedSpring spring(OrderColumn job) {
    Section strip = job.as(Section.class, SetItem.BAR);
    if (strip.isRound() || !strip.width().isGreaterThan(strip.thickness())) {
      throw new IllegalArgumentException(
          "bar must be flat, wider than it is thick, was " + strip + "; take a strip");
    }
    LatchSpring leaf =
        LatchSpring.of(job.length(SpringItem.LENGTH), strip.width(), strip.thickness())
            .taperedTo(job.length(SpringItem.TIP_WIDTH));
    return FittedSpring.on(job.length(SpringItem.FOOT), leaf)
        .drilled(job.count(SpringItem.HOLES), job.length(SpringItem.HOLE))
        .set(job.length(SpringItem.SET))
        .travelling(job.length(SpringItem.TRAVEL));
  }

  private static FittedSpring checked(OrderColumn job, FittedSpring spring) {
    Measure<Pressure> limit = job.measure(SpringItem.LIMIT, Pressure.class);
    Measure<Length> most = spring.mostTravel(limit);
    if (spring.travel().isGreaterThan(most)) {
      throw new IllegalArgumentException(
          "travel must be at most "
              + most
              + " from a set of "
              + spring.set()
              + " for a limit of "
              + limit
              + ", was "
              + spring.travel()
              + "; set it less, or make it longer or thinner");
    }
    Measure<Force> press = job.measure(SpringItem.PRESS, Force.class);
    Measure<Force> rest = spring.forceAtRest().to(press.getUnit());
    if (rest.isLessThan(press)) {
      throw new IllegalArgumentException(
          "press must be at most the "
              + LoadText.down(rest)
              + " of the resting spring, was "
              + LoadText.of(press)
              + "; set it farther, or take a wider or thicker bar");
    }
    Measure<Temperature> harden = job.measure(SpringItem.HARDEN, Temperature.class);
    Measure<Temperature> temper = job.measure(SpringItem.TEMPER, Temperature.class);
    if (!temper.isLessThan(harden)) {
      throw new IllegalArgumentException(
          "temper must be at less than the "
              + harden
              + " that it is hardened from, was "
              + temper
              + "; look into the data of the steel");
    }
    return spring;
  }

  @Override
  protected List<Part> parts() {
    return List.of(part);
  }

  @Override
  protected void work(SheetText sheet) {
    LatchSpring leaf = spring.spring();
    sheet.entry(
        "Root",
        "scribe it %s from the end that is the foot; no punch mark there, a nick is where it breaks",
        told(spring.foot()));
    sheet.entry(
        "Taper",
        "saw and file from %s at the root to %s at the tip, %s beyond it; %s thick throughout",
        told(leaf.width()),
        told(leaf.tipWidth()),
        told(leaf.length()),
        leaf.thickness());
    sheet.entry("", "draw-file along it, break the edges, leave no scratch across");
    String places = spring.holes().stream().map(this::told).collect(Collectors.joining(", "));
    sheet.entry(
        "Holes",
        "before it is hard, along the middle of the foot: %d of %s, at %s from its end",
        spring.holes().size(),
        spring.hole(),
        places);
    sheet.entry("Harden", "from %s, %s, in oil, edge first", harden, HeatText.colour(harden));
    sheet.entry("Temper", "at once, all of it at %s, as the maker of the steel says", temper);
    sheet.entry(
        "Fit",
        "foot held fast, under a plate up to the root; free, the tip stands %s beyond where the"
            + " resting latch holds it",
        told(spring.set()));
    sheet.entry(
        "",
        "room for %s of travel from there, %s in all",
        told(spring.travel()),
        told(spring.deflection()));
    sheet.entry(
        "Presses",
        "about %s at rest, %s asked; about %s at full travel",
        LoadText.down(spring.forceAtRest().to(press.getUnit())),
        LoadText.of(press),
        LoadText.up(spring.forceAtTravel().to(press.getUnit())));
    sheet.entry(
        "Bears",
        "%s at its root, %s %% of the %s allowed; travel at most %s",
        stress(),
        round(100 * spring.use(limit)),
        limit,
        down(spring.mostTravel(limit)));
    sheet.entry(
        "Try",
        "behind a guard press the tip %s from where it stands free, ten times: it must come back to"
            + " there",
        down(spring.spring().mostTravel(limit)));
  }

  private String stress() {
    return round(spring.stressAtTravel().in(limit.getUnit())) + " " + limit.getUnit();
  }

  /** What has to be borne, in three figures and no less than it is. */
  private static String round(double value) {
    return BigDecimal.valueOf(value)
        .round(new MathContext(3, RoundingMode.UP))
        .stripTrailingZeros()
        .toPlainString();
  }

  @Override
  protected List<Working> workings() {
    LatchSpring leaf = spring.spring();
    return List.of(
        leaf.forceWorking(spring.set()),
        leaf.forceWorking(spring.deflection()),
        leaf.stressWorking(spring.forceAtTravel()),
        leaf.mostTravelWorking(limit));
  }

  @Override
  protected List<Caution> warnings() {
    List<Caution> all = new ArrayList<>();
    spring.cautions().stream().filter(Caution::isDanger).forEach(all::add);
    all.add(OIL);
    spring.cautions().stream().filter(caution -> !caution.isDanger()).forEach(all::add);
    all.addAll(FireCautions.all());
    return all;
  }

  @Override
  public List<String> blanks() {
    List<String> blanks = new ArrayList<>();
    for (int number = 1; number <= count(); number++) {
      blanks.add(
          "spring"
              + (count() == 1 ? "" : " " + number)
              + ": presses at rest ________ at travel ________ came back to ________");
    }
    return blanks;
  }

  @Override
  protected Drawing drawing(int reduction) {
    return LatchDrawing.of(spring).on(graduation()).reducedTo(reduction).drawing();
  }
}
