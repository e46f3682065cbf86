package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Board;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.HingePairBuilder;
import org.hammerscale.hinge.Swing;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class HingeDrawingTest {
  private static final double EXACT = 1e-6;

  private static double mm(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  private static HingePairBuilder asked() {
    Section strap = Section.flat(millimetres(40), millimetres(6));
    return HingePair.of(Bar.of(strap, Material.MILD_STEEL), Bore.forPin(millimetres(14)))
        .leaves(Plain.of(strap, millimetres(300)));
  }

  private static HingePair corner() {
    return asked().opening(degrees(140), Hanging.CORNER).pair();
  }

  /** The views from left to right, by the crosses of their pins. */
  private static List<Double> pins(Picture picture) {
    return picture.all("centre").stream()
        .map(cross -> (cross.points().get(0)[0] + cross.points().get(1)[0]) / 2)
        .sorted()
        .toList();
  }

  /** How far the moving leaf of a view is turned, read from a straight side of its plate. */
  private static double turned(Picture.Shape plate, double pin) {
    double[] far = plate.points().get(0);
    double[] near = plate.points().get(1);
    assertTrue(Math.hypot(far[0] - pin, far[1]) > Math.hypot(near[0] - pin, near[1]));
    return Math.toDegrees(Math.atan2(-(far[1] - near[1]), far[0] - near[0]));
  }

  @Test
  void leavesAreTurnedByTheAnglesOfTheHinge() {
    for (HingePair pair : List.of(Leaves.gate(), Leaves.boathouse(), Leaves.centred(), corner())) {
      Picture picture = Picture.of(HingeDrawing.of(pair).drawing());
      List<Picture.Shape> plates =
          picture.all("moving").stream().filter(s -> s.is("wide")).toList();
      List<Double> pins = pins(picture);
      int views = pair.hanging() == Hanging.FACE ? 2 : 3;
      assertEquals(views, pins.size());
      assertEquals(views, plates.size());
      double shut = turned(plates.get(0), pins.get(0));
      double folded = pair.hanging().folded().getValue();
      assertEquals(0, Math.IEEEremainder(shut + folded, 360), EXACT);
      double opened = turned(plates.get(views - 1), pins.get(views - 1));
      assertEquals(0, Math.IEEEremainder(opened - pair.swing().opening().getValue(), 360), EXACT);
    }
  }

  @Test
  void barrelBoreAndNotchAreTrue() {
    for (HingePair pair : List.of(Leaves.gate(), Leaves.boathouse())) {
      Picture picture = Picture.of(HingeDrawing.of(pair).drawing());
      double inner = mm(pair.barrel().insideDiameter()) / 2;
      double outer = mm(pair.barrel().outsideDiameter()) / 2;
      for (double[] point : picture.all("barrel").get(0).points()) {
        double radius = Math.hypot(point[0], point[1]);
        assertTrue(Math.min(Math.abs(radius - inner), Math.abs(radius - outer)) < EXACT);
      }
      assertEquals(mm(pair.bore().pin()) / 2, picture.all("pin").get(0).radius(), EXACT);
      Picture.Shape fixed =
          picture.all("fixed").stream().filter(s -> s.is("wide")).findFirst().get();
      double nearest = fixed.points().stream().mapToDouble(p -> p[0]).max().getAsDouble();
      assertEquals(-mm(pair.notchDepth()), nearest, EXACT);
    }
  }

  /** What is drawn touches where the mark is: the corner of the notch lies on the other's face. */
  @Test
  void theMarkLiesWhereIronMeetsIron() {
    for (HingePair pair : List.of(Leaves.boathouse(), Leaves.centred(), corner())) {
      Picture picture = Picture.of(HingeDrawing.of(pair).drawing());
      List<Double> pins = pins(picture);
      double pin = pins.get(pins.size() - 1);
      Picture.Shape ring =
          picture.all("stop").stream().filter(s -> s.radius() > 0).findFirst().get();
      double markX = ring.points().get(0)[0] - ring.radius() - pin;
      double markY = -ring.points().get(0)[1];
      // Off the pin by the moving leaf's face, across the direction that it has.
      double turn = Math.toRadians(pair.swing().opening().getValue());
      double height = -markX * Math.sin(turn) + markY * Math.cos(turn);
      double face = mm(pair.swing().moving().faceAbovePin()) + mm(pair.runningGap());
      assertEquals(face, height, EXACT);
      assertEquals(-mm(pair.notchDepth()), markX, EXACT);
    }
  }

  @Test
  void boardsStopWhereTheSwingSays() {
    Board wood = Board.of(millimetres(25)).edgeFromPin(millimetres(20));
    HingePair pair = asked().opening(degrees(220), Hanging.JOINT).pair();
    Swing swing = pair.swing().withBoards(wood);
    Drawing drawing = HingeDrawing.of(pair).withBoards(wood).drawing();
    Picture picture = Picture.of(drawing);
    double pin = pins(picture).get(2);
    List<Picture.Shape> plates = picture.all("moving").stream().filter(s -> s.is("wide")).toList();
    double opened = turned(plates.get(2), pin);
    assertEquals(swing.opening().getValue(), opened, EXACT);
    Picture.Shape ring = picture.all("stop").stream().filter(s -> s.radius() > 0).findFirst().get();
    double markX = ring.points().get(0)[0] - ring.radius() - pin;
    double markY = -ring.points().get(0)[1];
    assertEquals(-20, markX, EXACT, "two like edges meet at their corners");
    assertEquals(mm(pair.swing().fixed().faceAbovePin()) + 25, markY, EXACT);
    assertTrue(drawing.description().contains("stopped by the boards in the ring"));
    assertTrue(drawing.description().contains("wood: board of 25 mm"));
    picture.assertLegible();
    Board tight = Board.of(millimetres(30));
    Picture let = Picture.of(HingeDrawing.of(pair).withBoards(tight).drawing());
    assertEquals(6, let.all("board").size());
    Board shallow = Board.of(millimetres(5)).edgeFromPin(millimetres(3));
    HingeDrawing.of(corner()).withBoards(shallow).drawing();
  }

  @Test
  void boardsBehindProudBarrelsStopNothing() {
    Board wood = Board.of(inches(1)).edgeFromPin(inches("1/8"));
    Drawing drawing =
        HingeDrawing.of(Leaves.gate()).withBoards(wood).on(Graduation.SIXTEENTH).drawing();
    Picture picture = Picture.of(drawing);
    double back = -mm(Leaves.gate().swing().fixed().backAbovePin());
    for (double[] point : picture.all("board").get(0).points()) {
      assertTrue(point[1] >= back - EXACT, "below the leaf");
    }
    picture.assertLegible();
    assertTrue(drawing.description().contains("tips of the leaves, beyond the picture"));
  }

  @Test
  void isLegible() {
    HingePair flush = asked().facesFlush().opening(degrees(30), Hanging.FACE).pair();
    for (HingePair pair :
        List.of(
            Leaves.gate(),
            Leaves.boathouse(),
            Leaves.centred(),
            Leaves.longest(),
            Leaves.stoutest(),
            corner(),
            flush)) {
      Picture.of(HingeDrawing.of(pair).drawing()).assertLegible();
      Picture.of(HingeDrawing.of(pair).on(Graduation.MILLIMETRE).drawing()).assertLegible();
    }
  }

  @Test
  void saysWhatHangsTheDoor() {
    Picture picture = Picture.of(HingeDrawing.of(Leaves.boathouse()).drawing());
    assertTrue(picture.words().containsAll(List.of("shut", "flat", "26.5 mm", "12 mm")));
    Drawing joint = HingeDrawing.of(Leaves.boathouse()).drawing();
    assertEquals("hinge at the pin, hung in the joint", joint.title());
    assertTrue(joint.description().contains("folded 26.5 mm thick, with 14.5 mm between"));
    assertTrue(
        HingeDrawing.of(corner())
            .toString()
            .startsWith("section through a hinge\n  left hand pair"));
  }

  @Test
  void refusesWhatNoPaperHolds() {
    Section plate = Section.flat(millimetres(300_000), millimetres(60_000));
    HingePair huge =
        HingePair.of(Bar.of(plate, Material.MILD_STEEL), Bore.forPin(millimetres(60_000)))
            .leaves(Plain.of(plate, millimetres(900_000)))
            .pair();
    assertEquals(
        "diameter over the barrel must be at most 100 m on the paper, was 180000 mm at scale 1 : 1;"
            + " draw it reduced, or in parts",
        assertThrows(IllegalArgumentException.class, HingeDrawing.of(huge)::drawing).getMessage());
  }
}
