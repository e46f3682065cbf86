package org.hammerscale.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/**
 * Specific gravities of species as printed: by the volume at 12 % beside the oven-dry value that
 * the NDS assigns to the species or its group, where one is known; of European timber the density
 * at 12 %.
 */
final class WoodTable {
  private static final Source ARMY =
      Source.read(
          "TM 5-852-4 (figures of the Forest Products Laboratory)", "table 2-2, gravity at 12 %");
  private static final Source OREGON =
      Source.read(
          "Oregon State University, relative working and physical properties of western softwoods",
          "gravity at 12 %");
  private static final Source HANDBOOK =
      Source.fromMemory("USDA Wood Handbook, FPL-GTR-190", "table 5-3, gravity at 12 %");
  private static final Source NDS =
      Source.fromMemory("ANSI/AWC NDS 2015", "assigned specific gravities, oven-dry");

  /** As the page prints them: seasoned, at a moisture of about 12 to 15 % that it does not tell. */
  private static final Source SEASONED =
      Source.read(
          "densities of seasoned wood (engineeringtoolbox.com, wood densities)",
          "kg/m³, taken as if at 12 %");

  private static final Source MERCHANT =
      Source.read("homehout.nl, Douglas", "density at 12 %, kg/m³ ÷ 1120");

  private static final Source EUROPEAN =
      Source.fromMemory("mean densities of European species at 12 %", "kg/m³ ÷ 1120");

  /** Mass at 12 % over volume at 12 % holds 12 % of water: kg/m³ for a gravity of one. */
  static final double MOIST_WATER = 1120;

  static final List<Wood> SPECIES =
      List.of(
          softwood("Douglas-fir coast", 0.48, 0.50, ARMY),
          softwood("Western larch", 0.52, null, OREGON),
          softwood("Engelmann spruce", 0.35, 0.38, OREGON),
          softwood("Western hemlock", 0.45, 0.47, OREGON),
          softwood("Noble fir", 0.39, null, OREGON),
          softwood("Grand fir", 0.39, null, OREGON),
          softwood("Subalpine fir", 0.32, null, OREGON),
          softwood("Pacific silver fir", 0.43, null, OREGON),
          softwood("California red fir", 0.38, null, OREGON),
          softwood("Ponderosa pine", 0.40, 0.43, ARMY),
          softwood("Loblolly pine", 0.51, 0.55, ARMY),
          softwood("Eastern hemlock", 0.41, null, ARMY),
          softwood("Sitka spruce", 0.40, 0.43, ARMY),
          softwood("Lodgepole pine", 0.41, null, ARMY),
          softwood("White fir", 0.37, null, ARMY),
          softwood("Alaska cedar", 0.44, null, ARMY),
          softwood("Eastern white pine", 0.35, 0.36, HANDBOOK),
          softwood("Western redcedar", 0.32, 0.36, HANDBOOK),
          softwood("Redwood old-growth", 0.40, 0.44, HANDBOOK),
          hardwood("White oak", 0.68, 0.73).attackingIron(),
          hardwood("Northern red oak", 0.63, 0.67).attackingIron(),
          hardwood("Sugar maple (hard)", 0.63, null),
          hardwood("White ash", 0.60, null),
          hardwood("Black walnut", 0.55, null),
          hardwood("Black cherry", 0.50, null),
          hardwood("Yellow-poplar", 0.42, 0.43),
          hardwood("American beech", 0.64, 0.71),
          hardwood("American elm", 0.50, null),
          hardwood("American chestnut", 0.43, null).attackingIron(),
          // The page above prints for oak, beech and larch only ranges: 600-900, 700-900, 500-560.
          european("Oak (European)", true, 710, EUROPEAN).attackingIron(),
          european("Beech (European)", true, 720, EUROPEAN),
          european("Larch (European)", false, 590, EUROPEAN),
          european("Spruce (Norway)", false, 460, EUROPEAN),
          european("Ash (European)", true, 710, SEASONED),
          european("Sweet chestnut", true, 560, SEASONED).attackingIron(),
          european("Pine (Scots)", false, 510, SEASONED),
          european("Elm (wych)", true, 690, SEASONED),
          european("Elm (Dutch)", true, 560, SEASONED),
          european("Cherry (European)", true, 630, SEASONED),
          european("Birch (European)", true, 670, SEASONED),
          european("Lime (European)", true, 560, SEASONED),
          european("Plane (European)", true, 640, SEASONED),
          european("Pine (Corsican)", false, 510, SEASONED),
          european("Douglas fir planted in Europe", false, 510, MERCHANT),
          european("Douglas fir", false, 530, SEASONED));

  private WoodTable() {}

  private static Wood softwood(
      String name, double at12Percent, @Nullable Double ovenDry, Source source) {
    return wood(name, false, at12Percent, ovenDry, source);
  }

  private static Wood hardwood(String name, double at12Percent, @Nullable Double ovenDry) {
    return wood(name, true, at12Percent, ovenDry, HANDBOOK);
  }

  private static Wood european(String name, boolean hardwood, double density, Source source) {
    return wood(name, hardwood, density / MOIST_WATER, null, source);
  }

  private static Wood wood(
      String name, boolean hardwood, double at12Percent, @Nullable Double ovenDry, Source source) {
    TwelvePercentGravity moist = TwelvePercentGravity.of(at12Percent);
    List<Source> sources = new ArrayList<>(List.of(Objects.requireNonNull(source, "source")));
    sources.add(ovenDry == null ? OvenDryGravity.CONVERSION : NDS);
    return new Wood(
        name,
        hardwood,
        false,
        ovenDry == null ? moist.ovenDry() : OvenDryGravity.of(ovenDry),
        moist,
        List.copyOf(sources));
  }
}
