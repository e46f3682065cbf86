package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) throws IOException {
    return JobSheet.run(List.of(args), print(out), print(err));
  }

  private int runOrder(List<String> lines) throws IOException {
    Path file = folder.resolve("order.csv");
    Files.write(file, lines);
    return run("order=" + file);
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
    assertTrue(printed().contains("Walled-garden gate: left hand, 2 pairs"), printed());
    assertTrue(printed().contains("Boathouse door: right hand, 1 pair\n"), printed());
    assertEquals(List.of(), faults());
    out.reset();
    assertEquals(0, run("order=", "rack= "), "an empty name is none");
    assertTrue(printed().contains("Boathouse door"));
  }

  @Test
  void endsWithTheCutListOfTheOrder() throws IOException {
    assertEquals(0, run());
    String assumed =
        printed().substring(printed().indexOf("Cut from 1 1/2 in × 1/4 in flat, mild steel\n"));
    assertTrue(assumed.contains("The rack has none of it; bars of 20 ft are assumed.\n"), assumed);
    assertTrue(assumed.contains("Walled-garden gate, door leaf, "), assumed);
    assertTrue(assumed.contains("Cut from 1/2 in round, mild steel\n"), assumed);
    assertTrue(assumed.contains("Boathouse door, pin, "), assumed);
    out.reset();
    assertEquals(0, run("rack=src/main/resources/org/hammerscale/examples/rack.csv"));
    assertTrue(printed().contains("1 × 40 1/2 in offcut\n"), printed());
    assertTrue(printed().contains("Buy nothing.\n"), printed());
    assertFalse(printed().contains("assumed"), printed());
  }

  @Test
  void tellsTheFaultsOfOrderAndRackTogether() throws IOException {
    Path rack = folder.resolve("rack.csv");
    Files.writeString(rack, "section, length, count, price\n40 mm round, long, any, 3\n");
    assertEquals(2, run("rack=" + rack));
    assertEquals(1, faults().size());
    assertTrue(faults().get(0).startsWith(rack + ", line 2, length: "), faults().get(0));
    assertEquals("", printed());
    assertEquals(2, run("rack=" + folder.resolve("none.csv")));
    assertTrue(faults().get(1).endsWith("there is no such file; give the path of a rack file"));
  }

  @Test
  void saysWhatToCutSlotAndDrill() throws IOException {
    assertEquals(0, runOrder(OrderFileTest.cupboard()));
    String sheet = printed();
    // By hand: π (5.4 + 3) = 26.39 for the barrel, in full; 60 plain, and no taper to scale.
    assertTrue(sheet.contains("    CUT   post leaf   86.5 mm long   ×  3"), sheet);
    assertTrue(sheet.contains("R         leaf meets barrel, 26.5 mm from the barrel end"), sheet);
    // Cut square it closes at 4.2 (2 π − acos(2.7 / 5.7)) = 21.87, on the rule 22.
    assertTrue(sheet.contains("before rolling, cut the strip to 22 mm from R"), sheet);
    // Knuckles of (25 − 1) / 3 = 8: the slot for the middle one from 8 to 17.
    assertTrue(sheet.contains("post leaf: 8 mm to 17 mm, across from the far edge"), sheet);
    assertTrue(sheet.contains("door leaf 120 mm from pin to tip, 125.5 mm over all"), sheet);
    assertTrue(sheet.contains("Screw     3 mm wood screw, DIN 97, 20 mm long"), sheet);
    assertTrue(sheet.contains("hinges 800 mm from centre to centre"), sheet);
    assertTrue(sheet.contains("door 3: cut ____"), sheet);
    assertTrue(sheet.replaceAll("\\s+", " ").contains("Local codes govern."), sheet);
  }

  @Test
  void refusesAHeadThatFitsNowhere() throws IOException {
    List<String> thick = OrderFileTest.cupboardWith("screw, 5 mm × 20 mm");
    thick.replaceAll(line -> line.startsWith("door holes") ? "door holes, 2" : line);
    thick.replaceAll(line -> line.startsWith("bar thickness") ? "bar thickness, 2 mm" : line);
    assertEquals(2, runOrder(thick));
    assertTrue(
        faults().get(0).contains("holes of Chapel cupboard: cannot be made: "), faults()::toString);
    assertTrue(
        faults().get(0).contains("take a smaller screw, since no place"), faults()::toString);
  }

  @Test
  void printsTheSameInEveryCountry() throws IOException {
    runOrder(OrderFileTest.cupboard());
    String here = printed();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      out.reset();
      runOrder(OrderFileTest.cupboard());
      assertEquals(here, printed());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void keepsEachPageToItsSize() throws IOException {
    run();
    String[] sheets = printed().split("={72}\\n", -1);
    assertEquals(10, sheets.length, "nothing, eight jobs and the cut list");
    for (String sheet : List.of(sheets).subList(1, 9)) {
      String[] pages = sheet.split("-{72}\\n", -1);
      assertEquals(2, pages.length, "no blanks are left for a third page");
      assertTrue(pages[0].lines().allMatch(line -> line.length() <= 80), pages[0]);
      assertTrue(pages[0].lines().count() < 60, pages[0]);
      assertTrue(pages[0].lines().filter(line -> line.startsWith("! ")).count() <= 3, pages[0]);
      assertTrue(pages[1].lines().allMatch(line -> line.length() <= 100), pages[1]);
      assertTrue(pages[1].lines().count() <= 120, pages[1]);
    }
  }

  @Test
  void partsNoNumberFromItsUnit() throws IOException {
    run();
    List<String> lines = printed().lines().toList();
    for (int i = 1; i < lines.size(); i++) {
      String next = lines.get(i).strip();
      boolean goesOn = lines.get(i).startsWith("  ") && lines.get(i - 1).matches(".*[0-9]");
      assertFalse(goesOn && next.matches("(in|mm|min|s|°[CF])\\b.*|[0-9]+/[0-9].*"), next);
    }
  }

  @Test
  void saysEachWorkingSourceAndCautionOnce() throws IOException {
    run();
    for (String sheet : printed().split("={72}\\n", -1)) {
      for (String phrase :
          List.of("strip that closes with", "Churchill and Chu", "prismoidal", "ease the corner")) {
        assertTrue(sheet.split(phrase, -1).length <= 2, phrase);
      }
    }
  }

  @Test
  void hasALineOfBlanksForEachPiece() throws IOException {
    assertEquals(0, runOrder(OrderFileTest.cupboardWith("pairs, 40")));
    assertEquals(80, printed().lines().filter(line -> line.contains(": cut ____")).count());
    assertTrue(printed().contains("Chapel cupboard: blanks\n"), printed());
    assertTrue(printed().split("-{72}\\n", -1)[0].lines().count() <= 61);
  }

  @Test
  void tellsAFileNameThatTheTerminalCannotHold() throws IOException {
    assertEquals(2, run("order=b\u0000d.csv"));
    assertTrue(faults().get(0).startsWith("\"b\\u0000d.csv\": the terminal's character set"));
  }

  @Test
  void addsUpTheBarOfAllJobsOfOneSection() throws IOException {
    List<String> twice =
        OrderFileTest.cupboard().stream()
            .map(line -> line.startsWith("make") ? line : line + line.substring(line.indexOf(',')))
            .toList();
    assertEquals(0, runOrder(OrderFileTest.cupboard()));
    double once = millimetresNeeded();
    out.reset();
    assertEquals(0, runOrder(twice), () -> faults().toString());
    assertEquals(2 * once, millimetresNeeded(), 1e-9);
  }

  private double millimetresNeeded() {
    return printed()
        .lines()
        .filter(line -> line.startsWith("The pieces are "))
        .mapToDouble(line -> Double.parseDouble(line.split(" ", -1)[3]))
        .sum();
  }

  @Test
  void tellsEveryFaultAndPrintsNothingElse() throws IOException {
    List<String> lines = OrderFileTest.cupboardWith("pin, 5");
    lines.replaceAll(line -> line.equals("pairs, 3") ? "pairs, 0" : line);
    assertEquals(2, runOrder(lines));
    assertEquals("", printed());
    String file = folder.resolve("order.csv") + ", ";
    assertEquals(
        List.of(
            file
                + "line 4, pairs of Chapel cupboard: \"0\" is no count; accepted: a whole number"
                + " from 1 to 1000",
            file
                + "line 7, pin of Chapel cupboard: text \"5\" is not a length: expected a unit such as"
                + " in, ft or mm at position 1, found the end; accepted: a length such as 1 1/2 in"
                + " or 40 mm"),
        faults());
  }

  @Test
  void tellsAFileThatCannotBeRead() throws IOException {
    assertEquals(2, run("order=" + folder.resolve("none.csv")));
    assertTrue(faults().get(0).endsWith("there is no such file; give the path of an order file"));
    err.reset();
    assertEquals(2, run("order=" + folder));
    assertTrue(faults().get(0).contains("cannot be read"), faults().toString());
    err.reset();
    assertEquals(2, run("order=", "a.csv"));
    assertEquals(
        List.of(
            "\"a.csv\" is no file for this; accepted: order=file, rack=file, trials=file, card=file"),
        faults());
    err.reset();
    Path latin = folder.resolve("latin.csv");
    Files.write(latin, new byte[] {'a', (byte) 0xE9, '\n'});
    assertEquals(2, run("order=" + latin));
    assertTrue(faults().get(0).endsWith("is not text in UTF-8; save it as UTF-8"));
  }

  @Test
  void aTipMayBeThickerThanWide() throws IOException {
    assertEquals(0, runOrder(OrderFileTest.cupboardWith("tip width, 1.5 mm")));
    assertTrue(printed().contains(" of 1.5 mm × 2 mm goes"), printed());
  }

  @Test
  void aLeafMayBeTaperedAllAlong() throws IOException {
    assertEquals(0, runOrder(OrderFileTest.cupboardWith("post taper, 60 mm")));
    assertTrue(printed().contains("taper of the post leaf"), printed());
  }

  private static Path cupboard(Path folder) throws IOException {
    return Files.write(folder.resolve("order.csv"), OrderFileTest.cupboard());
  }

  @Test
  void plansTheFirstPieceAndTheOthersByWhatItTook() throws IOException {
    Path order = folder.resolve("gate.csv");
    Files.write(order, JobSheet.sampleLines());
    Path trials = folder.resolve("trials.csv");
    String[] files = {"order=" + order, "trials=" + trials};
    assertEquals(0, run(files), () -> faults().toString());
    assertEquals(List.of(), faults());
    String first = printed();
    assertFalse(first.contains("the log saves"), first);
    assertTrue(first.contains("CUT   door leaf   17 3/16 in long   ×  1 "), first);
    assertTrue(first.contains("write in the log what comes off, then print this again"), first);
    String front = first.split("-{72}\\n", -1)[0];
    assertTrue(front.lines().allMatch(line -> line.length() <= 80), front);
    assertTrue(first.contains("Walled-garden gate, pin"), first);
    assertTrue(first.contains("door 1: cut"), first);
    assertFalse(first.contains("door 2: cut"), first);
    String planned = Files.readString(trials);
    out.reset();
    assertEquals(0, run(files));
    assertEquals(first, printed(), "nothing is known yet");
    assertEquals(planned, Files.readString(trials), "what waits to be filled in waits once");
    List<String> lines = Files.readAllLines(trials);
    assertEquals("piece,cut,mark,off first,off last,remark", lines.get(0));
    assertEquals("Walled-garden gate door leaf,17 3/16 in,2 1/2 in,,,", lines.get(1));
    // 1 3/8 in went off a tip where 1 in was expected: the others are cut shorter.
    lines.set(1, lines.get(1).replace(",,,", ",7/16 in,1 3/8 in,"));
    Files.write(trials, lines);
    out.reset();
    assertEquals(0, run(files));
    String second = printed().substring(0, printed().indexOf("Boathouse door: "));
    assertTrue(second.contains("1 done; the log saves "), second);
    assertTrue(second.contains(" of bar together"), second);
    assertFalse(second.contains("door 1: cut"), second);
    assertTrue(second.contains("post 1: cut"), second);
    assertTrue(second.contains("door 2: cut"), second);
    assertFalse(second.contains("post 2: cut"), second);
    List<String> after = Files.readAllLines(trials);
    assertEquals(lines, after.subList(0, lines.size()), "what was written down is left alone");
    assertEquals(lines.size() + 1, after.size());
    assertTrue(after.get(lines.size()).startsWith("Walled-garden gate door leaf,17 "));

    after.add("Walled-garden gate door leaf,a length,,,1 in,");
    Files.write(trials, after);
    out.reset();
    assertEquals(2, run(files));
    assertEquals(1, faults().size());
    assertTrue(
        faults().get(0).startsWith(trials + ", line " + after.size() + ", cut: "), faults().get(0));
    assertTrue(printed().contains(second), "a damaged line costs no other");
    assertEquals(after, Files.readAllLines(trials));
  }

  @Test
  void tellsATrialThatDoesNotFitItsPiece() throws IOException {
    Path trials = folder.resolve("trials.csv");
    Files.writeString(trials, "Chapel cupboard post leaf,90 mm,,,1 mm,\n");
    String order = "order=" + cupboard(folder);
    String name = printedName(order);
    Files.writeString(
        trials, name + " post leaf,90 mm,,,1 mm,\n" + name + " door leaf,1 mm,,,2 mm,");
    assertEquals(2, run(order, "trials=" + trials));
    assertEquals(2, faults().size(), () -> faults().toString());
    assertTrue(
        faults().get(0).contains("post leaf: trial must tell where its reference mark was")
            || faults().get(1).contains("post leaf: trial must tell where its reference mark was"),
        () -> faults().toString());
  }

  private String printedName(String order) throws IOException {
    assertEquals(0, run(order));
    String name =
        printed().lines().filter(line -> line.contains(" hand, ")).findFirst().orElseThrow();
    out.reset();
    return name.substring(0, name.indexOf(':'));
  }

  @Test
  void refusesATrialFileThatCannotBe() throws IOException {
    assertEquals(2, run("trials=" + folder));
    assertEquals(2, run("trials=" + folder.resolve("no/such/folder.csv")));
    assertEquals(2, faults().size(), () -> faults().toString());
    assertTrue(faults().get(1).contains("cannot be written"), faults().get(1));
  }
}
