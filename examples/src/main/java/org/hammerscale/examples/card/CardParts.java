package org.hammerscale.examples.card;

import java.util.List;
import javax.xml.stream.XMLStreamException;

/** The parts of a sheet as headings, tables and lists of a page, as a screen reader wants them. */
final class CardParts {
  private final HtmlPage page;

  CardParts(HtmlPage page) {
    this.page = page;
  }

  /** Writes them in their order, those of a kind together. */
  void write(List<CardText.Part> all) throws XMLStreamException {
    // A page has margins and drawings instead of lines across and pictures of characters.
    List<CardText.Part> parts =
        all.stream()
            .filter(part -> part.kind() != CardText.Kind.RULE)
            .filter(part -> part.kind() != CardText.Kind.PICTURE)
            .toList();
    for (int from = 0; from < parts.size(); ) {
      int to = from + 1;
      while (to < parts.size() && belongs(parts.get(from), parts.get(to))) {
        to++;
      }
      together(parts.subList(from, to));
      from = to;
    }
  }

  private static boolean belongs(CardText.Part first, CardText.Part next) {
    return first.kind() == next.kind()
        && first.kind() != CardText.Kind.WORKING
        && isTabular(first) == isTabular(next);
  }

  private static boolean isTabular(CardText.Part part) {
    return part.kind() == CardText.Kind.LINE && part.words().size() > 1;
  }

  private void together(List<CardText.Part> parts) throws XMLStreamException {
    CardText.Part first = parts.get(0);
    switch (first.kind()) {
      case LINE -> lines(parts);
      case ENTRY -> page.element("table", () -> entries(parts), "class", "entries");
      case CAUTION ->
          page.element(
              "ul",
              () -> {
                for (CardText.Part part : parts) {
                  page.words("li", part.first());
                }
              },
              "class",
              "cautions");
      case TEXT, BLANK -> {
        for (CardText.Part part : parts) {
          page.words("p", part.first());
        }
      }
      default -> working(first.words());
    }
  }

  private void lines(List<CardText.Part> parts) throws XMLStreamException {
    if (isTabular(parts.get(0))) {
      page.element(
          "table",
          () -> {
            for (CardText.Part part : parts) {
              row(part.words());
            }
          },
          "class",
          "figures");
      return;
    }
    for (CardText.Part part : parts) {
      String words = part.first().replaceAll(" {2,}", " ");
      page.words("p", words, "class", kind(words));
    }
  }

  private static String kind(String words) {
    return words.startsWith("CUT") ? "cut" : words.startsWith("Cut from") ? "from" : "line";
  }

  private void row(List<String> cells) throws XMLStreamException {
    page.element(
        "tr",
        () -> {
          for (int i = 0; i < cells.size(); i++) {
            if (i == 0) {
              page.words("th", cells.get(i).strip(), "scope", "row");
            } else {
              page.words("td", cells.get(i).strip());
            }
          }
        });
  }

  /** A row for each label; what has none goes on in the row before. */
  private void entries(List<CardText.Part> parts) throws XMLStreamException {
    for (int from = 0; from < parts.size(); ) {
      int to = from + 1;
      while (to < parts.size() && parts.get(to).first().isEmpty()) {
        to++;
      }
      List<CardText.Part> row = parts.subList(from, to);
      page.element(
          "tr",
          () -> {
            page.words("th", row.get(0).first(), "scope", "row");
            page.element(
                "td",
                () -> {
                  for (CardText.Part part : row) {
                    page.words("p", part.words().get(1));
                  }
                });
          });
      from = to;
    }
  }

  private void working(List<String> words) throws XMLStreamException {
    page.words("h3", words.get(0).replaceAll(":$", ""));
    page.element(
        "ul",
        () -> {
          for (String step : words.subList(1, words.size())) {
            page.words("li", step.replaceAll(";$", ""));
          }
        },
        "class",
        "steps");
  }
}
