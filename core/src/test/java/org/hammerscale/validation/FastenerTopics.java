package org.hammerscale.validation;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.CarriageBolt;
import org.hammerscale.fastening.ClenchedNail;
import org.hammerscale.fastening.CountersunkHead;
import org.hammerscale.fastening.IronHole;
import org.hammerscale.fastening.IronHoleRule;
import org.hammerscale.fastening.LagScrew;
import org.hammerscale.fastening.MetricWoodScrew;
import org.hammerscale.fastening.OldBritishWoodScrew;
import org.hammerscale.fastening.Rivet;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Fasteners and their holes in the iron. */
final class FastenerTopics {
  /** The depth of a head does not depend on the plate that it lies in. */
  private static final Measure<Length> PLATE = Measures.inches(1);

  private FastenerTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Screws and lag screws", "screws.csv", FastenerTopics::screw),
        new ValidationTopic(
            "Carriage bolts, rivets and clenched nails",
            "bolts_rivets_nails.csv",
            FastenerTopics::boltRivetOrNail),
        new ValidationTopic("Holes in the iron", "iron_holes.csv", IronHoleAnswers::answer));
  }

  private static double screw(ValidationCase c) {
    WoodFastener screw = fastener(c.text("screw"));
    String quantity = c.text("quantity");
    return switch (quantity) {
      case "threads an inch" -> 1 / pitch(screw).in(ShopUnits.INCH);
      case "number" -> ((OldBritishWoodScrew) screw).number();
      default -> size(c, screw, quantity).in(c.lengthUnit());
    };
  }

  private static Measure<Length> size(ValidationCase c, WoodFastener screw, String quantity) {
    return switch (quantity) {
      case "diameter" -> screw.diameter();
      case "root" -> screw.rootDiameter();
      case "root by two thirds" -> ((WoodScrew) screw).rootByTwoThirds();
      case "head" -> ((CountersunkHead) screw).headDiameter();
      case "least head" -> ((WoodScrew) screw).leastHeadDiameter();
      case "depth of the head" -> ((CountersunkHead) screw).countersinkIn(PLATE).headDepth();
      case "hole" -> ((CountersunkHead) screw).clearanceHole();
      case "across flats" -> ((LagScrew) screw).acrossFlats();
      case "tip" -> ((LagScrew) screw).tip();
      case "height of the head" ->
          screw instanceof LagScrew lag ? lag.headHeight() : ((MetricWoodScrew) screw).headHeight();
      case "thread" -> thread(screw, c.length("given"));
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  private static Measure<Length> thread(WoodFastener screw, Quantity<Length> length) {
    if (screw instanceof LagScrew lag) {
      return lag.threadLength(length);
    }
    return screw instanceof WoodScrew american
        ? american.threadLength(length)
        : ((OldBritishWoodScrew) screw).threadLength(length);
  }

  private static Measure<Length> pitch(WoodFastener screw) {
    return screw instanceof LagScrew lag ? lag.pitch() : ((WoodScrew) screw).pitch();
  }

  /** Written as {@code no. 8}, {@code old 8}, {@code head 11/32 in}, {@code din 5 mm}. */
  private static WoodFastener fastener(String text) {
    String[] words = text.split(" ", 2);
    return switch (words[0]) {
      case "no." -> WoodScrew.number(Integer.parseInt(words[1]));
      case "old" -> OldBritishWoodScrew.number(Integer.parseInt(words[1]));
      case "head" -> OldBritishWoodScrew.withHead(Measures.length(words[1]));
      case "din" -> MetricWoodScrew.din97(Measures.length(words[1]));
      case "lag" -> LagScrew.of(Measures.length(words[1]));
      default -> throw new IllegalArgumentException(text);
    };
  }

  private static double boltRivetOrNail(ValidationCase c) {
    String[] words = c.text("thing").split(" ", 2);
    Measure<Length> size = Measures.length(words[1]);
    Measure<Length> length =
        switch (words[0]) {
          case "bolt" -> bolt(c, CarriageBolt.of(size));
          case "unwin" -> rivet(c, Rivet.byUnwin(size));
          case "rivet" -> rivet(c, Rivet.of(size));
          case "nail" -> nail(c, ClenchedNail.of(Section.square(size)));
          default -> throw new IllegalArgumentException(words[0]);
        };
    return length.in(c.lengthUnit());
  }

  private static Measure<Length> bolt(ValidationCase c, CarriageBolt bolt) {
    return switch (c.text("quantity")) {
      case "neck" -> bolt.neck();
      case "head" -> bolt.headDiameter();
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static Measure<Length> rivet(ValidationCase c, Rivet rivet) {
    IronHole hole = IronHole.drilled(rivet.hole()).clearing(rivet.diameter());
    return switch (c.text("quantity")) {
      case "diameter" -> rivet.diameter();
      case "diameter up to 1/16 in" -> rivet.diameter().upTo(Graduation.SIXTEENTH);
      case "hole" -> rivet.hole();
      case "pitch" -> IronHoleRule.RIVET_PRACTICE.leastSpacing(hole);
      case "edge" -> IronHoleRule.RIVET_PRACTICE.leastEdge(hole);
      case "head stock" -> rivet.headStock();
      case "countersunk head" -> rivet.countersunkHead().stockLength();
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  /** Through thicknesses written as {@code 1 in + 1 in, clench 1/4 in}. */
  private static Measure<Length> nail(ValidationCase c, ClenchedNail bare) {
    String[] parts = c.text("given").split(", clench ", 2);
    ClenchedNail nail = bare;
    for (String thickness : parts[0].split(" \\+ ", -1)) {
      nail = nail.through(Measures.length(thickness));
    }
    nail = parts.length > 1 ? nail.withClench(Measures.length(parts[1])) : nail;
    return switch (c.text("quantity")) {
      case "length" -> nail.length();
      case "least bar beyond the length" -> nail.barForShank().low().subtract(nail.length());
      case "most bar beyond the length" -> nail.barForShank().high().subtract(nail.length());
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }
}
