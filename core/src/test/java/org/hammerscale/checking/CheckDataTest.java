package org.hammerscale.checking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The files of check values keep to the schema that their page describes. */
class CheckDataTest {
  private static final Path FOLDER = Path.of("src/main/resources/org/hammerscale/checking");
  private static final String HEADER =
      "id,question,inputs,expected,unit,tolerance,source,locator,kind,note";

  /** A number as any language reads it, and a unit behind one blank. */
  private static final Pattern NUMBER =
      Pattern.compile("-?\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?(?: (\\S.*))?");

  private static List<CheckValue> all() {
    return CheckTopic.all().stream().flatMap(CheckTopic::values).toList();
  }

  @Test
  void everyFileIsInTheIndex() throws IOException {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      Set<String> names =
          files
              .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
              .filter(name -> name.endsWith(".csv") && !name.equals("topics.csv"))
              .map(name -> name.substring(0, name.length() - ".csv".length()))
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(names, new TreeSet<>(CheckTopic.all().stream().map(CheckTopic::name).toList()));
    }
  }

  @Test
  void everyFileHasTheOneHeader() throws IOException {
    for (CheckTopic topic : CheckTopic.all()) {
      List<String> lines = Files.readAllLines(FOLDER.resolve(topic.name() + ".csv"));
      assertEquals(HEADER, lines.get(0), topic.name());
      assertTrue(
          lines.stream().noneMatch(line -> line.isBlank() || line.startsWith("#")), topic.name());
      for (String line : lines) {
        assertEquals(10, CsvTable.fields(line).size(), topic.name() + ": " + line);
      }
      assertFalse(topic.title().isBlank() || topic.remarks().isBlank(), topic.name());
    }
  }

  @Test
  void thereAreManyAndEachSaysWhoAndHow() {
    List<CheckValue> all = all();
    assertTrue(all.size() >= 1000, () -> "values: " + all.size());
    for (CheckValue value : all) {
      assertFalse(value.source().isBlank() || value.question().isBlank(), value::toString);
      assertFalse(value.kind().toString().isEmpty(), value::toString);
      assertTrue(value.tolerance() >= 0, value::toString);
      assertTrue(Double.isFinite(value.expected()), value::toString);
      assertFalse(value.unit().isEmpty(), value::toString);
    }
  }

  @Test
  void noTwoOfATopicAreAlike() {
    for (CheckTopic topic : CheckTopic.all()) {
      Set<String> seen = new HashSet<>();
      topic.values().forEach(value -> assertTrue(seen.add(value.id()), value::toString));
    }
  }

  /** What begins as a number is one, with its unit; so a reader in any language can tell. */
  @Test
  void inputsAreNumbersWithUnitsOrWords() {
    Set<String> units = new TreeSet<>();
    for (CheckValue value : all()) {
      assertEquals(
          value.inputs().size(), new HashSet<>(value.inputs()).size(), () -> "twice: " + value);
      for (String name : value.inputs()) {
        String text = value.text(name);
        assertEquals(name.strip(), name, value::toString);
        assertFalse(text.isBlank(), () -> value + ": " + name);
        Matcher number = NUMBER.matcher(text);
        if (text.matches("[-+−.\\d].*")) {
          assertTrue(number.matches(), () -> value + ": " + name + " = " + text);
          if (number.group(1) != null) {
            units.add(number.group(1));
          }
        }
      }
    }
    assertEquals(
        Set.of(
            "J/(kg K)",
            "MPa",
            "N",
            "W/(m² K)",
            "ft",
            "in",
            "kg/m³",
            "ksi",
            "lb/ft³",
            "lbf",
            "m",
            "min",
            "mm",
            "m²",
            "°",
            "°C"),
        units,
        "units of inputs: name a new one on the page");
  }

  @Test
  void findsATopicByName() {
    CheckTopic swing = CheckTopic.named("hinge/swing");
    assertEquals("hinge/swing: Swing of hinges", swing.toString());
    assertEquals(
        "name must be that of a topic such as hinge/swing, was swing;"
            + " take one of CheckTopic.all()",
        assertThrows(IllegalArgumentException.class, () -> CheckTopic.named("swing")).getMessage());
  }

  @Test
  void quotesAreReadAsOthersWriteThem() {
    assertEquals(
        List.of("1/4\" pin", "a, b", "", "c"), CsvTable.fields("\"1/4\"\" pin\",\"a, b\",,c"));
  }
}
