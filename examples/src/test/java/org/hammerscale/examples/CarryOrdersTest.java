package org.hammerscale.examples;

import static org.hammerscale.examples.Orders.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.hammerscale.cutting.Rack;
import org.hammerscale.examples.order.CutSheet;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.SheetText;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** Brackets and carrying hooks, and a file of what carries: sums by hand, and what is refused. */
class CarryOrdersTest {
  private static List<String> sample() throws IOException {
    return JobSheet.sampleLines("carry.csv");
  }

  private static List<Order> orders() throws IOException {
    return Orders.of(sample());
  }

  /** The front of a job, in one line so that words are found across line ends. */
  private static String front(int job) throws IOException {
    return Orders.inOneLine(Orders.front(orders().get(job)));
  }

  /** The one fault of the sample with a line said otherwise. */
  private static void assertFault(String line, String of, String words) throws IOException {
    assertFault(line, of, line.substring(0, line.indexOf(',')), words);
  }

  /** The same where the fault is told of another item, which is to be looked at first. */
  private static void assertFault(String line, String of, String blamed, String words)
      throws IOException {
    String item = line.substring(0, line.indexOf(','));
    List<String> lines = new ArrayList<>(sample());
    int from = lines.indexOf("make,            " + of);
    int at = from;
    while (!lines.get(at).startsWith(item + ",")) {
      at++;
    }
    // Jobs that the line does not tell of stay as they are.
    String[] cells = lines.get(at).split(",", -1);
    String[] told = line.split(",", -1);
    System.arraycopy(told, 0, cells, 0, told.length);
    lines.set(at, String.join(",", cells));
    List<String> faults = OrderFile.of(lines).faults().stream().map(Fault::toString).toList();
    assertEquals(1, faults.size(), faults::toString);
    String place = blamed.equals(item) ? "line " + (at + 1) + ", " : ", ";
    assertTrue(faults.get(0).contains(place + blamed), faults::toString);
    assertTrue(faults.get(0).contains(words), faults::toString);
  }

  @Test
  void everyFrontFitsItsPage() throws IOException {
    String printed = Sheets.of(orders(), CutSheet.of(orders(), Rack.empty()));
    String[] pages = printed.split("={72}\n", -1);
    assertEquals(1 + 7 + 1, pages.length, "seven jobs and the cut list");
    for (int job = 1; job <= 7; job++) {
      String front = pages[job].substring(0, pages[job].indexOf("-".repeat(72)));
      assertTrue(front.lines().count() <= 60, front);
      assertTrue(front.lines().allMatch(line -> line.length() <= 80), front);
      assertTrue(front.lines().filter(line -> line.startsWith("! ")).count() <= 3, front);
      assertSays(front, job <= 5 ? "first yield" : "a forge weld's strength cannot be computed");
    }
  }

  @Test
  void whatIsNotForPeopleAndWhatIsNotCertifiedStandsOnTheFront() throws IOException {
    for (int bracket : new int[] {0, 1, 2}) {
      if (bracket < 2) {
        assertSays(front(bracket), "! this is no certified design");
      }
      assertSays(front(bracket), "licensed engineer");
    }
    for (int hook : new int[] {3, 4}) {
      assertSays(front(hook), "! not for lifting people or over people");
      assertSays(front(hook), "ask a licensed engineer");
    }
  }

  /**
   * 30 × 8 mm, 6 kg at 280 mm. Round the bend of 10 mm the mean line is π/2 × 14 mm = 22.0 mm; the
   * legs are 250 − 18 and 300 − 18 mm.
   */
  @Test
  void aBracketWithoutABrace() throws IOException {
    String front = front(0);
    assertSays(front, "CUT bracket 536 mm long × 1"); // 232 + 22.0 + 282
    assertSays(front, "232 mm (plain stretch | bend), 254 mm (bend | plain stretch)");
    // Z = 30 × 8² / 6 = 320 mm³; mild steel yields at 248 MPa at least, ÷ 4 is 62 MPa:
    // 62 × 320 / 280 = 70.9 N = 7.2 kg.
    assertSays(front, "at most 7 kg by the bar, first yield ÷ 4");
    // 6 × 280 × 220 / (20² + 120² + 220²) = 369 600 / 63 200 = 5.85 kg; from the lowest screw
    // 6 × 280 × 200 / (100² + 200²) = 6.72 kg.
    assertSays(front, "pulled by 6 kg, by 7 kg if the plate gives");
  }

  /** 1 × 1/4 in, 30 lb at 5 in, a brace to 7 in out and 8 in down: 6 3/4 and 7 3/4 in clear. */
  @Test
  void aBracketWithABrace() throws IOException {
    String front = front(1);
    // √(6.75² + 7.75²) = 10.277 in, up to 10 5/16 in or the nearest 16th, which is 10 1/4 in +
    // 0.027.
    assertSays(front, "CUT brace 10 5/16 in long × 2");
    // atan(7.75 / 6.75) = 48.95°.
    assertSays(front, "bevel it 49° to the arm, 41° to the plate");
    // 30 × 5 / (7 sin 48.95°) = 150 / 5.279 = 28.4 lb.
    assertSays(front, "the brace is pushed by 29 lb");
    // It bends between wall and brace, 30 × 5 × 2 / 7 = 42.86 lb in, Z = 1 × 0.25² / 6 = 0.010417
    // in³:
    // 4114 psi = 28.4 MPa; along it 28.41 × cos 48.95° / 0.25 = 74.6 psi = 0.51 MPa. 62 MPa are
    // 8992 psi: 30 × 8992 / 4189 = 64.4 lb.
    assertSays(front, "at most 64 lb by the bar, first yield ÷ 4");
    // 30 × 5 × 9 / (0.75² + 4² + 9²) = 1350 / 97.56 = 13.84 lb; from the lowest screw
    // 30 × 5 × 8.25 / (3.25² + 8.25²) = 1237.5 / 78.63 = 15.74 lb.
    assertSays(front, "pulled by 14 lb, by 16 lb if the plate gives");
  }

  /**
   * 40 × 10 mm, 4 kg = 39.2 N at 280 mm; 500 Pa on 0.4 × 0.3 m are 60 N = 6.1 kg sideways; a brace
   * to 350 mm out and 250 mm down.
   */
  @Test
  void aSignInTheWind() throws IOException {
    String front = front(2);
    // 400 − 20 and 500 − 20 of straight, π/2 × 15 = 23.6 between them; √(340² + 240²) = 416.2.
    assertSays(front, "CUT bracket 884 mm long × 1");
    assertSays(front, "CUT brace 417 mm long × 1");
    assertSays(front, "500 Pa on a sign of 400 mm × 300 mm blows it sideways with 7 kg");
    // The plate turns on its side, 20 from the middle of four screws: 60 × 280 / (4 × 20) = 210 N
    // = 21.4 kg.
    assertSays(front, "it pulls each screw by 22 kg more");
    // Weight bends it as 280 × 70 / 350 = 56 mm of arm: 39.2 × 56 / (40 × 10² / 6) = 3.3 MPa, and
    // pulls with 0.1; wind bends it on edge: 60 × 280 / (10 × 40² / 6) = 6.3 MPa: 9.7 of 62.
    // The top screw: 39.2 × 280 × 335 / (75² + 275² + 335²) = 19 N and 210, of π/4 × 4² mm² 18.2
    // MPa of 62, hardly more with the shear.
    assertSays(front, "! a sign swings and tugs in gusts");
    assertSays(front, "16 % of the bar, first yield ÷ 4, and 30 % of the top screw");
    assertFault("load, 6 kg, 30 lb, 150 kg", "bracket", "may carry with the wind in proportion");
    assertFault("sign wide, none, none, 480 mm", "bracket", "take a longer arm");
    assertFault("sign high, none, none, none", "bracket", "sign wide", "was told by half");
    assertFault("wind, none, none, none", "bracket", "sign wide", "was told by half");
    assertFault("wind, none, none, 500 lb", "bracket", "accepted: the wind's pressure such as 500");
  }

  /** Ten pounds on each of the square feet of a sign of 12 × 18 in. */
  @Test
  void windIsToldInPoundsAsWell() throws IOException {
    List<String> lines = new ArrayList<>(sample());
    lines.replaceAll(
        line ->
            line.startsWith("sign ") || line.startsWith("wind,")
                ? line.replace("400 mm", "12 in")
                    .replace("300 mm", "18 in")
                    .replace("500 Pa", "10 psf")
                : line);
    OrderFile file = OrderFile.of(lines);
    assertEquals(List.of(), file.faults());
    SheetText sheet = new SheetText(80);
    file.orders().get(2).front(sheet);
    assertSays(
        sheet.toString().replaceAll("\\s+", " "),
        "on a sign of 305 mm × 457 mm blows it sideways with 15 lb");
  }

  /**
   * 8 mm round, 30 mm inside, the load 5 mm beyond the centre: r₁ = 15, r₂ = 23, r = 19 mm, r₀ =
   * (19 + √345) / 2 = 18.7871 mm, e = 0.2129 mm, A = 50.265 mm², a = 24 mm. Inside 1/A + a (r₀ −
   * r₁) / (A e r₁) = 0.019894 + 24 × 3.7871 / (50.265 × 0.2129 × 15) = 0.58612 MPa for a newton.
   */
  @Test
  void aHookOfAMillimetreBar() throws IOException {
    String front = front(3);
    // Eye π (12 + 8) = 62.8, shank 60, bend π × 19 = 59.7, tip 12: 194.5 mm.
    assertSays(front, "CUT hook 195 mm long × 6");
    // 248 / 0.58612 = 423.1 N = 43.1 kg; ÷ 5 = 8.6 kg.
    assertSays(front, "3 kg asked; at most 8 kg, first yield of its bend ÷ 5");
    assertSays(front, "begins to open at 43 kg");
    // (8 / 25.4)² × 2000 lb = 198.4 lb = 89.99 kg; 2/3 of it 59.99 kg.
    assertSays(front, "D² short tons, 89 kg; 2/3 of that, 59 kg");
  }

  /**
   * 1/2 in round, 2 1/2 in inside: r₁ = 1.25, r₂ = 1.75, r = 1.5 in, r₀ = (1.5 + √2.1875) / 2 =
   * 1.489510 in, e = 0.010490 in, A = 0.196350 in², a = 1.5 in: 5.0930 + 1.5 × 0.239510 / (0.196350
   * × 0.010490 × 1.25) = 144.6 psi for a pound.
   */
  @Test
  void aHookOfAnInchBar() throws IOException {
    String front = front(4);
    // Eye π (3/4 + 1/2) = 3.927, shank 3, bend π × 1.5 = 4.712, tip 3/4: 12.389 in.
    assertSays(front, "CUT hook 12 7/16 in long × 2");
    // 248 MPa = 35 969 psi: ÷ 144.6 = 248.7 lb; ÷ 5 = 49.7 lb.
    assertSays(front, "15 lb asked; at most 49 lb, first yield of its bend ÷ 5");
    assertSays(front, "begins to open at 240 lb");
    // (1/2)² × 2000 = 500 lb; the least of the old crane hooks that is enough bears 250 lb.
    assertSays(front, "D² short tons, 500 lb; 2/3 of that, 330 lb");
    assertSays(front, "old crane hooks up to 250 lb were of 5/8 in round");
  }

  @Test
  void tellsWhatABracketCannotBe() throws IOException {
    assertFault("load, 9 kg, 30 lb", "bracket", "that its bar may carry, was 9 kg");
    assertFault("screws at, none, 1 in; 9 in", "bracket", "tell that of each screw");
    assertFault(
        "screws at, 20 mm; 30 mm; 220 mm, 3/4 in; 9 in", "bracket", "from the next, was 10 mm");
    assertFault(
        "screws at, 20 mm; 245 mm, 3/4 in; 9 in", "bracket", "a head from the foot and from the");
    assertFault(
        "screws at, 20 mm; 120 mm; 220 mm, 2 in; 9 in", "bracket", "clear of the brace, was 2 in");
    assertFault("brace out, 150 mm, 7 in", "bracket", "or none in both, was told once");
    assertFault("load out, 310 mm, 5 in", "bracket", "more than the arm; accepted: at most 300 mm");
    assertFault("load, 60 N, 30 lb", "bracket", "accepted: a load such as 20 kg or 45 lb");
    assertFault("wall, 30 mm, 2 in", "bracket", "screw", "take thicker wood");
  }

  @Test
  void tellsWhatAHookCannotBe() throws IOException {
    String kind = "carrying hook";
    assertFault("load, 9 kg, 15 lb", kind, "that its bend may carry, was 9 kg");
    assertFault("eye, 0 mm, 3/4 in", kind, "0 mm is too little");
    // r = 94 mm, Z = π 8³ / 32 = 50.3 mm³: 94 / 50.3 = 1.87 MPa for a newton without curvature;
    // 248 / 1.87 / 5 = 26.5 N = 2.7 kg.
    assertFault("eye, 180 mm, 3/4 in", kind, "load", "at most the 2 kg that its eye may carry");
    assertFault("beyond centre, 16 mm, 0 in", kind, "at most 15 mm, within the hook, was 16 mm");
    assertFault("bar, 8 mm hexagon, 1/2 in round", kind, "must be round, square or flat");
    assertFault("heat, 1600 °C, 2000 °F", kind, "cannot be made: ");
  }

  /** Any two values of the sample changed: a fault in words, or a front that fits; seed 71. */
  @Test
  void whateverIsOrderedIsToldOrRefused() throws IOException {
    List<String> values =
        List.of(
            "0 mm", "0.1 mm", "1/4 in", "5 mm", "40 mm", "7 in", "300 mm", "9 in", "3 m", "none");
    Orders.Told told =
        Orders.toldOrRefused(71, 300, sample(), "[a-z ]+,.* (mm|in|none),.*", values);
    assertTrue(told.made() > 200 && told.refused() > 20, told::toString);
  }

  @Test
  void itsBenchCardIsAWellFormedPage() throws Exception {
    String page = BenchCardTest.card(sample());
    Document card = BenchCardTest.parse(page);
    assertEquals(7, card.getElementsByTagName("article").getLength());
    assertTrue(card.getElementsByTagName("img").getLength() >= 6, "each has a drawing");
  }
}
