package org.hammerscale.examples;

import static org.hammerscale.examples.Orders.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.hammerscale.cutting.Rack;
import org.hammerscale.examples.card.BenchCard;
import org.hammerscale.examples.order.CutSheet;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.SheetText;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** Collars, tenons and a basket as they are ordered: sums by hand, and what is refused. */
class RailOrdersTest {
  private static List<String> sample() throws IOException {
    return JobSheet.sampleLines("rail.csv");
  }

  private static List<Order> orders() throws IOException {
    return Orders.of(sample());
  }

  /** The front of a job, in one line so that words are found across line ends. */
  private static String front(int job) throws IOException {
    return front(orders().get(job));
  }

  private static String front(Order order) {
    return Orders.inOneLine(Orders.front(order));
  }

  /** The same of an order with another line. */
  private static String front(int job, String line) throws IOException {
    return front(Orders.of(sampleWith(line)).get(job));
  }

  private static List<String> sampleWith(String line) throws IOException {
    List<String> lines = new ArrayList<>(sample());
    String item = line.substring(0, line.indexOf(',') + 1);
    lines.replaceAll(old -> old.startsWith(item) ? line : old);
    return lines;
  }

  private static void assertFault(String line, String words) throws IOException {
    List<String> faults =
        OrderFile.of(sampleWith(line)).faults().stream().map(Fault::toString).toList();
    assertTrue(faults.stream().anyMatch(fault -> fault.contains(words)), () -> words + faults);
  }

  @Test
  void collarsGoRoundTheirBars() throws IOException {
    String square = front(0);
    // 2 (24 + 12) + 2.5 × 3 = 79.5, up
    assertSays(square, "CUT collar 80 mm long × 6");
    assertSays(square, "Round 2 bars, side by side, of 12 mm square");
    // 72 + 3 × 3
    assertSays(square, "cut one 81 mm long, close it on the bars");
    // 24 + 2 × 3 and 12 + 2 × 3
    assertSays(square, "closed it is 30 mm × 18 mm outside, 24 mm × 12 mm inside");
    String round = front(1);
    // A round bar stretches nothing: π (1/2 + 1/8) = 1.9635, up
    assertSays(round, "CUT collar 2 in long × 4");
    assertSays(round, "Round one bar of 1/2 in round");
    assertSays(round, "3/4 in × 3/4 in outside");
    assertSays(round, "Trial cut one, close it");
    assertFalse(round.contains("1.9635"), round);
  }

  @Test
  void tenonGoesThroughAndIsHeaded() throws IOException {
    String sheet = front(2);
    // The dome: π 5 (3 × 9² + 5²)/6 = 701.6, of 100 mm² 7.02; the hole of 10.5: 6 (1.1025 − 1) =
    // 0.615; beyond 7.63, and 6 through: 13.63. Of the bar 1363/256 = 5.32 by geometry and more
    // by hand.
    assertSays(sheet, "cut it 14 mm from the shoulder: 8 mm stand out of the other bar");
    assertSays(sheet, "Hole in the other bar 10.5 mm square");
    // (16 − 10.5)/2 = 2.75, down
    assertSays(sheet, "2 mm of it all round");
    assertSays(sheet, "CUT bar 908 mm long × 8 (enough 19 times in 20)");
    assertSays(sheet, "Punch 900 mm (plain stretch | riveted tenon)");
    assertSays(sheet, "900 mm from the far end to the shoulder");
    assertSays(sheet, "a dome 18 mm across and 5 mm high");
    assertSays(front(2, "head high, 4.8 mm"), "a dome 18 mm across and 4.8 mm high");
  }

  @Test
  void backsTellEachStepByItsOwnMeaning() throws IOException {
    SheetText sheet = new SheetText(100);
    orders().get(2).back(sheet);
    String back = sheet.toString().replaceAll("\\s+", " ");
    assertSays(back, "H = 110.3 mm² (section of the hole)");
    assertSays(back, "= 13.63 mm (length from the shoulder)");
  }

  @Test
  void basketsRodsAreCutAlike() throws IOException {
    String sheet = front(3);
    // Rods of 191.23 between the welds, as the curve of a sine from 5.66 to 30 by a sum over
    // 100,000
    // chords; and 2 × 25.
    assertEquals(191.23, chords(120, 1, 8 / Math.sqrt(2), 30), 0.005);
    assertSays(sheet, "CUT rod 242 mm long × 4");
    assertSays(sheet, "25 mm from either end of each rod");
    // 242 − 2 × 25
    assertSays(sheet, "each rod 192 mm between its marks");
    // 2 × 30 + 8; √2 × 30 − 8 = 34.4, down
    assertSays(sheet, "120 mm from weld to weld, 68 mm over the belly; 34 mm clear");
    assertSays(sheet, "until 1 turn is left");
    String half = front(3, "turns, 1.5");
    assertSays(half, "until 1.5 turns are left");
    double rod = chords(120, 1.5, 8 / Math.sqrt(2), 30) + 50;
    assertSays(half, "CUT rod " + (int) Math.ceil(rod) + " mm long × 4");
  }

  private static double chords(double height, double turns, double weld, double belly) {
    int steps = 100_000;
    double sum = 0;
    double[] last = {weld, 0, 0};
    for (int i = 1; i <= steps; i++) {
      double z = height * i / steps;
      double r = weld + (belly - weld) * Math.sin(Math.PI * z / height);
      double turn = 2 * Math.PI * turns * i / steps;
      double[] next = {r * Math.cos(turn), r * Math.sin(turn), z};
      sum += Math.hypot(Math.hypot(next[0] - last[0], next[1] - last[1]), next[2] - last[2]);
      last = next;
    }
    return sum;
  }

  @Test
  void tellsWhatCannotBeMade() throws IOException {
    assertFault("each, 12 mm hexagon, 1/2 in round", "must be round, square or flat");
    assertFault("ends, welded, butted", "butted, lapped or scarfed");
    assertFault("tenon, 20 mm square", "cannot be made: ");
    assertFault("head across, 8 mm", "cannot be made: ");
    assertFault("head across, 10.5 mm", "cannot be made: ");
    assertFault("tenon, 15.5 mm square", "must leave a shoulder");
    assertFault("tenon, 10 mm hexagon", "must be round, square or flat");
    assertFault("bulge, 2 mm", "cannot be made: ");
    assertFault("turns, 50", "turns up to 20");
  }

  @Test
  void aCardIsAPage() throws Exception {
    List<Order> orders = orders();
    String page = BenchCard.of(orders, CutSheet.of(orders, Rack.empty()));
    Document document = BenchCardTest.parse(page);
    assertTrue(document.getElementsByTagName("img").getLength() >= 4);
  }
}
