package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Picture.Shape;
import org.hammerscale.latch.CabinHook;
import org.hammerscale.latch.Hasp;
import org.hammerscale.latch.HaspBuilder;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.StaplePlate;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

/** What is drawn lies where the answers say. */
class LatchDrawingTest {
  private static final double EXACT = 1e-6;

  private static double mm(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  private static DoubleStream across(Shape shape) {
    return shape.points().stream().mapToDouble(point -> point[0]);
  }

  private static DoubleStream down(Shape shape) {
    return shape.points().stream().mapToDouble(point -> point[1]);
  }

  private static double left(Shape shape) {
    return across(shape).min().orElseThrow();
  }

  private static double right(Shape shape) {
    return across(shape).max().orElseThrow();
  }

  private static double top(Shape shape) {
    return down(shape).min().orElseThrow();
  }

  private static double bottom(Shape shape) {
    return down(shape).max().orElseThrow();
  }

  private static double middle(Shape shape) {
    return (left(shape) + right(shape)) / 2;
  }

  private static double[] centre(Shape shape) {
    return new double[] {middle(shape), (top(shape) + bottom(shape)) / 2};
  }

  private static Shape wide(Picture picture, String part) {
    return picture.all(part).stream().filter(shape -> shape.is("wide")).findFirst().orElseThrow();
  }

  @Test
  void aBoltLiesInItsStaplesAndItsKeeper() {
    for (SlideBolt bolt : Latches.bolts()) {
      Picture picture = Picture.of(LatchDrawing.of(bolt).drawing());
      double edge = picture.all("edge").get(0).x();
      List<Double> places = new ArrayList<>();
      picture.all("staple").forEach(staple -> places.add(edge - middle(staple)));
      places.add(edge - middle(picture.only("keeper")));
      for (int i = 0; i < 3; i++) {
        assertEquals(mm(bolt.places().get(i)), places.get(i), EXACT);
      }
      double tip = picture.only("tip").x();
      assertEquals(mm(bolt.gap().add(bolt.engagement())), tip - edge, EXACT);
      double thrown = mm(bolt.travel());
      Shape drawn = picture.all("drawn").get(1);
      assertEquals(thrown, tip - drawn.x(), EXACT);
      assertEquals(mm(bolt.setBack()), edge - drawn.x(), EXACT);
      assertEquals(thrown, picture.only("end").x() - left(picture.all("drawn").get(0)), EXACT);
      if (!bolt.hasTail()) {
        Shape knob = picture.all("knob").get(0);
        assertEquals(mm(bolt.knobPlace()), tip - middle(knob), EXACT);
        assertEquals(right(knob), left(picture.all("staple").get(0)), EXACT, "meets the staple");
      }
      assertEquals(mm(bolt.bar().section().width()), height(picture.only("tip")), EXACT);
    }
  }

  private static double height(Shape shape) {
    return bottom(shape) - top(shape);
  }

  @Test
  void aStapleStandsInTheWood() {
    for (Staple staple : Latches.staples()) {
      Picture picture = Picture.of(LatchDrawing.of(staple).drawing());
      double face = picture.only("wood").y();
      Shape inner =
          picture.all("standing").stream().min((a, b) -> Double.compare(right(a), right(b))).get();
      Shape outer =
          picture.all("standing").stream().max((a, b) -> Double.compare(right(a), right(b))).get();
      assertEquals(mm(staple.insideWidth()), right(inner) - left(inner), EXACT);
      assertEquals(mm(staple.insideHeight()), face - top(inner), EXACT);
      assertEquals(mm(staple.heightOverAll()), face - top(outer), EXACT);
      List<Shape> legs = picture.all("leg");
      assertEquals(2, legs.size());
      double thick = mm(staple.rod().section().thickness());
      double turned = staple.isClenched() ? mm(staple.clench()) : 0;
      for (Shape leg : legs) {
        double deep = mm(staple.inWood()) - turned + (turned > 0 ? thick : 0);
        assertEquals(deep, bottom(leg) - face, EXACT);
      }
      // Turned over round half a thickness, outwards.
      double aside = turned == 0 ? thick / 2 : turned + thick / 2 * (1 - Math.PI / 2);
      double tips = right(legs.get(1)) - left(legs.get(0));
      assertEquals(mm(staple.legCentres()) + 2 * aside, tips, EXACT);
      List<Shape> holes = picture.all("hole");
      assertEquals(mm(staple.legCentres()), middle(holes.get(1)) - middle(holes.get(0)), EXACT);
    }
  }

  @Test
  void aHaspsStapleIsTurnedOverBehindTheBoard() {
    Staple staple = Staple.inside(millimetres(14), Latches.rod(8)).standing(millimetres(16));
    HaspBuilder asked =
        Hasp.of(Latches.flat(40, 4), staple.clenchedThrough(millimetres(35)))
            .stapledAt(millimetres(45));
    for (Hasp hasp : List.of(asked.hasp(), asked.inLine().hasp())) {
      Picture picture = Picture.of(LatchDrawing.of(hasp).drawing());
      double base = picture.only("wood").y();
      assertEquals(35, picture.only("back").y() - base, EXACT);
      for (Shape leg : picture.all("leg")) {
        assertEquals(35 + 8, bottom(leg) - base, EXACT);
      }
      picture.assertLegible();
    }
  }

  @Test
  void aLatchIsLiftedAsFarAsItSays() {
    for (ThumbLatch latch : Latches.latches()) {
      Picture picture = Picture.of(LatchDrawing.of(latch).drawing());
      List<Shape> pivots = picture.all("pivot");
      double[] pivot = centre(pivots.get(0));
      Shape lever = picture.all("lever").get(0);
      assertEquals(mm(latch.thumbFromPivot()), pivot[0] - left(lever), EXACT);
      Shape pressed = picture.only("pressed");
      assertEquals(mm(latch.thumbTravel()), pressed.points().get(0)[1] - pivot[1], EXACT);
      Shape door = picture.all("door").get(0);
      assertEquals(mm(latch.door()), right(door) - left(door), EXACT);
      assertEquals(mm(latch.pivotOut()), left(door) - pivot[0], EXACT);
      assertEquals(mm(latch.slotHeight()), bottom(lever) - bottom(door), EXACT);
      Shape lifted = picture.all("lifted").get(0);
      assertEquals(mm(latch.liftAtContact()), pivot[1] - bottom(lifted), EXACT);
      // There the pressed lever touches the far edge of the lifted bar.
      double[] from = pressed.points().get(0);
      double[] to = pressed.points().get(1);
      double share = (right(lifted) - from[0]) / (to[0] - from[0]);
      assertEquals(bottom(lifted), from[1] + share * (to[1] - from[1]), EXACT);
      theBarFromInside(picture, latch, centre(pivots.get(1)));
    }
  }

  private static void theBarFromInside(Picture picture, ThumbLatch latch, double[] pivot) {
    Shape crown = picture.only("guide");
    Shape nose = picture.only("catch");
    double side = Math.signum(latch.places().get(0).getValue());
    assertEquals(mm(latch.places().get(0)), middle(picture.all("lever").get(1)) - pivot[0], EXACT);
    assertEquals(mm(latch.places().get(1)), middle(crown) - pivot[0], EXACT);
    double near = side > 0 ? left(nose) : right(nose);
    assertEquals(mm(latch.places().get(2)), near - pivot[0], EXACT);
    double edge = pivot[1] + mm(latch.pivotAboveEdge());
    assertEquals(mm(latch.nose().clearance()), bottom(nose) - edge, EXACT);
    assertEquals(mm(latch.nose().nose()), height(nose), EXACT);
    List<double[]> lifted = picture.all("lifted").get(1).points();
    double[] from = lifted.get(0);
    double[] to = lifted.get(1);
    double share = (near - from[0]) / (to[0] - from[0]);
    double level = from[1] + share * (to[1] - from[1]);
    assertEquals(mm(latch.lift()), edge - level, EXACT, "above the catch");
    double inside = mm(latch.guide().insideWidth());
    double rod = mm(latch.guide().rod().section().thickness());
    assertEquals(edge + mm(latch.room()) + rod, bottom(crown), EXACT);
    assertEquals(inside + 2 * rod, height(crown), EXACT);
  }

  @Test
  void aHandleLeavesRoomForFingers() {
    for (ThumbLatch latch : Latches.latches()) {
      Picture picture = Picture.of(LatchDrawing.of(latch).drawing());
      Shape handle = picture.only("handle");
      double thick = mm(latch.handle().bar().section().thickness());
      assertEquals(mm(latch.fingers()), right(handle) - left(handle) - thick, EXACT);
      assertEquals(latch.hasBackPlate() ? 1 : 0, picture.all("plate").size());
      // Between its legs, where it is clear.
      List<Double> levels = new ArrayList<>();
      for (int i = 1; i < handle.points().size(); i++) {
        double[] a = handle.points().get(i - 1);
        double[] b = handle.points().get(i);
        boolean level = Math.abs(a[1] - b[1]) < 1e-9 && Math.abs(a[0] - b[0]) > 1.5 * thick;
        if (level) {
          levels.add(a[1]);
        }
      }
      levels.sort(null);
      assertEquals(4, levels.size());
      assertEquals(mm(latch.grip()), levels.get(2) - levels.get(1), EXACT);
    }
  }

  @Test
  void aHaspsSlotPassesItsStaple() {
    for (Hasp hasp : Latches.hasps()) {
      Picture picture = Picture.of(LatchDrawing.of(hasp).drawing());
      double[] pin = centre(picture.all("eye").get(0));
      Shape slot = picture.only("slot");
      double pinBelow =
          picture.all("pin").stream().filter(s -> s.is("centre")).findFirst().get().x();
      assertEquals(mm(hasp.slotFrom()), left(slot) - pinBelow, EXACT);
      assertEquals(mm(hasp.slotTo()), right(slot) - pinBelow, EXACT);
      assertEquals(mm(hasp.slotWidth()), height(slot), EXACT);
      assertEquals(mm(hasp.length()), right(picture.only("plan")) - pinBelow, EXACT);
      Shape staple =
          picture.all("staple").stream().max((a, b) -> Double.compare(height(a), height(b))).get();
      double base = picture.only("wood").y();
      assertEquals(mm(hasp.pinAbove()), base - pin[1], EXACT);
      assertEquals(mm(hasp.stapledAt()), left(staple) - pin[0], EXACT);
      assertEquals(mm(hasp.stapleLength()), right(staple) - left(staple), EXACT);
      assertEquals(mm(hasp.staple().heightOverAll()), base - top(staple), EXACT);
      double near = radius(picture.all("sweep").get(0), pin);
      double far = radius(picture.all("sweep").get(1), pin);
      double face = base - mm(hasp.strap().section().thickness());
      for (double[] point : staple.points()) {
        double off = Math.hypot(point[0] - pin[0], point[1] - pin[1]);
        // What stands in the strap below a pin leaves it downwards, and draws nearer.
        boolean leaves = point[1] > face + EXACT && point[1] > pin[1];
        assertTrue(off >= near - EXACT && (leaves || off <= far + EXACT), near + " " + off);
      }
      for (Shape arc : picture.all("sweep")) {
        assertTrue(top(arc) < top(staple), "followed over the top");
      }
    }
  }

  @Test
  void aLoopStandsOnItsPlate() {
    StaplePlate small =
        StaplePlate.under(
            Staple.inside(millimetres(13), Latches.rod(6)), Latches.flat(25, 4), millimetres(9));
    StaplePlate big =
        StaplePlate.under(
                Staple.inside(inches(2), Latches.rod("1/2")).standing(inches(3)),
                Latches.flat("1 1/2", "1/4"),
                inches("1/2"))
            .on(Graduation.SIXTEENTH);
    for (StaplePlate eye : List.of(small, big)) {
      Picture picture = Picture.of(LatchDrawing.of(eye).drawing());
      Shape plate = picture.only("plate");
      Shape plan = picture.only("plan");
      assertEquals(mm(eye.length()), right(plate) - left(plate), EXACT);
      assertEquals(mm(eye.length()), right(plan) - left(plan), EXACT);
      assertEquals(mm(eye.plate().bar().section().thickness()), height(plate), EXACT);
      assertEquals(mm(eye.plate().bar().section().width()), height(plan), EXACT);
      double crown =
          picture.all("loop").stream().mapToDouble(LatchDrawingTest::top).min().orElse(0);
      assertEquals(mm(eye.staple().heightOverAll()), top(plate) - crown, 0.05);
      List<Double> screws =
          picture.all("screw").stream().map(shape -> centre(shape)[0]).distinct().sorted().toList();
      assertEquals(2, screws.size());
      for (int i = 0; i < 2; i++) {
        assertEquals(mm(eye.screwHoles().get(i)), screws.get(i) - left(plan), EXACT);
      }
      picture.assertLegible();
      Picture.of(LatchDrawing.of(eye).reducedTo(4).drawing()).assertLegible();
    }
  }

  @Test
  void aHaspHangsOnTheCrownInItsEye() {
    Hasp hung = Latches.hung();
    Picture picture = Picture.of(LatchDrawing.of(hung).drawing());
    double[] pin = centre(picture.all("eye").get(0));
    Shape rod = picture.all("crown").stream().filter(shape -> shape.radius() > 0).findFirst().get();
    assertEquals(25.4 * 5 / 32, rod.radius(), EXACT);
    assertEquals(pin[0], centre(rod)[0], EXACT);
    assertEquals(pin[1], centre(rod)[1], EXACT);
    // From above its legs stand outside the strap.
    Shape over = picture.all("hanger").stream().max((a, b) -> Double.compare(a.y(), b.y())).get();
    Shape plan = picture.only("plan");
    assertTrue(top(over) < top(plan) - 25.4 * 5 / 16);
    // Clenched through an inch of wood, its legs lie a rod's thickness behind that.
    Staple through =
        Hasp.hanger(hung.strap(), Latches.rod("5/16"), inches("1/32")).clenchedThrough(inches(1));
    Hasp clenched =
        Hasp.of(hung.strap(), hung.staple())
            .stapledAt(inches(3))
            .hungOn(through, inches("1/32"))
            .hasp();
    Picture behind = Picture.of(LatchDrawing.of(clenched).drawing());
    double base = behind.all("wood").get(0).y();
    double pinAt = centre(behind.all("eye").get(0))[0];
    Shape leg =
        behind.all("leg").stream()
            .filter(shape -> left(shape) < pinAt && right(shape) > pinAt)
            .findFirst()
            .get();
    assertEquals(25.4 * (1 + 5 / 16.0), bottom(leg) - base, EXACT);
  }

  private static double radius(Shape arc, double[] about) {
    double radius = Math.hypot(arc.x() - about[0], arc.y() - about[1]);
    for (double[] point : arc.points()) {
      assertEquals(radius, Math.hypot(point[0] - about[0], point[1] - about[1]), EXACT);
    }
    return radius;
  }

  @Test
  void aHookReachesFromSeatToSeat() {
    for (CabinHook hook : Latches.hooks()) {
      Picture picture = Picture.of(LatchDrawing.of(hook).drawing());
      double[] pin = centre(picture.all("pin").get(1));
      List<Shape> seats = picture.all("seat");
      double[] wall = centre(seats.get(0));
      double[] open = centre(seats.get(1));
      double[] shut = centre(seats.get(2));
      assertEquals(mm(hook.onWall()), wall[0] - pin[0], EXACT);
      assertEquals(mm(hook.wallOff()), pin[1] - wall[1], EXACT);
      assertEquals(mm(hook.onDoor()), shut[0] - pin[0], EXACT);
      assertEquals(mm(hook.doorOff()), pin[1] - shut[1], EXACT);
      assertEquals(mm(hook.length()), Math.hypot(open[0] - wall[0], open[1] - wall[1]), EXACT);
      Shape door = wide(picture, "door");
      double[] from = door.points().get(0);
      double[] to = door.points().get(1);
      double turned = Math.toDegrees(Math.atan2(from[1] - to[1], to[0] - from[0]));
      double opening = hook.opening().in(ShopUnits.DEGREE);
      assertEquals(0, Math.IEEEremainder(turned - opening, 360), EXACT);
      theHookFromTheSide(picture, hook);
    }
  }

  private static void theHookFromTheSide(Picture picture, CabinHook hook) {
    Shape bore = picture.only("bore");
    assertEquals(mm(hook.bore()), right(bore) - left(bore), EXACT);
    Shape face = picture.only("face");
    double thick = mm(hook.rod().section().thickness());
    double inside = right(face) - thick - left(bore);
    assertEquals(mm(hook.insideLength()), inside, EXACT);
    int wires = 3;
    double wire = mm(hook.eyeRod().section().thickness());
    assertEquals(wires * wire + wire / 2 + thick, height(face), EXACT, "tip and bend");
  }

  @Test
  void eyesAreRingsOrStaples() {
    Picture ring = Picture.of(LatchDrawing.of(Latches.gate()).drawing());
    double inside = mm(Latches.gate().eyeInside()) / 2;
    for (int i = 0; i < 6; i += 2) {
      assertEquals(inside, ring.all("eye").get(i).radius(), EXACT);
      double[] centre = centre(ring.all("eye").get(i));
      double[] seat = centre(ring.all("seat").get(i / 2));
      double behind = Math.hypot(centre[0] - seat[0], centre[1] - seat[1]);
      assertEquals(mm(Latches.gate().seatToShank()), behind, EXACT);
    }
    Picture staples = Picture.of(LatchDrawing.of(Latches.stapled()).drawing());
    assertEquals(4, staples.all("eye").size(), "both faces of two crowns");
    assertEquals(4, staples.all("leg").size());
  }

  private static List<LatchDrawing> all() {
    List<LatchDrawing> all = new ArrayList<>();
    Latches.bolts().forEach(bolt -> all.add(LatchDrawing.of(bolt)));
    Latches.latches().forEach(latch -> all.add(LatchDrawing.of(latch)));
    Latches.hasps().forEach(hasp -> all.add(LatchDrawing.of(hasp)));
    Latches.hooks().forEach(hook -> all.add(LatchDrawing.of(hook)));
    Latches.staples().forEach(staple -> all.add(LatchDrawing.of(staple)));
    return all;
  }

  @Test
  void isLegible() {
    for (LatchDrawing each : all()) {
      Picture.of(each.drawing()).assertLegible();
      Picture.of(each.on(Graduation.SIXTEENTH).drawing()).assertLegible();
      Picture.of(each.on(Graduation.MILLIMETRE).reducedTo(5).drawing()).assertLegible();
    }
  }

  @Test
  void isLegibleWhateverIsMade() {
    Random random = new Random(7);
    int drawn = 0;
    for (int i = 0; i < 300; i++) {
      for (LatchDrawing each : Latches.any(random)) {
        LatchDrawing small = each.reducedTo(1 + random.nextInt(5));
        LatchDrawing read = random.nextBoolean() ? small.on(Graduation.SIXTY_FOURTH) : small;
        Picture.of(read.drawing()).assertLegible();
        drawn++;
      }
    }
    assertTrue(drawn > 1000, "drawn: " + drawn);
  }

  @Test
  void readsItsSizesOnTheRuleThatIsTold() {
    Picture own = Picture.of(LatchDrawing.of(Latches.across()).drawing());
    assertTrue(own.words().containsAll(List.of("44.82 mm", "55.97 mm", "28 mm")));
    Picture ruled =
        Picture.of(LatchDrawing.of(Latches.across()).on(Graduation.MILLIMETRE).drawing());
    assertTrue(ruled.words().containsAll(List.of("45 mm", "56 mm", "28 mm")));
    Picture inches = Picture.of(LatchDrawing.of(Latches.inLine()).drawing());
    assertTrue(inches.words().containsAll(List.of("2 15/16 in", "4 3/16 in", "3/8 in")));
    Picture half = Picture.of(LatchDrawing.of(Latches.across()).reducedTo(2).drawing());
    Shape slot = half.only("slot");
    assertEquals(mm(Latches.across().slotWidth()) / 2, height(slot), EXACT);
    assertTrue(half.words().contains("28 mm"), "sizes stay");
  }

  @Test
  void saysWhatItShows() {
    Drawing bolt = LatchDrawing.of(Latches.boathouse()).drawing();
    assertEquals("slide bolt of 12 mm round, thrown 40 mm", bolt.title());
    assertTrue(bolt.description().contains("36 mm, at least 33 mm once the door has shrunk"));
    assertTrue(bolt.description().contains(Latches.boathouse().toString()));
    assertTrue(
        Picture.of(bolt).words().containsAll(List.of("36 mm in the keeper", "107 mm", "7 mm")));
    assertEquals(
        "Suffolk latch through a door of 44 mm",
        LatchDrawing.of(Latches.suffolk()).drawing().title());
    assertEquals(
        "Norfolk latch through a door of 1 1/2 in",
        LatchDrawing.of(Latches.norfolk()).drawing().title());
    assertEquals(
        "hasp of 40 mm × 4 mm flat, over its staple",
        LatchDrawing.of(Latches.across()).drawing().title());
    assertEquals(
        "cabin hook of 1/4 in round, 6 1/2 in from seat to seat",
        LatchDrawing.of(Latches.stapled()).drawing().title());
    assertEquals(
        "staple 13 mm wide inside, of 6 mm round",
        LatchDrawing.of(Latches.staples().get(0)).drawing().title());
    assertTrue(
        LatchDrawing.of(Latches.across())
            .reducedTo(3)
            .toString()
            .startsWith("drawing of a latch, scale 1 : 3\n  hasp of 40 mm"));
  }

  @Test
  void refusesWhatNoPaperHolds() {
    Staple vast = Staple.inside(millimetres(2e5), Latches.rod(6));
    assertTrue(
        assertThrows(IllegalArgumentException.class, LatchDrawing.of(vast)::drawing)
            .getMessage()
            .startsWith("width of the staple must be at most 100 m on the paper, was 200006 mm"));
    LatchDrawing.of(vast).reducedTo(1000).drawing();
    Staple none = Staple.inside(inches(0.01), Latches.rod("1/64"));
    assertTrue(
        assertThrows(IllegalArgumentException.class, LatchDrawing.of(none).reducedTo(1000)::drawing)
            .getMessage()
            .contains("must be at least 0.001 mm on the paper"));
  }
}
