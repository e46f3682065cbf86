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

/** Latch springs as they are ordered: sums by hand, and what is refused. */
class SpringOrdersTest {
  private static List<String> sample() throws IOException {
    return JobSheet.sampleLines("spring.csv");
  }

  private static List<String> with(String... said) throws IOException {
    List<String> lines = new ArrayList<>(sample());
    for (String line : said) {
      String item = line.substring(0, line.indexOf(',') + 1);
      lines.replaceAll(old -> old.startsWith(item) ? line : old);
    }
    return lines;
  }

  private static String front(int job, String... said) throws IOException {
    OrderFile file = OrderFile.of(with(said));
    assertEquals(List.of(), file.faults());
    SheetText sheet = new SheetText(80);
    file.orders().get(job).front(sheet);
    String printed = sheet.toString();
    assertTrue(sheet.lines() <= 50, printed);
    assertTrue(printed.lines().allMatch(line -> line.length() <= 80), printed);
    return printed.replaceAll("\\s+", " ");
  }

  private static void assertFault(String item, String words, String... said) throws IOException {
    List<String> lines = with(said);
    List<String> faults = OrderFile.of(lines).faults().stream().map(Fault::toString).toList();
    assertEquals(1, faults.size(), faults::toString);
    assertSays(faults.get(0), words);
    int at = 0;
    while (!lines.get(at).startsWith(item + ",")) {
      at++;
    }
    assertTrue(faults.get(0).startsWith("line " + (at + 1) + ", " + item), faults::toString);
  }

  /**
   * 5/8 × 1/16 in, 5 in long, half as wide at the tip: K = 24 (ln 2 − 1/2) = 4.63553. In
   * millimetres a newton bends it 4.63553 × 127³ / (206 000 × 15.875 × 1.5875³) = 0.72575 mm; 3.175
   * mm take 4.375 N = 0.983 lb, 12.7 mm take 17.50 N = 3.934 lb. The root bears 6 × 17.50 × 127 /
   * (15.875 × 1.5875²) = 333.3 MPa = 48.34 ksi; 60 ksi are reached at 12.7 × 60 / 48.34 = 15.76 mm
   * = 0.621 in.
   */
  @Test
  void aSpringInInches() throws IOException {
    String front = front(0);
    assertSays(front, "bar 5/8 in × 1/16 in flat, spring steel");
    assertSays(front, "CUT spring 6 1/4 in long × 1");
    assertSays(front, "scribe it 1 1/4 in from the end that is the foot");
    assertSays(front, "from 5/8 in at the root to 5/16 in at the tip, 5 in beyond it");
    // 1 1/4 in in two parts of 5/8 in.
    assertSays(front, "2 of 3/16 in, at 5/16 in, 15/16 in from its end");
    assertSays(front, "the tip stands 1/8 in beyond where the resting latch holds it");
    assertSays(front, "room for 3/8 in of travel from there, 1/2 in in all");
    assertSays(front, "about 0.98 lb at rest, 0.75 lb asked; about 4 lb at full travel");
    assertSays(front, "48.4 ksi at its root, 80.6 % of the 60 ksi allowed");
    assertSays(front, "travel at most 7/16 in"); // 0.621 − 0.125 = 0.496, down
    assertSays(front, "press the tip 9/16 in from where it stands free");
    assertSays(front, "Harden from 1500 °F");
    assertSays(front, "Temper at once, all of it at 700 °F");
  }

  /**
   * 16 × 2 mm, 150 mm long: a newton bends it 4.63553 × 150³ / (206 000 × 16 × 8) = 0.59333 mm; 4
   * mm take 6.742 N = 0.687 kg, 14 mm 23.60 N = 2.41 kg. 6 × 23.60 × 150 / (16 × 4) = 331.8 MPa;
   * 400 MPa are reached at 16.88 mm.
   */
  @Test
  void twoSpringsInMillimetres() throws IOException {
    String front = front(1);
    assertSays(front, "CUT spring 180 mm long × 2");
    assertSays(front, "2 of 4.5 mm, at 8 mm, 23 mm from its end"); // 7.5 and 22.5
    assertSays(front, "about 0.68 kg at rest, 0.5 kg asked; about 3 kg at full travel");
    assertSays(front, "332 MPa at its root, 83 % of the 400 MPa allowed; travel at most 12 mm");
    assertSays(front, "press the tip 16 mm from where it stands free");
  }

  @Test
  void theFrontSaysHowItHurtsAndWhatIsNotReckoned() throws IOException {
    for (int job = 0; job < 2; job++) {
      String front = front(job);
      assertSays(front, "! a spring snaps if its temper is wrong: try it behind a guard, with eye");
      assertSays(front, "! a quench in oil flares: a lid for the tank at hand");
      assertSays(front, "! its foot is taken to hold fast: a clamped strip that was measured gave");
    }
    // 25 + 6 mm of 150 mm is more than a fifth; the metal would bear it at 1000 MPa.
    String far = front(1, "limit, 60 ksi, 1000 MPa", "travel, 3/8 in, 27 mm");
    assertSays(far, "! a deflection of 31 mm is more than a fifth of the length");
  }

  @Test
  void tellsWhatASpringCannotBe() throws IOException {
    assertFault(
        "travel",
        "travel must be at most 12.88 mm from a set of 4 mm for a limit of 400 MPa, was 13 mm",
        "travel, 3/8 in, 13 mm");
    assertFault(
        "set",
        "set must be at most what the limit of stress allows in all of 16.88 mm, was 17 mm",
        "set, 1/8 in, 17 mm");
    assertFault("travel", "travel must be at most", "set, 1/8 in, 10 mm", "travel, 3/8 in, 10 mm");
    assertFault(
        "press",
        "press must be at most the 0.68 kg of the resting spring, was 0.7 kg",
        "press, 0.75 lb, 0.7 kg");
    assertFault(
        "tip width",
        "tipWidth must be at most the width at the root of 16 mm, was 17 mm",
        "tip width, 5/16 in, 17 mm");
    assertFault("hole", "diameter must be less than 15 mm", "hole, 3/16 in, 15 mm");
    assertFault("bar", "bar must be flat", "bar, 5/8 in round, 16 mm x 2 mm flat");
    assertFault("limit", "accepted: a stress such as 400 MPa or 60 ksi", "limit, 60 ksi, 400");
    assertFault("limit", "0 MPa is too little", "limit, 60 ksi, 0 MPa");
    assertFault("temper", "temper must be at less than the 820 °C", "temper, 700 °F, 820 °C");
    assertFault("length", "0 in is too little", "length, 0 in, 150 mm");
  }

  /** Any two lengths of the sample changed: a fault in words, or a front that fits; seed 17. */
  @Test
  void whateverIsOrderedIsToldOrRefused() throws IOException {
    List<String> values =
        List.of("1/64 in", "0.1 mm", "1/4 in", "5 mm", "40 mm", "7 in", "300 mm", "3 m");
    Orders.Told told = Orders.toldOrRefused(17, 200, sample(), "[a-z ]+,.* (mm|in),.*", values);
    assertTrue(told.made() > 100 && told.refused() > 40, told::toString);
  }

  @Test
  void itsSheetsAndItsCardPrint() throws Exception {
    List<Order> orders = OrderFile.of(sample()).orders();
    String printed = Sheets.of(orders, CutSheet.of(orders, Rack.empty()));
    assertSays(printed, "spring 2: presses at rest ________ at travel ________");
    assertSays(printed, "Cut from 16 mm × 2 mm flat, spring steel");
    String card = BenchCardTest.card(sample());
    assertSays(card, "latch spring 150 mm long, of 16 mm × 2 mm");
  }
}
