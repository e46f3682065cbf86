package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.hammerscale.bending.Hook;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CarryingHookTest {
  private static final CarryingHook ROUND =
      CarryingHook.of(Hook.open(millimetres(50), Section.round(millimetres(12))));
  private static final CarryingHook DRAWN =
      CarryingHook.of(
          HookSection.narrowing(millimetres(30), millimetres(12), millimetres(40)),
          millimetres(30));

  /** Fibre by fibre: stress falls off as (r₀ − r) / r, force and moment balance. */
  @Test
  void fibresBalanceTheLoad() {
    Random random = new Random(1798);
    for (int i = 0; i < 300; i++) {
      double ri = 5 + random.nextInt(60);
      double h = 4 + random.nextInt(40);
      double bi = 4 + random.nextInt(30);
      double bo = 1 + random.nextInt((int) bi);
      boolean round = random.nextBoolean();
      DoubleUnaryOperator width =
          round
              ? r -> 2 * Math.sqrt(Math.max(0, h * h / 4 - Math.pow(r - ri - h / 2, 2)))
              : r -> bi + (bo - bi) * (r - ri) / h;
      HookSection section =
          round
              ? HookSection.of(Section.round(millimetres(h)))
              : HookSection.narrowing(millimetres(bi), millimetres(bo), millimetres(h));
      CarryingHook hook = CarryingHook.of(section, millimetres(ri));
      double area = sum(width, ri, h);
      double centroid = sum(r -> r * width.applyAsDouble(r), ri, h) / area;
      double neutral = area / sum(r -> width.applyAsDouble(r) / r, ri, h);
      assertEquals(centroid, hook.centroidRadius().getValue(), 1e-4 * centroid);
      assertEquals(neutral, hook.neutralRadius().getValue(), 1e-4 * centroid);
      double inner = hook.innerStress(newtons(1000)).getValue();
      double outer = hook.outerStress(newtons(1000)).getValue();
      // σ = p + q / r through both edges carries 1000 N, and 1000 N × r about the centroid.
      double q = (inner - outer) / (1 / ri - 1 / (ri + h));
      double p = inner - q / ri;
      DoubleUnaryOperator force = r -> (p + q / r) * width.applyAsDouble(r);
      assertEquals(1000, sum(force, ri, h), 12, section::toString);
      double moment = sum(r -> force.applyAsDouble(r) * (centroid - r), ri, h);
      assertEquals(1000 * centroid, moment, 2e-3 * 1000 * centroid, section::toString);
    }
  }

  private static double sum(DoubleUnaryOperator f, double from, double depth) {
    int steps = 20_000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      sum += f.applyAsDouble(from + depth * (i + 0.5) / steps);
    }
    return sum * depth / steps;
  }

  @Test
  void plasticLimitOfASquareIsTheKnownOne() {
    CarryingHook square =
        CarryingHook.of(Hook.open(millimetres(50), Section.square(millimetres(12))));
    // Y b h = N, M / Mₚ + (F / N)² = 1 with Mₚ = Y b h² / 4 and M = 31 F.
    double n = 235 * 144;
    double m = 235 * 12 * 144 / 4d;
    double f = square.plasticLimit(megapascals(235)).getValue();
    assertEquals(1, f * 31 / m + f / n * (f / n), 1e-9);
    assertTrue(square.firstYield(megapascals(235)).getValue() < f);
  }

  @Test
  void aSectionKnowsItsSizes() {
    HookSection drawn = DRAWN.section();
    assertEquals(millimetres(30), drawn.innerWidth());
    assertEquals(millimetres(12), drawn.outerWidth());
    assertFalse(drawn.isRound());
    assertTrue(ROUND.section().isRound());
    assertEquals(ROUND.section().depth(), ROUND.section().innerWidth());
  }

  @Test
  void plasticFibresBalance() {
    for (CarryingHook hook : new CarryingHook[] {ROUND, DRAWN}) {
      double ri = hook.insideRadius().getValue();
      double h = hook.section().depth().getValue();
      boolean round = hook == ROUND;
      DoubleUnaryOperator width =
          round
              ? r -> 2 * Math.sqrt(Math.max(0, 36 - (r - 31) * (r - 31)))
              : r -> 30 - 18 * (r - 30) / 40;
      double f = hook.plasticLimit(megapascals(1)).getValue();
      double area = sum(width, ri, h);
      double centroid = hook.centroidRadius().getValue();
      double turn = ri;
      double step = h / 200_000;
      for (double tension = 0; tension < (area + f) / 2; turn += step) {
        tension += width.applyAsDouble(turn) * step;
      }
      double z = turn;
      double moment = sum(r -> (r < z ? 1 : -1) * (centroid - r) * width.applyAsDouble(r), ri, h);
      assertEquals(f * centroid, moment, 1e-3 * moment);
    }
  }

  @Test
  void farLoadBendsMore() {
    CarryingHook far = DRAWN.withLoadBeyondCentre(millimetres(20));
    assertEquals(millimetres(20), far.loadBeyondCentre());
    assertEquals(millimetres(0), DRAWN.loadBeyondCentre());
    assertTrue(far.innerStress(newtons(100)).isGreaterThan(DRAWN.innerStress(newtons(100))));
    // The arm grows from 47.14 to 67.14 mm; the couple alone grows with it.
    double couple = DRAWN.innerStressOfCouple(newtons(100), millimetres(20)).getValue();
    assertEquals(
        far.innerStress(newtons(100)).getValue(),
        DRAWN.innerStress(newtons(100)).getValue() + couple,
        1e-9);
    assertTrue(far.toString().endsWith("loaded 20 mm beyond its centre"));
  }

  @Test
  void firstYieldIsWhereTheGreaterStressYields() {
    double f = ROUND.firstYield(megapascals(235)).getValue();
    assertEquals(235, ROUND.innerStress(newtons(f)).getValue(), 1e-9);
    CarryingHook flipped =
        CarryingHook.of(
            HookSection.narrowing(millimetres(60), millimetres(2), millimetres(40)),
            millimetres(300));
    double g = flipped.firstYield(megapascals(235)).getValue();
    assertEquals(-235, flipped.outerStress(newtons(g)).getValue(), 1e-9);
    PermissibleStress iron = PermissibleStress.of(Material.MILD_STEEL, 4);
    assertEquals(
        ROUND.firstYield(iron.strength()).getValue() / 4, ROUND.safeLoad(iron).getValue(), 1e-9);
  }

  @Test
  void showsItsWorkings() {
    CarryingHook inch =
        CarryingHook.of(HookSection.of(Section.flat(inches(1), inches("1/2"))), inches(1));
    for (CarryingHook hook : new CarryingHook[] {ROUND, DRAWN, inch}) {
      Workings.check(hook.innerWorking(newtons(900)), hook.innerStress(newtons(900)));
      Workings.check(hook.outerWorking(poundsForce(90)), hook.outerStress(poundsForce(90)));
      Workings.check(hook.firstYieldWorking(megapascals(235)), hook.firstYield(megapascals(235)));
      Workings.check(hook.plasticWorking(megapascals(235)), hook.plasticLimit(megapascals(235)));
      PermissibleStress iron = PermissibleStress.of(Material.WROUGHT_IRON, 5);
      Workings.check(hook.safeWorking(iron), hook.safeLoad(iron));
    }
    CarryingHook outside =
        CarryingHook.of(HookSection.narrowing(inches(2), inches("1/8"), inches(1)), inches(10));
    Workings.check(
        outside.firstYieldWorking(megapascals(235)), outside.firstYield(megapascals(235)));
    assertEquals(ShopUnits.INCH, inch.neutralRadius().getUnit());
  }

  @Test
  void liftingIsRefusedInWords() {
    String first = ROUND.cautions().get(0).text();
    assertTrue(ROUND.cautions().get(0).isDanger());
    assertTrue(first.contains("not for lifting people or over people"), first);
    assertTrue(first.contains("licensed engineer"), first);
    assertTrue(ROUND.cautions().get(1).text().contains("do not quench"));
  }

  @Test
  void refusesWhatCannotBeBent() {
    String message = refusal(() -> HookSection.narrowing(inches(1), inches(2), inches(3)));
    assertTrue(message.contains("the wide side lies inside"), message);
    assertTrue(refusal(() -> HookSection.of(Section.hexagon(inches(1)))).contains("bar must be"));
    Hook sharp = Hook.cabin(inches(0), Section.round(inches("1/2")));
    assertTrue(refusal(() -> CarryingHook.of(sharp)).startsWith("insideRadius must be more"));
    assertEquals("1/2 in round", HookSection.of(Section.round(inches("1/2"))).toString());
    assertEquals(
        "1 in × 1/2 in deep", HookSection.of(Section.flat(inches(1), inches("1/2"))).toString());
    assertEquals(
        "hook of 30 mm inside, 12 mm outside, 40 mm deep, 30 mm inside radius", DRAWN.toString());
  }

  /** As wide as may be, it bends as a straight bar does: F/A + 32 M/(π d³), h/b h²/6 of a flat. */
  @Test
  void aWideBendIsNearlyStraight() {
    double radius = 9990;
    CarryingHook round =
        CarryingHook.of(HookSection.of(Section.round(millimetres(10))), millimetres(radius));
    double moment = radius + 5;
    assertEquals(
        4 / (Math.PI * 100) + 32 * moment / (Math.PI * 1000),
        round.innerStress(newtons(1)).getValue(),
        0.001 * moment / 98);
    CarryingHook flat =
        CarryingHook.of(
            HookSection.of(Section.flat(millimetres(20), millimetres(10))), millimetres(radius));
    assertEquals(
        1 / 200.0 + 6 * moment / 2000,
        flat.innerStress(newtons(1)).getValue(),
        0.001 * moment / 333);
    assertEquals(
        "insideRadius must be at most 1000 times the 10 mm of metal across the bend, was 10001 mm;"
            + " so wide a bend is a straight beam: ask BracketArm",
        refusal(
            () ->
                CarryingHook.of(
                    HookSection.of(Section.round(millimetres(10))), millimetres(10_001))));
    Barrel wide = Barrel.around(millimetres(2100), Section.flat(millimetres(20), millimetres(1)));
    assertTrue(
        refusal(() -> BarrelOpening.of(wide)).startsWith("inside radius of the barrel must be"));
  }

  @Test
  void handbooksStandSideBySide() {
    assertEquals(14_336, HandbookLoad.CHAIN_EIGHTHS.load(inches(1)).in(ShopUnits.POUND), 1e-6);
    assertEquals(16_000, HandbookLoad.CHAIN_FIELD.load(inches(1)).in(ShopUnits.POUND), 1e-6);
    assertEquals(ShopUnits.KILOGRAM, HandbookLoad.HOOK_FIELD.load(millimetres(20)).getUnit());
    // 1 1/8 in: 1.27 short tons; shackle of 5/8 in: 1.1719, of 1.59 cm: 1.05 t.
    assertEquals(
        1.27, HandbookLoad.HOOK_FIELD.load(inches("1 1/8")).in(ShopUnits.POUND) / 2000, 0.005);
    assertEquals(
        1.1719, HandbookLoad.SHACKLE_FIELD.load(inches("5/8")).in(ShopUnits.POUND) / 2000, 5e-5);
    assertEquals(
        1.05,
        HandbookLoad.SHACKLE_METRIC.load(millimetres(15.9)).in(ShopUnits.KILOGRAM) / 1000,
        0.005);
    for (HandbookLoad rule : HandbookLoad.values()) {
      Workings.check(rule.working(inches("5/8")), rule.load(inches("5/8")));
      assertTrue(rule.cautions().get(0).text().contains("not for lifting people"));
      assertTrue(rule.cautions().get(1).text().contains("proof-test"));
      assertEquals(rule.name().contains("BREAKING"), rule.isBreaking());
    }
    assertTrue(HandbookLoad.CHAIN_ARTILLERY.cautions().get(2).text().contains("twice the other"));
    assertEquals("hook, D² short tons", HandbookLoad.HOOK_FIELD.toString());
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
