package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Types the other names of a thing into the search box of the Javadoc: each word of {@code
 * search-words.csv} must lead to its type. The index is the one that Javadoc writes from the
 * sources of both modules.
 */
class SearchWordsTest {
  private static final Path WORDS =
      Path.of("src/test/resources/org/hammerscale/examples/search-words.csv");

  /** One entry of the index: {@code "l"} is the word, {@code "u"} the page that it leads to. */
  private static final Pattern ENTRY =
      Pattern.compile("\\{\"l\":\"([^\"]*)\"[^}]*\"u\":\"[^/\"]*/([^\"#]*)\\.html#[^\"]*\"");

  /** Every index tag in lower case, with the types whose pages it leads to. */
  private static final Map<String, Set<String>> FOUND = new HashMap<>();

  @BeforeAll
  static void writeTheIndex(@TempDir Path pages) throws IOException {
    String libraries =
        Stream.of(
                System.getProperty(
                        "surefire.test.class.path", System.getProperty("java.class.path"))
                    .split(File.pathSeparator, -1))
            .filter(entry -> entry.endsWith(".jar") && !entry.contains("hammerscale-"))
            .collect(Collectors.joining(File.pathSeparator));
    StringWriter messages = new StringWriter();
    int failed =
        ToolProvider.findFirst("javadoc")
            .orElseThrow()
            .run(
                new PrintWriter(messages),
                new PrintWriter(messages),
                "-d",
                pages.toString(),
                "-quiet",
                "-Xdoclint:none",
                "-encoding",
                "UTF-8",
                "--module-path",
                libraries,
                "--module-source-path",
                "org.hammerscale.units=../units/src/main/java",
                "--module-source-path",
                "org.hammerscale.core=../core/src/main/java",
                "--module",
                "org.hammerscale.units,org.hammerscale.core");
    assertEquals(0, failed, messages::toString);
    Matcher entry = ENTRY.matcher(Files.readString(pages.resolve("tag-search-index.js")));
    while (entry.find()) {
      String type = entry.group(2).replace("org/hammerscale/", "").replace('/', '.');
      FOUND
          .computeIfAbsent(entry.group(1).toLowerCase(Locale.ROOT), word -> new HashSet<>())
          .add(type);
    }
    assertFalse(FOUND.isEmpty(), "the index has no search words");
  }

  @TestFactory
  Stream<DynamicTest> searchWordsLeadToTheirTypes() throws IOException {
    List<String[]> rows =
        Files.readAllLines(WORDS).stream()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .skip(1)
            .map(line -> line.split(",", -1))
            .toList();
    assertFalse(rows.isEmpty(), "the list has no search words");
    return rows.stream()
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row[0],
                    () -> {
                      Set<String> types =
                          FOUND.getOrDefault(row[0].toLowerCase(Locale.ROOT), Set.of());
                      assertTrue(
                          types.contains(row[1]),
                          () ->
                              "\""
                                  + row[0]
                                  + "\" leads to "
                                  + types
                                  + "; write {@index} for it in the class comment of "
                                  + row[1]);
                    }));
  }
}
