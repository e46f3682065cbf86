package org.hammerscale.bending;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class BendTest {
  private static final Section STRAP = Section.flat(inches(1), inches("1/4"));
  private static final Bend BEND = Bend.of(degrees(90), inches("1/4"), STRAP);
  private static final List<NeutralLine> LINES =
      List.of(
          NeutralLine.MEAN_LINE,
          NeutralLine.kFactor(0.33),
          NeutralLine.dinFactor(0.8),
          NeutralLine.DIN_6935,
          NeutralLine.HANDBOOK_SOFT_COPPER,
          NeutralLine.HANDBOOK_SOFT_STEEL,
          NeutralLine.HANDBOOK_BRONZE);

  @Test
  void measuresLegsOverAllOrStraight() {
    assertEquals(inches("1/2"), BEND.setback());
    assertEquals(inches("5 1/2"), BEND.straightLeg(inches(6)));
    assertEquals(inches(6), BEND.outsideDimension(inches("5 1/2")));
    // Two straights of 5 1/2 and 3 1/2 in, and a quarter of a circle of 3/8 in radius.
    assertEquals(9 + Math.PI * 0.375 / 2, BEND.cutLength(inches(6), inches(4)).getValue(), 1e-14);
    // From 90° on the outermost point counts, so the setback stays.
    assertEquals(inches("1/2"), Bend.of(degrees(180), inches("1/4"), STRAP).setback());
    assertEquals(
        0.5 * Math.tan(Math.PI / 8),
        Bend.of(degrees(45), inches("1/4"), STRAP).setback().getValue(),
        1e-15);
  }

  @Test
  void isAFeatureThatKeepsItsSection() {
    assertEquals("bend", BEND.name());
    assertEquals(STRAP, BEND.start());
    assertEquals(STRAP, BEND.end());
    assertTrue(BEND.metalLost().isNone());
    assertEquals(Estimate.exact(BEND.developedLength()), BEND.stock(STRAP));
    Section half = Section.flat(inches("1/2"), inches("1/4"));
    assertEquals(
        2 * BEND.developedLength().getValue(), BEND.stock(half).likely().getValue(), 1e-14);
    assertEquals(BEND.developedLength(), BEND.reach());
    assertEquals(degrees(90), BEND.angle());
    assertEquals(inches("1/4"), BEND.insideRadius());
    assertEquals(NeutralLine.MEAN_LINE, BEND.neutralLine());
  }

  @Test
  void straightUsesNothing() {
    Bend straight = Bend.of(degrees(0), millimetres(10), STRAP);
    assertEquals(millimetres(0), straight.developedLength());
    assertEquals(millimetres(0), straight.setback());
    assertEquals(millimetres(0), straight.deduction());
    assertTrue(straight.cautions().isEmpty());
    assertEquals(millimetres(500), straight.cutLength(millimetres(300), millimetres(200)));
  }

  @Test
  void thinsByColdRulesOnly() {
    assertEquals(inches("1/4"), BEND.bentThickness());
    Bend cold = BEND.with(NeutralLine.HANDBOOK_SOFT_STEEL);
    assertTrue(cold.bentThickness().isLessThan(inches("1/4")));
    // Pappus: what the flat bar holds, the bend holds.
    double flat = cold.developedLength().getValue() * 0.25;
    double bent = cold.reach().getValue() * cold.bentThickness().getValue();
    assertEquals(flat, bent, 1e-15);
  }

  @Test
  void takesTheAngleThatALengthAllows() {
    assertEquals(45, BEND.using(inches(Math.PI * 0.375 / 4)).angle().getValue(), 1e-12);
    refused("a full turn", () -> BEND.using(inches(3)));
    refused("length must not be negative", () -> BEND.using(inches(-1)));
  }

  @Test
  void showsItsWorkings() {
    for (NeutralLine line : LINES) {
      for (double angle : new double[] {30, 90, 150}) {
        Bend bend = Bend.of(degrees(angle), millimetres(9), STRAP).with(line);
        Workings.check(bend.working(), bend.developedLength());
        Workings.check(bend.deductionWorking(), bend.deduction());
        Workings.check(bend.thicknessWorking(), bend.bentThickness());
      }
    }
    assertTrue(BEND.working().toString().contains("ρ = R + t / 2 = 0.25 + 0.25 / 2 = 3/8 in"));
  }

  @Test
  void dinNeglectsSmallBends() {
    Bend small = Bend.of(degrees(15), millimetres(4), STRAP).with(NeutralLine.DIN_6935);
    assertEquals(millimetres(0), small.deduction());
    Workings.check(small.deductionWorking(), small.deduction());
    assertTrue(
        Bend.of(degrees(16), millimetres(4), STRAP)
            .with(NeutralLine.DIN_6935)
            .deduction()
            .isGreaterThan(millimetres(0)));
    refused(
        "inside radius for this neutral line must be more than 0.0501 of the thickness for DIN 6935, was 0 mm",
        () -> Bend.of(degrees(90), millimetres(0), STRAP).with(NeutralLine.DIN_6935));
  }

  @Test
  void cautionsColdRulesOnThickBarAndTightBends() {
    assertTrue(BEND.cautions().isEmpty());
    assertEquals(1, BEND.with(NeutralLine.DIN_6935).cautions().size());
    assertTrue(BEND.with(NeutralLine.kFactor(0.4)).cautions().isEmpty());
    Section sheet = Section.flat(inches(1), inches("1/8"));
    Bend inSheet = Bend.of(degrees(90), inches("1/8"), sheet);
    assertTrue(inSheet.with(NeutralLine.HANDBOOK_SOFT_COPPER).cautions().isEmpty());
    Bend tight = Bend.of(degrees(90), inches(0), STRAP);
    assertTrue(tight.cautions().get(0).text().contains("inside diameter of 0 in"));
  }

  @Test
  void neutralLinesAreToldApart() {
    assertEquals(NeutralLine.kFactor(0.4), NeutralLine.dinFactor(0.8));
    assertEquals(NeutralLine.kFactor(0.4).hashCode(), NeutralLine.dinFactor(0.8).hashCode());
    assertNotEquals(NeutralLine.MEAN_LINE, NeutralLine.kFactor(0.5));
    assertNotEquals(NeutralLine.HANDBOOK_BRONZE, NeutralLine.HANDBOOK_SOFT_STEEL);
    assertEquals(0.5, NeutralLine.MEAN_LINE.fraction(inches(0), STRAP));
    assertEquals(0.5, NeutralLine.DIN_6935.fraction(inches(2), STRAP));
    assertEquals(Source.Kind.READ, NeutralLine.DIN_6935.source().kind());
    refused("k must be more than 0 and at most 1.0, was 1.2", () -> NeutralLine.kFactor(1.2));
    refused("k must be more than 0 and at most 2.0, was 0.0", () -> NeutralLine.dinFactor(0));
    refused("NaN", () -> NeutralLine.kFactor(Double.NaN));
  }

  @Test
  void refusesWhatIsNoBend() {
    refused("angle must lie between", () -> Bend.of(degrees(361), inches(1), STRAP));
    refused("angle must lie between", () -> Bend.of(degrees(-1), inches(1), STRAP));
    refused("angle must be an angle, was 3 kg", () -> Bend.of(smuggled(), inches(1), STRAP));
    refused("inside radius must not be negative", () -> Bend.of(degrees(9), inches(-1), STRAP));
    refused(
        "outside dimension must be at least the setback of 1/2 in, was 1/4 in",
        () -> BEND.cutLength(inches(6), inches("1/4")));
    refused("straight leg must not be negative", () -> BEND.outsideDimension(inches(-1)));
    assertThrows(NullPointerException.class, () -> BEND.with(null));
    assertThrows(NullPointerException.class, () -> Bend.of(degrees(1), inches(1), null));
  }

  @Test
  void cornersForgedSharp() {
    SquareCorner corner = SquareCorner.of(Section.flat(millimetres(40), millimetres(12)));
    assertEquals(millimetres(12), corner.developedLength());
    assertEquals(millimetres(12), corner.outsideDeduction());
    assertEquals(millimetres(3), corner.markAllowance());
    assertEquals(millimetres(18), corner.upsetThickness());
    assertEquals(millimetres(12), corner.reach());
    assertTrue(corner.cautions().isEmpty());
    Workings.check(corner.working(), corner.developedLength());
    Workings.check(corner.deductionWorking(), corner.outsideDeduction());
    Workings.check(corner.markWorking(), corner.markAllowance());
    Workings.check(corner.upsetWorking(), corner.upsetThickness());
    // Ilgen's angle: a bar of 1 × 1/2 in is 7/8 in thick in the middle.
    SquareCorner printed = SquareCorner.of(Section.flat(inches(1), inches("1/2")));
    assertEquals(inches("7/8"), printed.fullUpsetThickness());
    Workings.check(printed.fullUpsetWorking(), printed.fullUpsetThickness());
    assertTrue(corner.fullUpsetThickness().isGreaterThan(corner.upsetThickness()));
    // An angle iron of outside legs 100 and 80: a bar of 168 mm makes it.
    Section section = corner.section();
    Plain leg = Plain.of(section, millimetres(88));
    Plain other = Plain.of(section, millimetres(68));
    double used =
        List.of(leg, corner, other).stream()
            .mapToDouble(feature -> feature.stock(section).likely().getValue())
            .sum();
    assertEquals(100 + 80 - 12, used);
  }

  @Test
  void bendsAU() {
    Section rod = Section.round(millimetres(10));
    UBend round = UBend.inside(millimetres(100), rod);
    // Without straights it is the half round alone.
    assertEquals(55 * Math.PI, round.developedLength().getValue(), 1e-12);
    assertEquals(60, round.reach().getValue());
    UBend staple = round.withLegs(millimetres(300), millimetres(200));
    assertEquals(millimetres(120), staple.outsideWidth());
    assertEquals(millimetres(300), staple.reach());
    assertEquals(millimetres(200), staple.secondLegOverAll());
    // The sharp U's bar: inside legs 290 and 190, bottom 100, two corners of 10.
    UBend square = staple.withSquareCorners();
    assertEquals(millimetres(600), square.developedLength());
    assertEquals(millimetres(300), square.firstLegOverAll());
    assertTrue(square.cautions().isEmpty());
    for (UBend bend : List.of(staple, square, staple.withCorners(millimetres(20)))) {
      Workings.check(bend.working(), bend.developedLength());
      UBend again = bend.using(bend.developedLength());
      assertEquals(250, again.firstLegOverAll().getValue(), 1e-9);
      assertEquals(again.firstLegOverAll(), again.secondLegOverAll());
    }
    assertEquals(millimetres(60), round.withCorners(millimetres(10)).firstLegOverAll());
    UBend low = round.withSquareCorners().withLegs(millimetres(20), millimetres(20));
    refused("first leg must be at least 30 mm", () -> low.withCorners(millimetres(20)));
    refused("length must be at least the", () -> round.using(millimetres(100)));
    refused("first leg must be at least 60 mm", () -> round.withLegs(inches(1), inches(9)));
    refused("inside radius must be at most half", () -> round.withCorners(millimetres(51)));
    refused("width must be more than zero", () -> UBend.inside(millimetres(0), rod));
    assertEquals("U bend", round.name());
    assertEquals(millimetres(100), round.insideWidth());
    assertTrue(round.cautions().isEmpty());
    assertEquals(1, round.withCorners(millimetres(0)).cautions().size());
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Quantity<Angle> smuggled() {
    return (Quantity) kilograms(3);
  }

  static void refused(String part, Executable wrong) {
    String message = assertThrows(IllegalArgumentException.class, wrong).getMessage();
    assertTrue(message.contains(part), message);
  }

  @Test
  void aLegIsToldOverAllAndStraight() {
    UBend staple =
        UBend.inside(millimetres(30), Section.round(millimetres(8)))
            .withLegs(millimetres(80), millimetres(60));
    assertEquals(millimetres(80), staple.firstLegOverAll());
    // Less the thickness and the radius of the bend.
    assertEquals(millimetres(80 - 8 - 15), staple.firstStraight());
    assertEquals(millimetres(60 - 8 - 15), staple.secondStraight());
  }
}
