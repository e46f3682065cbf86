package org.hammerscale.checking;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Reads a file of outcomes that estimates are scored by: comment lines, a header, rows. They are no
 * check values, since what one smith took is no answer that another must give.
 */
public final class ScoredFile {
  /** One outcome: its fields by the names of the header. */
  public record Row(Map<String, String> fields) {
    public String text(String column) {
      return Objects.requireNonNull(fields.get(column), column);
    }
  }

  private ScoredFile() {}

  public static List<Row> read(String name) {
    List<Row> cases = new ArrayList<>();
    List<String> header = null;
    for (String line : lines(name)) {
      if (line.startsWith("#")) {
        continue;
      }
      List<String> fields = CsvTable.fields(line);
      if (header == null) {
        header = fields;
        continue;
      }
      if (fields.size() != header.size()) {
        throw new IllegalStateException(name + ": not as many fields as the header: " + line);
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < header.size(); i++) {
        row.put(header.get(i), fields.get(i));
      }
      cases.add(new Row(row));
    }
    return cases;
  }

  /** The comment lines at the top, without their marks. */
  public static List<String> remarks(String name) {
    return lines(name).stream()
        .filter(line -> line.startsWith("#"))
        .map(line -> line.substring(1).strip())
        .toList();
  }

  private static List<String> lines(String name) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(ScoredFile.class.getResourceAsStream(name), name),
                StandardCharsets.UTF_8))) {
      return reader.lines().filter(line -> !line.isBlank()).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
