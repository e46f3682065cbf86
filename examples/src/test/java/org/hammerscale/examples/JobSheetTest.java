package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as its user meets it: files in, sheets or faults out. */
class JobSheetTest {
  private static final String HEADER =
      "name,bar width,bar thickness,pin,clearance,leaf length,tip width,tip thickness,taper"
          + " length,sets,graduation\n";
  private static final String GATE =
      "Garden gate,1 1/2 in,1/4 in,1/2 in,0 in,15 in,3/4 in,1/8 in,6 in,1,1/16 in\n";

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) throws IOException {
    return JobSheet.run(List.of(args), print(out), print(err));
  }

  private int runOrder(String text) throws IOException {
    Path file = folder.resolve("order.csv");
    Files.writeString(file, text);
    return run(file.toString());
  }

  private static PrintStream print(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private List<String> faults() {
    return err.toString(StandardCharsets.UTF_8).lines().toList();
  }

  @Test
  void printsTheSampleWhenNoFileIsNamed() throws IOException {
    assertEquals(0, run());
    assertTrue(printed().contains("Walled-garden gate: strap hinges, 2 sets of two"), printed());
    assertTrue(printed().contains("Boathouse door: strap hinges, 1 set of two"), printed());
    assertEquals(List.of(), faults());
    out.reset();
    assertEquals(0, run(""), "an empty name is none");
    assertTrue(printed().contains("Boathouse door"));
  }

  @Test
  void saysWhatToCutAndWhereToPunch() throws IOException {
    assertEquals(0, runOrder("# a remark\n\n" + HEADER + GATE));
    // By hand: π 3/4 = 2.3562; + 9 plain; + 3 1/2 for the taper. A sixth of the turn is to spare.
    String sheet = printed();
    assertTrue(sheet.contains("    CUT   14 7/8 in   ×   2\n"), sheet);
    assertTrue(sheet.contains("expect about 3/8 in to trim off the curl\n"), sheet);
    assertTrue(sheet.contains("    2 3/8 in     rolled barrel | plain stretch\n"), sheet);
    assertTrue(sheet.contains("    11 3/8 in    plain stretch | taper\n"), sheet);
    assertTrue(sheet.contains("    14 7/8 in    taper | cut\n"), sheet);
    assertTrue(sheet.contains("bottom swage 1 in\n"), sheet);
    assertTrue(sheet.contains("pin centre to tip 15 in, over all 15 1/2 in\n"), sheet);
    assertTrue(sheet.contains("L = π m = π × 0.75 = 2.3562 in"), sheet);
    assertTrue(sheet.contains("29 3/4 in, 3.164 lb\n"), sheet);
  }

  @Test
  void printsTheSameInEveryCountry() throws IOException {
    runOrder(HEADER + GATE);
    String here = printed();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      out.reset();
      runOrder(HEADER + GATE);
      assertEquals(here, printed());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void addsUpTheBarOfAllOrdersOfOneSection() throws IOException {
    assertEquals(0, runOrder(HEADER + GATE + GATE.replace("Garden gate", "Shed door")));
    assertTrue(printed().contains("1 1/2 in × 1/4 in flat, mild steel       59 1/2 in"), printed());
  }

  @Test
  void tellsEveryFaultAndPrintsNothingElse() throws IOException {
    int exit =
        runOrder(
            HEADER
                + "Gate,1 1/2 in,1/4 in,3,8 in,0 in,15 in,3/4 in,1/8 in,6 in,1,1/16 in\n"
                + "Gate,1 1/2 in,1/4 in,1/2,0 in,15 in,3/4 in,1/8 in,6 in,0,1/10 in\n"
                + GATE
                + "Gate,1 1/2 in,2 in,1/2 in,0 in,15 in,3/4 in,1/8 in,16 in,1,1/16 in\n");
    assertEquals(2, exit);
    assertEquals("", printed());
    String file = folder.resolve("order.csv") + ", ";
    assertEquals(
        List.of(
            file
                + "line 2: has 12 fields; accepted: 11, as in the header (a length has a point, not"
                + " a comma)",
            file
                + "line 3, pin: \"1/2\" is not a length: expected a unit such as in, ft or mm at"
                + " position 3, found the end; accepted: a length such as 1 1/2 in or 40 mm",
            file + "line 3, sets: \"0\" is no count; accepted: a whole number from 1 to 1000",
            file
                + "line 3, graduation: \"1/10 in\" is no rule; accepted: 1/8 in, 1/16 in, 1/32 in,"
                + " 1/64 in, 1 mm, 0.5 mm or 0.1 mm",
            file
                + "line 5, bar thickness: 2 in is more than the bar width; accepted: at most 1 1/2"
                + " in",
            file
                + "line 5, taper length: 16 in is more than the leaf length; accepted: at most 15"
                + " in"),
        faults());
  }

  @Test
  void tellsAFileThatCannotBeRead() throws IOException {
    assertEquals(2, run(folder.resolve("none.csv").toString()));
    assertTrue(faults().get(0).endsWith("there is no such file; give the path of an order file"));
    err.reset();
    assertEquals(2, run(folder.toString()));
    assertTrue(faults().get(0).contains("cannot be read"), faults().toString());
    err.reset();
    assertEquals(2, run("a", "b"));
    assertEquals(List.of("give one order file or none, not 2"), faults());
    err.reset();
    Path latin = folder.resolve("latin.csv");
    Files.write(latin, new byte[] {'a', (byte) 0xE9, '\n'});
    assertEquals(2, run(latin.toString()));
    assertTrue(faults().get(0).endsWith("is not text in UTF-8; save it as UTF-8"));
  }

  @Test
  void aTipMayBeThickerThanWide() throws IOException {
    assertEquals(0, runOrder(HEADER + GATE.replace("3/4 in,1/8 in", "1/8 in,1/4 in")));
    assertTrue(printed().contains("to 1/8 in × 1/4 in flat"), printed());
  }

  @Test
  void aLeafMayBeTaperedAllAlong() throws IOException {
    assertEquals(0, runOrder(HEADER + GATE.replace(",6 in,1,", ",15 in,1,")));
    assertTrue(printed().contains("taper | cut"), printed());
  }
}
