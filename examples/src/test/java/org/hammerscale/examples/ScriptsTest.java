package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import jdk.jshell.tool.JavaShellToolBuilder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The scripts run in the JShell tool, as the README starts it, and print what lies beside this
 * test. If a change of the library changes their answers, look at the difference, then keep it.
 */
class ScriptsTest {
  private static final Path FOLDER = Path.of("src/main/jshell");
  private static final Path PRINTED =
      Path.of("src/test/resources/org/hammerscale/examples/scripts");

  @ParameterizedTest
  @ValueSource(strings = {"evening", "bar_sizes", "swing"})
  void printsWhatItDid(String name) throws Exception {
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    ByteArrayOutputStream complaints = new ByteArrayOutputStream();
    String classPath =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    PrintStream console = System.out;
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try (PrintStream tool = new PrintStream(complaints, true, StandardCharsets.UTF_8)) {
      JavaShellToolBuilder.builder()
          .persistence(new HashMap<>())
          .in(new ByteArrayInputStream(new byte[0]), null)
          .out(tool)
          .run(
              "--execution",
              "local",
              "--class-path",
              classPath,
              "--feedback",
              "shop",
              FOLDER.resolve("shop.jsh").toString(),
              FOLDER.resolve(name + ".jsh").toString());
    } finally {
      System.setOut(console);
    }
    assertEquals("shop>", complaints.toString(StandardCharsets.UTF_8).strip(), "complaints");
    Path file = PRINTED.resolve(name + ".txt");
    String expected = Files.exists(file) ? Files.readString(file) : "";
    String actual = String.join("\n", printed.toString(StandardCharsets.UTF_8).lines().toList());
    assertEquals(expected.strip(), actual.strip());
  }
}
