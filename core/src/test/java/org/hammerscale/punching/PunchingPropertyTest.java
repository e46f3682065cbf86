package org.hammerscale.punching;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleFunction;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.piece.Layout;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for every opening, whatever its sizes and units. Sizes are drawn in inches. */
class PunchingPropertyTest {
  private static final double INCH = 25.4;

  /** A piece with every opening in it; h is the hole as a part of the bar's width. */
  private static Piece opened(
      DoubleFunction<Measure<Length>> of, double w, double t, double h, double s) {
    Section bar = Section.flat(of.apply(w), of.apply(w * t));
    Hole round = Hole.round(of.apply(h * w));
    Hole square = Hole.square(of.apply(h * w));
    Hole slot = Hole.mortise(of.apply(2 * h * w), of.apply(h * w));
    HotCut cut = HotCut.bevelled(degrees(30), bar);
    Measure<Length> slug = of.apply(s * w * t);
    return Piece.of(
        Bar.of(bar, Material.MILD_STEEL),
        FlatEye.drifted(of.apply(w), of.apply(w * t), round),
        FlatEye.punched(of.apply(w), of.apply(w * t), round).withSlugThickness(slug),
        Plain.of(bar, of.apply(w)),
        DriftedHole.through(bar, square),
        DriftedHole.through(bar, Hole.oval(of.apply(w), of.apply(h * w)).turned()),
        DriftedHole.through(bar, round).withSlit(Slit.byShopRule(round)),
        PunchedHole.through(bar, slot),
        PunchedHole.through(bar, square).withSlugThickness(slug).offCentre(of.apply(w / 50)),
        PunchedHole.through(bar, square).withPunch(round),
        Slot.through(bar, slot, of.apply(h * w / 8)),
        Slot.notch(bar, slot, of.apply(h * w / 8)),
        Split.evenly(of.apply(3 * w), cut, 3),
        cut);
  }

  @Property
  void volumeInIsVolumeOut(
      @ForAll @DoubleRange(min = 0.1, max = 5) @Scale(6) double w,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0.01, max = 0.9) @Scale(6) double h,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double s) {
    for (Piece piece :
        new Piece[] {
          opened(x -> inches(x), w, t, h, s), opened(x -> millimetres(x * INCH), w, t, h, s)
        }) {
      double used = 0;
      for (Feature feature : piece.features()) {
        Section section = piece.bar().section();
        double own = in(feature.metalKept()) + in(feature.metalLost().total());
        double bar = in(piece.bar().volume(feature.stock(section).likely()));
        assertEquals(own, bar, 1e-12 * own, feature::toString);
        used += own;
      }
      Layout layout = piece.layout();
      assertEquals(used, in(piece.bar().volume(layout.cutLength().likely())), 1e-12 * used);
    }
  }

  @Property
  void metricAndInchInputGiveTheSameAnswer(
      @ForAll @DoubleRange(min = 0.1, max = 5) @Scale(6) double w,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0.01, max = 0.9) @Scale(6) double h,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double s) {
    Piece inch = opened(x -> inches(x), w, t, h, s);
    Piece metric = opened(x -> millimetres(x * INCH), w, t, h, s);
    for (int i = 0; i < inch.features().size(); i++) {
      Feature one = inch.features().get(i);
      Feature other = metric.features().get(i);
      same(one.metalKept().likely(), other.metalKept().likely());
      same(one.metalLost().total().high(), other.metalLost().total().high());
      assertTrue(one.reach().isEquivalentTo(other.reach()));
      assertEquals(one.cautions().size(), other.cautions().size(), one::toString);
    }
    assertTrue(
        inch.layout()
            .cutLength()
            .likely()
            .isWithin(metric.layout().cutLength().likely(), inches(1e-12 * w * 20)));
    assertEquals(ShopUnits.MILLIMETRE, metric.layout().cutLength().likely().getUnit());
  }

  @Property
  void aSlitOpensToTheHoleItWasCutFor(
      @ForAll @DoubleRange(min = 0.01, max = 10) @Scale(6) double size) {
    Hole round = Hole.round(inches(size));
    Hole square = Hole.square(millimetres(size));
    assertTrue(Slit.halfWayRound(round).roundHole().length().isEquivalentTo(round.length()));
    assertEquals(square, Slit.halfWayRound(square).squareHole());
  }

  @Property
  void aLongerOvalNeedsALongerSlitBetweenItsBounds(
      @ForAll @DoubleRange(min = 0.01, max = 10) @Scale(6) double width,
      @ForAll @DoubleRange(min = 1, max = 50) @Scale(6) double ratio) {
    Hole oval = Hole.oval(inches(width * ratio), inches(width));
    double slit = Slit.halfWayRound(oval).length().getValue();
    double round = Slit.halfWayRound(Hole.round(inches(width))).length().getValue();
    double box = Slit.halfWayRound(Hole.mortise(oval.length(), oval.width())).length().getValue();
    assertTrue(slit >= round * (1 - 1e-14) && slit >= width * ratio && slit < box);
    Hole longer = Hole.oval(inches(width * ratio * 1.01), inches(width));
    assertTrue(Slit.halfWayRound(longer).length().getValue() > slit);
  }

  @Property
  void aSlugLiesBetweenNothingAndTheHole(
      @ForAll @DoubleRange(min = 0.01, max = 0.9) @Scale(6) double h,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double t,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double s) {
    Section bar = Section.flat(inches(1), inches(t));
    PunchedHole hole = PunchedHole.through(bar, Hole.round(inches(h)));
    PunchedHole measured = hole.withSlugThickness(inches(s * t));
    assertTrue(in(measured.slug()) <= in(hole.fullSlug()) * (1 + 1e-12));
    Estimate<Length> width = measured.widthOverEye();
    assertTrue(width.low().compareTo(width.high()) <= 0);
    // Swelling never makes the eye wider than a drifted hole without any slug.
    assertTrue(width.high().getValue() <= (1 + h) * (1 + 1e-12));
    double kept = in(measured.metalKept());
    assertTrue(kept >= in(hole.metalKept().low()) * (1 - 1e-12));
    assertTrue(kept <= in(hole.metalKept().high()) * (1 + 1e-12));
  }

  @Property
  void tinesAndKerfsMakeUpTheBar(
      @ForAll @IntRange(min = 2, max = 12) int count,
      @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(6) double kerf,
      @ForAll @DoubleRange(min = 1e-4, max = 0.01) @Scale(6) double wrong) {
    Section bar = Section.square(inches(1));
    HotCut cut = HotCut.ofKerf(inches(kerf), bar);
    Measure<Length> tine = Split.evenly(inches(2), cut, count).tineSections().get(0).width();
    assertEquals(1, count * tine.getValue() + (count - 1) * kerf, 1e-12);
    Measure<Length> rest = inches(1 - kerf).subtract(tine);
    Split.over(inches(2), cut, tine, rest);
    assertTrue(
        assertThrows(
                IllegalArgumentException.class,
                () -> Split.over(inches(2), cut, tine, rest.add(inches(wrong))))
            .getMessage()
            .startsWith("widths of the tines must add up"));
  }

  @Property
  void aSlotWithoutKerfIsAllSlug(@ForAll @DoubleRange(min = 0.01, max = 0.9) @Scale(6) double gap) {
    Section bar = Section.flat(inches(1), inches("1/4"));
    Hole hole = Hole.square(inches(gap));
    Slot slot = Slot.through(bar, hole, inches(0));
    assertEquals(hole.width(), slot.tongue());
    assertEquals(
        in(PunchedHole.through(bar, hole).fullSlug()), in(slot.metalLost().total()), 1e-15);
  }

  private static void same(Measure<Volume> one, Measure<Volume> other) {
    assertEquals(in(one), in(other), 1e-11 * Math.abs(in(one)));
  }

  private static double in(Estimate<Volume> volume) {
    return in(volume.likely());
  }

  private static double in(Measure<Volume> volume) {
    return volume.in(ShopUnits.CUBIC_INCH);
  }
}
