package org.hammerscale.examples;

import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.hammerscale.cutting.CutList;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RackFileTest {
  static final String HEADER = "section, length, count, price\n";
  private static final Bar STRAP =
      Bar.of(Section.flat(millimetres(40), millimetres(6)), Material.MILD_STEEL);

  private static List<String> faults(String text) throws IOException {
    return RackFile.of(new StringReader(text)).faults().stream().map(Fault::toString).toList();
  }

  @Test
  void readsBarsWithAPriceAndOffcutsWithout() throws IOException {
    RackFile file =
        RackFile.of(
            new StringReader(
                "\uFEFF"
                    + HEADER
                    + "# the long ones\n"
                    + "40 mm x 6 mm flat, 6 m, any, 31.50\n"
                    + "\n"
                    + "40 mm × 6 mm flat, 3 m, 1, 17.25\n"
                    + "40 mm x 6 mm flat, 1500 mm, 1,\n"
                    + "1/2 in round, 20 ft, any, 9\n"));
    assertEquals(List.of(), file.faults());
    CutList list = file.rack().cutList(STRAP, Graduation.MILLIMETRE);
    assertEquals(
        "cut 3 bars, pay 48.75: 1 × 6 m, 1 × 3 m, 1 × 1500 mm offcut; longest leftover 400 mm",
        list.pieces("strap", millimetres(1400), 7).plan().toString());
    assertEquals(
        "rack of 40 mm × 6 mm flat, mild steel; 1/2 in round, mild steel", file.rack().toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "40 mm flat, 6 m, any, 3; line 2, section: \"40 mm flat\" has 1 sizes",
        "40 mm pipe, 6 m, any, 3; line 2, section: \"40 mm pipe\" is no section",
        "40 mm round, long, any, 3; line 2, length:",
        "40 mm round, 6 m, some, 3; line 2, count: \"some\" is no count",
        "40 mm round, 6 m, any,; line 2, count: \"any\" is no count",
        "40 mm round, 6 m, 0, 3; line 2, count: \"0\" is no count",
        "40 mm round, 6 m, any, dear; line 2, price: \"dear\" is no price",
        "40 mm round, 6 m; line 2: has 2 fields"
      })
  void tellsTheLineAndTheItemOfAFault(String row, String fault) throws IOException {
    List<String> faults = faults(HEADER + row + "\n");
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).startsWith(fault), faults.get(0));
    assertTrue(faults.get(0).contains("accepted: "), faults.get(0));
  }

  @Test
  void findsAllFaultsInOneReading() throws IOException {
    assertEquals(2, faults("section, size\n40 mm round, 6 m, any, dear\n").size());
    assertEquals(List.of("line 1: is missing; accepted: " + HEADER.strip()), faults("# none\n"));
    assertEquals(1, faults(HEADER + "\"40 mm round, 6 m, any, 3\n").size());
  }
}
