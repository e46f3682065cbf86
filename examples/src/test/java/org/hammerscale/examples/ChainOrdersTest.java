package org.hammerscale.examples;

import static org.hammerscale.examples.Orders.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.hammerscale.examples.order.Cut;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.units.Measures;
import org.junit.jupiter.api.Test;

/** Chains as they are ordered: sums by hand, and what is refused. */
class ChainOrdersTest {
  private static final String MAKE = "make,            chain";

  private static List<String> sample() throws IOException {
    return JobSheet.sampleLines("carry.csv");
  }

  /** One of the two chains of the sample, with some lines said otherwise. */
  private static Order order(int job, String... said) throws IOException {
    return Orders.of(with(said)).stream()
        .filter(order -> order.what().contains("chain"))
        .toList()
        .get(job);
  }

  private static List<String> with(String... said) throws IOException {
    List<String> lines = new ArrayList<>(sample());
    for (String line : said) {
      int at = lines.indexOf(MAKE);
      String item = line.substring(0, line.indexOf(',') + 1);
      while (!lines.get(at).startsWith(item)) {
        at++;
      }
      lines.set(at, line);
    }
    return lines;
  }

  private static String front(Order order) {
    SheetText sheet = new SheetText(80);
    order.front(sheet);
    String printed = sheet.toString();
    assertTrue(sheet.lines() <= 50, printed);
    assertTrue(printed.lines().allMatch(line -> line.length() <= 80), printed);
    assertEquals(3, printed.lines().filter(line -> line.startsWith("! ")).count(), printed);
    return printed.replaceAll("\\s+", " ");
  }

  private static String back(Order order) {
    SheetText sheet = new SheetText(100);
    order.back(sheet);
    return sheet.toString().replaceAll("\\s+", " ");
  }

  private static void assertFault(String item, String words, String... said) throws IOException {
    List<String> lines = with(said);
    List<String> faults = OrderFile.of(lines).faults().stream().map(Fault::toString).toList();
    assertEquals(1, faults.size(), faults::toString);
    assertSays(faults.get(0), words);
    int at = lines.indexOf(MAKE);
    while (!lines.get(at).startsWith(item + ",")) {
      at++;
    }
    assertTrue(faults.get(0).startsWith("line " + (at + 1) + ", " + item), faults::toString);
  }

  /**
   * 3/8 in, 1 1/8 × 9/16 in inside: 24 in less 3/4 in are 20.67 pitches, so 21 links of 23 5/8 +
   * 3/4 in. Rod: π × 15/16 + 2 × 9/16 = 4.0702 in, 4.4452 in with a thickness, 4.6327 in with one
   * and a half.
   */
  @Test
  void aChainInInches() throws IOException {
    String front = front(order(0));
    assertSays(front, "CUT link 4 11/16 in long × 21 (enough 19 times in 20)");
    assertSays(front, "Links 21, 3/8 in longer than asked; with one fewer it is 23 1/4 in");
    // 4.6875 − 4.4452 = 0.242 in of rod, half of which a link is longer inside.
    assertSays(front, "is cut off the other rods, likely about 1/4 in");
    assertSays(front, "round a mandrel of 9/16 in");
    assertSays(front, "each 1 1/8 in × 9/16 in inside, 1 7/8 in × 1 5/16 in outside");
    assertSays(front, "the next has 0.188 in to spare in it"); // 3/16
    assertSays(front, "weld 11 links each by itself");
    assertSays(front, "weld it: 5 such threes; hang these and the one left together with 5 more");
    assertSays(front, "24 3/8 in over all, 1 1/8 in from link to link; its end links lie alike");
    assertSays(front, "2000 °F, orange to yellow");
  }

  /**
   * 6 mm, 45 × 14 mm inside: 800 less 12 mm are 17.5 pitches, so 18 links of 810 + 12 mm. Rod: π ×
   * 20 + 2 × 31 = 124.83 mm, 129.51 mm with 0.78 thicknesses, 133.83 mm with one and a half.
   */
  @Test
  void twoChainsInMillimetres() throws IOException {
    Order lantern = order(1);
    String front = front(lantern);
    assertSays(front, "CUT link 134 mm long × 36");
    assertSays(front, "18 in each chain, 22 mm longer than asked; with one fewer it is 777 mm");
    assertSays(front, "likely about 4 mm"); // 134 − 129.51
    assertSays(front, "pulled straight 822 mm over all");
    assertSays(
        front,
        "each 45 mm × 14 mm inside, 57 mm × 26 mm outside; the next has 8 mm to spare in it");
    assertSays(front, "its end links lie square to each other");
    List<Cut> cuts = lantern.cuts();
    assertEquals(1, cuts.size());
    assertEquals(36, cuts.get(0).count());
    assertEquals(Measures.millimetres(134), cuts.get(0).length());
    assertEquals(3, lantern.blanks().size(), "one trial and two chains");
  }

  @Test
  void whatAChainIsNotForStandsOnTheFront() throws IOException {
    for (int job = 0; job < 2; job++) {
      String front = front(order(job));
      assertSays(front, "! not for lifting people or over people, nor as lifting gear at all");
      assertSays(front, "! a forge weld's strength cannot be computed: proof-test the part itself");
      assertSays(front, "! at a welding heat flux and burning scale fly: wear eye protection");
      String back = back(order(job));
      assertSays(back, "! never heat stock that is zinc-coated");
      assertSays(back, "! this is no certified design");
    }
  }

  /**
   * Of 3/8 in: 3² / 10 long tons are 2016 lb, 6.28 d² are 1978 lb, 8 d² short tons 2250 lb, 240 d²
   * hundredweight 3780 lb, 24 d² long tons 7560 lb; 30 × 9.525² / 600 t are 4536 kg or 10001 lb.
   */
  @Test
  void oldRulesStandSideBySideOnTheBack() throws IOException {
    String back = back(order(0));
    assertSays(back, "of other chain of 3/8 in round, to compare sizes and no rating of this one");
    assertSays(back, "(eighths)² / 10 long tons: 2000 lb; two sections at 4 tons, 6.28 d² long");
    assertSays(back, "tons: 1900 lb; 8 D² short tons: 2200 lb; 240 d² hundredweight: 3700 lb");
    assertSays(back, "open links break at 24 d² long tons: 7500 lb");
    assertSays(back, "chain breaks at 30 D² / 600 t, D in mm: 10000 lb");
    assertSays(back, "printed as a working strain, it is twice the other rules");
    assertSays(back(order(1)), "8 D² short tons: 400 kg"); // (6 / 25.4)² × 16 000 lb = 405 kg
  }

  /** Counted on drawn rows of links: alone, in threes, together, at the end. */
  @Test
  void everyLinkIsWeldedOnce() throws IOException {
    String[][] all = {
      {"1", "a single link, welded"},
      {"2", "weld one link; hang it in the bend of an open link and weld it"},
      {
        "3",
        "weld 2 links each by itself; hang two of them in the bend of an open link and weld it: a three Chain"
      },
      {"4", "it: a three; the last hangs in one link only Chain"},
      {
        "5",
        "weld 3 links each by itself; hang two of them in the bend of an open link and weld it: a three; hang these and the one left together with 1 more in the same way Chain"
      },
      {
        "6",
        "it: a three; hang these and the one left together with 1 more in the same way; the last"
      },
      {
        "7",
        "weld 4 links each by itself; hang two of them in the bend of an open link and weld it: 2 such threes; hang these together with 1 more in the same way Chain"
      },
      {
        "8",
        "it: 2 such threes; hang these together with 1 more in the same way; the last hangs in one"
      }
    };
    for (String[] each : all) {
      String line = "length, " + each[0] + " links, 800 mm";
      String front = front(order(0, line));
      assertSays(front, each[1]);
      assertSays(front, "Links " + each[0] + ", as asked");
    }
  }

  @Test
  void sizesOfThePatternAreOnMarks() throws IOException {
    // 15/16 and 15/32 in, down to sixteenths.
    String front = front(order(0, "bar, 5/16 in round, 6 mm round"));
    assertSays(front, "each 15/16 in × 7/16 in inside, 1 9/16 in × 1 1/16 in outside");
    String back = back(order(0, "link width, 3/8 in, 14 mm"));
    assertSays(back, "3/8 in wide inside, less than the 15/32 in that short link chain has");
  }

  @Test
  void tellsWhatAChainCannotBe() throws IOException {
    assertFault(
        "link length",
        "length must be at least the width of 14 mm, was 13 mm",
        "link length, short link, 13 mm");
    assertFault(
        "link width",
        "inside the link must be at least the bar of 6 mm",
        "link width, short link, 5 mm");
    assertFault(
        "link length",
        "at least twice the thickness of the bar, of 12 mm, was 11 mm",
        "link width, short link, 10 mm",
        "link length, short link, 11 mm");
    assertFault("length", "0 mm is too little", "length, 24 in, 0 mm");
    assertFault("length", "\"0\" is no count", "length, 24 in, 0 links");
    assertFault("length", "\"many\" is no count", "length, 24 in, many links");
    assertFault(
        "length", "accepted: a length over all such as 24 in or 800 mm", "length, 24 in, 30");
    assertFault(
        "length",
        "length must be at most the",
        "length, 24 in, 900 m",
        "link length, short link, 8.1 mm",
        "link width, short link, 5 mm",
        "bar, 3/8 in round, 4 mm round");
    assertFault("weld", "accepted: one thickness, three eighths", "weld, glue, chain ring");
    assertFault("bar", "bar must be round, was 6 mm square", "bar, 3/8 in round, 6 mm square");
    assertFault("heat", "cannot be made: ", "heat, 2000 °F, 1600 °C");
  }
}
