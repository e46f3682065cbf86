package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every example of the README, of the Javadoc and of its overview as it would be typed into
 * JShell. Behind a line stands what it prints, after {@code //}; a remark may follow after two
 * spaces. What it prints on several lines stands in a block of its own below the example.
 */
class SnippetsTest {
  /** What JShell is started with, so that the examples need no imports of their own. */
  private static final Path STARTUP = Path.of("src/main/jshell/shop.jsh");

  private static final Path UNITS = Path.of("../units/src/main/java");
  private static final Path CORE = Path.of("../core/src/main/java");

  /** An example in a comment tells a story; a list of calls belongs in a test. */
  private static final int MOST_LINES = 8;

  @Test
  void examplesInCommentsTellAStory() throws IOException {
    List<String> longer =
        Stream.of(Snippets.ofSources(UNITS), Snippets.ofSources(CORE))
            .flatMap(List::stream)
            .filter(snippet -> lengthOf(snippet) > MOST_LINES)
            .map(snippet -> snippet + " has " + lengthOf(snippet) + " lines")
            .toList();
    assertEquals(List.of(), longer, "examples of more than " + MOST_LINES + " lines");
  }

  /** Imports and blank lines tell nothing. */
  private static long lengthOf(Snippets.Snippet snippet) {
    return snippet.lines().stream()
        .filter(line -> !line.isBlank() && !line.startsWith("import "))
        .count();
  }

  @TestFactory
  Stream<DynamicTest> examplesPrintWhatTheySay() throws IOException {
    List<Snippets.Snippet> readme = Snippets.ofMarkdown(Path.of("../README.md"));
    List<Snippets.Snippet> units = Snippets.ofSources(UNITS);
    List<Snippets.Snippet> core = Snippets.ofSources(CORE);
    List<Snippets.Snippet> overview =
        List.of(Snippets.ofWalk(Path.of("../core/src/main/javadoc/overview.html")));
    List<Snippets.Snippet> lists =
        Snippets.ofMarkdown(Path.of("src/test/resources/org/hammerscale/examples/every-answer.md"));
    assertFalse(
        lists.isEmpty() || readme.isEmpty() || units.isEmpty() || core.isEmpty(),
        "an example is missing");
    return Stream.of(readme, overview, lists, units, core)
        .flatMap(List::stream)
        .map(snippet -> DynamicTest.dynamicTest(snippet.where(), () -> run(snippet)));
  }

  private static void run(Snippets.Snippet snippet) throws IOException {
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    PrintStream console = System.out;
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      evaluateAll(snippet);
    } finally {
      System.setOut(console);
    }
    assertEquals(
        snippet.printed(), printed.toString(StandardCharsets.UTF_8).lines().toList(), "printed");
  }

  private static void evaluateAll(Snippets.Snippet snippet) throws IOException {
    try (JShell shell = JShell.builder().executionEngine("local").build()) {
      String classPath =
          System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
      Stream.of(classPath.split(File.pathSeparator, -1)).forEach(shell::addToClasspath);
      for (String line : Files.readAllLines(STARTUP)) {
        if (!line.startsWith("/")) { // a command of the prompt, or a remark
          evaluate(shell, snippet, line, "");
        }
      }
      StringBuilder statement = new StringBuilder();
      int compared = 0;
      for (String line : snippet.lines()) {
        int comment = line.indexOf("//");
        statement.append(comment < 0 ? line : line.substring(0, comment)).append('\n');
        String expected = comment < 0 ? "" : line.substring(comment + 2).strip().split("  ", 2)[0];
        CompletionInfo info = shell.sourceCodeAnalysis().analyzeCompletion(statement.toString());
        if (statement.toString().isBlank() || !info.completeness().isComplete()) {
          continue;
        }
        evaluate(shell, snippet, statement.toString().strip(), expected);
        compared += expected.isEmpty() ? 0 : 1;
        statement.setLength(0);
      }
      assertEquals("", statement.toString().strip(), "an unfinished statement");
      assertTrue(compared > 0 || !snippet.printed().isEmpty(), "an example says what it prints");
    }
  }

  private static void evaluate(
      JShell shell, Snippets.Snippet snippet, String code, String expected) {
    SnippetEvent last = null;
    for (String rest = code; !rest.isEmpty(); ) {
      CompletionInfo info = shell.sourceCodeAnalysis().analyzeCompletion(rest);
      for (SnippetEvent event : shell.eval(info.source())) {
        if (event.status() == Status.REJECTED || event.exception() != null) {
          fail(snippet + ": " + code + "\n" + problem(shell, event));
        }
        last = event.causeSnippet() == null ? event : last;
      }
      rest = info.remaining();
    }
    if (!expected.isEmpty()) {
      assertEquals(expected, last == null ? "nothing" : last.value(), () -> snippet + ": " + code);
    }
  }

  private static String problem(JShell shell, SnippetEvent event) {
    StringBuilder text = new StringBuilder();
    shell.diagnostics(event.snippet()).forEach(d -> text.append(d.getMessage(null)).append('\n'));
    return event.exception() == null ? text.toString() : text.append(event.exception()).toString();
  }
}
