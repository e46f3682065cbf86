package org.hammerscale.examples.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class BarPictureTest {
  @Test
  void drawsMarksToScaleAndNamesBetween() {
    // Sixty-four columns: the mark at a quarter stands in column 16, the names midway.
    String expected =
        "    "
            + " ".repeat(7)
            + "eye"
            + " ".repeat(28)
            + "plain\n    |"
            + "=".repeat(15)
            + "|"
            + "=".repeat(47)
            + "|\n    0"
            + " ".repeat(15)
            + "1 in"
            + " ".repeat(44)
            + "4 in\n";
    assertEquals(
        expected,
        BarPicture.of(List.of(1.0, 4.0), "0", List.of("1 in", "4 in"), List.of("eye", "plain")));
  }

  @Test
  void writesCrowdedLabelsOnALineOfTheirOwn() {
    String picture =
        BarPicture.of(
            List.of(1.0, 2.0, 64.0), "0", List.of("1 in", "2 in", "64 in"), List.of("a", "b", "c"));
    assertEquals(5, picture.lines().count(), picture);
  }

  @Test
  void keepsToThePage() {
    String picture =
        BarPicture.of(
            List.of(1.0, 62.0, 63.0, 64.0),
            "0",
            List.of("1 in", "62 in", "63 in", "5280 ft 11 63/64 in"),
            List.of("turned eye", "plain stretch", "riveted tenon", "punched hole"));
    assertTrue(picture.lines().allMatch(line -> line.length() <= 80), picture);
    for (String name : List.of("turned eye", "plain stretch", "riveted tenon", "punched hole")) {
      assertTrue(picture.contains(name), picture);
    }
    assertTrue(picture.contains("5280 ft 11 63/64 in"), picture);
  }
}
