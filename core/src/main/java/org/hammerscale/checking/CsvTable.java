package org.hammerscale.checking;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A table of this package: CSV by RFC 4180, in UTF-8, a header first, and no field of two lines.
 */
final class CsvTable {
  private CsvTable() {}

  /** The rows behind the header; each is split as the stream comes to it. */
  static Stream<List<String>> rows(String name) {
    return text(name).lines().skip(1).map(CsvTable::fields);
  }

  private static String text(String name) {
    try (InputStream file =
        Objects.requireNonNull(CsvTable.class.getResourceAsStream(name + ".csv"), name)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a damaged jar
    }
  }

  /** Commas part fields, but not between quotation marks; two marks there are one. */
  static List<String> fields(String line) {
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
        field.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        fields.add(field.toString());
        field.setLength(0);
      } else {
        field.append(c);
      }
    }
    fields.add(field.toString());
    return fields;
  }
}
