package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.hammerscale.fastening.IronHole;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;

/** What must hold for every strap with holes in it. */
class StrapPropertyTest {
  private static final double INCH = 25.4;

  @Property
  void bearingIsTheSameInMetricAndInch(
      @ForAll @DoubleRange(min = 0.05, max = 0.9) @Scale(6) double hole,
      @ForAll @DoubleRange(min = 0.02, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0.55, max = 20) @Scale(6) double ahead) {
    Section inch = Section.flat(inches(1), inches(t));
    Section metric = Section.flat(millimetres(INCH), millimetres(INCH * t));
    IronHole a = IronHole.drilled(inches(hole));
    IronHole b = IronHole.drilled(millimetres(INCH * hole));
    double e = ahead * hole;
    double force =
        Bearing.towardsEnd(inch, a, inches(e)).nominalByAisc(megapascals(360)).in(ShopUnits.NEWTON);
    double same =
        Bearing.towardsEnd(metric, b, millimetres(INCH * e))
            .nominalByAisc(megapascals(360))
            .getValue();
    assertEquals(same, force, 1e-9 * same);
  }

  @Property(tries = 300)
  void noLineIsWeakerThanTheOneFound(
      @ForAll @Size(min = 1, max = 7)
          List<@DoubleRange(min = -45, max = 45) @Scale(1) Double> offsets,
      @ForAll @Size(min = 7, max = 7)
          List<@DoubleRange(min = 0, max = 60) @Scale(1) Double> along) {
    Section strap = Section.flat(millimetres(100), millimetres(5));
    List<IronHole> holes = new ArrayList<>();
    for (int i = 0; i < offsets.size(); i++) {
      double size = 3 + i;
      IronHole hole =
          i == 3 ? IronHole.drifted(millimetres(2)) : IronHole.drilled(millimetres(size));
      holes.add(hole.offCentre(millimetres(offsets.get(i))).at(millimetres(along.get(i))));
    }
    NetSection net = NetSection.of(strap, holes.toArray(new IronHole[0]));
    double least = 100;
    for (int pick = 1; pick < 1 << holes.size(); pick++) {
      least = Math.min(least, lineThrough(holes, pick));
    }
    assertEquals(least, net.netWidth().getValue(), 1e-9);
    assertTrue(net.netWidth().isLessThanOrEqualTo(strap.width()));
  }

  /** The net width along the line through the picked holes; a wide one if two are in a column. */
  private static double lineThrough(List<IronHole> holes, int pick) {
    List<IronHole> line = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      if ((pick >> i & 1) == 1) {
        line.add(holes.get(i));
      }
    }
    line.sort((a, b) -> a.offset().compareTo(b.offset()));
    double left = 100;
    for (int i = 0; i < line.size(); i++) {
      IronHole hole = line.get(i);
      left -= hole.making() == IronHole.Making.DRIFTED ? 0 : hole.diameter().getValue();
      if (i > 0) {
        double g = hole.offset().getValue() - line.get(i - 1).offset().getValue();
        double s = hole.along().getValue() - line.get(i - 1).along().getValue();
        left += g == 0 ? 1000 : s * s / (4 * g);
      }
    }
    return left;
  }
}
