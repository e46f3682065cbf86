package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.hinge.Hand;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.units.Measures;
import org.junit.jupiter.api.Test;

class OrderFileTest {
  /** One job, a chapel cupboard, as the lines of a file. */
  static List<String> cupboard() {
    return new ArrayList<>(
        List.of(
            "make, strap hinges",
            "name, Chapel cupboard",
            "hand, right",
            "pairs, 3",
            "bar width, 25 mm",
            "bar thickness, 3 mm",
            "pin, 5 mm",
            "clearance, 0.4 mm",
            "coat, 0 mm",
            "knuckles, 3",
            "joint gap, 0.3 mm",
            "kerf, 0.8 mm",
            "opening, 100°",
            "hung, face",
            "door leaf, 120 mm",
            "door taper, 50 mm",
            "post leaf, 60 mm",
            "post taper, 0 mm",
            "tip width, 12 mm",
            "tip thickness, 2 mm",
            "heat, 1100 °C",
            "time at heat, 0.5 min",
            "barrel work, 0.3 min",
            "taper work, usual",
            "screw, 3 mm × 20 mm",
            "door holes, 3",
            "door seams, none",
            "post holes, 2",
            "post seams, none",
            "seam width, 0 mm",
            "wood, White ash",
            "centres, 800 mm",
            "graduation, 0.5 mm"));
  }

  /** The same with one item said otherwise. */
  static List<String> cupboardWith(String line) {
    String item = line.substring(0, line.indexOf(','));
    List<String> lines = cupboard();
    lines.replaceAll(old -> old.startsWith(item + ",") ? line : old);
    return lines;
  }

  private static HingeOrder hinges(OrderFile file) {
    return (HingeOrder) file.orders().get(0);
  }

  private static List<String> faults(List<String> lines) {
    return OrderFile.of(lines).faults().stream().map(Fault::toString).toList();
  }

  @Test
  void readsAJob() {
    OrderFile file = OrderFile.of(cupboard());
    assertEquals(List.of(), file.faults());
    HingeOrder order = hinges(file);
    assertEquals("Chapel cupboard", order.name());
    assertEquals(3, order.pairs());
    assertEquals(Hand.RIGHT, order.pair().hand());
    assertEquals(Measures.millimetres(5), order.pair().bore().pin());
    assertEquals(Measures.millimetres(5.4), order.pair().barrel().insideDiameter());
    assertEquals(Measures.millimetres(120), order.pair().lengthFromPin(Leaf.SECOND));
    assertEquals(Measures.millimetres(60), order.pair().lengthFromPin(Leaf.FIRST));
    assertEquals(3, order.leaf(Leaf.SECOND).holes().layout().positions().size());
  }

  @Test
  void sawsTheNotchToAMarkOfTheRule() {
    HingeOrder order = hinges(OrderFile.of(cupboard()));
    assertTrue(order.graduation().isOnMark(order.pair().notchDepth()));
    assertTrue(order.pair().opening().isGreaterThan(Measures.degrees(100)), order.pair()::toString);
  }

  @Test
  void takesTheItemsInAnyOrderAndAByteOrderMark() {
    List<String> lines = cupboard();
    Collections.reverse(lines.subList(1, lines.size()));
    lines.set(0, "\uFEFF" + lines.get(0));
    lines.replaceAll(line -> line.startsWith("name") ? "name, \"Cupboard, small\"" : line);
    OrderFile file = OrderFile.of(lines);
    assertEquals(List.of(), file.faults());
    assertEquals("Cupboard, small", file.orders().get(0).name());
  }

  @Test
  void tellsItemsThatAreNoneStandTwiceOrMiss() {
    List<String> lines = cupboardWith("pin, 5 mm");
    lines.replaceAll(line -> line.replace("pin, 5 mm", "pinn, 5 mm"));
    lines.add("hand, left");
    List<String> faults = faults(lines);
    assertEquals(
        List.of(
            "line 7, \"pinn\": is no item of strap hinges; write pin",
            "line 34, hand: stands a second time; accepted: once, with a value for each job"),
        faults);
    lines.removeIf(line -> line.startsWith("kerf") || line.startsWith("hand, left"));
    lines.add("blade, steel");
    faults = faults(lines);
    assertEquals(3, faults.size(), faults::toString);
    assertTrue(
        faults
            .get(1)
            .startsWith("line 33, \"blade\": is no item of strap hinges; accepted: name, hand"));
    assertEquals(
        "line 33, kerf: is missing; accepted: a length such as 1 1/2 in or 40 mm", faults.get(2));
  }

  @Test
  void tellsAnOrderOfNothing() {
    String none =
        ", make: there is no job; accepted: a row make, then one of strap hinges, thumb latch,"
            + " slide bolt, cabin hook, hasp, eye plate, latch spring, pickets, bracket, carrying hook, chain,"
            + " collar, tenon, basket, pintle, spike, staple, drift bolt";
    assertEquals(List.of("line 1" + none), faults(List.of("# only a remark")));
    assertEquals(List.of("line 1" + none), faults(List.of()));
    assertEquals(List.of("line 2" + none), faults(List.of(",,,", "\"# a remark, in quotes\",,,")));
  }

  @Test
  void tellsValuesThatAreNone() {
    assertFault("bar width, 0 mm", "line 5, bar width of Chapel cupboard: 0 mm is too little");
    assertFault("clearance, -0.2 mm", "-0.2 mm is too little, it must not be negative");
    assertFault("name, ", "line 2, name: there is none; accepted: any text that names the job");
    assertFault("pin, ", "line 7, pin of Chapel cupboard: there is nothing; accepted: a length");
    assertFault("pairs, 0", "\"0\" is no count; accepted: a whole number from 1 to 1000");
    assertFault("knuckles, 1", "\"1\" is no count; accepted: a whole number from 2 to 15");
    assertFault("hand, up", "\"up\" is not known; accepted: left or right");
    assertFault("heat, hot", "\"hot\" is no number in °C; accepted: a temperature with its unit");
    assertFault("heat, 1000", "\"1000\" is no number in °C; accepted: a temperature with its unit");
    assertFault("opening, 110", "\"110\" is no number in °; accepted: degrees up to 360");
    assertFault("opening, 0°", "0° is too little");
    assertFault("opening, 361°", "\"361°\" is too much");
    assertFault("screw, 7.7 mm × 20 mm", "line 25, screw of Chapel cupboard: ");
    assertFault("screw, 3 mm", "\"3 mm\" is no size and length of a screw; accepted: a size and");
    assertFault("wood, plastic", "was plastic; take one of Douglas-fir coast, ");
    assertFault("door seams, 40", "\"40\" is not a length");
    assertFault("door seams, 40 mm; -4 1/2 in", "-4 1/2 in is too little");
    assertFault("centres, -1 mm", "-1 mm is too little");
    assertFault("graduation, 1/10 in", "accepted: 1/8 in, 1/16 in");
    assertFault("tip width, 30 mm", "30 mm is more than the bar width; accepted: at most 25 mm");
    assertFault("door taper, 130 mm", "130 mm is more than the door leaf");
    assertFault("pin, 5 mm, 6 mm", "has 2 values; accepted: 1, one for each job");
    assertFault("barrel work, 600000000 min", "line 23, barrel work of Chapel cupboard: ");
    assertFault("taper work, 600000000 min", "line 24, taper work of Chapel cupboard: ");
    assertFault("taper work, 600000000 min/in", "is no pace of a hammer");
    assertFault("taper work, 0.2 min/25", "expected a unit");
  }

  @Test
  void tellsOneCauseOnce() {
    // One name too many is no fault of the thirty other rows.
    List<String> faults = faults(cupboardWith("name, Chapel, cupboard"));
    assertEquals(
        List.of(
            "line 2, name: has 2 values; accepted: 1, one for each job (a length has a point, not a"
                + " comma)"),
        faults);
    assertFault("pin, \"5 mm", "line 7, pin: a quotation mark begins a cell and does not end it");
    assertEquals(1, faults(cupboardWith("bar width, 25")).size());
  }

  @Test
  void tellsAllFaultsInTheOrderOfTheLines() {
    List<String> lines = cupboardWith("wood, plastic");
    lines.replaceAll(line -> line.startsWith("pin,") ? "pinn, 5 mm" : line);
    lines.replaceAll(line -> line.startsWith("heat,") ? "heat, 1000, 1100 °C" : line);
    lines.replaceAll(line -> line.startsWith("hand,") ? "hand, up" : line);
    List<String> faults = faults(lines);
    assertEquals(4, faults.size(), faults::toString);
    assertTrue(faults.get(0).startsWith("line 3, hand of"), faults.get(0));
    assertTrue(faults.get(1).startsWith("line 7, \"pinn\""), faults.get(1));
    assertTrue(faults.get(2).startsWith("line 21, heat: has 2"), faults.get(2));
    assertTrue(faults.get(3).startsWith("line 31, wood of"), faults.get(3));
  }

  @Test
  void echoesNoControlsAndNothingHuge() {
    String huge = "x".repeat(1_000_000);
    for (OrderItem item : HingeItem.ALL) {
      for (String cell : List.of(huge, "\u001b[2J", "5 mm\u202e")) {
        List<String> faults = faults(cupboardWith(item.label() + ", " + cell));
        assertEquals(1, faults.size(), () -> item + ": " + faults);
        assertTrue(faults.get(0).length() < 900, faults.get(0));
        assertTrue(faults.get(0).chars().allMatch(c -> Fault.isPrintable((char) c)));
      }
    }
    assertEquals("\"\\u001bx\"", Fault.echo("\u001bx"));
    assertEquals(1, faults(cupboardWith("pin, 5 mm" + ",".repeat(1_000_000))).size());
    List<String> strange = cupboard();
    strange.add(huge);
    assertTrue(faults(strange).get(0).length() < 900);
  }

  @Test
  void aMegabyteOfCommasTakesNoTime() {
    assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () -> faults(List.of(",".repeat(1_000_000), "name" + ",x".repeat(500_000))));
  }

  @Test
  void tellsWhatCannotBePutTogether() {
    assertFault("hung, joint", null);
    assertFault("kerf, 9 mm", "line 12, kerf of Chapel cupboard: cannot be made: kerf must leave");
    assertFault("heat, 1500 °C", "line 21, heat of Chapel cupboard: cannot be made: heat");
    assertFault("door holes, 40", "line 26, door holes of Chapel cupboard: cannot be made: ");
    assertFault("joint gap, 13 mm", "line 11, joint gap of Chapel cupboard: cannot be made: gap");
  }

  private static void assertFault(String line, String words) {
    List<String> faults = faults(cupboardWith(line));
    if (words == null) {
      assertEquals(List.of(), faults);
    } else {
      assertEquals(1, faults.size(), faults::toString);
      assertTrue(faults.get(0).contains(words), faults.get(0));
    }
  }

  @Test
  void splitsFieldsAtCommasButNotInQuotes() {
    OrderFile file = OrderFile.of(cupboardWith("name, \"The \"\"chapel\"\", cupboard\""));
    assertEquals("The \"chapel\", cupboard", file.orders().get(0).name());
    assertEquals(
        Measures.inches(0.5),
        hinges(OrderFile.of(cupboardWith("joint gap, 1/64\"")))
            .gapAsked()
            .add(Measures.inches(31 / 64d)));
  }
}
