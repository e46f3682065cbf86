package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Picture.Shape;
import org.hammerscale.fastening.Spike;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Pin;
import org.hammerscale.latch.Staple;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.HingeHook;
import org.hammerscale.strength.HookPin;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class DrivenDrawingTest {
  private static final double EXACT = 1e-6;

  private static final Section SIX = Section.square(millimetres(6));
  private static final Section BASE = Section.square(millimetres(14));
  private static final Section ROD = Section.round(inches("3/4"));
  private static final Spike PLAIN =
      Spike.of(Section.square(inches("3/8"))).through(inches(2)).driven(inches("4 3/4"));
  private static final Spike CLENCHED =
      Spike.of(SIX)
          .withHead(Head.tapered(SIX, BASE, BASE.point(), millimetres(5)))
          .through(millimetres(4))
          .through(millimetres(25))
          .clenchedThrough(millimetres(30));
  private static final Spike BOLT =
      Spike.of(ROD)
          .withHead(Head.snap(ROD))
          .withPoint(Taper.between(ROD, Section.round(inches("7/16")), inches("3/4")))
          .through(inches("1/8"))
          .through(inches(4))
          .driven(inches(6));
  private static final Spike TINY = Spike.of(Section.round(millimetres(2))).driven(millimetres(5));
  private static final List<Spike> SPIKES =
      List.of(PLAIN, CLENCHED, BOLT, TINY, TINY.through(millimetres(1)).clenchedThrough(inches(1)));

  private static double mm(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  private static DoubleStream across(Shape shape) {
    return shape.points().stream().mapToDouble(point -> point[0]);
  }

  private static DoubleStream down(Shape shape) {
    return shape.points().stream().mapToDouble(point -> point[1]);
  }

  private static double lowest(Shape shape) {
    return down(shape).max().orElseThrow();
  }

  private static DrivenDrawing bored(Spike spike) {
    return DrivenDrawing.of(spike).inHole(spike.diameter().multiply(0.75));
  }

  @Test
  void aSpikeReachesAsDeepAsItSays() {
    for (Spike spike : List.of(PLAIN, BOLT, TINY)) {
      Picture picture = Picture.of(bored(spike).drawing());
      double face = picture.all("wood").get(0).y();
      assertEquals(mm(spike.length()), lowest(picture.only("spike")) - face, EXACT);
      Shape hole = picture.only("hole");
      assertEquals(mm(spike.boringDepth()), lowest(hole) - face, EXACT);
      double wide = across(hole).max().orElseThrow() - across(hole).min().orElseThrow();
      assertEquals(mm(spike.diameter()) * 0.75, wide, EXACT);
      double reach = mm(spike.head().reach());
      if (reach > 0) {
        double top = down(picture.only("spike")).min().orElseThrow();
        assertEquals(reach, face - top, EXACT);
      }
    }
  }

  @Test
  void eachFaceOfTheWoodIsWhereItsThicknessesAddUp() {
    for (Spike spike : SPIKES) {
      Picture picture = Picture.of(bored(spike).drawing());
      List<Double> levels = picture.all("wood").stream().map(Shape::y).distinct().toList();
      int faces = 1 + spike.layers().size() + (spike.isClenched() ? 1 : 0);
      assertEquals(faces, levels.size());
      double deep = 0;
      for (int i = 0; i < spike.layers().size(); i++) {
        deep += mm(spike.layers().get(i));
        assertEquals(deep, levels.get(i + 1) - levels.get(0), EXACT);
      }
      picture.assertLegible();
      Picture.of(bored(spike).reducedTo(5).on(Graduation.SIXTEENTH).drawing()).assertLegible();
      Picture.of(DrivenDrawing.of(spike).drawing()).assertLegible();
    }
  }

  /** Its sides lie its thickness apart where it is turned over, and it is turned right round. */
  @Test
  void aClenchLiesAgainstTheWood() {
    Picture picture = Picture.of(bored(CLENCHED).drawing());
    double back = picture.all("wood").stream().mapToDouble(Shape::y).max().orElseThrow();
    double face = picture.all("wood").get(0).y();
    assertEquals(4 + 25 + 30, back - face, EXACT);
    assertEquals(6, lowest(picture.only("spike")) - back, EXACT, "a thickness below the wood");
    // The middle line: 18 mm behind the wood, of them a quarter round of radius 3.
    double middle = across(picture.all("hole").get(0)).sum() / 2;
    double other = across(picture.all("hole").get(1)).sum() / 2;
    double line = (middle + other) / 2;
    double tip = across(picture.only("spike")).max().orElseThrow();
    assertEquals(3 + 18 - 3 * Math.PI / 2, tip - line, EXACT);
  }

  /** A rose head left to the hammer is drawn with its metal: 1.75 times the cube of the shank. */
  @Test
  void aRoseHeadIsDrawnOfItsMetal() {
    Picture picture = Picture.of(DrivenDrawing.of(PLAIN).drawing());
    Shape iron = picture.only("spike");
    double face = picture.all("wood").get(0).y();
    double high = face - down(iron).min().orElseThrow();
    double wide = across(iron).max().orElseThrow() - across(iron).min().orElseThrow();
    double side = 9.525;
    assertEquals(2 * side, wide, EXACT);
    assertEquals(1.75 * side * side * side, wide * wide * high / 3, 1e-3);
  }

  /** Thick and thin, short and long, in true scale and reduced; seed 73. */
  @Test
  void anyProportionsAreLegible() {
    Random random = new Random(73);
    for (int i = 0; i < 200; i++) {
      double t = 2 + 38 * random.nextDouble();
      Section shank =
          random.nextBoolean() ? Section.round(millimetres(t)) : Section.square(millimetres(t));
      Spike spike = Spike.of(shank);
      if (random.nextBoolean()) {
        Section base = Section.round(millimetres(t * (1.2 + random.nextDouble())));
        double high = t * (0.1 + 0.5 * random.nextDouble());
        spike = spike.withHead(Head.dome(shank, base, millimetres(high)));
      }
      for (int layers = random.nextInt(4); layers > 0; layers--) {
        spike = spike.through(millimetres(1 + 120 * random.nextDouble() * random.nextDouble()));
      }
      double deep = t * (2.5 + 12 * random.nextDouble());
      spike =
          random.nextInt(3) == 0
              ? spike.clenchedThrough(millimetres(deep))
              : spike.driven(millimetres(deep));
      int reduction = new int[] {1, 2, 5, 20}[random.nextInt(4)];
      Picture.of(bored(spike).reducedTo(reduction).drawing()).assertLegible();
      Spike tail =
          spike.isClenched()
              ? Spike.of(shank).clenchedThrough(millimetres(deep))
              : Spike.of(shank).driven(millimetres(deep));
      double pin = t * (0.3 + 0.7 * random.nextDouble());
      double out = t * (0.5 + 4 * random.nextDouble());
      HingeHook hook = hook(pin, t * (1 + 4 * random.nextDouble()), shank, out);
      DrivenDrawing drawn = DrivenDrawing.of(hook, tail).inHole(millimetres(0.75 * t));
      Picture.of(drawn.on(MILLIMETRE).reducedTo(reduction).drawing()).assertLegible();
      Staple staple =
          Staple.inside(
                  millimetres(t * (1 + 4 * random.nextDouble())),
                  Bar.of(shank, Material.MILD_STEEL))
              .standing(millimetres(t * (0.5 + 4 * random.nextDouble())));
      Staple legged =
          spike.isClenched()
              ? staple.clenchedThrough(millimetres(deep))
              : staple.driven(millimetres(deep));
      DrivenDrawing bored = DrivenDrawing.of(legged).inHole(millimetres(0.75 * t));
      Picture.of(bored.on(MILLIMETRE).reducedTo(reduction).drawing()).assertLegible();
    }
  }

  private static HingeHook hook(double pin, double barrel, Section shank, double out) {
    return HingeHook.of(
        HookPin.of(Pin.of(millimetres(pin)), millimetres(barrel)), shank, millimetres(out));
  }

  @Test
  void aPintleStandsBeforeItsPost() {
    Section square = Section.square(millimetres(20));
    Section thin = Section.round(millimetres(4));
    List<HingeHook> hooks = List.of(hook(14, 40, square, 35), hook(4, 8, thin, 5));
    for (HingeHook hook : hooks) {
      Spike tail = Spike.of(hook.shank()).driven(hook.shank().width().multiply(6));
      DrivenDrawing drawn =
          DrivenDrawing.of(hook, tail).inHole(tail.diameter().multiply(0.75)).on(MILLIMETRE);
      Picture picture = Picture.of(drawn.drawing());
      Shape iron = picture.only("hook");
      double post = picture.all("wood").get(0).x();
      double out = mm(hook.projection());
      double half = mm(hook.shank().thickness()) / 2;
      assertEquals(post - out, picture.only("pin").x(), EXACT);
      assertEquals(post - out - half, across(iron).min().orElseThrow(), EXACT);
      assertEquals(post + mm(tail.inWood()), across(iron).max().orElseThrow(), EXACT);
      double high = lowest(iron) - down(iron).min().orElseThrow();
      assertEquals(mm(hook.pin().height()) + 2 * half, high, EXACT);
      assertEquals(
          mm(tail.boringDepth()), across(picture.only("hole")).max().orElseThrow() - post, EXACT);
      picture.assertLegible();
      Picture.of(drawn.reducedTo(4).drawing()).assertLegible();
      Spike clenched = tail.clenchedThrough(millimetres(60));
      Picture.of(DrivenDrawing.of(hook, clenched).drawing()).assertLegible();
    }
  }

  private static final Graduation<Length> MILLIMETRE = Graduation.MILLIMETRE;

  @Test
  void aStaplesLegsStandInTheirHoles() {
    Staple staple = Staple.inside(millimetres(24), Latches.rod(8)).driven(millimetres(60));
    for (Staple each : List.of(staple, staple.clenchedThrough(millimetres(35)))) {
      Picture picture = Picture.of(DrivenDrawing.of(each).inHole(millimetres(6)).drawing());
      double face = picture.only("wood").y();
      double deepest = 0;
      for (Shape hole : picture.all("hole").stream().filter(s -> s.is("hidden")).toList()) {
        deepest = Math.max(deepest, lowest(hole) - face);
      }
      assertEquals(mm(each.holdingLength()), deepest, EXACT);
      double over = each.isClenched() ? 35 + 8 : 60;
      assertEquals(over, lowest(picture.all("leg").get(0)) - face, EXACT);
      assertTrue(picture.all("leg").stream().allMatch(leg -> leg.is("wide")));
      picture.assertLegible();
      Picture.of(DrivenDrawing.of(each).reducedTo(3).on(MILLIMETRE).drawing()).assertLegible();
      assertEquals(
          "staple 24 mm wide inside, of 8 mm round", DrivenDrawing.of(each).drawing().title());
      assertEquals(
          "drawing of what is driven, scale 1 : 1\n  " + each, DrivenDrawing.of(each).toString());
    }
  }

  @Test
  void saysWhatItIs() {
    Drawing drawing = bored(PLAIN).drawing();
    assertEquals("spike of 3/8 in square, 6 3/4 in under the head", drawing.title());
    assertTrue(drawing.description().contains("4 in of full shank count"), drawing.description());
    assertTrue(
        bored(CLENCHED).drawing().description().contains("turned over 18 mm"),
        () -> bored(CLENCHED).drawing().description());
    assertEquals(
        "drawing of what is driven, scale 1 : 2\n  " + PLAIN,
        DrivenDrawing.of(PLAIN).reducedTo(2).toString());
    HingeHook hook = hook(12, 40, Section.round(millimetres(12)), 30);
    Spike tail = Spike.of(hook.shank()).driven(millimetres(100));
    assertEquals(
        "pintle 12 mm thick, of 12 mm round", DrivenDrawing.of(hook, tail).drawing().title());
    assertEquals(
        "drawing of what is driven, scale 1 : 1\n  " + hook,
        DrivenDrawing.of(hook, tail).toString());
  }

  @Test
  void refusesWhatCannotBeDrawn() {
    assertTrue(
        assertThrows(
                IllegalArgumentException.class, () -> DrivenDrawing.of(PLAIN).inHole(inches(1)))
            .getMessage()
            .startsWith("diameter must be at most what is driven of 3/8 in, was 1 in"));
    assertThrows(IllegalArgumentException.class, () -> DrivenDrawing.of(Spike.of(SIX)));
    Spike far = Spike.of(SIX).driven(metres(101));
    assertTrue(
        assertThrows(IllegalArgumentException.class, DrivenDrawing.of(far)::drawing)
            .getMessage()
            .startsWith("length of the spike must be at most 100 m on the paper"));
  }
}
