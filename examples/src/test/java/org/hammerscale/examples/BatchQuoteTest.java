package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchQuoteTest {
  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void fillTheRack() throws IOException {
    Files.writeString(
        folder.resolve("rack.csv"),
        RackFileTest.HEADER
            + "40 mm x 6 mm flat, 6 m, any, 31.50\n"
            + "40 mm x 6 mm flat, 3 m, any, 17.25\n"
            + "12 mm round, 6 m, any, 8.40\n");
  }

  private int run(List<String> lines) throws IOException {
    Path file = folder.resolve("lines.csv");
    Files.write(file, lines);
    return run(file.toString(), folder.resolve("rack.csv").toString());
  }

  private int run(String... args) throws IOException {
    return BatchQuote.run(List.of(args), print(out), print(err));
  }

  private static PrintStream print(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }

  private List<String> printed() {
    return out.toString(StandardCharsets.UTF_8).lines().toList();
  }

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  /** Lines of many orders, four lines each, no two orders alike. */
  static List<String> lines(int count) {
    List<String> lines = new ArrayList<>(List.of("order, section, piece, length, count"));
    for (int n = 0; n < count; n++) {
      int order = n / 4;
      String section = n % 4 == 3 ? "12 mm round" : "40 mm x 6 mm flat";
      int length = 150 + (order * 37 + n % 4 * 411) % 1300;
      lines.add(order + ", " + section + ", part " + n % 4 + ", " + length + " mm, " + (2 + n % 7));
    }
    return lines;
  }

  @Test
  void pricesEveryOrderOfABatch() throws IOException {
    assertEquals(0, run(lines(2000)));
    assertEquals(1 + 2 * 500, printed().size());
    assertEquals("1000 lines read, at order \"249\"", told().lines().findFirst().orElse(""));
    assertTrue(printed().get(1).startsWith("0,40 mm × 6 mm flat,9,"), printed().get(1));
    assertTrue(printed().stream().skip(1).allMatch(line -> line.endsWith(",yes")));
  }

  @Test
  void leavesOutAnOrderWithAFaultyLine() throws IOException {
    List<String> lines =
        List.of(
            "order, section, piece, length, count",
            "gate, 40 mm x 6 mm flat, strap, 900 mm, 2",
            "door, 40 mm x 6 mm flat, strap, 900, 2",
            "door, 40 mm x 6 mm flat, strap, 900 mm, few",
            "door, 40 mm x 6 mm flat, strap",
            "lid, 40 mm x 6 mm flat, strap, 9 m, 1",
            "shutter, 12 mm round, pin, 100 mm, 4");
    assertEquals(2, run(lines));
    assertEquals(
        List.of(
            "order,section,pieces,bars,money,longest leftover,proved",
            "gate,40 mm × 6 mm flat,2,1,17.25,1174 mm,yes",
            "shutter,12 mm round,4,1,8.40,5568 mm,yes"),
        printed());
    assertTrue(told().contains("line 3, order \"door\": "), told());
    assertTrue(told().contains("line 4, order \"door\": \"few\" is no count"), told());
    assertTrue(told().contains("line 5, order \"door\": has 3 fields"), told());
    assertTrue(told().contains("order \"lid\": length of strap must fit a bar, was 9 m"), told());
  }

  @Test
  void tellsWhichFileIsMissingOrFaulty() throws IOException {
    assertEquals(2, run("lines.csv"));
    assertEquals(2, run("none.csv", "nor this.csv"));
    Path rack = folder.resolve("rack.csv");
    Files.writeString(rack, "rubbish\n");
    assertEquals(2, run(rack.toString(), rack.toString()));
    assertTrue(told().contains("give the file of lines and the rack file, not 1 files"), told());
    assertTrue(told().contains("nor this.csv: there is no such file"), told());
    assertTrue(told().contains("rack.csv, line 1: is no header"), told());
  }
}
