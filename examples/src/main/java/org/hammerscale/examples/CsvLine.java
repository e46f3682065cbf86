package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits a line at its commas. A field that begins with a quotation mark runs to the closing one
 * and may hold commas; elsewhere the mark is an inch mark, as in {@code 1 1/2"}.
 */
final class CsvLine {
  private CsvLine() {}

  static List<String> fields(String line) {
    List<String> fields = new ArrayList<>();
    int at = 0;
    do {
      StringBuilder field = new StringBuilder();
      at = isQuoted(line, at) ? quoted(line, at, field) : plain(line, at, field);
      fields.add(field.toString().strip());
      at++; // over the comma
    } while (at <= line.length());
    return fields;
  }

  private static boolean isQuoted(String line, int at) {
    return line.substring(at).stripLeading().startsWith("\"");
  }

  private static int plain(String line, int at, StringBuilder field) {
    int comma = line.indexOf(',', at);
    int end = comma < 0 ? line.length() : comma;
    field.append(line, at, end);
    return end;
  }

  private static int quoted(String line, int at, StringBuilder field) {
    int next = line.indexOf('"', at) + 1;
    while (next < line.length()) {
      char c = line.charAt(next++);
      if (c != '"') {
        field.append(c);
      } else if (next < line.length() && line.charAt(next) == '"') {
        field.append('"'); // two marks stand for one
        next++;
      } else {
        break;
      }
    }
    return plain(line, next, field);
  }
}
