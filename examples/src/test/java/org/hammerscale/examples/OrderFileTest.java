package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.hinge.Hand;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.units.Measures;
import org.junit.jupiter.api.Test;

class OrderFileTest {
  /** One job, a chapel cupboard, as the lines of a file. */
  static List<String> cupboard() {
    return new ArrayList<>(
        List.of(
            "name, Chapel cupboard",
            "hand, right",
            "pairs, 3",
            "bar width, 25 mm",
            "bar thickness, 3 mm",
            "pin, 5 mm",
            "clearance, 0.2 mm",
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
            "taper work, 0.2 min",
            "screw, 3 mm",
            "door holes, 3",
            "door seams, none",
            "post holes, 2",
            "post seams, none",
            "seam width, 0 mm",
            "wood, White ash",
            "graduation, 0.5 mm"));
  }

  /** The same with one item said otherwise. */
  static List<String> cupboardWith(String line) {
    String item = line.substring(0, line.indexOf(','));
    List<String> lines = cupboard();
    lines.replaceAll(old -> old.startsWith(item + ",") ? line : old);
    return lines;
  }

  private static List<String> faults(List<String> lines) {
    return OrderFile.of(lines).faults().stream().map(Fault::toString).toList();
  }

  @Test
  void readsAJob() {
    OrderFile file = OrderFile.of(cupboard());
    assertEquals(List.of(), file.faults());
    HingeOrder order = file.orders().get(0);
    assertEquals("Chapel cupboard", order.name());
    assertEquals(3, order.pairs());
    assertEquals(Hand.RIGHT, order.pair().hand());
    assertEquals(Measures.millimetres(5), order.pair().bore().pin());
    assertEquals(Measures.millimetres(5.2), order.pair().barrel().insideDiameter());
    assertEquals(Measures.millimetres(120), order.pair().lengthFromPin(Leaf.SECOND));
    assertEquals(Measures.millimetres(60), order.pair().lengthFromPin(Leaf.FIRST));
    assertEquals(3, order.holes(Leaf.SECOND).layout().positions().size());
  }

  @Test
  void sawsTheNotchToAMarkOfTheRule() {
    HingeOrder order = OrderFile.of(cupboard()).orders().get(0);
    assertTrue(order.graduation().isOnMark(order.pair().notchDepth()));
    assertTrue(order.pair().opening().isGreaterThan(Measures.degrees(100)), order.pair()::toString);
  }

  @Test
  void takesTheItemsInAnyOrderAndAByteOrderMark() {
    List<String> lines = cupboard();
    java.util.Collections.reverse(lines);
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
    assertEquals(3, faults.size(), faults::toString);
    assertTrue(faults.get(0).startsWith("line 6, pinn: is no item; accepted: name, hand, pairs"));
    assertTrue(faults.get(1).startsWith("line 32, hand: stands a second time"));
    assertEquals(
        "line 32, pin: is missing; accepted: a length such as 1 1/2 in or 40 mm", faults.get(2));
  }

  @Test
  void tellsAnOrderOfNothing() {
    String none = ", name: there is no job; accepted: a row of names, one for each";
    assertEquals(List.of("line 1" + none), faults(List.of("# only a remark")));
    assertEquals(List.of("line 1" + none), faults(List.of()));
  }

  @Test
  void tellsValuesThatAreNone() {
    assertFault("bar width, 0 mm", "line 4, bar width of Chapel cupboard: 0 mm is too little");
    assertFault("clearance, -0.2 mm", "-0.2 mm is too little, it must not be negative");
    assertFault("name, ", "line 1, name: there is none; accepted: any text that names the job");
    assertFault("pairs, 0", "\"0\" is no count; accepted: a whole number from 1 to 1000");
    assertFault("knuckles, 1", "\"1\" is no count; accepted: a whole number from 2 to 15");
    assertFault("hand, up", "\"up\" is not known; accepted: left or right");
    assertFault("heat, hot", "\"hot\" is not in °C; accepted: a temperature such as 1100 °C");
    assertFault("opening, 0°", "0° is too little");
    assertFault("screw, 7.7 mm", "line 24, screw of Chapel cupboard: ");
    assertFault("wood, plastic", "species must be one of the table, was plastic");
    assertFault("door seams, 40", "\"40\" is not a length");
    assertFault("graduation, 1/10 in", "accepted: 1/8 in, 1/16 in");
    assertFault("tip width, 30 mm", "30 mm is more than the bar width; accepted: at most 25 mm");
    assertFault("door taper, 130 mm", "130 mm is more than the door leaf");
    assertFault("pin, 5 mm, 6 mm", "has 2 values; accepted: 1, one for each job");
  }

  @Test
  void tellsWhatCannotBePutTogether() {
    assertFault("hung, joint", null);
    assertFault("kerf, 9 mm", "line 1, name of Chapel cupboard: cannot be made: kerf must leave");
    assertFault("heat, 1500 °C", "cannot be made: heat");
    assertFault("door holes, 40", "cannot be made: ");
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
    assertEquals(List.of("a", "", "c"), CsvLine.fields("a,,c"));
    assertEquals(List.of("a", ""), CsvLine.fields("a,"));
    assertEquals(List.of("1 1/2\"", "x"), CsvLine.fields("1 1/2\", x"));
    assertEquals(List.of("a, \"b\"", "c"), CsvLine.fields(" \"a, \"\"b\"\"\",c"));
    assertEquals(List.of("open"), CsvLine.fields("\"open"));
  }
}
