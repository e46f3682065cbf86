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
        new ValidationTopic("fastening/screws", FastenerTopics::screw),
        new ValidationTopic("fastening/bolts_rivets_nails", FastenerTopics::boltRivetOrNail),
        new ValidationTopic("fastening/iron_holes", IronHoleAnswers::answer));
  }

  private static double screw(ValidationCase c) {
    WoodFastener screw = fastener(c);
    String quantity = c.question();
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
      case "thread" -> thread(screw, c.length("length"));
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

  private static WoodFastener fastener(ValidationCase c) {
    return switch (c.text("series")) {
      case "American" -> WoodScrew.number(c.count("number"));
      case "old British" ->
          c.text("head").isEmpty()
              ? OldBritishWoodScrew.number(c.count("number"))
              : OldBritishWoodScrew.withHead(c.length("head"));
      case "DIN 97" -> MetricWoodScrew.din97(c.length("size"));
      case "lag screw" -> LagScrew.of(c.length("size"));
      default -> throw new IllegalArgumentException(c.text("series"));
    };
  }

  private static double boltRivetOrNail(ValidationCase c) {
    Measure<Length> length =
        switch (c.text("thing")) {
          case "bolt" -> bolt(c, CarriageBolt.of(c.length("size")));
          case "rivet by Unwin" -> rivet(c, Rivet.byUnwin(c.length("plate")));
          case "rivet" -> rivet(c, Rivet.of(c.length("size")));
          case "nail" -> nail(c, ClenchedNail.of(Section.square(c.length("size"))));
          default -> throw new IllegalArgumentException(c.text("thing"));
        };
    return length.in(c.lengthUnit());
  }

  private static Measure<Length> bolt(ValidationCase c, CarriageBolt bolt) {
    return switch (c.question()) {
      case "neck" -> bolt.neck();
      case "head" -> bolt.headDiameter();
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static Measure<Length> rivet(ValidationCase c, Rivet rivet) {
    IronHole hole = IronHole.drilled(rivet.hole()).clearing(rivet.diameter());
    return switch (c.question()) {
      case "diameter" -> rivet.diameter();
      case "diameter up to 1/16 in" -> rivet.diameter().upTo(Graduation.SIXTEENTH);
      case "hole" -> rivet.hole();
      case "pitch" -> IronHoleRule.RIVET_PRACTICE.leastSpacing(hole);
      case "edge" -> IronHoleRule.RIVET_PRACTICE.leastEdge(hole);
      case "head stock" -> rivet.headStock();
      case "countersunk head" -> rivet.countersunkHead().stockLength();
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static Measure<Length> nail(ValidationCase c, ClenchedNail bare) {
    ClenchedNail nail = bare;
    for (int board = 1; c.value().has("board " + board); board++) {
      nail = nail.through(c.length("board " + board));
    }
    nail = c.value().has("clench") ? nail.withClench(c.length("clench")) : nail;
    return switch (c.question()) {
      case "length" -> nail.length();
      case "least bar beyond the length" -> nail.barForShank().low().subtract(nail.length());
      case "most bar beyond the length" -> nail.barForShank().high().subtract(nail.length());
      default -> throw new IllegalArgumentException(c.question());
    };
  }
}
