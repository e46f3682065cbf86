package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.ForwardingFeature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class DrawingTest {
  private static final Drawing LONG = BarDrawing.of(Bars.longest()).drawing();

  @Test
  void isATrueSheetWithCheckBars() {
    Drawing drawing = BarDrawing.of(Bars.stoutest()).drawing();
    Picture picture = Picture.of(drawing);
    assertEquals(drawing.width().in(ShopUnits.MILLIMETRE), picture.sheet.width(), 1e-6);
    assertEquals(drawing.height().in(ShopUnits.MILLIMETRE), picture.sheet.height(), 1e-6);
    assertEquals(picture.seen.width(), picture.sheet.width() - 24, 1e-6, "same scale within");
    List<Double> bars = checkBars(drawing.svg());
    assertEquals(100, bars.get(0), 1e-6);
    assertEquals(101.6, bars.get(1), 1e-6);
  }

  /** The lengths of the check bars of a sheet. */
  private static List<Double> checkBars(String svg) {
    List<Double> lengths = new ArrayList<>();
    for (Element path : elements(svg, "path")) {
      if (path.getAttribute("class").contains("check")) {
        String[] n = path.getAttribute("d").split("[MLA ]", -1);
        lengths.add(Double.parseDouble(n[3]) - Double.parseDouble(n[1]));
      }
    }
    return lengths;
  }

  private static List<Element> elements(String svg, String name) {
    Document document = Picture.parse(svg);
    List<Element> found = new ArrayList<>();
    for (int i = 0; i < document.getElementsByTagName(name).getLength(); i++) {
      found.add((Element) document.getElementsByTagName(name).item(i));
    }
    return found;
  }

  @Test
  void sheetsOverlapAndShareTheirRegisterMarks() {
    for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
      List<String> sheets = LONG.sheets(paper);
      assertTrue(sheets.size() >= 4, paper + ": " + sheets.size());
      for (int i = 0; i < sheets.size(); i++) {
        Picture sheet = Picture.of(sheets.get(i));
        assertEquals(2, checkBars(sheets.get(i)).size(), "on each sheet");
        assertTrue(
            sheets.get(i).contains("sheet " + (i + 1) + " of " + sheets.size()), sheets.get(i));
        if (i > 0) {
          Picture before = Picture.of(sheets.get(i - 1));
          assertEquals(10, before.seen.right() - sheet.seen.left(), 1e-6);
          List<Double> last = marksOnTheDrawing(sheets.get(i - 1), before);
          List<Double> first = marksOnTheDrawing(sheets.get(i), sheet);
          assertEquals(last.get(last.size() - 1), first.get(0), 1e-6);
        }
      }
      Picture last = Picture.of(sheets.get(sheets.size() - 1));
      assertTrue(last.seen.right() >= LONG.box().right(), "it is all there");
    }
  }

  /** Where the register marks stand in the coordinates of the drawing. */
  private static List<Double> marksOnTheDrawing(String svg, Picture sheet) {
    double windowLeft = 12;
    return elements(svg, "circle").stream()
        .filter(circle -> circle.getAttribute("class").contains("register"))
        .map(c -> Double.parseDouble(c.getAttribute("cx")) - windowLeft + sheet.seen.left())
        .sorted()
        .toList();
  }

  @Test
  void aRollIsCutToTheDrawing() {
    Paper roll = Paper.roll(millimetres(300));
    assertEquals(1, LONG.sheets(roll).size());
    Picture whole = Picture.of(LONG.sheets(roll).get(0));
    assertEquals(300, whole.sheet.height(), 1e-6);
    assertTrue(whole.sheet.width() > 1026);
    assertEquals("roll, 300 mm wide", roll.toString());
    assertEquals("A4, 210 mm × 297 mm", Paper.A4.toString());
    assertEquals("Letter, 8 1/2 in × 11 in", Paper.LETTER.toString());
    assertRefused(
        () -> Paper.roll(inches(5)),
        "width must be at least the narrowest of 150 mm, was 5 in; take a wider roll, or sheets");
    assertRefused(
        () -> Paper.roll(millimetres(2001)),
        "width must be at most the widest of 2000 mm, was 2001 mm; take a narrower roll");
  }

  @Test
  void tellsWhetherItTurnsThePaper() {
    Bar plate = Bar.of(Section.flat(millimetres(20), millimetres(10)), Material.MILD_STEEL);
    List<Drawing> drawings = new ArrayList<>();
    for (double length : new double[] {20, 100, 150, 180, 240, 600}) {
      Piece piece = Piece.of(plate, Plain.of(plate.section(), millimetres(length)));
      drawings.add(BarDrawing.of(piece.layout().on(Graduation.MILLIMETRE)).drawing());
    }
    Set<Boolean> ways = new HashSet<>();
    for (Drawing drawing : drawings) {
      Picture sheet = Picture.of(drawing.sheets(Paper.A4).get(0));
      boolean lies = sheet.seen.width() > sheet.seen.height();
      ways.add(lies);
      assertEquals(lies, drawing.isTurnedOn(Paper.A4), drawing.title());
    }
    assertEquals(Set.of(true, false), ways);
  }

  @Test
  void tallDrawingsGoOnRowsOfSheets() {
    Bar plate = Bar.of(Section.flat(millimetres(700), millimetres(10)), Material.MILD_STEEL);
    Piece wide = Piece.of(plate, Plain.of(plate.section(), millimetres(900)));
    Drawing drawing = BarDrawing.of(wide.layout().on(Graduation.MILLIMETRE)).drawing();
    List<String> sheets = drawing.sheets(Paper.A4);
    Box seen = Box.NONE;
    for (String sheet : sheets) {
      seen = seen.with(Picture.of(sheet).seen);
    }
    assertTrue(seen.bottom() >= drawing.box().bottom() && seen.right() >= drawing.box().right());
    Piece endless = Piece.of(plate, Plain.of(plate.section(), millimetres(50_000)));
    Drawing many = BarDrawing.of(endless.layout().on(Graduation.MILLIMETRE)).drawing();
    String message =
        assertThrows(IllegalArgumentException.class, () -> many.sheets(Paper.A4)).getMessage();
    assertTrue(message.startsWith("paper must hold the drawing on at most 200 sheets, was A4"));
    assertTrue(message.endsWith("take a wider roll, or draw it reduced"), message);
  }

  @Test
  void takesATitle() {
    Drawing drawing = LONG.titled("Chapel cupboard, <door> & \"post\"");
    assertEquals("Chapel cupboard, <door> & \"post\"", drawing.title());
    assertEquals("Chapel cupboard, <door> & \"post\", scale 1 : 1", drawing.toString());
    assertEquals(LONG.description(), drawing.description());
    assertTrue(LONG.description().startsWith("cold bar, 20 mm × 2 mm flat: cut 1026 mm. R"));
    assertRefused(() -> LONG.titled(" "), "title must not be blank; say what it is");
    assertRefused(
        () -> LONG.titled("a\u0007"),
        "title must have no control characters, was one of code 7 at place 2; leave it out");
    assertRefused(
        () -> LONG.titled("9".repeat(201)),
        "title must be at most 200 characters long, was 201; name the job and the piece");
  }

  @Test
  void longTitlesGoOnSeveralLines() {
    Drawing drawing = BarDrawing.of(Bars.stoutest()).drawing().titled("gate ".repeat(39) + "end");
    List<Element> texts = elements(drawing.svg(), "text");
    long lines = texts.stream().filter(t -> t.getTextContent().startsWith("gate")).count();
    assertTrue(lines > 2, "lines: " + lines);
    LONG.titled("9".repeat(200)).sheets(Paper.A4);
  }

  @Test
  void goesWithoutNotesOnAPageOfItsOwn() {
    Drawing drawing = BarDrawing.of(Bars.gate()).drawing();
    Picture all = Picture.of(drawing);
    Picture bare = Picture.of(drawing.withoutNotes().figure());
    assertEquals(drawing.description(), drawing.withoutNotes().description());
    assertTrue(bare.texts.size() < all.texts.size());
    assertEquals(all.shapes.size(), bare.shapes.size());
    assertEquals(bare.seen.width(), bare.sheet.width(), 1e-6, "nothing round it");
    assertTrue(checkBars(drawing.figure()).isEmpty());
    assertTrue(
        Picture.of(drawing.figure())
            .words()
            .contains("R reference mark: all sizes on the line count from it, along the cold bar"));
  }

  /** Somebody's feature with a name of their own. */
  private static final class Named extends ForwardingFeature {
    private final String name;

    Named(String name, Feature feature) {
      super(feature);
      this.name = name;
    }

    @Override
    public String name() {
      return name;
    }
  }

  @Test
  void noNameBreaksOutOfTheSheet() {
    Random random = new Random(4);
    String odd = "<>&\"'\u0000\u0001\u001f\u007f\u0085\ud800\udc00\ufffe\uffff]]>-- é⚒\t\n";
    for (int i = 0; i < 2000; i++) {
      StringBuilder name = new StringBuilder("n");
      for (int j = random.nextInt(8); j >= 0; j--) {
        name.append(odd.charAt(random.nextInt(odd.length())));
      }
      Bar bar = Bar.of(Section.square(millimetres(20)), Material.MILD_STEEL);
      Feature feature = new Named(name.toString(), Plain.of(bar.section(), millimetres(200)));
      Piece piece = Piece.of(bar, feature);
      String svg = BarDrawing.of(piece.layout().on(Graduation.MILLIMETRE)).drawing().svg();
      List<String> words = elements(svg, "text").stream().map(Element::getTextContent).toList();
      String shown = words.get(0);
      assertEquals(name.length(), shown.length(), "one for one: " + shown);
      for (int j = 0; j < name.length(); j++) {
        boolean kept = shown.charAt(j) == name.charAt(j);
        assertTrue(kept || shown.charAt(j) == '\ufffd', shown);
        assertFalse(Character.isISOControl(shown.charAt(j)), shown);
        assertTrue(kept || "<>&\"'- ]né⚒".indexOf(name.charAt(j)) < 0, shown);
      }
      assertEquals(2, elements(svg, "svg").size());
      assertTrue(elements(svg, "script").isEmpty());
    }
  }

  @Test
  void aLongNameIsCut() {
    Bar bar = Bar.of(Section.square(millimetres(20)), Material.MILD_STEEL);
    Feature feature = new Named("x".repeat(5000), Plain.of(bar.section(), millimetres(200)));
    Piece piece = Piece.of(bar, feature);
    Drawing drawing = BarDrawing.of(piece.layout().on(Graduation.MILLIMETRE)).drawing();
    assertTrue(Picture.of(drawing).words().contains("x".repeat(60) + "..."));
    Estimate<Volume> metal = feature.metalKept();
    assertTrue(metal.isExact());
  }

  private static void assertRefused(org.junit.jupiter.api.function.Executable call, String text) {
    assertEquals(text, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
