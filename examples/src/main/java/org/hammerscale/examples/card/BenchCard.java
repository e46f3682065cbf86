package org.hammerscale.examples.card;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import javax.xml.stream.XMLStreamException;
import org.hammerscale.cutting.CuttingPlan;
import org.hammerscale.drawing.CuttingDrawing;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.Paper;
import org.hammerscale.examples.order.CutSheet;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.OrderSet;

/**
 * The job sheets as one page for a browser, with drawings: read on a phone over the anvil, or
 * printed, a front on a page and the drawings at true scale. It needs no other file and no script.
 */
public final class BenchCard {
  private static final int MOST_BLANKS = 4;
  private static final int LONGEST_TITLE = 150;

  private final HtmlPage page;
  private final List<? extends Order> orders;
  private final CutSheet cuts;

  private BenchCard(HtmlPage page, List<? extends Order> orders, CutSheet cuts) {
    this.page = page;
    this.orders = orders;
    this.cuts = cuts;
  }

  /** The text of the page. */
  public static String of(List<? extends Order> orders, CutSheet cuts) {
    try {
      HtmlPage page = new HtmlPage();
      new BenchCard(page, orders, cuts).write();
      return page.toString();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("a page could not be written to memory", e);
    }
  }

  private void write() throws XMLStreamException {
    page.element(
        "html",
        () -> {
          page.element("head", this::head);
          page.element("body", this::body);
        },
        "lang",
        "en");
  }

  private void head() throws XMLStreamException {
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.words(
        "title",
        "Bench card: " + String.join(", ", orders.stream().map(Order::name).distinct().toList()));
    page.words("style", CardStyle.of(isInInches()));
  }

  /** Whether a shop that measures in inches prints it, on the paper of its country. */
  private boolean isInInches() {
    return orders.stream().allMatch(Order::isInches);
  }

  private void body() throws XMLStreamException {
    page.element(
        "main",
        () -> {
          for (OrderSet set : OrderSet.of(orders)) {
            for (Order order : set.orders()) {
              page.element("article", () -> job(set, order));
            }
          }
          page.element("section", this::cutList, "class", "cuts");
        });
  }

  private void job(OrderSet set, Order order) throws XMLStreamException {
    CardText front = new CardText();
    order.front(front);
    CardText back = new CardText();
    order.back(back);
    CardText belongs = new CardText();
    set.write(belongs, order);
    // With its drawings the front has no more room, whatever the printed sheet has.
    List<String> pieces = order.blanks();
    int blanks = Math.min(pieces.size(), MOST_BLANKS - belongs.parts().size());
    pieces.subList(0, blanks).forEach(front::fillIn);
    pieces.subList(blanks, pieces.size()).forEach(back::fillIn);
    front.overleaf(blanks < pieces.size());
    page.element("section", () -> front(order, belongs.parts(), front.parts()), "class", "front");
    List<Drawing> drawings = order.drawings();
    if (!drawings.isEmpty()) {
      page.element("section", () -> drawings(order, drawings), "class", "drawings");
    }
    page.element(
        "details",
        () -> {
          String of = set.orders().size() == 1 ? order.name() : order.name() + ", " + order.what();
          page.words("summary", "Reasons, sources and cautions: " + of);
          new CardParts(page).write(back.parts());
        },
        "class",
        "back");
  }

  private void front(Order order, List<CardText.Part> belongs, List<CardText.Part> parts)
      throws XMLStreamException {
    page.words("h2", parts.get(0).first());
    CardParts write = new CardParts(page);
    write.write(belongs);
    int begun = 1;
    while (parts.get(begun).kind() == CardText.Kind.LINE) {
      begun++;
    }
    write.write(parts.subList(1, begun));
    page.element(
        "div",
        () -> {
          for (Drawing bar : order.bars()) {
            picture(bar.titled(title(order, bar.title())));
          }
        },
        "class",
        "bars");
    write.write(parts.subList(begun, parts.size()));
  }

  private void drawings(Order order, List<Drawing> drawings) throws XMLStreamException {
    page.words("h3", "Drawings: " + order.name() + ", " + order.what(), "class", "screen");
    for (Drawing drawing : drawings) {
      sheets(drawing.titled(title(order, drawing.title())));
    }
  }

  private static String title(Order order, String what) {
    String name = HtmlPage.readable(order.name());
    String cut = name.length() > LONGEST_TITLE ? name.substring(0, LONGEST_TITLE) : name;
    return cut + ": " + what;
  }

  /** A picture for each sheet of paper, a page of its own when printed. */
  private void sheets(Drawing drawing) throws XMLStreamException {
    Drawing drawn = drawing.withoutNotes();
    Paper paper = isInInches() ? Paper.LETTER : Paper.A4;
    String kind = drawn.isTurnedOn(paper) ? "sheet lying" : "sheet upright";
    for (String sheet : drawn.sheets(paper)) {
      page.element("figure", () -> image(sheet, drawing), "class", kind);
    }
  }

  private void picture(Drawing drawing) throws XMLStreamException {
    page.element(
        "figure",
        () -> {
          page.words("figcaption", drawing.toString());
          image(drawing.withoutNotes().figure(), drawing);
        },
        "class",
        "picture");
  }

  /** A picture as large as it says itself. */
  private void image(String svg, Drawing drawing) throws XMLStreamException {
    String source =
        "data:image/svg+xml;base64,"
            + Base64.getEncoder().encodeToString(svg.getBytes(StandardCharsets.UTF_8));
    page.empty("img", "src", source, "alt", drawing.title() + ". " + drawing.description());
  }

  private void cutList() throws XMLStreamException {
    CardText text = new CardText();
    cuts.write(text);
    List<CardText.Part> parts = new ArrayList<>(text.parts());
    parts.remove(0);
    page.words("h2", parts.remove(0).first());
    new CardParts(page).write(parts);
    for (CuttingPlan plan : cuts.plans()) {
      picture(CuttingDrawing.of(plan).drawing());
    }
  }
}
