package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.pounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class DoorRulesTest {
  @Test
  void countsHinges() {
    assertEquals(2, HingeCount.forHeight(metres(1.524)).hinges()); // 60 in
    assertEquals(3, HingeCount.forHeight(millimetres(2286)).hinges()); // 90 in
    assertEquals(4, HingeCount.forHeight(inches(91)).hinges());
    assertEquals("2 hinges for a door 12 in high", HingeCount.forHeight(inches(12)).toString());
  }

  @Test
  void showsHowItCounts() {
    for (int height = 10; height < 200; height += 10) {
      HingeCount count = HingeCount.forHeight(inches(height));
      Workings.check(count.working(), Measure.of(count.hinges(), ShopUnits.ONE));
    }
  }

  @Test
  void boundsStraps() {
    assertTrue(StrapRule.HALF_TO_TWO_THIRDS.allows(inches(20), inches(36)));
    assertFalse(StrapRule.HALF_TO_TWO_THIRDS.allows(inches(17), inches(36)));
    assertFalse(StrapRule.DUMMY_FRONT.allows(millimetres(400), metres(1)));
    assertTrue(StrapRule.AT_LEAST_A_THIRD.allows(inches(36), inches(36)));
    assertEquals(4, StrapRule.all().size());
    for (StrapRule rule : StrapRule.all()) {
      assertEquals(Source.Kind.COMMON_PRACTICE, rule.source().kind());
    }
    assertEquals("half to two thirds of the width", StrapRule.HALF_TO_TWO_THIRDS.toString());
  }

  @Test
  void gradesOfOthers() {
    assertEquals(10, HingeGrade.forDoor(kilograms(60)).orElseThrow().number());
    assertEquals(11, HingeGrade.forDoor(kilograms(60.1)).orElseThrow().number());
    assertEquals(4, HingeGrade.forDoor(pounds(40)).orElseThrow().number());
    assertTrue(HingeGrade.forDoor(kilograms(161)).isEmpty());
    assertEquals(
        List.of("window", "window", "door/window", "door"),
        HingeGrade.all().stream().limit(4).map(HingeGrade::use).toList());
    for (HingeGrade grade : HingeGrade.all()) {
      assertEquals(Source.Kind.READ, grade.source().kind(), grade::toString);
    }
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> HingeGrade.of(15))
            .getMessage()
            .startsWith("number must lie between 1 and 14"));
  }
}
