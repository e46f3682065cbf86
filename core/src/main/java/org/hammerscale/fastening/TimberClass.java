package org.hammerscale.fastening;

import java.util.List;
import org.hammerscale.units.Density;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Source;

/**
 * The European strength classes of timber by their densities: C of softwood, D of hardwood. Other
 * name: {@index "strength class"}.
 *
 * <pre>{@code
 * TimberClass.C24.meanDensity()             // 420 kg/m³
 * TimberClass.C24.characteristicDensity()   // 350 kg/m³  that 19 pieces of 20 have: for the Eurocode
 * TimberClass.C24.wood().ovenDry()          // specific gravity 0.3908 oven-dry  for a rule of the NDS
 * }</pre>
 *
 * <p>A gravity comes from the mean density at 12 % moisture, ρ / 1120; never from the
 * characteristic one, which is a five per cent value. Older editions differ in C20, C27, C35, C40,
 * D35, D40, D50 and D70. Source: EN 338:2016, as textbooks and tables print it.
 */
public enum TimberClass {
  /** Softwood, 290 and 350 kg/m³. */
  C14(290, 350),
  /** Softwood, 310 and 370 kg/m³. */
  C16(310, 370),
  /** Softwood, 320 and 380 kg/m³. */
  C18(320, 380),
  /** Softwood, 330 and 400 kg/m³. */
  C20(330, 400),
  /** Softwood, 340 and 410 kg/m³. */
  C22(340, 410),
  /** Softwood, 350 and 420 kg/m³. */
  C24(350, 420),
  /** Softwood, 360 and 430 kg/m³. */
  C27(360, 430),
  /** Softwood, 380 and 460 kg/m³. */
  C30(380, 460),
  /** Softwood, 390 and 470 kg/m³. */
  C35(390, 470),
  /** Softwood, 400 and 480 kg/m³. */
  C40(400, 480),
  /** Hardwood, 475 and 570 kg/m³. */
  D18(475, 570),
  /** Hardwood, 485 and 580 kg/m³. */
  D24(485, 580),
  /** Hardwood, 530 and 640 kg/m³. */
  D30(530, 640),
  /** Hardwood, 540 and 650 kg/m³. */
  D35(540, 650),
  /** Hardwood, 550 and 660 kg/m³. */
  D40(550, 660),
  /** Hardwood, 620 and 740 kg/m³. */
  D50(620, 740),
  /** Hardwood, 700 and 840 kg/m³. */
  D60(700, 840),
  /** Hardwood, 800 and 960 kg/m³. */
  D70(800, 960);

  private static final Source EN_338 =
      Source.read("EN 338:2016", "densities, as a textbook and tables print them");

  private final double characteristic;
  private final double mean;

  TimberClass(double characteristic, double mean) {
    this.characteristic = characteristic;
    this.mean = mean;
  }

  /** {@return ρₖ, which nineteen pieces of twenty are not below, at 12 % moisture} */
  public Measure<Density> characteristicDensity() {
    return Measures.kilogramsPerCubicMetre(characteristic);
  }

  /** {@return the mean density at 12 % moisture} */
  public Measure<Density> meanDensity() {
    return Measures.kilogramsPerCubicMetre(mean);
  }

  /** {@return timber of the class with its mean gravity} */
  public Wood wood() {
    TwelvePercentGravity gravity = TwelvePercentGravity.of(mean / WoodTable.MOIST_WATER);
    return new Wood(
        name(),
        name().startsWith("D"),
        false,
        gravity.ovenDry(),
        gravity,
        List.of(EN_338, OvenDryGravity.CONVERSION));
  }

  /** {@return where its densities come from} */
  public Source source() {
    return EN_338;
  }
}
