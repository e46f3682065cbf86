package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.hammerscale.drawing.Picture.Shape;
import org.hammerscale.latch.FittedSpring;
import org.hammerscale.latch.LatchSpring;
import org.hammerscale.units.Graduation;
import org.junit.jupiter.api.Test;

/** A latch's spring as it is cut and as it bends. */
class LatchSpringDrawingTest {
  private static final double EXACT = 1e-6;

  private static final FittedSpring METRIC =
      FittedSpring.on(
              millimetres(30),
              LatchSpring.of(millimetres(150), millimetres(16), millimetres(2)).taperedTo(0.5))
          .set(millimetres(4))
          .travelling(millimetres(10))
          .drilled(2, millimetres(4.5));
  private static final FittedSpring INCH =
      FittedSpring.on(
              inches("1 1/4"),
              LatchSpring.of(inches(5), inches("5/8"), inches("1/16")).taperedTo(inches("5/16")))
          .set(inches("1/8"))
          .travelling(inches("3/8"));

  @Test
  void isCutAsItSays() {
    Picture picture = Picture.of(LatchDrawing.of(METRIC).drawing());
    List<double[]> outline = picture.only("outline").points();
    double root = picture.only("root").x();
    double[][] corners = {{0, -8}, {-30, -8}, {-30, 8}, {0, 8}, {150, 4}, {150, -4}};
    for (int i = 0; i < corners.length; i++) {
      assertEquals(corners[i][0], outline.get(i)[0] - root, EXACT);
      assertEquals(corners[i][1], outline.get(i)[1], EXACT);
    }
    List<Shape> holes = picture.all("hole").stream().filter(shape -> shape.radius() > 0).toList();
    assertEquals(2, holes.size());
    for (int i = 0; i < 2; i++) {
      assertEquals(2.25, holes.get(i).radius(), EXACT);
      double middle =
          holes.get(i).points().stream().mapToDouble(point -> point[0]).average().orElseThrow();
      assertEquals(-30 + 7.5 + 15 * i, middle - root, 0.2);
    }
  }

  /** Faces stand half a thickness off a line that is 14 mm down at the tip, 4 mm at rest. */
  @Test
  void bendsAsFarAsItIsPressed() {
    Picture picture = Picture.of(LatchDrawing.of(METRIC).drawing());
    double root = picture.only("root").x();
    Shape free = picture.only("free");
    double level = (free.points().get(0)[1] + free.points().get(2)[1]) / 2;
    String[] parts = {"rest", "pressed"};
    double[] downs = {4, 14};
    for (int i = 0; i < 2; i++) {
      List<Shape> lines = picture.all(parts[i]);
      assertEquals(3, lines.size(), "two faces and the tip");
      List<double[]> upper = lines.get(0).points();
      List<double[]> lower = lines.get(1).points();
      int n = upper.size();
      for (int k = 0; k < n; k++) {
        double[] a = upper.get(k);
        double[] b = lower.get(k);
        assertEquals(2, Math.hypot(a[0] - b[0], a[1] - b[1]), EXACT, "as thick as it is");
        double along = ((a[0] + b[0]) / 2 - root) / 150;
        assertEquals((double) k / (n - 1), along, EXACT);
      }
      double tip = (upper.get(n - 1)[1] + lower.get(n - 1)[1]) / 2;
      assertEquals(downs[i], tip - level, EXACT);
      assertEquals(level - 1, upper.get(0)[1], EXACT, "level at its root");
    }
  }

  @Test
  void isLegibleWhateverIsMade() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      double length = 20 + random.nextInt(300);
      double width = 4 + random.nextInt(40);
      double thick = 0.5 + random.nextInt(6) / 2.0;
      FittedSpring spring =
          FittedSpring.on(
                  millimetres(8 + random.nextInt(60)),
                  LatchSpring.of(millimetres(length), millimetres(width), millimetres(thick))
                      .taperedTo(random.nextInt(5) / 4.0))
              .set(millimetres(random.nextInt(5)))
              .travelling(millimetres(random.nextInt(20)));
      FittedSpring held =
          random.nextBoolean() ? spring : spring.drilled(1 + random.nextInt(2), millimetres(3));
      Picture.of(LatchDrawing.of(held).drawing()).assertLegible();
      Picture.of(LatchDrawing.of(held).on(Graduation.SIXTEENTH).reducedTo(3).drawing())
          .assertLegible();
    }
  }

  @Test
  void saysWhatItShows() {
    Drawing drawing = LatchDrawing.of(METRIC).drawing();
    assertEquals("latch spring 150 mm long, of 16 mm × 2 mm", drawing.title());
    assertTrue(drawing.description().contains("pressed by 4 mm from where the tip stands free"));
    assertTrue(
        Picture.of(drawing)
            .words()
            .containsAll(
                List.of("150 mm", "16 mm", "8 mm", "foot 30 mm", "180 mm", "Ø 4.5 mm at 7.5 mm")));
    Picture ruled = Picture.of(LatchDrawing.of(INCH).on(Graduation.SIXTEENTH).drawing());
    assertTrue(
        ruled
            .words()
            .containsAll(List.of("5 in", "5/16 in", "free", "1/8 in at rest", "1/2 in pressed")),
        ruled.words()::toString);
    Picture bare = Picture.of(LatchDrawing.of(INCH.set(inches(0)).travelling(inches(0))).drawing());
    assertTrue(bare.words().contains("free, at rest"));
    assertTrue(bare.words().stream().noneMatch(words -> words.endsWith(" pressed")));
  }

  @Test
  void refusesWhatNoPaperHolds() {
    FittedSpring vast =
        FittedSpring.on(inches(1), LatchSpring.of(metres(101), inches(1), inches("1/8")));
    assertTrue(
        assertThrows(IllegalArgumentException.class, LatchDrawing.of(vast)::drawing)
            .getMessage()
            .startsWith("length of the spring must be at most 100 m on the paper, was 101 m"));
  }
}
