package org.hammerscale.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Finds the examples that readers are shown: in Java code blocks of a page, in Javadoc. */
final class Snippets {
  private Snippets() {}

  /** One example: where it stands and its lines. */
  record Snippet(String where, List<String> lines) {
    @Override
    public String toString() {
      return where;
    }
  }

  /** The blocks marked {@code jshell} in a Markdown page. */
  static List<Snippet> ofPage(Path page) throws IOException {
    return between(page, "```jshell", "```", line -> line);
  }

  /** The preformatted code blocks in the comments of all sources under a folder. */
  static List<Snippet> ofSources(Path folder) throws IOException {
    List<Snippet> snippets = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        snippets.addAll(
            between(file, "<pre>{@code", "}</pre>", line -> line.replaceFirst("^ *\\* ?", "")));
      }
    }
    return snippets;
  }

  private static List<Snippet> between(
      Path file, String open, String close, UnaryOperator<String> clean) throws IOException {
    List<Snippet> snippets = new ArrayList<>();
    List<String> lines = null;
    int number = 0;
    int start = 0;
    for (String line : Files.readAllLines(file)) {
      number++;
      if (lines == null && line.contains(open)) {
        lines = new ArrayList<>();
        start = number;
      } else if (lines != null && line.contains(close)) {
        snippets.add(new Snippet(file.getFileName() + ":" + start, List.copyOf(lines)));
        lines = null;
      } else if (lines != null) {
        lines.add(clean.apply(line));
      }
    }
    if (lines != null) {
      throw new IllegalStateException(file + ": example from line " + start + " has no end");
    }
    return snippets;
  }
}
