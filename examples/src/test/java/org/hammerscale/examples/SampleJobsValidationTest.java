package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.hammerscale.examples.order.Order;
import org.hammerscale.heat.Contraction;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.piece.BenchMark;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The sample jobs beside the figures of sample_jobs.py, which computes them without the library.
 */
class SampleJobsValidationTest {
  @TestFactory
  Stream<DynamicTest> everyFigureOfTheSampleIsThatOfTheScript() throws IOException {
    Map<String, Map<String, Measure<Length>>> figures = new LinkedHashMap<>();
    OrderFile sample = OrderFile.of(JobSheet.sampleLines());
    assertEquals(List.of(), sample.faults());
    for (Order order : sample.orders()) {
      // The cupboard is walked through by hand in another test.
      if (order instanceof HingeOrder hinges && !order.name().equals("Chapel cupboard")) {
        figures.put(order.name(), figures(hinges));
      }
    }
    List<CSVRecord> rows = rows();
    assertEquals(
        figures.values().stream().mapToInt(Map::size).sum(), rows.size(), "a figure has no row");
    return rows.stream()
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row.get("job") + ", " + row.get("what"),
                    () -> compare(row, figures.get(row.get("job")).get(row.get("what")))));
  }

  private static void compare(CSVRecord row, Measure<Length> figure) {
    assertTrue(figure != null, "the sheet has no such figure");
    double value = figure.in(row.get("unit").equals("in") ? ShopUnits.INCH : ShopUnits.MILLIMETRE);
    // Rows are printed to a millionth, a fraction of 1/64 in needs exactly so many.
    assertEquals(
        Double.parseDouble(row.get("expected")),
        value,
        Double.parseDouble(row.get("tolerance")) + 5e-7);
  }

  private static List<CSVRecord> rows() throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (InputStream in =
            Objects.requireNonNull(
                SampleJobsValidationTest.class.getResourceAsStream("sample_jobs.csv"));
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords();
    }
  }

  private static Map<String, Measure<Length>> figures(HingeOrder order) {
    Map<String, Measure<Length>> all = new LinkedHashMap<>();
    HingePair pair = order.pair();
    MarkedBar post = order.leaf(Leaf.FIRST).bar();
    all.put("reference", post.reference());
    post.trims().stream()
        .filter(trim -> trim.when() == Trimming.BEFORE_WORK)
        .forEach(trim -> all.put("strip", trim.keptFromReference()));
    leaf(all, "door", order, Leaf.SECOND);
    leaf(all, "post", order, Leaf.FIRST);
    List<KnuckleSlot> door = pair.slotsOf(Leaf.SECOND);
    KnuckleSlot middle = pair.slotsOf(Leaf.FIRST).get(0);
    all.put("joint", pair.knuckles().gap());
    all.put("door slot 1 end", door.get(0).end());
    all.put("door slot 2 start", door.get(1).start());
    all.put("post slot start", middle.start());
    all.put("post slot end", middle.end());
    all.put("floor from end", post.reference().add(pair.slotFloor()));
    Measure<Length> bore = order.driftChoice().leaves();
    Measure<Length> barrel = order.swageChoice().leaves();
    all.put("drift", order.driftChoice().size());
    all.put("bore left", bore);
    all.put("play", pair.bore().clearanceLeftBy(bore));
    all.put("swage", order.swageChoice().size());
    all.put("barrel left", barrel);
    Measure<Temperature> red = order.isInches() ? Measures.fahrenheit(1200) : Measures.celsius(650);
    Contraction dull = Contraction.from(red, pair.strap().material());
    all.put("bore at dull red", dull.hot(bore));
    all.put("barrel at dull red", dull.hot(barrel));
    return all;
  }

  private static void leaf(
      Map<String, Measure<Length>> all, String name, HingeOrder order, Leaf leaf) {
    MarkedBar bar = order.leaf(leaf).bar();
    all.put(name + " cut", bar.cutLength());
    bar.marks().stream()
        .filter(mark -> !mark.isReference())
        .map(BenchMark::fromReference)
        .forEach(place -> all.put(name + " mark", place));
    bar.trims().stream()
        .filter(trim -> trim.when() == Trimming.AFTER_WORK)
        .forEach(trim -> all.put(name + " off at tip", trim.length().likely()));
    HolePlan holes = order.leaf(leaf).holes();
    for (int i = 0; i < holes.countersinks().size(); i++) {
      all.put(name + " hole " + (i + 1), holes.layout().positions().get(i));
      all.put(name + " iron " + (i + 1), holes.countersinks().get(i).land());
    }
  }
}
