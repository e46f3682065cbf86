package org.hammerscale.stock;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.kilogramsPerCubicMetre;

import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;

/**
 * The values of the metals that a smith uses, each beside its source. Of a source's range the
 * middle is taken as likely. Yield strengths are those of the soft or hot-worked metal, since that
 * is how it leaves the fire.
 */
final class Metals {
  private static final String FORGING_CHART = "forging temperature chart (artizono.com)";
  private static final String STRENGTH_LIST = "materials strength list (thedirtforum.com)";
  private static final String STAINLESS_SHEET = "AISI 304 data sheet";
  private static final String MEDIUM_CARBON_SHEET = "AISI 1045 data page (yongkimsteel)";
  private static final String COPPER_SHEET = "copper.org, Introduction to Copper";
  private static final String COPPER_FORGING = "Copper Forging Alloys sheet";
  private static final String BRASS_SHEET = "weldaloy.com C46400 (CDA data)";
  private static final String BRONZE_SHEET = "atlasmetal.com C65500";
  private static final String ALUMINIUM_SHEET = "btimetals.com 6061";

  private static final Source COLD =
      Source.commonPractice(
          "bent and trued cold too: it hardens under the hammer from the end of its forging range"
              + " on, without cracking at once");

  private Metals() {}

  static Material wroughtIron() {
    Source azom = Source.read("AZoM, article 9555, wrought iron", "");
    return Material.of(
            "wrought iron",
            Measures.poundsPerCubicFoot(480),
            Source.read("Ilgen, Forge Work, 1912", "Formulas and Tables 1"))
        .withForgingRange(
            degrees(1150, 1225, 1300), degrees(850, 875, 900), handbook("forging range"))
        .withSolidus(celsius(1540), azom)
        .withExpansionPerKelvin(12.0e-6, handbook("20–100 °C"))
        .withSpecificHeatInJoulesPerKilogramKelvin(460, handbook("20 °C"))
        .withYieldStrength(Estimate.of(megapascals(159), megapascals(190), megapascals(221)), azom);
  }

  static Material mildSteel() {
    return Material.of(
            "mild steel",
            kilogramsPerCubicMetre(7850),
            Source.read("EN 1993-1-2 and EN 1991-1-1", "nominal density of steel"))
        .withForgingRange(
            celsius(1250), celsius(800), Source.read(FORGING_CHART, "grades up to 0.30 % carbon"))
        .withColdWork(celsius(800), COLD)
        .withSolidus(celsius(1480), handbook("about 0.2 % carbon"))
        .withExpansionPerKelvin(11.7e-6, handbook("20–100 °C"))
        .withSpecificHeatInJoulesPerKilogramKelvin(486, handbook("20–100 °C"))
        .withYieldStrength(
            exactly(248), Source.read("Alro, hot rolled catalogue", "A36, minimum, 36 ksi"));
  }

  static Material mediumCarbonSteel() {
    return Material.of(
            "medium-carbon steel",
            kilogramsPerCubicMetre(7870),
            Source.read(MEDIUM_CARBON_SHEET, "1045"))
        .withForgingRange(
            celsius(1200), celsius(800), Source.read(FORGING_CHART, "40 to 60 grades"))
        .withSolidus(celsius(1430), handbook("about 0.45 % carbon"))
        .withExpansionPerKelvin(11.5e-6, Source.read(MEDIUM_CARBON_SHEET, "20–100 °C"))
        .withSpecificHeatInJoulesPerKilogramKelvin(
            486, Source.read(MEDIUM_CARBON_SHEET, "0.116 Btu/(lb °F)"))
        .withYieldStrength(
            exactly(345), Source.read("cardmet.com, hot rolled properties", "1045 hot rolled"));
  }

  static Material stainless304() {
    return Material.of(
            "stainless steel 304",
            kilogramsPerCubicMetre(8000),
            Source.read(STAINLESS_SHEET, "20 °C"))
        .withForgingRange(
            celsius(1150), celsius(900), Source.read("kiforging.com, forging range note", ""))
        .withColdWork(celsius(900), COLD)
        .withSolidus(celsius(1400), Source.read(STAINLESS_SHEET, ""))
        .withExpansionPerKelvin(17.3e-6, Source.read(STAINLESS_SHEET, "0–100 °C"))
        .withSpecificHeatInJoulesPerKilogramKelvin(500, Source.read(STAINLESS_SHEET, "0–100 °C"))
        .withYieldStrength(
            exactly(207), Source.read(STRENGTH_LIST, "hot finished and annealed, 30 ksi"));
  }

  static Material copper() {
    return Material.of(
            "copper",
            kilogramsPerCubicMetre(8890),
            Source.read(COPPER_SHEET, "table 5, IEC standard"))
        .withForgingRange(celsius(870), celsius(760), hotWorking("1400–1600 °F"))
        .withColdWork(
            celsius(375),
            Source.fromMemory(
                "Copper Development Association, C11000", "annealing 700–1200 °F; cold: excellent"))
        .withSolidus(celsius(1065), Source.read(COPPER_FORGING, "tough pitch, 1949 °F"))
        .withExpansionPerKelvin(16.8e-6, Source.read(COPPER_SHEET, "table 5, 25–100 °C"))
        .withSpecificHeatInJoulesPerKilogramKelvin(386, Source.read(COPPER_SHEET, "table 5, 20 °C"))
        .withYieldStrength(exactly(69), Source.read(COPPER_FORGING, "forged or soft, 10 ksi"));
  }

  static Material navalBrass() {
    return Material.of(
            "naval brass", kilogramsPerCubicMetre(8410), Source.read(BRASS_SHEET, "20 °C"))
        .withForgingRange(celsius(815), celsius(650), hotWorking("1200–1500 °F"))
        .withSolidus(celsius(888), Source.read(BRASS_SHEET, ""))
        .withExpansionPerKelvin(21.2e-6, Source.read(BRASS_SHEET, "20–300 °C"))
        .withSpecificHeatInJoulesPerKilogramKelvin(377, Source.read(BRASS_SHEET, "20 °C"))
        .withYieldStrength(exactly(172), handbook("soft annealed, typical, 25 ksi"));
  }

  static Material siliconBronze() {
    return Material.of(
            "silicon bronze", kilogramsPerCubicMetre(8530), Source.read(BRONZE_SHEET, "20 °C"))
        .withForgingRange(celsius(870), celsius(705), hotWorking("1300–1600 °F"))
        .withColdWork(celsius(705), COLD)
        .withSolidus(celsius(970), Source.read(BRONZE_SHEET, ""))
        .withExpansionPerKelvin(18.0e-6, Source.read(BRONZE_SHEET, "20–300 °C"))
        .withSpecificHeatInJoulesPerKilogramKelvin(377, Source.read(BRONZE_SHEET, "0.09 cal/(g K)"))
        .withYieldStrength(exactly(145), handbook("soft annealed, typical, 21 ksi"));
  }

  static Material aluminium6061() {
    return Material.of(
            "aluminium 6061", kilogramsPerCubicMetre(2700), Source.read(ALUMINIUM_SHEET, "20 °C"))
        .withForgingRange(
            celsius(482), celsius(399), Source.read("steelforge.com 6061", "750–900 °F"))
        .withSolidus(celsius(582), Source.read(ALUMINIUM_SHEET, ""))
        .withExpansionPerKelvin(23.6e-6, Source.read(ALUMINIUM_SHEET, "20–100 °C"))
        .withSpecificHeatInJoulesPerKilogramKelvin(896, Source.read(ALUMINIUM_SHEET, "100 °C"))
        .withYieldStrength(exactly(55), Source.read(STRENGTH_LIST, "O temper, 8 ksi"));
  }

  private static Source handbook(String condition) {
    return Source.fromMemory("handbook value", condition);
  }

  private static Source hotWorking(String range) {
    return Source.fromMemory("Copper Development Association, hot working", range);
  }

  private static Estimate<Temperature> degrees(double low, double likely, double high) {
    return Estimate.of(celsius(low), celsius(likely), celsius(high));
  }

  private static Estimate<Pressure> exactly(double megapascals) {
    return Estimate.exact(megapascals(megapascals));
  }

  private static Measure<Pressure> megapascals(double value) {
    return Measure.of(value, ShopUnits.MEGAPASCAL);
  }
}
