package org.hammerscale.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hammerscale.checking.CheckTopic;
import org.hammerscale.checking.CheckValue;
import org.hammerscale.working.Source;
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

  @Test
  void pageIsUpToDate() throws IOException {
    String expected = page();
    String committed = Files.exists(PAGE) ? Files.readString(PAGE) : "";
    if (!committed.equals(expected)) {
      Files.writeString(PAGE, expected);
    }
    assertEquals(expected, committed, "VALIDATION.md was stale and has been written anew");
  }

  /** A value beside our answer, which is worked out once. */
  private record Row(CheckValue value, double computed) {
    double difference() {
      return computed - value.expected();
    }

    double shareOfAllowed() {
      double off = Math.abs(difference());
      return off == 0 ? 0 : off / value.tolerance(); // nothing of nothing is nothing
    }

    String line() {
      // The digits that the source prints stand in the value's words.
      String[] said = value.toString().substring(value.id().length() + 2).split(" ± ", 2);
      String locator = value.locator().isEmpty() ? "" : ", " + value.locator();
      return String.join(
              " | ",
              "| " + value.id(),
              said[0],
              digits(computed, 10),
              Math.abs(difference()) < 1e-9 ? "0" : digits(difference(), 2),
              said[1],
              value.source() + locator,
              value.kind().toString())
          + " |\n";
    }
  }

  private record Topic(CheckTopic topic, List<Row> rows) {
    static Topic of(ValidationTopic topic) {
      return new Topic(
          topic.topic(),
          topic.cases().stream()
              .map(c -> new Row(c.value(), topic.answer().applyAsDouble(c)))
              .toList());
    }

    double mostUsed() {
      return rows.stream().mapToDouble(Row::shareOfAllowed).max().orElseThrow();
    }

    List<Row> shown() {
      return rows.size() <= ROWS_READ_WITH_PATIENCE
          ? rows
          : rows.stream()
              .sorted(Comparator.comparingDouble(row -> -row.shareOfAllowed()))
              .limit(ROWS_SHOWN_OF_MORE)
              .toList();
    }

    String part() {
      StringBuilder part = new StringBuilder();
      part.append("\n## ").append(topic.title()).append("\n\n");
      part.append(topic.remarks()).append("\n");
      Set<Row> shown = new HashSet<>(shown());
      if (shown.size() < rows.size()) {
        part.append("\nThe file has ").append(rows.size()).append(" rows. Here stand the ");
        part.append(shown.size())
            .append(" that differ most from the source, for what is allowed.\n");
      }
      part.append("\n| case | source says | we say | difference | allowed | source | kind |\n")
          .append("|---|---|---|---|---|---|---|\n");
      rows.stream().filter(shown::contains).forEach(row -> part.append(row.line()));
      List<String> notes =
          rows.stream()
              .filter(row -> !row.value.note().isEmpty())
              .map(row -> "- *" + row.value.id() + "*: " + row.value.note() + "\n")
              .toList();
      return notes.isEmpty()
          ? part.toString()
          : part.append("\nNotes:\n\n").append(String.join("", notes)).toString();
    }
  }

  private static String page() {
    List<Topic> topics = ValidationTopic.all().stream().map(Topic::of).toList();
    StringBuilder page = new StringBuilder();
    page.append("# Validation\n\n")
        .append("Values of other people beside our own. This page is written by a test, which")
        .append(" fails when it is stale; the\nrows are in")
        .append(" `src/main/resources/org/hammerscale/checking`. *Kind* says how the value is")
        .append(" known: read in the\npublished page, a standard quoted from memory, computed by")
        .append(" another formula, or common practice.\n")
        .append(contents(topics));
    topics.forEach(topic -> page.append(topic.part()));
    page.append(PrintedPieces.page());
    page.append(CountedHeats.page());
    return page.toString();
  }

  /** The topics, how many rows of which kind each has, and the row nearest to its limit. */
  private static String contents(List<Topic> topics) {
    StringBuilder table = new StringBuilder();
    table
        .append(
            "\nA row may differ from its source by what is *allowed*, as a rule one unit of the")
        .append(" last printed digit. *Most used* is\nthe greatest part of it that any row of the")
        .append(" topic takes up, rounded up.\n\n")
        .append("| topic | rows | read | from memory | computed | common practice | most used |\n")
        .append("|---|--:|--:|--:|--:|--:|--:|\n");
    for (Topic topic : topics) {
      String title = topic.topic.title();
      table.append(line("[" + title + "](#" + anchor(title) + ")", topic.rows, topic.mostUsed()));
    }
    List<Row> all = topics.stream().flatMap(topic -> topic.rows.stream()).toList();
    double mostUsed = topics.stream().mapToDouble(Topic::mostUsed).max().orElseThrow();
    return table
        .append(line("all", all, mostUsed))
        .append(
            "\nEstimates are scored instead: [printed pieces](#printed-pieces) and"
                + " [counted heats](#heats-counted).\n")
        .toString();
  }

  private static String line(String name, List<Row> rows, double mostUsed) {
    StringBuilder line = new StringBuilder("| " + name + " | " + rows.size());
    for (Source.Kind kind : Source.Kind.values()) { // in the order of the columns
      long ofKind = rows.stream().filter(row -> row.value.kind() == kind).count();
      line.append(" | ").append(ofKind == 0 ? "" : ofKind);
    }
    BigDecimal percent = new BigDecimal(mostUsed * 100).setScale(1, RoundingMode.CEILING);
    return line + " | " + (mostUsed == 0 ? "0" : percent.toPlainString()) + " % |\n";
  }

  /** What a heading is linked by: its words in small letters, with hyphens between. */
  private static String anchor(String title) {
    return title.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-');
  }

  private static String digits(double value, int digits) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
