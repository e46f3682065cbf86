package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The card in a real browser, and on paper as far as a PDF is that; skipped without the tools. */
class BenchCardBrowserTest {
  /** A path of the PDF drawn as SVG, and how it is laid on the page. */
  private static final Pattern PATH =
      Pattern.compile(" d=\"(M [^\"]*)\" transform=\"matrix\\(([-0-9.]+), *([-0-9.]+),");

  @TempDir Path folder;

  private Path written(String card) throws IOException {
    return Files.writeString(folder.resolve("card.html"), card);
  }

  @Test
  void loadsWithoutErrors() throws IOException, InterruptedException {
    String loaded = Browser.load(folder, written(BenchCardTest.sample()));
    assertTrue(loaded.contains("<h2>Walled-garden gate: left hand, 2 pairs</h2>"), loaded);
    String log = Files.readString(folder.resolve("errors.txt"));
    assertFalse(log.contains("CONSOLE"), log);
  }

  @Test
  void printsAFrontOnAPageAndItsBarsTrue() throws IOException, InterruptedException {
    List<String> inches = new ArrayList<>(); // the gate alone, on Letter
    List<String> hasp = new ArrayList<>(); // and a hasp for it
    String kind = "";
    for (String line : JobSheet.sampleLines()) {
      kind = line.startsWith("make") ? line : kind;
      String[] cells = line.split(",", 3);
      boolean isRow = !line.startsWith("#") && !line.isBlank() && !line.startsWith("make");
      if (kind.endsWith("strap hinges")) {
        inches.add(isRow ? cells[0] + "," + cells[1] : line);
      } else if (kind.endsWith("hasp")) {
        hasp.add(line.replace("Chapel cupboard", "Walled-garden gate"));
      }
    }
    printsTrue(BenchCardTest.sample(), 8, 3);
    printsTrue(BenchCardTest.card(inches), 1, 1);
    inches.addAll(hasp);
    printsTrue(BenchCardTest.card(inches), 2, 1);
  }

  private void printsTrue(String card, int jobs, int hinges)
      throws IOException, InterruptedException {
    Path pdf = Browser.print(folder, written(card));
    int fronts = 0;
    List<Double> bars = new ArrayList<>();
    for (int page = 1; ; page++) {
      String number = String.valueOf(page);
      String words = Browser.run(folder, "pdftotext", "-f", number, "-l", number, pdf + "", "-");
      if (words.isBlank()) {
        break;
      }
      boolean begins = words.contains("\nCUT ");
      assertEquals(begins, words.contains("Reasons overleaf"), "page " + page + ": " + words);
      fronts += begins ? 1 : 0;
      if (words.contains("scale 1 : 1")) {
        bars.addAll(checkBars(pdf, number));
      }
    }
    assertEquals(jobs, fronts, "each on a page of its own");
    assertTrue(bars.size() >= 3 * hinges, "check bars: " + bars);
    bars.forEach(bar -> assertEquals(100.0, bar, 0.2));
  }

  /** The lengths on paper of bars with eleven strokes, in millimetres. */
  private List<Double> checkBars(Path pdf, String page) throws IOException, InterruptedException {
    Path svg = folder.resolve("page.svg");
    Browser.run(folder, "pdftocairo", "-svg", "-f", page, "-l", page, pdf + "", svg + "");
    List<Double> lengths = new ArrayList<>();
    Matcher paths = PATH.matcher(Files.readString(svg));
    while (paths.find()) {
      String[] lines = paths.group(1).split(" ?M ", -1);
      if (lines.length == 13) { // nothing before the first, then the bar and its strokes
        String[] bar = lines[1].replace("L ", "").split(" ", -1);
        if (!bar[1].equals(bar[3])) {
          continue; // as many lines of hatching
        }
        double along = Double.parseDouble(bar[2]) - Double.parseDouble(bar[0]);
        double scale =
            Math.hypot(Double.parseDouble(paths.group(2)), Double.parseDouble(paths.group(3)));
        lengths.add(along * scale * 25.4 / 72);
      }
    }
    return lengths;
  }
}
