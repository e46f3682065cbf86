package org.hammerscale.examples;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hammerscale.cutting.Rack;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.SectionText;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * A rack file: what lies in the rack and what can be bought, all of mild steel. A row a length,
 * with the columns {@code section, length, count, price}:
 *
 * <pre>
 * # section, length, count, price of one bar
 * section, length, count, price
 * 40 mm x 6 mm flat, 6 m, any, 31.50
 * 40 mm x 6 mm flat, 3 m, 4, 17.25
 * 40 mm x 6 mm flat, 1500 mm, 2,
 * </pre>
 *
 * <p>A row with a price is bars to buy, as many as the count says or {@code any}; one without is
 * offcuts. Lines that begin with {@code #} are remarks. All faults are found in one reading.
 */
final class RackFile {
  /** Fields without the blanks around them, remarks left out. */
  static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setIgnoreSurroundingSpaces(true)
          .setTrim(true)
          .get();

  private static final List<String> HEADER = List.of("section", "length", "count", "price");

  /** The file of an empty rack. */
  static final String NOTHING = String.join(", ", HEADER);

  private Rack rack = Rack.empty();
  private final List<Fault> faults = new ArrayList<>();

  private RackFile() {}

  /**
   * Reads it to its end.
   *
   * @throws IOException if the reader does
   */
  static RackFile of(Reader reader) throws IOException {
    RackFile file = new RackFile();
    try (CSVParser parser = FORMAT.parse(reader)) {
      boolean first = true;
      for (CSVRecord row : parser) {
        int line = (int) parser.getCurrentLineNumber();
        List<String> fields = new ArrayList<>(row.toList());
        // Some programs begin a file with a byte order mark.
        fields.set(0, fields.get(0).replace("\uFEFF", "").strip());
        if (!first) {
          file.row(line, fields);
        } else if (!fields.equals(HEADER)) {
          file.faults.add(new Fault(line, "", "is no header; accepted: " + NOTHING));
        }
        first = false;
      }
      if (first) {
        file.faults.add(new Fault(1, "", "is missing; accepted: " + NOTHING));
      }
    } catch (UncheckedIOException e) {
      // How the parser's iterator tells of a quotation mark that is not closed.
      file.faults.add(new Fault(0, "", "cannot be read: " + e.getMessage()));
    }
    return file;
  }

  /** What was read; to be used only if there are no faults. */
  Rack rack() {
    return rack;
  }

  List<Fault> faults() {
    return faults;
  }

  private void row(int line, List<String> fields) {
    if (fields.size() != HEADER.size()) {
      faults.add(new Fault(line, "", "has " + fields.size() + " fields; accepted: " + NOTHING));
      return;
    }
    String item = "section";
    String accepted = SectionText.ACCEPTED;
    try {
      Bar bar = Bar.of(SectionText.parse(fields.get(0)), Material.MILD_STEEL);
      item = "length";
      accepted = "a length with its unit, as 6 m or 20 ft";
      Measure<Length> length = Measures.length(fields.get(1));
      item = "count";
      accepted = "a number of offcuts, or of bars, or any";
      boolean offcut = fields.get(3).isEmpty();
      int count = fields.get(2).equals("any") && !offcut ? 0 : number(fields.get(2));
      item = "price";
      accepted = "what one bar costs, as 31.50, or nothing for an offcut";
      rack = offcut ? rack.offcuts(bar, length, count) : priced(bar, length, count, fields.get(3));
    } catch (IllegalArgumentException e) {
      faults.add(new Fault(line, item, e.getMessage() + "; accepted: " + accepted));
    }
  }

  private Rack priced(Bar bar, Measure<Length> length, int count, String text) {
    if (!text.matches("[0-9]{1,9}(\\.[0-9]{1,4})?")) {
      throw new IllegalArgumentException("\"" + text + "\" is no price");
    }
    BigDecimal price = new BigDecimal(text);
    return count == 0 ? rack.buying(bar, length, price) : rack.buying(bar, length, price, count);
  }

  private static int number(String text) {
    // Four digits at most, so that the number cannot overflow.
    int number = text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : 0;
    if (number == 0) {
      throw new IllegalArgumentException("\"" + text + "\" is no count");
    }
    return number;
  }
}
