package org.hammerscale.piece;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class PieceTest {
  private static final Bar STRAP =
      Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
  private static final Section TIP = Section.flat(inches("3/4"), inches("1/8"));
  private static final Piece LEAF =
      Piece.of(
          STRAP,
          Barrel.around(inches("1/2"), STRAP.section()),
          Plain.of(STRAP.section(), inches(9)),
          Taper.between(STRAP.section(), TIP, inches(6)));

  @Test
  void laysOutALeaf() {
    Layout layout = LEAF.layout();
    // The barrel closes after 300° on 3/8 in, 1.9635 in, a thickness of 1/4 in either way; 9 plain,
    // 3 1/2 for the taper.
    assertEquals(14.4635, layout.cutLength().likely().in(ShopUnits.INCH), 5e-5);
    assertEquals(14.2135, layout.cutLength().low().in(ShopUnits.INCH), 5e-5);
    assertEquals(14.7135, layout.cutLength().high().in(ShopUnits.INCH), 5e-5);
    assertEquals(3, layout.marks().size());
    assertEquals(11.2135, layout.marks().get(1).position().high().in(ShopUnits.INCH), 5e-5);
    assertEquals("plain stretch | taper", layout.marks().get(1).label());
    assertEquals("taper | cut", layout.marks().get(2).label());
    assertTrue(layout.marks().get(2).isCut());
    assertFalse(layout.marks().get(0).isCut());
    assertEquals(
        "1.9635 in (1.7135 in to 2.2135 in): rolled barrel | plain stretch",
        layout.marks().get(0).toString());
    assertEquals(inches("15 1/2"), layout.finishedLength());
    assertEquals(
        "cut 14.4635 in (14.2135 in to 14.7135 in), marks at 1.9635 in, 10.9635 in, 14.4635 in",
        layout.toString());
    assertEquals(LEAF, layout.piece());
    assertEquals(1, layout.cautions().size());
    assertTrue(layout.cautions().get(0).text().startsWith("a square-cut end"));
  }

  @Test
  void weighsWhatIsCut() {
    // 14.4635 in × 0.375 in² × 0.283599 lb/in³, the last being 7850 kg/m³.
    assertEquals(1.5382, LEAF.layout().mass().in(ShopUnits.POUND), 5e-5);
  }

  @Test
  void showsItsWorking() {
    Workings.check(LEAF.layout().working(), LEAF.layout().cutLength().likely());
    String text = LEAF.layout().working().toString();
    assertTrue(text.contains("C = s₁ + s₂ + s₃"), text);
  }

  @Test
  void aBarrelRolledFromADrawnStrapUsesLessOfTheParent() {
    Section drawn = Section.flat(inches("3/4"), inches("1/4"));
    Piece piece = Piece.of(STRAP, Barrel.around(inches("1/2"), drawn));
    // Half the width, half the bar: 300° of the mean circle.
    assertEquals(
        Math.PI * 0.75 * 5 / 6 / 2, piece.layout().cutLength().likely().in(ShopUnits.INCH), 1e-12);
  }

  @Test
  void speaksTheBarsUnit() {
    Piece mixed = Piece.of(STRAP, Plain.of(STRAP.section(), millimetres(254)));
    assertEquals(inches(10), mixed.layout().cutLength().likely());
    assertEquals(inches(10), mixed.layout().finishedLength());
  }

  @Test
  void cautionsWhereNeighboursDoNotMeet() {
    Piece stepped = Piece.of(STRAP, Plain.of(STRAP.section(), inches(2)), Plain.of(TIP, inches(2)));
    List<Caution> cautions = stepped.layout().cautions();
    assertEquals(1, cautions.size());
    assertEquals(
        "the plain stretch ends in 1 1/2 in × 1/4 in flat but the plain stretch begins with 3/4 in"
            + " × 1/8 in flat: put a taper or a shoulder between, or make the sections meet",
        cautions.get(0).text());
  }

  @Test
  void tellsEachCautionOfItsFeaturesOnce() {
    Barrel tight = Barrel.around(inches("1/8"), STRAP.section());
    assertEquals(2, Piece.of(STRAP, tight, tight).layout().cautions().size());
  }

  @Test
  void takesAFeatureOfTheCallersOwn() {
    Layout layout = Piece.of(STRAP, new Stub(), Plain.of(STRAP.section(), inches(1))).layout();
    // Kept 0.375, lost 0 to 0.75, likely 0.375 in³; the bar has 0.375 in².
    assertEquals(Estimate.of(inches(2), inches(3), inches(4)), layout.cutLength());
    assertEquals(ShopUnits.INCH, layout.cutLength().low().getUnit());
    assertEquals("cut 3 in (2 in to 4 in), marks at 2 in, 3 in", layout.toString());
    Workings.check(layout.working(), layout.cutLength().likely());
  }

  @Test
  void refusesAPieceWithoutFeatures() {
    assertEquals(
        "number of features must be from 1 to 1000, was 0; a straight cut is one Plain stretch",
        assertThrows(IllegalArgumentException.class, () -> Piece.of(STRAP)).getMessage());
    assertThrows(NullPointerException.class, () -> Piece.of(STRAP, (Feature) null));
    assertEquals(
        "piece of 1 1/2 in × 1/4 in flat, mild steel: rolled barrel, plain stretch, taper",
        LEAF.toString());
  }

  /** Keeps an inch of the bar and loses as much again, or none, or twice that. */
  private static final class Stub implements Feature {
    @Override
    public String name() {
      return "stub";
    }

    @Override
    public Section start() {
      return STRAP.section();
    }

    @Override
    public Section end() {
      return STRAP.section();
    }

    @Override
    public Estimate<Volume> metalKept() {
      return Estimate.exact(STRAP.volume(inches(1)));
    }

    @Override
    public Losses metalLost() {
      return Losses.NONE.and(
          "trim",
          Estimate.of(STRAP.volume(inches(0)), STRAP.volume(inches(1)), STRAP.volume(inches(2))));
    }

    @Override
    public Measure<Length> reach() {
      return Measures.inches(1);
    }

    @Override
    public List<Caution> cautions() {
      return List.of();
    }

    @Override
    public Working working() {
      return Notes.taken("stub", ShopUnits.INCH, n -> n.volume("V", "metal", "0.375", 0.375))
          .withSource(Source.computed("test"));
    }
  }

  @Test
  void aHeadAtTheMarkedEndIsTurnedRound() {
    Section shank = Section.round(inches("1/2"));
    Bar bar = Bar.of(shank, Material.MILD_STEEL);
    Feature head = Head.snap(shank);
    Plain plain = Plain.of(shank, inches(3));
    Feature point = Taper.toPoint(shank, inches(1));
    assertFalse(Piece.of(bar, head, plain, point).layout().cautions().isEmpty());
    Layout layout = Piece.of(bar, head.reversed(), plain, point).layout();
    assertTrue(layout.cautions().isEmpty(), layout::toString);
    assertEquals(head.stock(shank), head.reversed().stock(shank));
    assertEquals(head.working().result(), head.reversed().working().result());
    assertEquals(head.name(), head.reversed().name());
    assertEquals(head.metalLost(), head.reversed().metalLost());
    assertEquals(head, head.reversed().reversed());
    assertEquals(head.reach().add(inches(4)), layout.finishedLength());
  }
}
