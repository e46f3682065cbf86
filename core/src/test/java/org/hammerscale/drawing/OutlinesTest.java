package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.hammerscale.forging.End;
import org.hammerscale.forging.HandAllowance;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Tenon;
import org.hammerscale.forging.Upset;
import org.hammerscale.punching.FlatEye;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.HotCut;
import org.hammerscale.punching.PunchedHole;
import org.hammerscale.punching.Slot;
import org.hammerscale.punching.Split;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

/** What features look like, held against the metal that they say they keep. */
class OutlinesTest {
  private static final Section STRAP = Section.flat(millimetres(30), millimetres(6));
  private static final Section TINES = Section.flat(millimetres(20), millimetres(5));

  private static double area(double[] line) {
    double sum = 0;
    for (int i = 0; i < line.length; i += 2) {
      int j = (i + 2) % line.length;
      sum += line[i] * line[j + 1] - line[j] * line[i + 1];
    }
    return Math.abs(sum / 2);
  }

  /** Area within the rims less the openings, times the thickness. */
  private static double metal(Silhouette look) {
    double sum = 0;
    for (double[] rim : look.rims(ShopUnits.MILLIMETRE)) {
      sum += area(rim);
    }
    for (double[] opening : look.openings(ShopUnits.MILLIMETRE)) {
      sum -= area(opening);
    }
    double[] edge = look.edge(ShopUnits.MILLIMETRE);
    return sum * edge[edge.length - 1];
  }

  @Test
  void holdTheMetalThatIsKept() {
    List<Feature> features =
        List.of(
            Plain.of(STRAP, millimetres(50)),
            End.penny(STRAP, millimetres(50)),
            End.bean(STRAP, millimetres(40), millimetres(70)),
            End.spear(STRAP, millimetres(50), millimetres(90)),
            End.fishtail(STRAP, millimetres(50), millimetres(60)),
            End.measured(
                STRAP, Map.of(millimetres(20), millimetres(44), millimetres(50), millimetres(0))),
            End.along(
                STRAP,
                millimetres(60),
                x -> millimetres(30 * Math.cos(x.in(ShopUnits.MILLIMETRE) * Math.PI / 120))),
            HandAllowance.SET_DOWN.on(End.penny(STRAP, inches(2))),
            End.penny(STRAP, inches(2)).reversed(),
            Shoulder.between(STRAP, TINES, millimetres(40)),
            FlatEye.drifted(millimetres(50), millimetres(8), Hole.round(millimetres(20))),
            FlatEye.drifted(
                millimetres(50), millimetres(8), Hole.mortise(millimetres(25), millimetres(12))),
            Split.evenly(millimetres(60), HotCut.ofKerf(millimetres(2), TINES), 3));
    for (Feature feature : features) {
      double kept = feature.metalKept().likely().in(ShopUnits.CUBIC_MILLIMETRE);
      Silhouette look = Silhouette.of(feature);
      assertEquals(kept, metal(look), kept * 1e-3, feature.toString());
      double[] edge = look.edge(ShopUnits.MILLIMETRE);
      assertEquals(
          feature.reach().in(ShopUnits.MILLIMETRE), edge[edge.length - 2], 1e-6, "its reach");
    }
  }

  /** The metal of what is round throughout: its rim turned about the middle line. */
  private static double turned(Silhouette look) {
    double[] rim = look.rims(ShopUnits.MILLIMETRE).get(0);
    double sum = 0;
    for (int i = 2; i < rim.length / 2; i += 2) {
      double a = rim[i - 1];
      double b = rim[i + 1];
      sum += Math.PI * (rim[i] - rim[i - 2]) * (a * a + a * b + b * b) / 3;
    }
    return sum;
  }

  @Test
  void headsAndTenonsHoldTheirMetalTurned() {
    Section shank = Section.round(millimetres(10));
    Section wide = Section.round(millimetres(18));
    Tenon tenon =
        Tenon.between(Section.round(millimetres(16)), shank)
            .through(millimetres(8), Head.snap(shank));
    List<Feature> features =
        List.of(
            Head.snap(shank),
            Head.pan(shank),
            Head.dome(shank, wide, millimetres(5)),
            Head.ball(shank, inches(1)),
            Head.tapered(shank, wide, Section.round(millimetres(12)), millimetres(6)),
            Head.countersunk(shank, millimetres(20), degrees(90)),
            Upset.barrelled(shank, wide, inches(1)),
            Upset.flared(shank, wide, millimetres(30)),
            Upset.to(shank, wide, millimetres(12)),
            tenon,
            tenon.inHole(Section.round(millimetres(11))));
    for (Feature feature : features) {
      double kept = feature.metalKept().likely().in(ShopUnits.CUBIC_MILLIMETRE);
      Silhouette look = Silhouette.of(feature);
      assertEquals(kept, turned(look), kept * 1e-3, feature.toString());
      double[] edge = look.edge(ShopUnits.MILLIMETRE);
      double reach = feature.reach().in(ShopUnits.MILLIMETRE);
      assertEquals(reach, edge[edge.length - 2], 1e-6, feature.toString());
    }
    double[] step = Silhouette.of(tenon).edge(ShopUnits.MILLIMETRE);
    assertEquals(16, step[1], 1e-9, "the bar");
    assertEquals(10, step[3], 1e-9, "its shoulder");
    Upset flush = Head.countersunkOverGrip(shank, millimetres(20), degrees(90));
    assertEquals(0, flush.outline().edge(ShopUnits.MILLIMETRE)[2], 1e-9);
  }

  @Test
  void openingsLieWhereTheyAreMade() {
    Silhouette punched =
        PunchedHole.through(STRAP, Hole.square(millimetres(8))).offCentre(millimetres(3)).outline();
    double[] hole = punched.openings(ShopUnits.MILLIMETRE).get(0);
    assertEquals(64, area(hole), 1e-9);
    double middle = 0;
    for (int i = 1; i < hole.length; i += 2) {
      middle += 2 * hole[i] / hole.length;
    }
    assertEquals(3, middle, 1e-9);
    Hole gap = Hole.mortise(millimetres(20), millimetres(8));
    double[] notch =
        Slot.notch(STRAP, gap, millimetres(1)).outline().openings(ShopUnits.MILLIMETRE).get(0);
    double highest = 0;
    for (int i = 1; i < notch.length; i += 2) {
      highest = Math.max(highest, notch[i]);
    }
    assertEquals(15, highest, 1e-9, "at the edge of the bar");
    Silhouette slot = Slot.through(STRAP, gap, millimetres(1)).outline();
    assertTrue(slot.toString().endsWith("1 opening"));
    Measure<javax.measure.quantity.Length> wide = gap.width();
    assertEquals(wide, millimetres(8));
  }
}
