package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the pages at the top of the project promise beside their examples: that their links lead
 * somewhere, and that what they show is used.
 */
class PagesTest {
  private static final Path TOP = Path.of("..");
  private static final Pattern LINK = Pattern.compile("\\[([^\\]]*)\\]\\(([^)\\s]+)\\)");
  private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");

  @Test
  void linksLeadSomewhere() throws IOException {
    for (String name : List.of("README.md", "DEVELOPERS.md", "core/VALIDATION.md")) {
      Path page = TOP.resolve(name);
      String text = Files.readString(page);
      List<String> broken =
          links(text)
              .map(link -> link.group(2))
              .filter(to -> !to.startsWith("https://"))
              .filter(
                  to ->
                      to.startsWith("#")
                          ? !headings(text).contains(to.substring(1))
                          : !Files.exists(page.resolveSibling(to)))
              .toList();
      assertEquals(List.of(), broken, name + ": links that lead nowhere");
    }
  }

  @Test
  void linkedTypesStandInTheirOwnFiles() throws IOException {
    List<MatchResult> types =
        links(Files.readString(TOP.resolve("README.md")))
            .filter(link -> link.group(2).endsWith(".java"))
            .toList();
    assertFalse(types.isEmpty(), "the README links to no type");
    for (MatchResult type : types) {
      assertEquals(
          type.group(1),
          "`" + Path.of(type.group(2)).getFileName().toString().replace(".java", "") + "`");
    }
  }

  /** The test in the README is one that runs, in a project outside this build. */
  @Test
  void theTestOfAnotherToolIsOneThatRuns() throws IOException {
    String test =
        Files.readString(
            Path.of(
                "src/it/class-path-consumer/src/test/java/hammerscale/consumer",
                "OtherProgramTest.java"));
    String shown = test.substring(test.indexOf("class OtherProgramTest"));
    assertTrue(Files.readString(TOP.resolve("README.md")).contains(shown), shown);
    assertTrue(test.lines().count() < 25, "short enough to read");
  }

  private static Stream<MatchResult> links(String text) {
    return LINK.matcher(text).results();
  }

  private static List<String> headings(String text) {
    return HEADING
        .matcher(text)
        .results()
        .map(
            h ->
                h.group(1)
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[^\\p{L}\\p{N} -]", "")
                    .replace(' ', '-'))
        .toList();
  }
}
