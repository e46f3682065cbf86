package org.hammerscale.examples.sweep;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.stock.Plain;
import org.hammerscale.strength.BarrelOpening;
import org.hammerscale.strength.PermissibleStress;
import org.junit.jupiter.api.Test;

/** The sweep finds pairs that fit and bear the pull, and no lighter one does. */
class LightestPairTest {
  @Test
  void findsTheLightestThatBears() {
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    List<LightestPair.Choice> best =
        LightestPair.run(2, new PrintStream(printed, true, StandardCharsets.UTF_8));
    String text = printed.toString(StandardCharsets.UTF_8);
    assertTrue(text.contains("20000 pairs: "), text);
    assertFalse(best.isEmpty(), text);
    for (LightestPair.Choice choice : best) {
      HingePair pair =
          HingePair.of(choice.bar(), choice.bore())
              .leaves(Plain.of(choice.bar().section(), millimetres(300)))
              .opening(degrees(choice.opening()), Hanging.JOINT)
              .pair();
      assertEquals(LightestPair.mass(pair), choice.mass());
      assertTrue(
          BarrelOpening.of(pair.barrel())
              .withKnuckles(pair.knuckles().bearingLength(Leaf.SECOND))
              .safePull(PermissibleStress.of(megapascals(235), 3))
              .isGreaterThanOrEqualTo(newtons(400)),
          choice::toString);
    }
    // A bar a quarter of a millimetre thinner is lighter, and would have been taken if it bore.
    LightestPair.Choice first = best.get(0);
    assertTrue(first.bar().section().thickness().isGreaterThan(millimetres(3)), text);
  }
}
