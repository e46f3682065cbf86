package org.hammerscale.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Label;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * An SVG read back as a reader of the file sees it: lines as points, texts as the room they take.
 */
final class Picture {
  /** Straight pieces for an arc that is read: enough that none of them strays by 0.01 mm. */
  private static final int PIECES = 64;

  /** Lines that touch a label's box by no more than this do not touch the letters in it. */
  private static final double TOUCH = 0.15;

  /** One element that draws lines. */
  record Shape(List<String> classes, List<double[]> points, double radius) {
    boolean is(String part) {
      return classes.contains(part);
    }

    double x() {
      return points.get(0)[0];
    }

    double y() {
      return points.get(0)[1];
    }
  }

  /** One text. */
  record Text(String words, Box box) {}

  final Box sheet;
  final Box seen;
  final List<Shape> shapes = new ArrayList<>();
  final List<Text> texts = new ArrayList<>();

  private Picture(String svg) {
    Element root = parse(svg).getDocumentElement();
    sheet = viewBox(root);
    assertEquals(sheet.width() + "mm", Double.parseDouble(mm(root, "width")) + "mm");
    assertEquals(sheet.height() + "mm", Double.parseDouble(mm(root, "height")) + "mm");
    Element window = (Element) root.getElementsByTagName("svg").item(0);
    seen = viewBox(window);
    NodeList all = window.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      if (element.getTagName().equals("text")) {
        texts.add(text(element));
      } else {
        shapes.add(shape(element));
      }
    }
  }

  static Picture of(Drawing drawing) {
    return new Picture(drawing.svg());
  }

  static Picture of(String svg) {
    return new Picture(svg);
  }

  static org.w3c.dom.Document parse(String svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(svg)));
    } catch (Exception e) {
      throw new AssertionError(svg, e);
    }
  }

  List<Shape> all(String part) {
    return shapes.stream().filter(shape -> shape.is(part)).toList();
  }

  Shape only(String part) {
    List<Shape> found = all(part);
    assertEquals(1, found.size(), part);
    return found.get(0);
  }

  List<String> words() {
    return texts.stream().map(Text::words).toList();
  }

  /** Nothing beyond the frame, no text over a text or a line. */
  void assertLegible() {
    for (Shape shape : shapes) {
      for (double[] point : shape.points) {
        assertTrue(inside(point[0], point[1]), () -> shape + " beyond " + seen);
      }
    }
    for (int k = 0; k < texts.size(); k++) {
      Text text = texts.get(k);
      Box box = text.box;
      assertTrue(inside(box.left(), box.top()) && inside(box.right(), box.bottom()), text::words);
      for (Text other : texts.subList(k + 1, texts.size())) {
        assertFalse(
            box.grown(-TOUCH).meets(other.box.grown(-TOUCH)), () -> text + " over " + other);
      }
      for (Shape shape : shapes) {
        for (int i = 1; i < shape.points.size(); i++) {
          double[] from = shape.points.get(i - 1);
          double[] to = shape.points.get(i);
          assertTrue(
              to[2] == 0 || !crosses(box.grown(-TOUCH), from, to),
              () -> text + " over a line of " + shape.classes);
        }
      }
    }
  }

  private boolean inside(double x, double y) {
    double noise = 1e-6;
    return x >= seen.left() - noise
        && x <= seen.right() + noise
        && y >= seen.top() - noise
        && y <= seen.bottom() + noise;
  }

  /** Whether a line meets a rectangle: it is cut at each of its sides in turn. */
  static boolean crosses(Box box, double[] from, double[] to) {
    double low = 0;
    double high = 1;
    double[][] slabs = {
      {from[0], to[0] - from[0], box.left(), box.right()},
      {from[1], to[1] - from[1], box.top(), box.bottom()}
    };
    for (double[] slab : slabs) {
      if (slab[1] == 0) {
        if (slab[0] <= slab[2] || slab[0] >= slab[3]) {
          return false;
        }
        continue;
      }
      double one = (slab[2] - slab[0]) / slab[1];
      double other = (slab[3] - slab[0]) / slab[1];
      low = Math.max(low, Math.min(one, other));
      high = Math.min(high, Math.max(one, other));
    }
    return low < high;
  }

  private static String mm(Element element, String name) {
    String value = element.getAttribute(name);
    assertTrue(value.endsWith("mm"), value);
    return value.substring(0, value.length() - 2);
  }

  private static Box viewBox(Element element) {
    double[] n =
        Arrays.stream(element.getAttribute("viewBox").split(" ", -1))
            .mapToDouble(Double::parseDouble)
            .toArray();
    return new Box(n[0], n[1], n[0] + n[2], n[1] + n[3]);
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }

  private static Text text(Element element) {
    Label label =
        new Label(
            element.getTextContent(),
            number(element, "x"),
            number(element, "y"),
            number(element, "font-size"),
            element.hasAttribute("transform"));
    assertEquals(label.width(), number(element, "textLength"), 1e-6);
    return new Text(label.text(), label.box());
  }

  private static Shape shape(Element element) {
    List<String> classes = List.of(element.getAttribute("class").split(" ", -1));
    if (element.getTagName().equals("circle")) {
      double x = number(element, "cx");
      double y = number(element, "cy");
      double r = number(element, "r");
      List<double[]> points = new ArrayList<>();
      for (int i = 0; i <= PIECES; i++) {
        double angle = 2 * Math.PI * i / PIECES;
        points.add(new double[] {x + r * Math.cos(angle), y + r * Math.sin(angle), i});
      }
      return new Shape(classes, points, r);
    }
    return new Shape(classes, points(element.getAttribute("d")), 0);
  }

  /** Points of a path; the third number is zero where a new line begins. */
  private static List<double[]> points(String path) {
    List<double[]> points = new ArrayList<>();
    double[] start = {0, 0, 0};
    for (String command : path.split("(?=[MLAZ])", -1)) {
      double[] n =
          command.length() == 1
              ? new double[0]
              : Arrays.stream(command.substring(1).split(" ", -1))
                  .mapToDouble(Double::parseDouble)
                  .toArray();
      double[] last = points.isEmpty() ? start : points.get(points.size() - 1);
      switch (command.charAt(0)) {
        case 'M' -> {
          start = new double[] {n[0], n[1], 0};
          points.add(start);
        }
        case 'L' -> points.add(new double[] {n[0], n[1], 1});
        case 'A' -> arc(points, last, n);
        default -> points.add(new double[] {start[0], start[1], 1});
      }
    }
    return points;
  }

  /** An arc of less than half a circle. */
  private static void arc(List<double[]> points, double[] from, double[] n) {
    double r = n[0];
    double dx = n[5] - from[0];
    double dy = n[6] - from[1];
    double half = Math.hypot(dx, dy) / 2;
    double up = Math.sqrt(Math.max(r * r - half * half, 0));
    double side = n[4] == 1 ? 1 : -1;
    double cx = (from[0] + n[5]) / 2 - side * up * dy / (2 * half);
    double cy = (from[1] + n[6]) / 2 + side * up * dx / (2 * half);
    double start = Math.atan2(from[1] - cy, from[0] - cx);
    double turn = side * 2 * Math.asin(Math.min(1, half / r));
    for (int i = 1; i < PIECES; i++) {
      double angle = start + turn * i / PIECES;
      points.add(new double[] {cx + r * Math.cos(angle), cy + r * Math.sin(angle), 2});
    }
    points.add(new double[] {n[5], n[6], 1});
  }
}
