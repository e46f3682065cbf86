package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.hammerscale.cutting.Rack;
import org.hammerscale.examples.card.BenchCard;
import org.hammerscale.examples.latch.BoltOrder;
import org.hammerscale.examples.latch.HookOrder;
import org.hammerscale.examples.latch.LatchOrder;
import org.hammerscale.examples.order.CutSheet;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.units.Measures;
import org.junit.jupiter.api.Test;

/** Blocks of several kinds in one order file: the sample, and what may be wrong with it. */
class OrderKindsTest {
  /** The sample without its remarks and empty lines, so that lines can be told by their numbers. */
  private static List<String> sample() throws IOException {
    List<String> lines = new ArrayList<>(JobSheet.sampleLines());
    lines.removeIf(line -> line.isBlank() || line.startsWith("#"));
    return lines;
  }

  /** The sample with one line said otherwise, in the block of a kind. */
  private static List<String> sampleWith(String kind, String line) throws IOException {
    List<String> lines = sample();
    lines.set(lineOf(lines, kind, line.substring(0, line.indexOf(','))) - 1, line);
    return lines;
  }

  /** The number of an item's line in the block of a kind. */
  private static int lineOf(List<String> lines, String kind, String item) {
    int at = 0;
    while (!lines.get(at).matches("make, *" + kind)) {
      at++;
    }
    while (!lines.get(at).startsWith(item + ",")) {
      at++;
    }
    return at + 1;
  }

  private static List<String> faults(List<String> lines) {
    return OrderFile.of(lines).faults().stream().map(Fault::toString).toList();
  }

  private static void assertFault(String kind, String line, String words) throws IOException {
    List<String> lines = sampleWith(kind, line);
    List<String> faults = faults(lines);
    assertEquals(1, faults.size(), faults::toString);
    String item = line.substring(0, line.indexOf(','));
    String where = "line " + lineOf(lines, kind, item) + ", " + item;
    assertTrue(faults.get(0).startsWith(where), () -> where + "\n" + faults);
    assertTrue(faults.get(0).contains(words), faults::toString);
  }

  @Test
  void partsOfASetAreAsItsHinges() throws IOException {
    List<Order> orders = OrderFile.of(sample()).orders();
    LatchOrder latch =
        orders.stream()
            .filter(LatchOrder.class::isInstance)
            .map(LatchOrder.class::cast)
            .findFirst()
            .orElseThrow();
    assertEquals("20 mm × 5 mm flat", latch.latch().bar().bar().section().toString());
    assertEquals(Measures.millimetres(0.05), latch.coat());
    assertEquals(Measures.millimetres(1), latch.cuts().get(0).kerf());
    assertEquals(List.of(4), List.copyOf(latch.screws().values()));
    // Another bar for the hinges is another for all.
    List<String> wide = sample();
    wide.replaceAll(line -> line.startsWith("bar width") ? "bar width, 1 in, 40 mm, 25 mm" : line);
    wide.replaceAll(line -> line.startsWith("tip width") ? "tip width, 1 in, 40 mm, 25 mm" : line);
    OrderFile file = OrderFile.of(wide);
    assertEquals(List.of(), faults(wide));
    file.orders().stream()
        .filter(order -> order.name().equals("Chapel cupboard"))
        .filter(order -> !(order instanceof BoltOrder || order instanceof HookOrder))
        .forEach(
            order ->
                assertEquals("25 mm × 5 mm flat", order.cuts().get(0).bar().section().toString()));
  }

  @Test
  void sheetsOfASetFollowOneAnotherWhereverTheyStandInTheFile() throws IOException {
    List<String> lines = sample();
    int latch = lineOf(lines, "thumb latch", "make") - 1;
    List<String> turned = new ArrayList<>(lines.subList(latch, lines.size()));
    turned.addAll(lines.subList(0, latch)); // the hinges last
    List<Order> orders = OrderFile.of(turned).orders();
    assertEquals(List.of(), faults(turned));
    assertEquals(
        List.of("thumb latch", "slide bolt", "cabin hook", "hasp", "2 pairs of strap hinges"),
        orders.subList(0, 5).stream().map(Order::what).toList());
    String printed = Sheets.of(orders, CutSheet.of(orders, Rack.empty()));
    assertTrue(printed.contains("Set       Chapel cupboard, sheet 1 of 5: thumb latch, slide"));
    assertTrue(printed.contains("Set       Chapel cupboard, sheet 5 of 5\n"), printed);
    assertEquals(1, printed.split("sheet 1 of", -1).length - 1, "a job alone is no set");
  }

  @Test
  void tellsWhatCannotBeMade() throws IOException {
    assertFault("slide bolt", "throw, 6 mm", "cannot be made: travel must be more than 7 mm");
    assertFault("slide bolt", "staples apart, 30 mm", "for the knob to travel between the staples");
    assertFault("slide bolt", "knob, 5 mm", "cannot be made: diameter must be at most");
    assertFault("slide bolt", "staple depth, 5 mm", "cannot be made: depth must be at least");
    assertFault("slide bolt", "bar, 8 mm hexagon", "must be round, square or flat to slide");
    assertFault("thumb latch", "travel, 2 mm", "cannot be made: lift must be at least 9 mm");
    assertFault("thumb latch", "caught at, 150 mm", "must lie short of the bar's tip");
    assertFault("thumb latch", "rise, 9 mm", "at which the bar is lost");
    assertFault("thumb latch", "floor, 10 mm", "clearance must be less than the nose is high");
    assertFault("thumb latch", "gap, 40 mm", "for the guide to stand on the door");
    assertFault("thumb latch", "foot holes, 9", "cannot be made: ");
    assertFault("cabin hook", "held open, 300°", "cannot be made: opening");
    assertFault("cabin hook", "held open, 200°", "at most what its hinges open, 182");
    assertFault("cabin hook", "heat, 1500 °C", "cannot be made: heat");
    assertFault("hasp", "staple at, 8 mm", "cannot be made: fromPin");
    assertFault("hasp", "staple width, 5 mm", "at least as wide inside as the shackle");
    assertFault("pickets", "span, 3 in", "no picket is needed");
    assertFault("pickets", "tolerance, 4 in", "cannot be made: tolerance must be less");
  }

  @Test
  void tellsValuesThatAreNone() throws IOException {
    assertFault("thumb latch", "pattern, Sussex", "is not known; accepted: Suffolk or Norfolk");
    assertFault("thumb latch", "closes, up", "is not known; accepted: left or right");
    assertFault("thumb latch", "wire, 5 mm square", "is not round; accepted: a round rod, such as");
    assertFault("thumb latch", "bar, 5 mm", "is no section; accepted: two sizes and flat");
    assertFault("thumb latch", "coat, thin", "or 40 mm, or as hinges");
    assertFault("thumb latch", "wire, as hinges", "is no section; accepted: a round rod");
    assertFault("cabin hook", "eyes, hooks", "accepted: screw eyes or staples");
    assertFault("hasp", "legs, long", "accepted: in line or across");
    assertFault("slide bolt", "knob, none", "accepted: the knob's diameter, such as 4 mm, or tail");
    assertFault("slide bolt", "count, 0", "\"0\" is no count; accepted: a whole number from 1 to");
    assertFault("slide bolt", "coat, 2000 m", "2000 m is too much, no piece of a forge is so long");
    assertFault("slide bolt", "gap, -1 mm", "-1 mm is too little, it must not be negative");
    assertFault("pickets", "rake, 80°", "is too much; accepted: degrees up to 75");
  }

  @Test
  void tellsBlocksThatAreNone() throws IOException {
    List<String> lines = sample();
    int make = lineOf(lines, "thumb latch", "make");
    lines.set(make - 1, "make, thumb lach");
    String lach = ", make: \"thumb lach\" is nothing made here; write thumb latch";
    assertEquals(List.of("line " + make + lach), faults(lines));
    String known =
        "accepted: strap hinges, thumb latch, slide bolt, cabin hook, hasp, eye plate, latch spring, pickets,"
            + " bracket, carrying hook, chain, collar, tenon, basket, pintle, spike, staple, drift bolt";
    lines.set(make - 1, "make, garden gnome");
    String gnome = "line " + make + ", make: \"garden gnome\" is nothing made here; " + known;
    assertEquals(List.of(gnome), faults(lines));
    lines.set(make - 1, "make, ");
    assertEquals(List.of("line " + make + ", make: there is nothing; " + known), faults(lines));
    lines.set(make - 1, "make, \"thumb latch");
    assertEquals(1, faults(lines).size(), faults(lines)::toString);
    lines.set(make - 1, "Make, thumb latch");
    assertEquals(List.of("line " + make + ", \"Make\": is no item; write make"), faults(lines));
    lines.remove(make - 1);
    assertEquals(
        List.of(
            "line "
                + make
                + ", name: stands a second time; write make, and what is made, above it if another"
                + " kind begins"),
        faults(lines));
    List<String> headless = sample();
    headless.remove(0);
    assertEquals(1, faults(headless).size(), faults(headless)::toString);
    assertTrue(faults(headless).get(0).startsWith("line 1, \"name\": stands above the first row"));
    List<String> twice = sample();
    twice.addAll(sample().subList(0, 33));
    assertEquals(
        List.of(
            "line "
                + (sample().size() + 1)
                + ", make: strap hinges stands on line 1 already; write these jobs into columns"
                + " there"),
        faults(twice));
    assertTrue(
        faults(List.of("make, hasp")).get(0).startsWith("line 1, make: nothing stands below"));
  }

  @Test
  void tellsOfHingesThatAreNotThereOnce() throws IOException {
    List<String> lines = sampleWith("thumb latch", "name, Chapel cupbord");
    int bar = lineOf(lines, "thumb latch", "bar");
    String none =
        "line " + bar + ", bar of Chapel cupbord: no strap hinges have this name to take it";
    assertEquals(1, faults(lines).size(), faults(lines)::toString);
    assertTrue(faults(lines).get(0).startsWith(none), faults(lines)::toString);
    // A fault in the hinges is told there, and not again for what is as they are.
    assertFault("strap hinges", "coat, 0.003 in, 0.08 mm, thin", "accepted: a length such as");
    assertFault("strap hinges", "name, Walled-garden gate, Boathouse door, ", "there is none");
    // Two pairs of one name may differ only in what nobody takes from them.
    List<String> two = sample();
    two.replaceAll(line -> line.replace("Boathouse door", "Chapel cupboard"));
    List<String> faults = faults(two);
    assertTrue(faults.size() > 5, faults::toString);
    assertTrue(
        faults.stream().allMatch(f -> f.contains("the strap hinges of this name differ in it")),
        faults::toString);
  }

  @Test
  void readsWhatASpreadsheetWrites() throws IOException {
    List<String> lines = new ArrayList<>(JobSheet.sampleLines());
    String printed = printed(OrderFile.of(lines).orders());
    // Empty cells to the width of the widest row, cells in quotes, a mark at the beginning.
    lines.replaceAll(line -> line + ",,");
    lines.replaceAll(line -> line.replaceFirst("^([^#,\"]+),", "\"$1\","));
    lines.replaceAll(line -> line.startsWith("#") ? "\"" + line.replace("\"", "") + "\",," : line);
    lines.set(0, "\uFEFF" + lines.get(0));
    assertEquals(List.of(), faults(lines));
    assertEquals(printed, printed(OrderFile.of(lines).orders()));
  }

  private static String printed(List<Order> orders) {
    return Sheets.of(orders, CutSheet.of(orders, Rack.empty()));
  }

  @Test
  void hasAtMostAHundredJobsInAll() throws IOException {
    assertEquals(List.of(), faults(columns(16))); // of six kinds
    assertEquals(List.of("line 1: has 102 jobs; accepted: at most 100"), faults(columns(17)));
    assertTimeoutPreemptively(
        Duration.ofSeconds(30), () -> printed(OrderFile.of(columns(16)).orders()));
  }

  /** The first job of each block so many times. */
  private static List<String> columns(int count) throws IOException {
    List<String> lines = sample();
    lines.replaceAll(
        line -> {
          String[] cells = line.split(",", -1);
          return cells[0].equals("make") ? line : cells[0] + ("," + cells[1]).repeat(count);
        });
    // The first hinges are of inches; the set takes what it needs from them.
    lines.replaceAll(line -> line.replace("Walled-garden gate", "Chapel cupboard"));
    return lines;
  }

  /** Whatever is damaged, each fault is one line for the user and nothing is thrown. */
  @Test
  void tellsDamagedOrdersInWords() throws IOException {
    Random random = new Random(7);
    String[] cells = {
      "",
      " ",
      "0",
      "-1 mm",
      "40",
      "as hinges",
      "none",
      "999999999999 mm",
      "1e9 in",
      "×",
      "\"",
      "\u001b[2J",
      "make",
      "name",
      "5 mm round",
      "0 mm",
      "10 m",
      "1/64 in",
      "tail",
      "360°",
      "1000"
    };
    List<String> sample = sample();
    int told = 0;
    for (int i = 0; i < 400; i++) {
      List<String> lines = new ArrayList<>(sample);
      for (int j = random.nextInt(3); i % 3 == 0 && j >= 0; j--) {
        damage(lines, random, cells);
      }
      for (int j = random.nextInt(4); j >= 0; j--) {
        resize(lines, random);
      }
      OrderFile file = OrderFile.of(lines);
      List<String> faults = file.faults().stream().map(Fault::toString).toList();
      String all = String.join("\n", faults);
      assertEquals(faults.size(), new HashSet<>(faults).size(), all);
      int before = 0;
      for (Fault fault : file.faults()) {
        assertTrue(fault.line() >= Math.max(1, before) && fault.line() <= lines.size(), all);
        assertTrue(fault.toString().chars().allMatch(c -> Fault.isPrintable((char) c)), all);
        assertTrue(fault.toString().length() < 1500, all); // all timbers told
        before = fault.line();
      }
      told += faults.isEmpty() ? 0 : 1;
      if (faults.isEmpty()) {
        if (i % 8 == 0) {
          BenchCard.of(file.orders(), CutSheet.of(file.orders(), Rack.empty()));
        }
        for (Order order : file.orders()) {
          SheetText front = new SheetText(80);
          order.front(front);
          order.back(new SheetText(100));
          assertTrue(front.toString().startsWith(order.name()), front::toString);
        }
      }
    }
    assertTrue(told > 200 && told < 350, "told " + told);
  }

  /** Another length, which may fit or not. */
  private static void resize(List<String> lines, Random random) {
    String[] lengths = {"1 mm", "2 mm", "5 mm", "12 mm", "33 mm", "0.5 in", "300 mm", "10 m"};
    int at = random.nextInt(lines.size());
    String length = lengths[random.nextInt(lengths.length)];
    lines.set(at, lines.get(at).replaceFirst("[0-9.]+ mm(?! (flat|round|×))", length));
  }

  private static void damage(List<String> lines, Random random, String... cells) {
    int at = random.nextInt(lines.size());
    String[] row = lines.get(at).split(",", -1);
    int cell = random.nextInt(row.length);
    switch (random.nextInt(6)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(random.nextInt(lines.size()), lines.get(at));
      case 2 -> lines.set(at, lines.get(at) + "," + cells[random.nextInt(cells.length)]);
      default -> {
        row[cell] = cells[random.nextInt(cells.length)];
        lines.set(at, String.join(",", row));
      }
    }
  }
}
