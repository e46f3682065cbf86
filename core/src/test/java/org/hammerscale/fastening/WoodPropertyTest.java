package org.hammerscale.fastening;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.fastening.WoodFastener.Kind;

/** What must hold for any fastener in any wood. */
class WoodPropertyTest {
  @Property
  void gravityConvertsThereAndBack(
      @ForAll @DoubleRange(min = 0.01, max = 1.5) @Scale(6) double gravity) {
    OvenDryGravity dry = OvenDryGravity.of(gravity);
    assertEquals(gravity, dry.at12Percent().ovenDry().value(), 1e-15 + 4e-16 * gravity);
    assertTrue(dry.at12Percent().value() < gravity);
  }

  @Property
  void inchAndMetricAskForTheSamePilot(
      @ForAll Kind kind,
      @ForAll @DoubleRange(min = 0.33, max = 0.7) @Scale(4) double gravity,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(4) double diameter) {
    Wood wood = Wood.hardwood("any", OvenDryGravity.of(gravity * 1.06));
    Fastener inch = Fastener.of(kind, inches(diameter));
    Fastener metric = Fastener.of(kind, millimetres(25.4 * diameter));
    PilotHole bit = PilotHole.acrossLoad(inch, wood);
    assertTrue(bit.threadHole().isEquivalentTo(PilotHole.acrossLoad(metric, wood).threadHole()));
  }

  @Property
  void spacingIsAWholeLawOfItsDiameter(
      @ForAll SpacingRule rule,
      @ForAll @DoubleRange(min = 0, max = 90) @Scale(3) double angle,
      @ForAll @DoubleRange(min = 0.04, max = 0.6) @Scale(4) double diameter) {
    WoodSpacing worst = WoodSpacing.by(rule, inches(diameter));
    WoodSpacing inch = worst.pulledAt(degrees(angle));
    WoodSpacing metric =
        WoodSpacing.by(rule, millimetres(25.4 * diameter)).pulledAt(degrees(angle));
    assertTrue(inch.alongGrain().isEquivalentTo(metric.alongGrain()));
    assertTrue(inch.loadedEdge().isEquivalentTo(metric.loadedEdge()));
    // No angle asks for more than the worst, no unloaded edge for more than a loaded one.
    assertTrue(inch.alongGrain().isLessThanOrEqualTo(worst.alongGrain()));
    assertTrue(inch.acrossGrain().isLessThanOrEqualTo(worst.acrossGrain()));
    assertTrue(inch.loadedEnd().isLessThanOrEqualTo(worst.loadedEnd()));
    assertTrue(inch.loadedEdge().isLessThanOrEqualTo(worst.loadedEdge()));
    assertTrue(inch.unloadedEnd().isLessThanOrEqualTo(worst.loadedEnd()));
    assertTrue(inch.unloadedEdge().isLessThanOrEqualTo(inch.loadedEdge()));
    SeamClearance seam = SeamClearance.around(inches(diameter), inch);
    assertTrue(seam.pulledTowards().isGreaterThanOrEqualTo(seam.pulledAway()));
    assertTrue(seam.withMargin(inches(1)).pulledAway().isGreaterThanOrEqualTo(seam.pulledAway()));
  }
}
