package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.units.Measures;
import org.junit.jupiter.api.Test;

class OrderFileTest {
  private static final String HEADER = String.join(",", OrderFile.COLUMNS);
  private static final String ROW =
      "Chapel cupboard,25 mm,3 mm,5 mm,0.2 mm,120 mm,12 mm,2 mm,50 mm,3,0.5 mm";

  private static List<String> faults(String... lines) {
    return OrderFile.of(List.of(lines)).faults().stream().map(Fault::toString).toList();
  }

  @Test
  void readsARow() {
    OrderFile file = OrderFile.of(List.of(HEADER, ROW));
    assertEquals(List.of(), file.faults());
    HingeOrder order = file.orders().get(0);
    assertEquals("Chapel cupboard", order.name());
    assertEquals(6, order.straps());
    assertEquals(Measures.millimetres(5), order.pin());
    assertEquals(Measures.millimetres(5.2), order.barrel().insideDiameter());
  }

  @Test
  void takesTheColumnsInAnyOrderAndAByteOrderMark() {
    OrderFile file =
        OrderFile.of(
            List.of(
                "\uFEFFsets,graduation,name,bar width,bar thickness,pin,clearance,leaf length,tip"
                    + " width,tip thickness,taper length",
                "3,0.5 mm,\"Cupboard, small\",1 1/2\",1/4\",3/8\",0 mm,12\",3/4\",1/8\",6\""));
    assertEquals(List.of(), file.faults());
    assertEquals("Cupboard, small", file.orders().get(0).name());
  }

  @Test
  void tellsAWrongHeader() {
    List<String> faults = faults(HEADER.replace("pin", "pinn"), ROW);
    assertEquals(2, faults.size());
    assertTrue(faults.get(0).startsWith("line 1, pinn: is no column; accepted: name, bar width"));
    assertTrue(faults.get(1).startsWith("line 1, pin: is missing in the header; accepted: all of"));
    assertTrue(
        faults(HEADER + ",pin", ROW).get(0).startsWith("line 1, pin: stands twice in the header"));
  }

  @Test
  void tellsAnOrderOfNothing() {
    assertEquals(
        List.of("line 2: nothing is ordered; accepted: a row for each kind of hinge set"),
        faults("# only a remark", HEADER));
    assertTrue(faults("# only a remark").get(0).startsWith("line 1: there is no header"));
    assertTrue(faults().get(0).startsWith("line 1: there is no header"));
  }

  @Test
  void tellsSizesThatAreNone() {
    assertEquals(
        List.of(
            "line 2, bar width: 0 mm is too little; accepted: more than zero",
            "line 2, clearance: -0.2 mm is too little; accepted: zero or more"),
        faults(HEADER, ROW.replace("25 mm", "0 mm").replace("0.2 mm", "-0.2 mm")));
    assertEquals(
        List.of("line 2, name: there is none; accepted: any text that names the job"),
        faults(HEADER, ROW.replace("Chapel cupboard", "")));
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
