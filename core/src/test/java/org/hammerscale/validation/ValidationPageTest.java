package org.hammerscale.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Keeps {@code core/VALIDATION.md}, the public page of printed against computed values. If it is
 * stale the test writes it anew and fails: look at the difference, then commit it.
 */
class ValidationPageTest {
  private static final Path PAGE = Path.of("VALIDATION.md");

  /** A topic of more rows shows only those that differ most. */
  private static final int ROWS_READ_WITH_PATIENCE = 90;

  private static final int ROWS_SHOWN_OF_MORE = 40;

  /** How a value can be known, in the order of the columns. */
  private static final List<String> KINDS =
      List.of("read", "standard, from memory", "computed", "common practice");

  @Test
  void pageIsUpToDate() throws IOException {
    String expected = page();
    String committed = Files.exists(PAGE) ? Files.readString(PAGE) : "";
    if (!committed.equals(expected)) {
      Files.writeString(PAGE, expected);
    }
    assertEquals(expected, committed, "VALIDATION.md was stale and has been written anew");
  }

  private static String page() {
    StringBuilder page = new StringBuilder();
    page.append("# Validation\n\n")
        .append("Values of other people beside our own. This page is written by a test, which")
        .append(" fails when it is stale; the\nrows are in")
        .append(" `src/test/resources/org/hammerscale/validation`. *Kind* says how the value is")
        .append(" known: read in the\npublished page, a standard quoted from memory, computed by")
        .append(" another formula, or common practice.\n")
        .append(contents());
    for (ValidationTopic topic : ValidationTopic.all()) {
      page.append("\n## ").append(topic.title()).append("\n\n");
      for (String remark : ValidationFile.remarks(topic.file())) {
        page.append(remark).append("\n");
      }
      List<ValidationCase> shown = shown(topic);
      if (shown.size() < topic.cases().size()) {
        page.append("\nThe file has ")
            .append(topic.cases().size())
            .append(" rows. Here stand the ");
        page.append(shown.size())
            .append(" that differ most from the source, for what is allowed.\n");
      }
      page.append("\n| case | source says | we say | difference | allowed | source | kind |\n")
          .append("|---|---|---|---|---|---|---|\n");
      StringBuilder notes = new StringBuilder();
      for (ValidationCase c : topic.cases()) {
        if (shown.contains(c)) {
          page.append(row(topic, c));
        }
        if (!c.text("note").isEmpty()) {
          notes.append("- *").append(name(c)).append("*: ").append(c.text("note"));
          notes.append("\n");
        }
      }
      if (!notes.isEmpty()) {
        page.append("\nNotes:\n\n").append(notes);
      }
    }
    page.append(PrintedPieces.page());
    page.append(CountedHeats.page());
    return page.toString();
  }

  /** The topics, how many rows of which kind each has, and the row nearest to its limit. */
  private static String contents() {
    StringBuilder table = new StringBuilder();
    table
        .append(
            "\nA row may differ from its source by what is *allowed*, as a rule one unit of the")
        .append(" last printed digit. *Most used* is\nthe greatest part of it that any row of the")
        .append(" topic takes up, rounded up.\n\n")
        .append("| topic | rows | read | from memory | computed | common practice | most used |\n")
        .append("|---|--:|--:|--:|--:|--:|--:|\n");
    List<ValidationTopic> topics = ValidationTopic.all();
    for (ValidationTopic topic : topics) {
      String link = "[" + topic.title() + "](#" + anchor(topic.title()) + ")";
      table.append(line(link, topic.cases(), mostUsed(topic)));
    }
    return table
        .append(
            line(
                "all",
                topics.stream().flatMap(topic -> topic.cases().stream()).toList(),
                topics.stream().mapToDouble(ValidationPageTest::mostUsed).max().orElseThrow()))
        .append(
            "\nEstimates are scored instead: [printed pieces](#printed-pieces) and"
                + " [counted heats](#heats-counted).\n")
        .toString();
  }

  private static String line(String name, List<ValidationCase> cases, double mostUsed) {
    StringBuilder line = new StringBuilder("| " + name + " | " + cases.size());
    int counted = 0;
    for (String kind : KINDS) {
      int rows = (int) cases.stream().filter(c -> c.text("kind").equals(kind)).count();
      line.append(" | ").append(rows == 0 ? "" : rows);
      counted += rows;
    }
    assertEquals(cases.size(), counted, name + ": a row of another kind");
    BigDecimal percent = new BigDecimal(mostUsed * 100).setScale(1, RoundingMode.CEILING);
    return line + " | " + (mostUsed == 0 ? "0" : percent.toPlainString()) + " % |\n";
  }

  private static double mostUsed(ValidationTopic topic) {
    return topic.cases().stream().mapToDouble(c -> shareOfAllowed(topic, c)).max().orElseThrow();
  }

  /** What a heading is linked by: its words in small letters, with hyphens between. */
  private static String anchor(String title) {
    return title.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-');
  }

  private static List<ValidationCase> shown(ValidationTopic topic) {
    List<ValidationCase> cases = topic.cases();
    return cases.size() <= ROWS_READ_WITH_PATIENCE
        ? cases
        : cases.stream()
            .sorted(Comparator.comparingDouble(c -> -shareOfAllowed(topic, c)))
            .limit(ROWS_SHOWN_OF_MORE)
            .toList();
  }

  private static double shareOfAllowed(ValidationTopic topic, ValidationCase c) {
    double difference = Math.abs(topic.answer().applyAsDouble(c) - c.expected());
    return difference == 0 ? 0 : difference / c.tolerance(); // nothing of nothing is nothing
  }

  private static String row(ValidationTopic topic, ValidationCase c) {
    double computed = topic.answer().applyAsDouble(c);
    double difference = computed - c.expected();
    String locator = c.text("locator").isEmpty() ? "" : ", " + c.text("locator");
    return String.join(
            " | ",
            "| " + name(c),
            c.text("expected") + " " + c.text("unit"),
            digits(computed, 10),
            Math.abs(difference) < 1e-9 ? "0" : digits(difference, 2),
            c.text("tolerance"),
            c.text("source") + locator,
            c.text("kind"))
        + " |\n";
  }

  private static String name(ValidationCase c) {
    return c.text("case") + (c.row().containsKey("quantity") ? ", " + c.text("quantity") : "");
  }

  private static String digits(double value, int digits) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
