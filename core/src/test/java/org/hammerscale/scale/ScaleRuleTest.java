package org.hammerscale.scale;

import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.pounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.working.Caution;
import org.junit.jupiter.api.Test;

class ScaleRuleTest {
  private static final Bar STRAP =
      Bar.of(Section.flat(millimetres(25), millimetres(6)), Material.MILD_STEEL);
  private static final Bar BILLET = Bar.of(Section.square(millimetres(50)), Material.MILD_STEEL);

  @Test
  void givesAPartOfTheMass() {
    assertEquals(kilograms(0.3), ScaleRule.FORGING_UNDER_5_KG.loss(kilograms(4), 1).likely());
    assertEquals(
        ScaleRule.FORGING_UNDER_5_KG.loss(kilograms(4), 1),
        ScaleRule.FORGING_UNDER_5_KG.loss(kilograms(4), 5),
        "a rule for the whole job");
    // 3 % of the first pound and 2 % of the 0.97 lb that are left.
    assertEquals(
        0.03 + 0.02 * 0.97, ScaleRule.FLAME_FURNACE.loss(pounds(1), 2).high().getValue(), 1e-15);
    assertThrows(IllegalArgumentException.class, () -> ScaleRule.INDUCTION.share(0));
    assertThrows(IllegalArgumentException.class, () -> ScaleRule.INDUCTION.loss(kilograms(-1), 1));
  }

  @Test
  void neverLosesMoreThanThereIs() {
    double left = 2 * 0.94;
    for (int heat = 2; heat <= 50; heat++) {
      left -= 0.03 * left;
    }
    var loss = ScaleRule.FIRST_HEAT_AND_REHEATS.loss(kilograms(2), 50);
    assertEquals(2 - left, loss.high().getValue(), 1e-12);
    for (ScaleRule rule : ScaleRule.all()) {
      assertTrue(rule.loss(kilograms(2), 100_000).high().compareTo(kilograms(2)) <= 0);
    }
  }

  @Test
  void theCostingRuleGoesByMass() {
    assertEquals(ScaleRule.FORGING_UNDER_5_KG, ScaleRule.forgingOf(kilograms(4.999)));
    assertEquals(ScaleRule.FORGING_5_TO_12_5_KG, ScaleRule.forgingOf(kilograms(5)));
    assertEquals(ScaleRule.FORGING_5_TO_12_5_KG, ScaleRule.forgingOf(kilograms(12.5)));
    assertEquals(ScaleRule.FORGING_OVER_12_5_KG, ScaleRule.forgingOf(pounds(30)));
  }

  @Test
  void warnsOfAThinStrapAndOfMassesFarFromTheRules() {
    List<Caution> thin = ScaleRule.FORGING_UNDER_5_KG.cautions(STRAP, kilograms(2));
    assertEquals(1, thin.size());
    assertTrue(
        thin.get(0).text().contains("4 times the surface of a cube of its mass"), thin::toString);
    assertTrue(ScaleRule.FORGING_UNDER_5_KG.cautions(BILLET, kilograms(2)).isEmpty());
    assertTrue(
        ScaleRule.FORGING_UNDER_5_KG
            .cautions(BILLET, kilograms(0.2))
            .toString()
            .contains("hardly for less than 0.5 kg"));
    assertEquals(1, ScaleRule.FORGING_OVER_12_5_KG.cautions(BILLET, kilograms(6)).size());
    assertEquals(1, ScaleRule.FORGING_5_TO_12_5_KG.cautions(BILLET, kilograms(13)).size());
    assertTrue(ScaleRule.REHEATING_FURNACE.cautions(BILLET, kilograms(6)).isEmpty());
  }

  @Test
  void printsWhatItSays() {
    assertEquals("forging under 5 kg: 7.5 % of net mass", ScaleRule.FORGING_UNDER_5_KG.toString());
    assertEquals(
        "flame furnace: 2 to 3 %, then 1.5 to 2 % of heated mass",
        ScaleRule.FLAME_FURNACE.toString());
    assertEquals(
        "induction heating: 0.5 to 1 % of heated mass in each heat",
        ScaleRule.INDUCTION.toString());
    for (ScaleRule rule : ScaleRule.all()) {
      assertTrue(rule.toString().contains(rule.basis()));
      assertTrue(!rule.source().title().isBlank());
    }
  }
}
