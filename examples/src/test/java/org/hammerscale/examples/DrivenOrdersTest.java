package org.hammerscale.examples;

import static org.hammerscale.examples.Orders.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Order;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** What is driven into wood, as it is ordered: sums by hand, and what is refused. */
class DrivenOrdersTest {
  private static List<String> sample() throws IOException {
    return JobSheet.sampleLines("driven.csv");
  }

  private static List<Order> orders() throws IOException {
    return Orders.of(sample());
  }

  /** The front of a job, in one line so that words are found across line ends. */
  private static String front(String what, int inKind) throws IOException {
    List<Order> all =
        orders().stream().filter(order -> order.what().matches("(\\d+ )?" + what)).toList();
    String printed = Orders.front(all.get(inKind));
    assertTrue(printed.lines().filter(line -> line.startsWith("! ")).count() <= 3, printed);
    String front = Orders.inOneLine(printed);
    assertSays(front, "wear eye protection", "local codes govern");
    return front;
  }

  /** The one fault of the sample with lines of a kind said otherwise, told of the item named. */
  private static void assertFault(String kind, String blamed, String words, String... changed)
      throws IOException {
    List<String> lines = new ArrayList<>(sample());
    int from = 0;
    while (!lines.get(from).matches("make, *" + kind)) {
      from++;
    }
    for (String line : changed) {
      lines.set(lineOf(lines, from, line.substring(0, line.indexOf(','))), line);
    }
    List<String> faults = OrderFile.of(lines).faults().stream().map(Fault::toString).toList();
    assertEquals(1, faults.size(), () -> words + faults);
    String place = "line " + (lineOf(lines, from, blamed) + 1) + ", " + blamed + " of ";
    assertTrue(faults.get(0).startsWith(place), () -> place + faults);
    assertTrue(faults.get(0).contains(words), () -> words + faults);
  }

  private static int lineOf(List<String> lines, int from, String item) {
    int at = from;
    while (!lines.get(at).startsWith(item + ",")) {
      at++;
    }
    return at;
  }

  /**
   * 3/4 in square, pin 1/2 in under a barrel of 1 1/2 in and 1/8 in of washers, 1 1/2 in from the
   * post, 6 1/4 in deep with 1 1/2 in of point; 120 lb, 42 in wide, straps 36 in apart.
   */
  @Test
  void pintlesOfAGate() throws IOException {
    String front = front("pairs? of pintles", 0);
    // Corner 3/4; level 1 1/2 − 3/8 + 4 3/4 = 5 7/8, so 6 5/8 in from R; point 1 1/2 / 3 = 1/2 in.
    assertSays(front, "Punch 3/4 in (square corner | plain stretch), 6 5/8 in (plain stretch");
    assertSays(front, "draw the last 1/2 in to a point of 1 1/2 in");
    // The pin takes at least π/4 (1/2)² × 1 5/8 / (3/4)² = 0.567 in by its metal, more by hand:
    // 0.567 + 7 1/8 = 7.692 in and up.
    assertSays(front, "CUT pintle 8 in long × 2 (enough 19 times in 20)");
    assertSays(front, "draw it round to 1/2 in, 1 5/8 in from the shoulder");
    assertSays(front, "1 1/2 in to a chalk mark, the post's face, 7 3/4 in to the tip");
    // European oak has 0.71 g/cm³ at 12 %: G₁₂ = 0.71 / 1.12 = 0.6339, G₀ = 0.6339 / (1 − 0.108 ×
    // 0.6339) = 0.6805, more than 0.6: 0.9 × 3/4 = 0.675 = 43.2/64 in.
    assertSays(
        front,
        "Bore 43/64 in, 4 3/4 in deep into side grain of the post (the rule allows up to 0.675");
    // 36 + 1 1/2 + 2/8 + 3/4.
    assertSays(
        front,
        "shanks 38 1/2 in apart in the middle, for straps 36 in apart; the upper one upside");
    // 10 × 3/4 and 4 × 3/4.
    assertSays(
        front, "Keep 7 1/2 in from the timber's end and from the next one along the grain, 3 in");
    // 120 × 21 / 36.
    assertSays(front, "120 lb; it pulls the upper pintle out by 70 lb");
    // 0.6805^2.5 = 0.38202: 1380 × 0.38202 × 0.75 × 4.75 = 1878 lb.
    assertSays(front, "1800 lb by 4 3/4 in of full shank (4 1/2 in are needed, in sound wood)");
    // 0.6339^2.5 = 0.31994: 7850 × 0.31994 × 0.75 × 4.75 = 8947 lb; × 0.8355^2.5 = 0.6381 and
    // × 1.1645^2.5 = 1.4634: 5709 and 13 093 lb.
    assertSays(front, "comes out at about 8900 lb (5700 lb to 14000 lb): no working load");
    // Z = 0.75³ / 6 = 0.070313 in³: 120 × 1.5 / Z = 2560; 70 × (0.375 + 0.125 + 0.75) / Z + 70 /
    // 0.5625 = 1244.4 + 124.4 = 1369; pin 70 × 0.875 × 32 / (π / 8) = 4991; 36 ksi / 4 = 8992 psi.
    assertSays(front, "shank 2600 psi by the weight and 1400 psi by the pull, pin 5000 psi by the");
    assertSays(front, "not added");
    assertSays(front, "at most 8900 psi, yield ÷ 4");
    assertSays(front, "! a door lifts off upright hooks: set one of the two upside down");
  }

  /** 16 mm round throughout, barrel 40 and 3 mm of washers, 35 mm from the post, 140 mm deep. */
  @Test
  void pintlesOfADoor() throws IOException {
    String front = front("pairs? of pintles", 1);
    // 43 + 16 + (35 − 8 + 105) + 35/3 = 202.67, up.
    assertSays(front, "CUT pintle 203 mm long × 2 bends and points are by geometry");
    assertSays(front, "16 mm (square corner | plain stretch), 148 mm (plain stretch | taper)");
    assertSays(front, "Pin of the bar itself, 43 mm from the shank to its top");
    // Douglas fir, G 0.50: 0.75 × 16; 140 − 35.
    assertSays(
        front, "Bore 12 mm, 105 mm deep into side grain of the post (the rule allows up to 12 mm)");
    // 800 + 40 + 6 + 16.
    assertSays(front, "shanks 862 mm apart");
    // 45 × 500 / 800 = 28.1 kg = 275.8 N; 6 × 16 = 96 mm.
    assertSays(front, "pulls the upper pintle out by 29 kg");
    assertSays(front, "by 105 mm of full shank (96 mm are needed, in sound wood)");
    // 0.53 g/cm³: G₁₂ = 0.4732, G₀ = 0.4987; 0.4987^2.5 = 0.17563; 9.5148 × 0.17563 × 16 × 105 =
    // 2807 N = 286 kg.
    assertSays(front, "280 kg by 105 mm");
    // Z = π 16³/32 = 402.12 mm³: 441.3 × 35 / Z = 38.4; 275.8 × 31 / Z + 275.8 / 201.06 = 22.6;
    // 275.8 × 23 / Z = 15.8; 248 / 4 = 62 MPa.
    assertSays(front, "shank 39 MPa by the weight and 23 MPa by the pull, pin 16 MPa by the pull");
    assertSays(front, "at most 62 MPa");
  }

  @Test
  void tellsWhatAPintleCannotBe() throws IOException {
    assertFault("pintle", "bar", "bear the door by yield ÷ 4, was", "door, 120 lb, 80 kg");
    assertFault("pintle", "pin", "bear the pull of 70 lb", "pin, 3/8 in, 16 mm");
    assertFault("pintle", "bar", "as thick as the pin of 20 mm", "pin, 1/2 in, 20 mm");
    assertFault("pintle", "depth", "at least 131 mm with the point", "depth, 6 1/4 in, 130 mm");
    assertFault("pintle", "depth", "more than the post", "depth, 9 in, 140 mm");
    assertFault("pintle", "depth", "more than the point of 150 mm", "point, 1 1/2 in, 150 mm");
    assertFault("pintle", "projection", "half the pin", "projection, 1/8 in, 35 mm");
    assertFault("pintle", "projection", "half the shank", "projection, 3/10 in, 35 mm");
    assertFault("pintle", "bar", "square or round", "bar, 3/4 in x 1/2 in flat, 16 mm round");
    assertFault("pintle", "door", "a load such as 20 kg", "door, 3 stone, 45 kg");
    assertFault("pintle", "heat", "cannot be made", "heat, 2000 °F, 1700 °C");
    assertFault("pintle", "centres", "0 mm is too little", "centres, 36 in, 0 mm");
  }

  /** 3/8 in square through a plank of 2 in, 4 3/4 in into oak, rose head and chisel point. */
  @Test
  void spikesOfALanding() throws IOException {
    String front = front("spikes?", 0);
    // (7/8)² × 3/8 / 3 = 0.0957 in³, of (3/8)² 0.681 in; 2 + 4 3/4 − 3/4 = 6; half of the 3/4:
    // 7.056.
    assertSays(front, "CUT spike 7 1/16 in long × 24");
    assertSays(front, "Punch 11/16 in (tapered head | plain stretch), 6 11/16 in (plain stretch");
    assertSays(
        front, "jump up the first 11/16 in in a header to a rose head 7/8 in across and 3/8");
    assertSays(front, "draw the last 3/8 in to a chisel of 3/4 in, its edge as wide as the shank");
    assertSays(front, "cold, 6 3/4 in under the head");
    // 0.9 × 3/8 = 0.3375 in = 21.6/64.
    assertSays(
        front, "Bore 21/64 in, 6 in deep from the first face, into side grain (the rule allows");
    assertSays(front, "up to 0.338 in)");
    assertSays(front, "the chisel's edge across the grain; the head down on the first face");
    // 1380 × 0.38202 × 3/8 × 4 = 790.8 lb; 7850 × 0.31994 × 3/8 × 4 = 3767, × 0.6381 = 2404,
    // × 1.4634 = 5513 lb.
    assertSays(front, "100 lb asked on each, straight out");
    assertSays(front, "790 lb by 4 in of full shank: the reference value, before");
    assertSays(front, "comes out at about 3700 lb (2400 lb to 5600 lb): no working load");
    assertSays(front, "! drive it into side grain");
    assertSays(
        front, "Keep 3 3/4 in from the timber's end and from the next one along the grain, 1 1/2");
  }

  /** 6 mm square through 2 and 25 mm and a board of 30 mm, dome head, clenched. */
  @Test
  void spikesThatAreClenched() throws IOException {
    String front = front("spikes?", 1);
    // π 5 (3 × 7.5² + 5²) / 6 = 507.2, of 36 mm² 14.1; 57 + 18 − 15 = 60; a third of 15: 79.1 mm.
    assertSays(front, "CUT spike 80 mm long × 12");
    assertSays(front, "14 mm (domed head | plain stretch), 74 mm (plain stretch | taper)");
    assertSays(front, "draw the last 6 mm to a point of 15 mm");
    assertSays(front, "cold, 75 mm under the head"); // 2 + 25 + 30 + 3 × 6
    assertSays(front, "Bore 4.5 mm, right through (the rule allows up to 4.5 mm)"); // 0.75 × 6
    assertSays(front, "turn the last 18 mm over, across the grain");
    // 9.5148 × 0.17563 × 6 × 30 = 300.8 N = 30.7 kg; 54.124 × 0.4732^2.5 = 8.337 × 180 = 1501 N =
    // 153 kg, × 0.6381 = 97.7, × 1.4634 = 224 kg.
    assertSays(front, "30 kg by 30 mm of full shank: the reference value");
    assertSays(front, "about 150 kg (97 kg to 230 kg): no working load (not counting the clench)");
  }

  @Test
  void tellsWhatASpikeCannotBe() throws IOException {
    assertFault(
        "spike", "load", "the 30 kg that one may count on of one spike", "load, 100 lb, 40 kg");
    assertFault("spike", "depth", "at least 3 in with the point", "depth, 2 1/2 in, clenched");
    assertFault("spike", "depth", "the timber of 8 in, was 9 in", "depth, 9 in, clenched");
    assertFault("spike", "depth", "more than the point of 3/4 in", "depth, 1/2 in, clenched");
    assertFault("spike", "depth", "such as 120 mm, or clenched", "depth, clinched, clenched");
    assertFault("spike", "head across", "wider than the shank", "head across, 3/8 in, 15 mm");
    assertFault("spike", "head across", "12 thicknesses of bar", "head across, 4 in, 15 mm");
    assertFault("spike", "head high", "at most half the diameter", "head high, 3/8 in, 8 mm");
    assertFault("spike", "head", "rose, dome or flat", "head, round, dome");
    assertFault("spike", "point", "a flat or a square", "bar, 3/8 in round, 6 mm square");
    assertFault("spike", "point", "accepted: chisel or taper", "point, sharp, taper");
    assertFault("spike", "bar", "square or round", "bar, 3/8 in hexagon, 6 mm square");
    assertFault("spike", "through", "or none", "through, plank, 25 mm");
  }

  /** 10 mm round, 25 mm wide and 30 mm high inside, 90 mm deep into Douglas fir. */
  @Test
  void staplesForARing() throws IOException {
    String front = front("staples?", 0);
    // Half round on π × 17.5 = 54.98; each leg 30 + 10 + 90 − 20 − 22.5 = 87.5; points 20/3 each:
    // 54.98 + 175 + 13.33 = 243.3, up.
    assertSays(front, "CUT staple 244 mm long × 4");
    assertSays(front, "draw the last 7 mm at either end to a point of 20 mm");
    assertSays(front, "half round a mandrel of 25 mm");
    assertSays(front, "25 mm clear inside; from under the crown to the tips 120 mm");
    // 0.75 × 10; 25 + 10; 90 − 20.
    assertSays(
        front, "Bore 7.5 mm, two holes 35 mm apart in the middle, across the grain, 70 mm deep");
    // 9.5148 × 0.17563 × 10 × 70 × 2 = 2340 N = 238.6 kg; 8.337 × 1400 = 11 672 N = 1190 kg, ×
    // 0.6381
    // = 759, × 1.4634 = 1742 kg.
    assertSays(
        front, "Keep 100 mm from the timber's end and from the next one along the grain, 40 mm");
    assertSays(front, "40 kg asked on each");
    assertSays(front, "230 kg by both legs, 70 mm of full rod each: the reference value");
    assertSays(front, "about 1100 kg (750 kg to 1800 kg): no working load");
  }

  /** 1/4 in round, 5/8 in wide and high inside, clenched through 1 1/2 in of oak. */
  @Test
  void stapleOfAHaspThatIsClenched() throws IOException {
    String front = front("staples?", 1);
    // Half round on π × 7/16 = 1.374; each leg 5/8 + 1/4 + 2 1/4 − 1/2 − 9/16 = 2 1/16; points 1/6
    // each: 1.374 + 4.125 + 0.333 = 5.83, up.
    assertSays(front, "CUT staple 5 7/8 in long × 1");
    // 0.9 × 1/4 = 14.4/64.
    assertSays(
        front, "Bore 7/32 in, two holes 7/8 in apart in the middle, across the grain, right");
    assertSays(front, "turn the last 3/4 in of each leg over, across the grain");
    // 1380 × 0.38202 × 1/4 × 1 1/2 × 2 = 395.4 lb; 7850 × 0.31994 × 0.75 = 1884, × 0.6381 = 1202,
    // × 1.4634 = 2757 lb.
    assertSays(front, "390 lb by both legs, 1 1/2 in of full rod each");
    assertSays(
        front, "about 1800 lb (1200 lb to 2800 lb): no working load (not counting the clench)");
  }

  @Test
  void tellsWhatAStapleCannotBe() throws IOException {
    assertFault("staple", "load", "the 230 kg that one may count on", "load, 240 kg, 60 lb");
    assertFault("staple", "depth", "at least 80 mm with the point", "depth, 75 mm, clenched");
    assertFault("staple", "depth", "the timber of 120 mm, was 130", "depth, 130 mm, clenched");
    assertFault("staple", "depth", "at least the point of 20 mm", "depth, 15 mm, clenched");
    assertFault("staple", "bar", "square or round", "bar, 10 mm x 5 mm flat, 1/4 in round");
    assertFault("staple", "crown", "accepted: round or square", "crown, flat, round");
    assertFault("staple", "timber", "0 mm is too little", "timber, 120 mm, 0 mm");
  }

  /** 3/4 in round, washer 3/16, through 6 in, 10 in into oak; dome of 1 1/4 × 1/2 in. */
  @Test
  void driftBoltsOfALanding() throws IOException {
    String front = front("drift bolts?", 0);
    // π 0.5 (3 × 0.625² + 0.5²) / 6 = 0.3722 in³, of 0.4418 in² 0.843 in; 16 3/16 − 3/4 = 15 7/16;
    // to 3/4 of 5/8 = 0.469 in, 0.625 of it: (1 + 0.625 + 0.391) / 3 × 3/4 = 0.504: 16.78, up.
    assertSays(front, "CUT bolt 16 13/16 in long × 6");
    assertSays(front, "jump up the first 13/16 in in a header to a dome head 1 1/4 in across");
    assertSays(front, "slip a washer of 3/16 in under it");
    // The mark before it 0.843 + 15.437 = 16.28, on the rule 16 1/4.
    assertSays(front, "ease the last 9/16 in to 0.469 in across, 3/4 in long");
    assertSays(front, "cold, 16 3/16 in under the head");
    assertSays(front, "Bore 5/8 in, 16 in deep through both timbers");
    assertSays(front, "(the rule says 5/8 in)");
    // 6600 × 0.6339² × 3/4 × 9 1/4 = 18 399 lb; a fifth 3680; × 0.8355² = 0.6981, × 1.1645² =
    // 1.3561: 12 843 and 24 950 lb.
    assertSays(front, "1500 lb asked on each");
    assertSays(
        front, "3600 lb by 9 1/4 in of full shank, a fifth of what draws it out: no reference");
    assertSays(front, "about 18000 lb (12000 lb to 25000 lb): no working load");
  }

  /** 20 mm round, washer 5, through 100, 180 mm into Douglas fir; dome of 32 × 12 mm. */
  @Test
  void driftBoltsOfSills() throws IOException {
    String front = front("drift bolts?", 1);
    // π 12 (3 × 16² + 12²) / 6 = 5730, of 314.16 mm² 18.24; 285 − 20; to 12.6 mm, 0.63 of it: (1 +
    // 0.63 + 0.397) / 3 × 20 = 13.51: 296.75, up.
    assertSays(front, "CUT bolt 297 mm long × 4");
    // 20 − 3.2, down.
    assertSays(front, "Bore 16.5 mm, 280 mm deep through both timbers");
    assertSays(front, "(the rule says 16.8 mm)");
    assertSays(
        front, "Keep 200 mm from the timber's end and from the next one along the grain, 80 mm");
    // 45.505 × 0.4732² × 20 × 160 = 32 608 N = 3325 kg; a fifth 665; × 0.6981 = 2321, × 1.3561 =
    // 4509 kg.
    assertSays(front, "660 kg by 160 mm of full shank, a fifth");
    assertSays(front, "about 3300 kg (2300 kg to 4600 kg): no working load");
  }

  @Test
  void tellsWhatADriftBoltCannotBe() throws IOException {
    assertFault("drift bolt", "load", "the 660 kg that one may count on", "load, 10 lb, 700 kg");
    assertFault("drift bolt", "depth", "at least 140 mm with the point", "depth, 10 in, 139 mm");
    assertFault("drift bolt", "depth", "more than the timber", "depth, 13 in, 180 mm");
    assertFault("drift bolt", "depth", "more than the point of 20 mm", "depth, 10 in, 20 mm");
    assertFault("drift bolt", "bar", "must be round for a", "bar, 3/4 in square, 20 mm round");
    assertFault("drift bolt", "bar", "reckon it as a Spike", "bar, 3/4 in round, 6 mm round");
    assertFault("drift bolt", "head across", "wider than the shank", "head across, 3/4 in, 32 mm");
    assertFault("drift bolt", "head high", "at most half the", "head high, 3/4 in, 12 mm");
    assertFault("drift bolt", "washer", "must not be negative", "washer, -1 in, 5 mm");
  }

  /** Any two values of the sample changed: a fault in words, or a front that fits; seed 72. */
  @Test
  void whateverIsOrderedIsToldOrRefused() throws IOException {
    List<String> values =
        List.of(
            "0 mm", "0.1 mm", "1/4 in", "5 mm", "40 mm", "7 in", "300 mm", "9 in", "3 m", "none");
    Orders.Told told = Orders.toldOrRefused(72, 300, sample(), "[a-z ]+,.* (mm|in|none)", values);
    assertTrue(told.made() > 100 && told.refused() > 50, told::toString);
  }

  @Test
  void itsBenchCardIsAWellFormedPage() throws Exception {
    String page = BenchCardTest.card(sample());
    Document card = BenchCardTest.parse(page);
    int jobs = orders().size();
    assertEquals(jobs, card.getElementsByTagName("article").getLength());
    assertTrue(card.getElementsByTagName("img").getLength() >= 2 * jobs, "a bar and a drawing");
  }
}
