package org.hammerscale.examples;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import javax.xml.stream.XMLStreamException;
import org.hammerscale.cutting.CuttingPlan;
import org.hammerscale.drawing.BarDrawing;
import org.hammerscale.drawing.CuttingDrawing;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.HingeDrawing;
import org.hammerscale.drawing.LeafDrawing;
import org.hammerscale.drawing.Paper;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.units.ShopUnits;

/**
 * The job sheets as one page for a browser, with drawings: read on a phone over the anvil, or
 * printed, a front on a page and the drawings at true scale. It needs no other file and no script.
 */
final class BenchCard {
  private static final int MOST_BLANKS = 4;
  private static final int LONGEST_TITLE = 150;

  /** How wide a picture of a bar may be beside another one on the front. */
  private static final double BESIDE = 80;

  private static final int[] SCALES = {2, 5, 10, 20, 50, 100};

  private final HtmlPage page;
  private final List<HingeOrder> orders;
  private final CutSheet cuts;

  private BenchCard(HtmlPage page, List<HingeOrder> orders, CutSheet cuts) {
    this.page = page;
    this.orders = orders;
    this.cuts = cuts;
  }

  /** The text of the page. */
  static String of(List<HingeOrder> orders, CutSheet cuts) {
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
        "title", "Bench card: " + String.join(", ", orders.stream().map(o -> o.name()).toList()));
    page.words("style", CardStyle.of(isInInches()));
  }

  /** Whether a shop that measures in inches prints it, on the paper of its country. */
  private boolean isInInches() {
    return orders.stream().allMatch(HingeOrder::isInches);
  }

  private void body() throws XMLStreamException {
    page.element(
        "main",
        () -> {
          for (HingeOrder order : orders) {
            page.element("article", () -> job(order));
          }
          page.element("section", this::cutList, "class", "cuts");
        });
  }

  private void job(HingeOrder order) throws XMLStreamException {
    CardText front = new CardText();
    FrontSheet sheet = new FrontSheet(front, order);
    sheet.write();
    CardText back = new CardText();
    new BackSheet(back, order, sheet.cautions()).write();
    List<CardText.Part> parts = new ArrayList<>(front.parts());
    parts.removeIf(part -> part.kind() == CardText.Kind.BLANK);
    // With its drawings the front has no more room, whatever the printed sheet has.
    List<String> pieces = FrontSheet.pieces(order);
    int blanks = Math.min(pieces.size(), MOST_BLANKS);
    CardText filled = new CardText();
    pieces.subList(0, blanks).forEach(piece -> FrontSheet.blank(filled, piece));
    pieces.subList(blanks, pieces.size()).forEach(piece -> FrontSheet.blank(back, piece));
    parts.addAll(parts.size() - 1, filled.parts());
    page.element("section", () -> front(order, parts), "class", "front");
    page.element("section", () -> drawings(order), "class", "drawings");
    page.element(
        "details",
        () -> {
          page.words("summary", "Reasons, sources and cautions: " + order.name());
          new CardParts(page).write(back.parts());
        },
        "class",
        "back");
  }

  private void front(HingeOrder order, List<CardText.Part> parts) throws XMLStreamException {
    parts.remove(0); // the rule that a new sheet begins with
    page.words("h2", parts.remove(0).first());
    CardParts write = new CardParts(page);
    int begun = 0;
    while (parts.get(begun).kind() == CardText.Kind.LINE) {
      begun++;
    }
    write.write(parts.subList(0, begun));
    page.element(
        "div",
        () -> {
          for (Leaf leaf : HingeOrder.LEAVES) {
            Drawing bar = barDrawing(order, leaf);
            picture(bar.withoutNotes().figure(), bar, false);
          }
        },
        "class",
        "bars");
    write.write(parts.subList(begun, parts.size()));
  }

  /** A bar as small as it must be to stand beside the other. */
  private static Drawing barDrawing(HingeOrder order, Leaf leaf) {
    String title = title(order, HingeOrder.called(leaf) + ", cold bar");
    Drawing drawing = BarDrawing.of(order.bar(leaf)).drawing();
    for (int reduction : SCALES) {
      double wide = order.bar(leaf).cutLength().in(ShopUnits.MILLIMETRE);
      if (wide / reduction <= BESIDE) {
        drawing = BarDrawing.of(order.bar(leaf)).reducedTo(reduction).drawing();
        break;
      }
    }
    return drawing.titled(title);
  }

  private void drawings(HingeOrder order) throws XMLStreamException {
    HingePair pair = order.pair();
    page.words("h3", "Drawings at true scale: " + order.name(), "class", "screen");
    for (Leaf leaf : HingeOrder.LEAVES) {
      HolePlan holes = order.holes(leaf);
      Drawing drawing =
          LeafDrawing.of(pair, leaf)
              .withHoles(holes.layout(), holes.screw().head())
              .on(order.graduation())
              .drawing();
      sheets(drawing.titled(title(order, HingeOrder.called(leaf) + ", " + pair.hand())));
    }
    Drawing joint = HingeDrawing.of(pair).on(order.graduation()).drawing();
    sheets(joint.titled(title(order, joint.title())));
  }

  private static String title(HingeOrder order, String what) {
    String name = HtmlPage.readable(order.name());
    String cut = name.length() > LONGEST_TITLE ? name.substring(0, LONGEST_TITLE) : name;
    return cut + ": " + what;
  }

  /** A picture for each sheet of paper, a page of its own when printed. */
  private void sheets(Drawing drawing) throws XMLStreamException {
    for (String sheet : drawing.withoutNotes().sheets(isInInches() ? Paper.LETTER : Paper.A4)) {
      picture(sheet, drawing, true);
    }
  }

  private void picture(String svg, Drawing drawing, boolean whole) throws XMLStreamException {
    String source =
        "data:image/svg+xml;base64,"
            + Base64.getEncoder().encodeToString(svg.getBytes(StandardCharsets.UTF_8));
    String width = size(svg, "width");
    boolean lying = millimetres(width) > millimetres(size(svg, "height"));
    page.element(
        "figure",
        () -> {
          if (!whole) {
            page.words("figcaption", drawing.toString());
          }
          page.empty(
              "img",
              "src",
              source,
              "alt",
              drawing.title() + ". " + drawing.description(),
              "style",
              "width:" + width);
        },
        "class",
        whole ? "sheet " + (lying ? "lying" : "upright") : "picture");
  }

  /** A size of the picture as it stands at its beginning. */
  private static String size(String svg, String name) {
    int from = svg.indexOf(name + "=\"") + name.length() + 2;
    return svg.substring(from, svg.indexOf('"', from));
  }

  private static double millimetres(String size) {
    return Double.parseDouble(size.replace("mm", ""));
  }

  private void cutList() throws XMLStreamException {
    CardText text = new CardText();
    cuts.write(text);
    List<CardText.Part> parts = new ArrayList<>(text.parts());
    parts.remove(0);
    page.words("h2", parts.remove(0).first());
    new CardParts(page).write(parts);
    for (CuttingPlan plan : cuts.plans()) {
      Drawing drawing = CuttingDrawing.of(plan).drawing();
      picture(drawing.withoutNotes().figure(), drawing, false);
    }
  }
}
