package org.hammerscale.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Finds the examples that readers are shown: in code blocks of a page, in Javadoc. */
final class Snippets {
  private static final String FENCE = "```";
  private static final String CODE = "<pre>{@code";
  private static final String PRINTED = "<pre>{@literal";
  private static final String END = "}</pre>";

  private Snippets() {}

  /** One example: where it stands, its lines, and what it is said to print besides its values. */
  record Snippet(String where, List<String> lines, List<String> printed) {
    @Override
    public String toString() {
      return where;
    }
  }

  /**
   * The blocks marked {@code jshell} in a Markdown page. A block without a mark is what the example
   * before it prints, unless prose parts them.
   */
  static List<Snippet> ofMarkdown(Path page) throws IOException {
    List<Snippet> snippets = new ArrayList<>();
    Snippet last = null;
    List<String> block = null;
    String mark = "";
    int start = 0;
    int number = 0;
    for (String line : Files.readAllLines(page)) {
      number++;
      if (block == null && line.startsWith(FENCE)) {
        block = new ArrayList<>();
        mark = line.substring(FENCE.length());
        start = number;
      } else if (block != null && line.equals(FENCE)) {
        if (mark.equals("jshell")) {
          last = new Snippet(page.getFileName() + ":" + start, List.copyOf(block), List.of());
          snippets.add(last);
        } else if (mark.isEmpty() && last != null) {
          snippets.set(
              snippets.size() - 1, new Snippet(last.where(), last.lines(), List.copyOf(block)));
          last = null;
        }
        block = null;
      } else if (block != null) {
        block.add(line);
      } else if (!line.isBlank()) {
        last = null;
      }
    }
    checkEnded(page, start, block);
    return snippets;
  }

  /** The preformatted code blocks in the comments of all sources under a folder, each by itself. */
  static List<Snippet> ofSources(Path folder) throws IOException {
    List<Snippet> snippets = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        snippets.addAll(between(file, CODE, line -> line.replaceFirst("^ *\\* ?", "")));
      }
    }
    return snippets;
  }

  /** All code blocks of an HTML page as one example, with all that it prints. */
  static Snippet ofWalk(Path page) throws IOException {
    return new Snippet(page.getFileName().toString(), lines(page, CODE), lines(page, PRINTED));
  }

  private static List<String> lines(Path page, String open) throws IOException {
    return between(page, open, line -> line).stream().flatMap(s -> s.lines().stream()).toList();
  }

  private static List<Snippet> between(Path file, String open, UnaryOperator<String> clean)
      throws IOException {
    List<Snippet> snippets = new ArrayList<>();
    List<String> lines = null;
    int number = 0;
    int start = 0;
    for (String line : Files.readAllLines(file)) {
      number++;
      if (lines == null && line.contains(open)) {
        lines = new ArrayList<>();
        start = number;
      } else if (lines != null && line.contains(END)) {
        snippets.add(new Snippet(file.getFileName() + ":" + start, List.copyOf(lines), List.of()));
        lines = null;
      } else if (lines != null) {
        lines.add(clean.apply(line));
      }
    }
    checkEnded(file, start, lines);
    return snippets;
  }

  private static void checkEnded(Path file, int start, List<String> open) {
    if (open != null) {
      throw new IllegalStateException(file + ": example from line " + start + " has no end");
    }
  }
}
