package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import org.hammerscale.fastening.MetricWoodScrew;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.forging.End;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Taper;
import org.hammerscale.forging.Tenon;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.BarrelEnd;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.piece.Piece;
import org.hammerscale.punching.DriftedHole;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.HotCut;
import org.hammerscale.punching.Split;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class LeafDrawingTest {
  private static final double EXACT = 1e-6;

  private static double mm(Measure<javax.measure.quantity.Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  private static Picture gate() {
    return Picture.of(
        LeafDrawing.of(Leaves.gate(), Leaf.SECOND)
            .withHoles(Leaves.gateHoles(), WoodScrew.number(12))
            .on(Graduation.SIXTEENTH)
            .drawing());
  }

  @Test
  void holesLieAsFarFromThePinAsTheLayoutSays() {
    Picture picture = gate();
    double pin = picture.all("centre").get(0).x();
    List<Picture.Shape> crosses = picture.all("hole");
    assertEquals(4, crosses.size());
    for (int i = 0; i < 4; i++) {
      List<double[]> arms = crosses.get(i).points();
      double x = (arms.get(0)[0] + arms.get(1)[0]) / 2;
      assertEquals(mm(Leaves.gateHoles().positions().get(i)), x - pin, EXACT);
      assertEquals(
          mm(WoodScrew.number(12).clearanceHole()) / 2,
          picture.all("drill").get(i).radius(),
          EXACT);
      assertEquals(
          mm(WoodScrew.number(12).headDiameter()) / 2, picture.all("sunk").get(i).radius(), EXACT);
    }
  }

  @Test
  void slotsLieWhereTheyAreSawn() {
    for (HingePair pair : List.of(Leaves.gate(), Leaves.boathouse())) {
      for (Leaf leaf : Leaf.values()) {
        Picture picture = Picture.of(LeafDrawing.of(pair, leaf).drawing());
        TreeSet<Double> floors = new TreeSet<>();
        double notch = mm(pair.notchDepth());
        for (double[] corner : picture.all("end").get(0).points()) {
          if (Math.abs(corner[0] - notch) < EXACT) {
            floors.add(corner[1]);
          } else {
            boolean isBarrel =
                Math.abs(corner[0] + mm(pair.barrel().outsideDiameter()) / 2) < EXACT;
            assertTrue(isBarrel || corner[0] == 0, "a corner at " + corner[0]);
          }
        }
        boolean fromFar = pair.markedFrom(leaf).equals("far edge");
        double width = mm(pair.knuckles().width());
        List<Double> asked = new ArrayList<>();
        for (KnuckleSlot slot : pair.slotsOf(leaf)) {
          asked.add(fromFar ? mm(slot.start()) : width - mm(slot.start()));
          asked.add(fromFar ? mm(slot.end()) : width - mm(slot.end()));
        }
        Collections.sort(asked);
        List<Double> drawn = List.copyOf(floors);
        assertEquals(asked.size(), drawn.size(), pair + " " + leaf);
        for (int i = 0; i < asked.size(); i++) {
          assertEquals(asked.get(i), drawn.get(i), EXACT);
        }
      }
    }
  }

  @Test
  void theBarrelIsRoundAndClosesWhereItDoes() {
    for (HingePair pair : List.of(Leaves.gate(), Leaves.boathouse(), Leaves.centred())) {
      Picture picture = Picture.of(LeafDrawing.of(pair, Leaf.FIRST).drawing());
      List<double[]> cross =
          picture.all("pin").stream().filter(s -> s.is("narrow")).findFirst().get().points();
      double y = cross.get(0)[1];
      double inner = mm(pair.barrel().insideDiameter()) / 2;
      double outer = mm(pair.barrel().outsideDiameter()) / 2;
      List<double[]> curl = picture.only("barrel").points();
      for (double[] point : curl) {
        double radius = Math.hypot(point[0], point[1] - y);
        boolean inside = Math.abs(radius - inner) < EXACT;
        assertTrue(inside || Math.abs(radius - outer) < EXACT, "at " + radius);
      }
      if (!pair.barrel().isCentred()) {
        // The corner of the square-cut end rests on the inner face of the leaf, R − t from the pin.
        double[] corner =
            curl.stream()
                .filter(p -> Math.abs(Math.hypot(p[0], p[1] - y) - outer) < EXACT)
                .reduce((one, other) -> other)
                .get();
        assertEquals(inner, Math.abs(corner[1] - y), EXACT);
        assertTrue(corner[0] > 0);
      }
    }
  }

  @Test
  void aPlateKeepsItsOuterFaceStraight() {
    Picture proud = gate();
    List<Picture.Shape> faces = proud.all("face");
    double outside = faces.get(1).y();
    for (int i = 1; i < faces.size(); i += 2) {
      for (double[] point : faces.get(i).points()) {
        assertEquals(outside, point[1], EXACT, "the face that lies on the wood");
      }
    }
    double thin = faces.get(3).points().get(1)[1] - faces.get(2).points().get(1)[1];
    assertEquals(25.4 / 8, thin, EXACT);
  }

  @Test
  void sizesTheTipWhereverItLies() {
    Bar bar = Bar.of(Section.flat(inches(3), inches("1/4")), Material.MILD_STEEL);
    for (int tenths = 40; tenths < 70; tenths++) {
      Piece fishtail =
          Piece.of(
              bar,
              Barrel.around(inches("1/2"), bar.section()),
              Plain.of(bar.section(), inches(tenths / 10d)),
              End.fishtail(bar.section(), inches(5), inches(3)));
      Picture picture = Picture.of(LeafDrawing.of(fishtail).drawing());
      assertTrue(picture.words().contains("1/4 in"), tenths + ": " + picture.words());
      assertTrue(picture.words().contains("5 in"), tenths + ": " + picture.words());
    }
  }

  @Test
  void drawsAnyFeatureAsItKnowsItself() {
    Bar bar = Bar.of(Section.flat(millimetres(30), millimetres(8)), Material.MILD_STEEL);
    Section strap = bar.section();
    Section narrow = Section.flat(millimetres(20), millimetres(6));
    Piece piece =
        Piece.of(
            bar,
            End.bean(strap, millimetres(40), millimetres(70)).reversed(),
            DriftedHole.through(strap, Hole.round(millimetres(12))),
            Shoulder.between(strap, narrow, millimetres(20)),
            Split.evenly(millimetres(60), HotCut.ofKerf(millimetres(2), narrow), 2));
    LeafDrawing asked = LeafDrawing.of(piece);
    Picture picture = Picture.of(asked.drawing());
    picture.assertLegible();
    assertEquals(2, picture.all("tine").size());
    Picture.Shape hole = picture.only("opening");
    double left = hole.points().stream().mapToDouble(p -> p[0]).min().getAsDouble();
    double right = hole.points().stream().mapToDouble(p -> p[0]).max().getAsDouble();
    assertEquals(12, right - left, EXACT);
    assertEquals(mm(piece.features().get(0).reach()), left, EXACT);
    assertTrue(picture.words().contains("42 mm"), "over the cheeks: " + picture.words());
    assertTrue(asked.toString().startsWith("drawing of a leaf, scale 1 : 1\n  piece of 30 mm"));
    Picture half = Picture.of(asked.reducedTo(2).drawing());
    assertEquals(left / 2, half.only("opening").points().get(0)[0], EXACT);
  }

  @Test
  void aPieceMayBeginWithAWholeBarrel() {
    Bar bar = Bar.of(Section.flat(inches(1), inches("1/4")), Material.MILD_STEEL);
    for (Barrel eye :
        List.of(
            Barrel.around(inches("1/2"), bar.section()),
            Barrel.around(inches("1/2"), bar.section()).endedWith(BarrelEnd.tucked()))) {
      Piece leaf = Piece.of(bar, eye, Plain.of(bar.section(), inches(5)));
      HoleLayout holes =
          HoleRow.along(inches(5))
              .holes(2)
              .startingFrom(inches(2))
              .endingBefore(inches(1))
              .inTwoRows(inches("1/4"))
              .layout();
      Picture one =
          Picture.of(LeafDrawing.of(leaf).withHoles(holes, WoodScrew.number(6)).drawing());
      Picture other =
          Picture.of(
              LeafDrawing.of(leaf.withReferenceAfter(1))
                  .withHoles(holes, WoodScrew.number(6))
                  .drawing());
      assertEquals(one.words(), other.words(), "wherever the marks count from");
      assertEquals(2, one.all("drill").size());
      assertEquals(6.35, one.all("drill").get(1).y() - one.all("drill").get(0).y(), EXACT);
      one.assertLegible();
    }
    Picture bare =
        Picture.of(
            LeafDrawing.of(Piece.of(bar, Barrel.around(inches("1/2"), bar.section()))).drawing());
    assertTrue(bare.words().contains("Ø 1 in"));
  }

  @Test
  void isLegible() {
    for (HingePair pair :
        List.of(
            Leaves.gate(),
            Leaves.boathouse(),
            Leaves.centred(),
            Leaves.longest(),
            Leaves.stoutest())) {
      for (Leaf leaf : Leaf.values()) {
        Picture.of(LeafDrawing.of(pair, leaf).drawing()).assertLegible();
        Picture.of(LeafDrawing.of(pair, leaf).reducedTo(2).drawing()).assertLegible();
      }
    }
    gate().assertLegible();
    HoleLayout forty =
        HoleRow.along(millimetres(1000))
            .holes(40)
            .startingFrom(millimetres(20))
            .endingBefore(millimetres(15))
            .layout()
            .on(Graduation.MILLIMETRE);
    Picture.of(
            LeafDrawing.of(Leaves.longest(), Leaf.FIRST)
                .withHoles(forty, MetricWoodScrew.din97(millimetres(3)))
                .drawing())
        .assertLegible();
  }

  @Test
  void namesWhatItShows() {
    Drawing drawing = LeafDrawing.of(Leaves.gate(), Leaf.SECOND).drawing();
    assertEquals("second leaf, left hand", drawing.title());
    assertEquals(
        "second leaf, left hand. seen from the side that the door opens toward, slots marked from"
            + " the far edge, their floor 1/2 in behind the pin. bar 1 1/2 in × 1/4 in flat: rolled"
            + " barrel, plain stretch, taper, penny end",
        drawing.description());
    Bar bar = Bar.of(Section.square(millimetres(10)), Material.MILD_STEEL);
    Feature[] many =
        Collections.nCopies(30, Plain.of(bar.section(), millimetres(20))).toArray(new Feature[0]);
    assertTrue(
        LeafDrawing.of(Piece.of(bar, many))
            .drawing()
            .description()
            .endsWith("plain stretch and more"));
  }

  @Test
  void refusesWhatHasNoWidth() {
    Bar bar = Bar.of(Section.flat(millimetres(20), millimetres(4)), Material.MILD_STEEL);
    Piece hair =
        Piece.of(
            bar,
            Taper.between(
                Section.flat(millimetres(0.0009), millimetres(0.0005)),
                Section.flat(millimetres(0.0008), millimetres(0.0005)),
                millimetres(10)));
    String message =
        assertThrows(IllegalArgumentException.class, LeafDrawing.of(hair)::drawing).getMessage();
    assertTrue(
        message.startsWith("width of the piece must be at least 0.001 mm on the paper, was"),
        message);
  }

  @Test
  void whatIsThickStandsClearOfItsOtherView() {
    Section rod = Section.round(millimetres(16));
    Section square = Section.square(millimetres(30));
    Section peg = Section.round(millimetres(10));
    Tenon tenon = Tenon.between(square, peg).through(millimetres(8), Head.snap(peg));
    List<Piece> pieces =
        List.of(
            Piece.of(
                Bar.of(rod, Material.MILD_STEEL),
                Plain.of(rod, millimetres(60)),
                Head.ball(rod, millimetres(30))),
            Piece.of(
                Bar.of(square, Material.MILD_STEEL), Plain.of(square, millimetres(60)), tenon));
    for (Piece piece : pieces) {
      Picture picture = Picture.of(LeafDrawing.of(piece).drawing());
      picture.assertLegible();
      double low = highest(picture.all("side"), -1);
      double high = highest(picture.all("face"), 1);
      assertTrue(high > low + 5, "plan to " + low + ", edge from " + high);
      List<Picture.Shape> faces = picture.all("face");
      double above = faces.get(0).points().get(0)[1];
      double below = faces.get(1).points().get(0)[1];
      List<double[]> last = faces.get(3).points();
      double tip = last.get(last.size() - 1)[1];
      assertEquals((above + below) / 2, tip, EXACT, "about the middle");
    }
  }

  /** The highest level of lines, or the lowest. */
  private static double highest(List<Picture.Shape> shapes, int sign) {
    return sign
        * shapes.stream()
            .flatMap(shape -> shape.points().stream())
            .mapToDouble(point -> sign * point[1])
            .min()
            .orElseThrow();
  }
}
