package org.hammerscale.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hammerscale.internal.pen.FontMetric;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The font metric held against what a browser sets; skipped without one, or without the font. */
class RenderedTextTest {
  private static final List<String> TEXTS =
      List.of(
          "1 1/2 in × 1/4 in flat, mild steel",
          "0123456789",
          "The quick brown fox jumps over the lazy dog",
          "ABCDEFGHIJKLMNOPQRSTUVWXYZ",
          "Ø 26.5 mm ± 0.5 mm − 3°",
          "as far open as it goes (257.9°)");

  @TempDir Path folder;

  @Test
  void isTheWidthThatABrowserSets() throws IOException, InterruptedException {
    String path = System.getenv("PATH");
    boolean found =
        Arrays.stream(path.split(File.pathSeparator, -1))
            .anyMatch(place -> Files.isExecutable(Path.of(place, "chromium")));
    assumeTrue(found, "chromium is not on this machine: no text is measured");
    StringBuilder page = new StringBuilder("<meta charset=\"utf-8\"><body><script>");
    page.append("const c = document.createElement('canvas').getContext('2d');");
    page.append("function wide(f, t) { c.font = '1000px ' + f; return c.measureText(t).width; }");
    page.append("const mono = wide('monospace', 'iiiWWW');");
    page.append("const own = wide(\"'Liberation Sans', monospace\", 'iiiWWW');");
    page.append("let out = '[' + (mono === own ? 'absent' : 'present') + ']';");
    for (String text : TEXTS) {
      page.append("out += '[' + wide(\"").append(FontMetric.FAMILY).append("\", '");
      page.append(text).append("') + ']';");
    }
    page.append("document.body.textContent = out;</script>");
    Path file = Files.writeString(folder.resolve("text.html"), page);
    Path output = folder.resolve("output.txt");
    Process browser =
        new ProcessBuilder(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + folder.resolve("profile"),
                "--dump-dom",
                file.toUri().toString())
            .redirectOutput(output.toFile())
            .redirectError(folder.resolve("errors.txt").toFile())
            .start();
    assertTrue(browser.waitFor(2, TimeUnit.MINUTES), "the browser did not come to an end");
    Matcher told = Pattern.compile("\\[([^\\]]+)\\]").matcher(Files.readString(output));
    assertTrue(told.find(), "nothing was measured");
    assumeTrue(told.group(1).equals("present"), "Liberation Sans is not on this machine");
    for (String text : TEXTS) {
      assertTrue(told.find(), text);
      double set = Double.parseDouble(told.group(1));
      assertEquals(set, FontMetric.width(text, 1000), 0.02 * set, text);
    }
  }
}
