package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hammerscale.latch.CabinHook;
import org.hammerscale.latch.Closing;
import org.hammerscale.latch.Hasp;
import org.hammerscale.latch.LatchCatch;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;

/** What closes doors from a cupboard's to a barn's, in both units. */
final class Latches {
  private Latches() {}

  static Bar rod(double diameter) {
    return Bar.of(Section.round(millimetres(diameter)), Material.MILD_STEEL);
  }

  static Bar rod(String diameter) {
    return Bar.of(Section.round(inches(diameter)), Material.MILD_STEEL);
  }

  static Bar flat(double width, double thickness) {
    Section section = Section.flat(millimetres(width), millimetres(thickness));
    return Bar.of(section, Material.MILD_STEEL);
  }

  static Bar flat(String width, String thickness) {
    return Bar.of(Section.flat(inches(width), inches(thickness)), Material.MILD_STEEL);
  }

  static SlideBolt boathouse() {
    return SlideBolt.thrown(millimetres(40), rod(12))
        .across(millimetres(4))
        .stapledApart(millimetres(100))
        .allowing(millimetres(2), millimetres(3))
        .on(Graduation.MILLIMETRE)
        .bolt();
  }

  static SlideBolt tailed() {
    return SlideBolt.thrown(inches("1 1/2"), rod("1/2"))
        .across(inches("1/8"))
        .setBack(inches("1/16"))
        .stapledApart(inches(4))
        .clearing(inches("1/32"))
        .withTail(inches(2))
        .bolt();
  }

  static List<SlideBolt> bolts() {
    return List.of(
        boathouse(),
        tailed(),
        SlideBolt.thrown(millimetres(8), rod(2)).bolt(),
        SlideBolt.thrown(millimetres(150), flat(50, 20))
            .across(millimetres(10))
            .setBack(millimetres(5))
            .withTail(millimetres(60))
            .allowing(millimetres(8), millimetres(6))
            .bolt());
  }

  static ThumbLatch suffolk() {
    return ThumbLatch.through(millimetres(44), flat(20, 6), millimetres(200))
        .thumbAt(millimetres(30), millimetres(8))
        .lifting(millimetres(60), millimetres(180))
        .into(LatchCatch.standing(millimetres(15)).under(millimetres(4)), millimetres(2))
        .allowing(millimetres(4), millimetres(6))
        .on(Graduation.MILLIMETRE)
        .latch();
  }

  static ThumbLatch norfolk() {
    return ThumbLatch.through(inches("1 1/2"), flat("3/4", "1/4"), inches(8))
        .thumbAt(inches("1 1/4"), inches("3/8"))
        .closing(Closing.LEFT)
        .withBackPlate()
        .pivotOut(inches("1/2"))
        .latch();
  }

  static List<ThumbLatch> latches() {
    return List.of(
        suffolk(),
        norfolk(),
        ThumbLatch.through(millimetres(40), flat(20, 6), millimetres(200))
            .pivotOut(millimetres(-15))
            .latch(),
        ThumbLatch.through(millimetres(150), flat(40, 12), millimetres(500))
            .thumbAt(millimetres(60), millimetres(12))
            .lifting(millimetres(200), millimetres(450))
            .latch(),
        ThumbLatch.through(millimetres(12), flat(6, 2), millimetres(60))
            .thumbAt(millimetres(15), millimetres(5))
            .withHandle(flat(6, 2), millimetres(40), millimetres(15))
            .clearing(millimetres(0.5))
            .latch());
  }

  static Hasp across() {
    Staple staple = Staple.inside(millimetres(12), rod(8)).standing(millimetres(14));
    return Hasp.of(flat(40, 4), staple).stapledAt(millimetres(45)).pinAbove(millimetres(4)).hasp();
  }

  static Hasp inLine() {
    Staple staple = Staple.inside(inches("1/2"), rod("5/16")).standing(inches("11/16"));
    return Hasp.of(flat("1 1/4", "3/16"), staple)
        .stapledAt(inches(3))
        .clearing(inches("1/32"))
        .inLine()
        .on(Graduation.SIXTEENTH)
        .hasp();
  }

  static List<Hasp> hasps() {
    Staple wire = Staple.inside(millimetres(4), rod(2)).standing(millimetres(5));
    Staple tall =
        Staple.inside(millimetres(25), rod(16)).standing(millimetres(60)).driven(millimetres(120));
    return List.of(
        across(),
        inLine(),
        Hasp.of(flat(12, 2), wire).stapledAt(millimetres(10)).hasp(),
        Hasp.of(flat(80, 10), tall).stapledAt(millimetres(100)).pinAbove(millimetres(-6)).hasp(),
        Hasp.of(flat(80, 10), tall).stapledAt(millimetres(100)).pinAbove(millimetres(30)).hasp(),
        hung());
  }

  static Hasp hung() {
    Bar strap = flat("1 1/2", "3/16");
    Staple hanger =
        Hasp.hanger(strap, rod("5/16"), inches("1/32")).driven(inches(2)).on(Graduation.SIXTEENTH);
    return Hasp.of(strap, Staple.inside(inches("1/2"), rod("5/16")).standing(inches("11/16")))
        .stapledAt(inches(3))
        .hungOn(hanger, inches("1/32"))
        .inLine()
        .on(Graduation.SIXTEENTH)
        .hasp();
  }

  static CabinHook gate() {
    return CabinHook.betweenEyes(millimetres(700), millimetres(-250), rod(10))
        .off(millimetres(20), millimetres(20))
        .heldOpen(degrees(100))
        .hook();
  }

  static CabinHook stapled() {
    return CabinHook.betweenEyes(inches(6), inches(-4), rod("1/4"))
        .off(inches("1/2"), inches("1/2"))
        .heldOpen(degrees(90))
        .withStaples(rod("1/4"), inches(1))
        .on(Graduation.SIXTEENTH)
        .hook();
  }

  static List<CabinHook> hooks() {
    return List.of(
        gate(),
        stapled(),
        CabinHook.betweenEyes(millimetres(40), millimetres(-30), rod(2))
            .heldOpen(degrees(60))
            .hook(),
        CabinHook.betweenEyes(millimetres(900), millimetres(100), rod(16))
            .off(millimetres(40), millimetres(-30))
            .heldOpen(degrees(170))
            .hook(),
        CabinHook.betweenEyes(inches(20), inches(-12), rod("3/8"))
            .off(inches(1), inches(0))
            .heldOpen(degrees(0))
            .hook());
  }

  static List<Staple> staples() {
    Bar square = Bar.of(Section.square(inches("3/8")), Material.MILD_STEEL);
    return List.of(
        Staple.inside(millimetres(13), rod(6)).standing(millimetres(13)).driven(millimetres(40)),
        Staple.inside(millimetres(3), rod(2)),
        Staple.inside(inches(2), square)
            .standing(inches("1/2"))
            .withSquareCrown()
            .clenchedThrough(inches("1 1/4")),
        Staple.inside(millimetres(60), rod(8)).standing(millimetres(10)),
        Staple.inside(millimetres(20), rod(8)).standing(millimetres(60)));
  }

  /** One of each kind, of any size that a smith makes; those that cannot be are left out. */
  static List<LatchDrawing> any(Random random) {
    double t = (20 + random.nextInt(180)) / 10.0;
    double w = t * (1 + random.nextInt(4));
    double far = t * (4 + random.nextInt(30));
    double door = 10 + random.nextInt(140);
    List<LatchDrawing> all = new ArrayList<>();
    add(
        all,
        () ->
            LatchDrawing.of(
                SlideBolt.thrown(millimetres(far / 2), random.nextBoolean() ? rod(t) : flat(w, t))
                    .across(millimetres(random.nextInt(8)))
                    .fromEdge(millimetres(random.nextInt(60)))
                    .bolt()));
    add(
        all,
        () ->
            LatchDrawing.of(
                ThumbLatch.through(millimetres(door), flat(w, t), millimetres(far + 60))
                    .thumbAt(millimetres(20 + random.nextInt(40)), millimetres(10))
                    .pivotOut(millimetres(random.nextInt(30) - 10))
                    .closing(random.nextBoolean() ? Closing.LEFT : Closing.RIGHT)
                    .latch()));
    Staple staple =
        Staple.inside(millimetres(t * 1.5), rod(t))
            .standing(millimetres(t * (1 + random.nextInt(4))));
    all.add(LatchDrawing.of(staple));
    add(
        all,
        () ->
            LatchDrawing.of(
                Hasp.of(flat(t * 5, t / 2), staple)
                    .stapledAt(millimetres(far + t))
                    .pinAbove(millimetres(t * (random.nextInt(4) - 1)))
                    .hasp()));
    add(
        all,
        () ->
            LatchDrawing.of(
                CabinHook.betweenEyes(
                        millimetres(far * 2), millimetres(far * (random.nextInt(4) - 3)), rod(t))
                    .off(millimetres(t * random.nextInt(3)), millimetres(t * random.nextInt(3)))
                    .heldOpen(degrees(random.nextInt(270)))
                    .hook()));
    return all;
  }

  private interface Attempt {
    LatchDrawing make();
  }

  private static void add(List<LatchDrawing> all, Attempt attempt) {
    try {
      all.add(attempt.make());
    } catch (IllegalArgumentException cannotBe) {
      // No smith makes it; he is told what to change.
      assertTrue(cannotBe.getMessage().contains("; "), cannotBe.getMessage());
    }
  }
}
