package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hammerscale.cutting.Rack;
import org.hammerscale.examples.card.BenchCard;
import org.hammerscale.examples.order.CutSheet;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.SheetText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page as a reader of its text finds it; how a browser sets it is another test. */
class BenchCardTest {
  @TempDir Path folder;

  static String sample() throws IOException {
    return card(JobSheet.sampleLines());
  }

  static String card(List<String> lines) {
    OrderFile file = OrderFile.of(lines);
    assertEquals(List.of(), file.faults());
    return BenchCard.of(file.orders(), CutSheet.of(file.orders(), Rack.empty()));
  }

  /** The page is also well-formed XML, so that any parser can look at it. */
  static Document parse(String page) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(page)));
    } catch (Exception e) {
      throw new AssertionError(page.substring(0, Math.min(2000, page.length())), e);
    }
  }

  private static List<Element> all(Document page, String name) {
    NodeList found = page.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  @Test
  void eachJobHasItsFrontItsDrawingsAndItsBack() throws IOException {
    Document page = parse(sample());
    assertEquals(8, all(page, "article").size());
    List<String> headings = all(page, "h2").stream().map(Element::getTextContent).toList();
    assertEquals("Walled-garden gate: left hand, 2 pairs", headings.get(0));
    assertEquals("Boathouse door: right hand, 1 pair", headings.get(1));
    assertEquals("Chapel cupboard: right hand, 2 pairs", headings.get(2));
    assertEquals("Chapel cupboard: thumb latch", headings.get(3));
    assertEquals("Walled-garden fence: 2 rows of pickets", headings.get(7));
    assertTrue(headings.get(8).startsWith("Cut list of the whole order"), headings::toString);
    assertEquals(8, all(page, "details").size());
    long cut = all(page, "p").stream().filter(p -> p.getAttribute("class").equals("cut")).count();
    // Two leaves of three jobs; 5 of the latch, 4 of the bolt, 2 of the hook, 3 of the hasp, 1
    // picket.
    assertEquals(3 * 2 + 5 + 4 + 2 + 3 + 1, cut, "what to cut");
    assertTrue(all(page, "th").stream().allMatch(th -> th.getAttribute("scope").equals("row")));
  }

  /** No word and no number of the printed sheet is missing, but for its picture of characters. */
  @Test
  void saysTheSameAsThePrintedSheet() throws IOException {
    Set<String> shown = words(sample().replaceAll("<[^>]*>", " ").replace("&amp;", "&"));
    for (Order order : OrderFile.of(JobSheet.sampleLines()).orders()) {
      SheetText printed =
          new SheetText(10_000) {
            @Override
            public void block(String picture) {}
          };
      order.front(printed);
      order.back(printed);
      Set<String> missing = words(printed.toString());
      assertTrue(missing.size() > 150, "words: " + missing.size());
      missing.removeAll(shown);
      assertEquals(Set.of(), missing);
    }
  }

  private static Set<String> words(String text) {
    return new TreeSet<>(List.of(text.split("[^\\p{L}\\p{N}./]+", -1)));
  }

  @Test
  void picturesCarryTheirWords() throws IOException {
    List<Element> pictures = all(parse(sample()), "img");
    assertTrue(pictures.size() >= 10, "pictures: " + pictures.size());
    for (Element picture : pictures) {
      assertTrue(picture.getAttribute("alt").length() > 40, picture.getAttribute("alt"));
      String source = picture.getAttribute("src");
      String start = "data:image/svg+xml;base64,";
      assertTrue(source.startsWith(start));
      String svg =
          new String(
              Base64.getDecoder().decode(source.substring(start.length())), StandardCharsets.UTF_8);
      Element root = parse(svg).getDocumentElement();
      assertTrue(root.getAttribute("width").endsWith("mm"), "as large as it is on paper");
    }
  }

  @Test
  void needsNoScriptAndNoOtherFile() throws IOException {
    String page = sample();
    Document document = parse(page);
    assertTrue(all(document, "script").isEmpty() && all(document, "link").isEmpty());
    assertFalse(page.contains("url(") || page.contains("@import"));
    assertTrue(
        all(document, "img").stream().allMatch(img -> img.getAttribute("src").startsWith("data:")));
    assertEquals("en", document.getDocumentElement().getAttribute("lang"));
  }

  @Test
  void noNameBreaksOutOfThePage() {
    Random random = new Random(3);
    String[] pieces = {
      "<", ">", "&", "'", "</h2>", "<script>", "]]>", "<!--", "&lt;", "é", "⚒", "x", "\u0001"
    };
    List<String> lines = OrderFileTest.cupboard();
    for (int i = 0; i < 150; i++) {
      StringBuilder name = new StringBuilder("n");
      for (int j = 0; j < 5; j++) {
        name.append(pieces[random.nextInt(pieces.length)]);
      }
      List<String> named =
          lines.stream().map(l -> l.startsWith("name") ? "name, " + name : l).toList();
      OrderFile file = OrderFile.of(named);
      if (!file.faults().isEmpty()) {
        continue; // refused when it was read
      }
      Document page = parse(BenchCard.of(file.orders(), CutSheet.of(file.orders(), Rack.empty())));
      assertTrue(all(page, "script").isEmpty(), name.toString());
      String shown = all(page, "h2").get(0).getTextContent();
      String kept = name.toString().replace('\u0001', '\ufffd');
      assertTrue(shown.startsWith(kept + ": "), shown);
      assertEquals(2, all(page, "h2").size(), "and no more headings than it has");
    }
  }

  @Test
  void manyPiecesFillTheirBlanksOnTheBack() {
    List<String> lines = OrderFileTest.cupboardWith("pairs, 9");
    Document page = parse(card(lines));
    Element front = all(page, "section").get(0);
    assertEquals("front", front.getAttribute("class"));
    assertEquals(4, front.getTextContent().split("found ____", -1).length - 1);
    String back = all(page, "details").get(0).getTextContent();
    assertEquals(14, back.split("found ____", -1).length - 1);
  }

  @Test
  void isWrittenWhereItIsAskedFor() throws IOException {
    Path file = folder.resolve("new/card.html");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
    PrintStream faults = new PrintStream(err, true, StandardCharsets.UTF_8);
    assertEquals(0, JobSheet.run(List.of("card=" + file), print, faults));
    assertTrue(Files.readString(file).startsWith("<!DOCTYPE html>"));
    List<String> printed = out.toString(StandardCharsets.UTF_8).lines().toList();
    assertEquals(
        "Bench card with drawings, for a browser or to print: " + file,
        printed.get(printed.size() - 1));
    assertEquals(2, JobSheet.run(List.of("card=" + file + "/below"), print, faults));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("cannot be written ("));
  }
}
