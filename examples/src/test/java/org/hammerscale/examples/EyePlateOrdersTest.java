package org.hammerscale.examples;

import static org.hammerscale.examples.Orders.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.junit.jupiter.api.Test;

/** Loops on plates as they are ordered: sums by hand, and what is refused. */
class EyePlateOrdersTest {
  private static List<String> with(String... said) throws IOException {
    List<String> lines = new ArrayList<>(JobSheet.sampleLines("plates.csv"));
    for (String line : said) {
      String item = line.substring(0, line.indexOf(',') + 1);
      lines.replaceAll(old -> old.startsWith(item) ? line : old);
    }
    return lines;
  }

  private static String front(int job) throws IOException {
    OrderFile file = OrderFile.of(with());
    assertEquals(List.of(), file.faults());
    Order order = file.orders().get(job);
    assertEquals(1, order.drawings().size());
    assertEquals(job == 0 ? 4 : 2, order.screws().values().iterator().next());
    return Orders.inOneLine(Orders.front(order));
  }

  private static void assertFault(String line, String words) throws IOException {
    List<String> faults = OrderFile.of(with(line)).faults().stream().map(Fault::toString).toList();
    assertEquals(1, faults.size(), faults::toString);
    assertSays(faults.get(0), words);
  }

  @Test
  void aLoopInMillimetres() throws IOException {
    String sheet = front(0);
    // Half a turn of 19 in the middle is 29.85; 8.5 of each leg above the plate, 4 in it: 54.85; a
    // cone from 6 to 9 takes 24.7 mm³ more than the shank, of 28.3 mm² 0.88 at either end: 56.6.
    assertSays(sheet, "CUT loop 57 mm long × 2");
    // (57 − 54.85) / 2 = 1.08
    assertSays(sheet, "half round a mandrel of 13 mm", "they stand 1.1 mm out behind the plate");
    // 19 + 6 + 4 × 7.5 = 55; screws 7.5 from its ends, on a mark 8
    assertSays(sheet, "CUT plate 55 mm long × 2 of 25 mm × 4 mm flat");
    assertSays(sheet, "6 mm, 19 mm apart about its middle, sunk behind 90° to 9 mm");
    assertSays(sheet, "4.5 mm, 8 mm from either end, sunk on its face 90° to 7.5 mm");
    assertSays(sheet, "13 mm wide and 15 mm high inside, from the plate's face");
    assertSays(sheet, "drill nothing for the thread", "20 kg asked on each");
    assertSays(sheet, "! rivet the legs hot", "! a plate holds as its screws do");
  }

  @Test
  void aLoopInInches() throws IOException {
    String sheet = front(1);
    // π/2 × 15/16 = 1.473, 3/8 of each leg and 3/16 in the plate: 2.598, and rivets of 0.046: 2.69
    assertSays(sheet, "CUT loop 2 3/4 in long × 1", "they stand 0.076 in out behind the plate");
    // 15/16 + 5/16 + 4 × 0.385 = 2.79, up; (2 13/16 − 15/16 − 5/16) / 2 − 0.385 = 0.396
    assertSays(sheet, "CUT plate 2 13/16 in long × 1 of 1 1/4 in × 3/16 in flat");
    assertSays(sheet, "15/16 in apart about its middle", "13/64 in, 3/8 in from either end");
  }

  @Test
  void tellsWhatCannotBe() throws IOException {
    assertFault("wire, 6 mm round, 6 mm square", "is not round");
    assertFault("load, 300 kg, 60 lb", "screw of Boathouse hook");
    assertFault("bar, 25 mm x 1 mm flat, 1 1/4 in x 3/16 in flat", "bar of Boathouse hook");
    assertFault("timber, 10 mm, 2 in", "screw of Boathouse hook");
    assertFault("screw, 20 mm x 60 mm, 10 x 1 1/2 in", "of Boathouse hook");
  }
}
