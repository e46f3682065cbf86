package org.hammerscale.validation;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.BarrelClosing;
import org.hammerscale.hinge.BarrelEnd;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Knuckles;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** Barrels and what turns in them. */
final class HingeTopics {
  private HingeTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("hinge/barrels", HingeTopics::barrel),
        new ValidationTopic("hinge/barrel_closing", HingeTopics::closing),
        new ValidationTopic("hinge/knuckles", HingeTopics::knuckles));
  }

  private static double closing(ValidationCase c) {
    Barrel tangent = Barrel.around(c.length("bore"), c.section("section"));
    Barrel kind = c.text("barrel").equals("centred") ? tangent.centred() : tangent;
    Barrel barrel =
        switch (c.text("end")) {
          case "square" -> kind;
          case "welded" -> kind.endedWith(BarrelEnd.forgeWelded(WeldAllowance.ONE_THICKNESS));
          case "tucked" -> kind.endedWith(BarrelEnd.tucked());
          case "scarf" ->
              kind.endedWith(BarrelEnd.scarfedTo(c.length("edge")).over(c.length("scarf")));
          default -> throw new IllegalArgumentException(c.text("end"));
        };
    BarrelClosing closing = barrel.closing();
    if (c.question().equals("uncovered")) {
      return closing.uncovered().in(ShopUnits.DEGREE);
    }
    Measure<Length> length =
        switch (c.question()) {
          case "strip" -> closing.stripLength();
          case "cut" -> closing.cutLength();
          case "strip from cut" -> closing.stripFrom(c.length("length"));
          case "full turn" -> barrel.mostToCut(barrel.section());
          case "slot floor from the end" -> closing.slotFloorFromEnd(c.length("length")).likely();
          case "leaf start" -> barrel.leafStart();
          case "least scarf" -> closing.leastScarf(c.length("edge"));
          case "bore closed on" -> barrel.using(c.length("length")).insideDiameter();
          default -> throw new IllegalArgumentException(c.question());
        };
    return length.in(c.lengthUnit());
  }

  private static double knuckles(ValidationCase c) {
    Knuckles knuckles =
        Knuckles.across(c.length("width")).into(c.count("count")).withGap(c.length("gap"));
    Measure<Length> kerf = c.length("kerf");
    return switch (c.question()) {
      case "knuckle" -> knuckles.length(2).in(c.lengthUnit());
      case "outer knuckle, bearing equally" ->
          knuckles.bearingEqually().length(1).in(c.lengthUnit());
      case "middle knuckle, bearing equally" ->
          knuckles.bearingEqually().length(2).in(c.lengthUnit());
      case "slot" -> slot(knuckles, false).width().in(c.lengthUnit());
      case "end notch" -> slot(knuckles, true).width().in(c.lengthUnit());
      case "tongue of slot" -> slot(knuckles, false).tongue(kerf).in(c.lengthUnit());
      case "tongue of notch" -> slot(knuckles, true).tongue(kerf).in(c.lengthUnit());
      case "knuckles of first leaf" -> knuckles.knucklesOf(Leaf.FIRST).size();
      case "knuckles of second leaf" -> knuckles.knucklesOf(Leaf.SECOND).size();
      case "bearing of first leaf" -> knuckles.bearingLength(Leaf.FIRST).in(c.lengthUnit());
      case "bearing of second leaf" -> knuckles.bearingLength(Leaf.SECOND).in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static KnuckleSlot slot(Knuckles knuckles, boolean endNotch) {
    return Stream.of(Leaf.FIRST, Leaf.SECOND)
        .flatMap(leaf -> knuckles.slotsOf(leaf).stream())
        .filter(slot -> slot.isEndNotch() == endNotch)
        .findFirst()
        .orElseThrow();
  }

  private static double barrel(ValidationCase c) {
    Barrel barrel = Barrel.around(c.length("bore"), Section.square(c.length("thickness")));
    Measure<Length> length =
        switch (c.question()) {
          case "mean diameter" -> barrel.meanDiameter();
          case "outside diameter" -> barrel.outsideDiameter();
          case "developed length" -> barrel.developedLength();
          case "developed length up to 1/8 in" -> barrel.developedLength().upTo(Graduation.EIGHTH);
          case "bench length" -> barrel.lengthByRuleOfThree();
          default -> throw new IllegalArgumentException(c.question());
        };
    return length.in(c.lengthUnit());
  }
}
