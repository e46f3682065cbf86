package org.hammerscale.validation;

import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Pressure;
import org.hammerscale.heat.Contraction;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.Drift;
import org.hammerscale.hinge.Pin;
import org.hammerscale.hinge.Swage;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.BarrelOpening;
import org.hammerscale.strength.Fork;
import org.hammerscale.strength.PermissibleStress;
import org.hammerscale.strength.PinLoad;
import org.hammerscale.strength.PinSize;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** Pins, barrels under a pull, and the tools that size a barrel. */
final class HingeToolTopics {
  private static final Map<String, Unit<Force>> FORCES =
      Map.of("N", ShopUnits.NEWTON, "lbf", ShopUnits.POUND_FORCE);
  private static final Map<String, Unit<Pressure>> STRESSES =
      Map.of("MPa", ShopUnits.MEGAPASCAL, "psi", ShopUnits.PSI, "ksi", ShopUnits.KSI);

  private HingeToolTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("strength/pins", HingeToolTopics::pin),
        new ValidationTopic("strength/barrels_pulled_open", HingeToolTopics::opening),
        new ValidationTopic("hinge/drifts_and_swages", HingeToolTopics::sizingTool));
  }

  private static double pin(ValidationCase c) {
    String quantity = c.question();
    Measure<Force> force = c.value().input("force", Force.class);
    return switch (quantity) {
      case "least in single shear" ->
          PinSize.inSingleShear(force, permissible(c)).leastDiameter().in(c.lengthUnit());
      case "least in double shear" ->
          PinSize.inDoubleShear(force, permissible(c)).leastDiameter().in(c.lengthUnit());
      case "least in fork" ->
          PinSize.inFork(force, fork(c), permissible(c)).leastDiameter().in(c.lengthUnit());
      default -> stress(c, quantity, PinLoad.on(Pin.of(c.length("diameter")), force));
    };
  }

  private static double stress(ValidationCase c, String quantity, PinLoad load) {
    Measure<Pressure> stress =
        switch (quantity) {
          case "mean single shear" -> load.meanShear(PinLoad.Shear.SINGLE);
          case "peak single shear" -> load.peakShear(PinLoad.Shear.SINGLE);
          case "mean double shear" -> load.meanShear(PinLoad.Shear.DOUBLE);
          case "peak double shear" -> load.peakShear(PinLoad.Shear.DOUBLE);
          case "bending" -> load.bending(fork(c));
          case "bearing" -> load.bearing(c.length("width"));
          default -> throw new IllegalArgumentException(quantity);
        };
    return in(c, stress, STRESSES);
  }

  private static Fork fork(ValidationCase c) {
    return Fork.around(c.length("middle")).cheeks(c.length("cheek")).gap(c.length("gap"));
  }

  private static PermissibleStress permissible(ValidationCase c) {
    return PermissibleStress.of(c.value().input("strength", Pressure.class), c.number("safety"));
  }

  private static double opening(ValidationCase c) {
    Section strap = Section.flat(c.length("width"), c.length("thickness"));
    BarrelOpening opening = BarrelOpening.of(Barrel.around(c.length("bore"), strap));
    return switch (c.question()) {
      case "straight beam" ->
          in(c, opening.straightStress(c.value().input("force", Force.class)), STRESSES);
      case "curved beam" ->
          in(c, opening.curvedStress(c.value().input("force", Force.class)), STRESSES);
      case "first yield" -> in(c, opening.firstYield(yielding(c).strength()), FORCES);
      case "plastic limit" -> in(c, opening.plasticLimit(yielding(c).strength()), FORCES);
      case "plastic limit with pull" ->
          in(c, opening.plasticLimitWithPull(yielding(c).strength()), FORCES);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static PermissibleStress yielding(ValidationCase c) {
    return PermissibleStress.of(c.value().input("strength", Pressure.class), 1);
  }

  private static double sizingTool(ValidationCase c) {
    Contraction work = Contraction.from(c.temperature("work"), Material.MILD_STEEL);
    Contraction tool = Contraction.from(c.temperature("tool"), Material.MILD_STEEL);
    Drift drift = Drift.leaving(c.length("size"), work).withTool(tool);
    Swage swage = Swage.truing(c.length("size"), work).withTool(tool);
    return switch (c.question()) {
      case "drift" -> drift.diameter().in(c.lengthUnit());
      case "swage" -> swage.groove().in(c.lengthUnit());
      case "bore left" -> drift.boreLeftBy(c.length("size")).in(c.lengthUnit());
      case "outside left" -> swage.outsideLeftBy(c.length("size")).in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static <Q extends Quantity<Q>> double in(
      ValidationCase c, Measure<Q> answer, Map<String, Unit<Q>> units) {
    return answer.in(units.get(c.unit()));
  }
}
