package org.hammerscale.scale;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.heat.HotMetal;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/** Where the laws of scale are stretched. */
final class ScaleCautions {
  /** By this much the parabola may pass what still air feeds without a word, as a factor. */
  private static final double SHORT = 1.2;

  /** The part of a bar or of a thickness that is likely lost without a word. */
  private static final double MUCH = 0.25;

  /** The part that may be lost at worst without a word. */
  private static final double MOST = 0.5;

  /** Plain steels and irons lie between these, kg/m³. */
  private static final double LIGHTEST = 7600;

  private static final double HEAVIEST = 7950;

  private static final Source IRON =
      Source.read(
          "Young and Yin, 2012, abstract", "iron and steel scale alike in oxygen and in wet gas");
  private static final Source FIRST_ORDER =
      Source.computed("surface × depth, with the surface that the bar began with");

  private ScaleCautions() {}

  /** Refuses metals that scale by other laws. */
  static void checkIron(Material material) {
    HotMetal metal = HotMetal.of(material);
    double density = material.density().in(ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    boolean plain =
        metal.isCarbonSteel()
            || (!metal.isAustenitic() && density >= LIGHTEST && density <= HEAVIEST);
    if (!plain) {
      throw new IllegalArgumentException(
          "material must be wrought iron or plain steel, with a density from "
              + Measures.kilogramsPerCubicMetre(LIGHTEST)
              + " to "
              + Measures.kilogramsPerCubicMetre(HEAVIEST)
              + ", for the laws of scale, was "
              + material.name()
              + " of "
              + material.density()
              + "; weigh a test piece before and after the fire");
    }
  }

  static List<Caution> of(ScaleLoss loss) {
    HeatPlan plan = loss.plan();
    FireHistory each = plan.each();
    List<Caution> cautions = new ArrayList<>(loss.law().cautions(each));
    Material material = loss.bar().material();
    if (!HotMetal.of(material).isCarbonSteel()) {
      cautions.add(
          Caution.limit(
              "the laws of scale are those of iron and plain steel, and "
                  + material.name()
                  + " is taken as such: chromium, nickel or aluminium in it make it scale far less",
              IRON));
    }
    double parabola = loss.law().metalLoss(each).getValue();
    double fed = OxygenSupply.metal(loss.law(), each, plan.atmosphere().supply());
    if (!loss.isFed() && parabola > SHORT * fed) {
      cautions.add(
          Caution.limit(
              "a heat as short as "
                  + each
                  + " lacks oxygen: "
                  + (plan.atmosphere().equals(Atmosphere.BLAST) ? "the blast" : "still air")
                  + " feeds a bar of 20 mm about "
                  + Measures.millimetres(fed)
                  + " of lost metal where the parabola says "
                  + Measures.millimetres(parabola)
                  + "; expect less than likely",
              OxygenSupply.SOURCE));
    }
    if (plan.atmosphere().equals(Atmosphere.LABORATORY_AIR) && !isAsMeasured(each)) {
      cautions.add(
          Caution.limit(
              "the narrow spread of laboratory air holds for 5 min to 60 min at 900 °C to 1250 °C,"
                  + " was "
                  + each
                  + "; take still air of the shop",
              plan.atmosphere().source()));
    }
    if (loss.share().likely().in(ShopUnits.ONE) > MUCH) {
      cautions.add(
          Caution.limit(
              "the fire takes more than a quarter of "
                  + loss.bar().section()
                  + ": plan fewer or shorter heats; as the bar dwindles the reckoning is too high",
              FIRST_ORDER));
    } else if (loss.share().high().in(ShopUnits.ONE) > MOST) {
      cautions.add(
          Caution.limit(
              "in a bad fire "
                  + loss.bar().section()
                  + " may lose "
                  + (loss.share().high().in(ShopUnits.ONE) < 1 ? "more than half" : "all")
                  + " of itself: plan fewer or shorter heats, and keep it deep in the fire",
              plan.atmosphere().source()));
    }
    return List.copyOf(cautions);
  }

  static List<Caution> of(ScaleLoss loss, Feature feature) {
    Measure<Length> across = thinner(feature.start(), feature.end());
    Measure<Length> lost = loss.perSurface().likely().multiply(2);
    Measure<Length> most = loss.perSurface().high().multiply(2);
    boolean likely = lost.isGreaterThan(across.multiply(MUCH));
    if (across.getValue() == 0 || !(likely || most.isGreaterThan(across.multiply(MOST)))) {
      return List.of();
    }
    return List.of(
        Caution.limit(
            "the fire "
                + (likely ? "takes " + lost : "may take " + most)
                + " of the "
                + across
                + " at the thin end of the "
                + feature.name()
                + ": forge it in the last heat, in as few heats as it takes",
            FIRST_ORDER));
  }

  private static boolean isAsMeasured(FireHistory each) {
    double hottest = each.hottest().in(ShopUnits.CELSIUS);
    return hottest >= 900 && hottest <= 1250 && each.seconds() >= 300 && each.seconds() <= 3600;
  }

  private static Measure<Length> thinner(Section one, Section other) {
    Measure<Length> first = thin(one);
    Measure<Length> second = thin(other);
    return first.getValue() == 0 || (second.getValue() != 0 && second.isLessThan(first))
        ? second
        : first;
  }

  private static Measure<Length> thin(Section section) {
    if (section.isTube()) {
      return section.wall();
    }
    return section.thickness().isLessThan(section.width()) ? section.thickness() : section.width();
  }
}
