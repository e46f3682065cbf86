package org.hammerscale.internal.pen;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a sheet as SVG, through the JDK's own XML writer, so that nothing is escaped by hand. */
public final class Svg {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  /** What is written within an element. */
  public interface Content {
    void write(Svg svg) throws XMLStreamException;
  }

  private final XMLStreamWriter xml;

  private Svg(XMLStreamWriter xml) {
    this.xml = xml;
  }

  /** A sheet in true scale: a unit of the picture is a millimetre. */
  public static String sheet(
      double width, double height, String title, String description, Content content) {
    StringWriter text = new StringWriter(1 << 14);
    try {
      // Not newFactory(), which looks for other writers in system properties and files.
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      Svg svg = new Svg(xml);
      xml.writeStartElement("svg");
      xml.writeDefaultNamespace(NAMESPACE);
      xml.writeAttribute("width", Numbers.text(width) + "mm");
      xml.writeAttribute("height", Numbers.text(height) + "mm");
      xml.writeAttribute("viewBox", "0 0 " + Numbers.text(width) + " " + Numbers.text(height));
      xml.writeAttribute("role", "img");
      svg.element("title", title);
      svg.element("desc", description);
      svg.element("style", Line.styleSheet());
      content.write(svg);
      xml.writeEndElement();
      xml.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("a sheet could not be written to memory", e);
    }
    return text.toString();
  }

  /** A window on the drawing, in its own coordinates; what lies outside is not seen. */
  public void window(double x, double y, Box seen, Content content) throws XMLStreamException {
    xml.writeStartElement("svg");
    attribute("x", x);
    attribute("y", y);
    attribute("width", seen.width());
    attribute("height", seen.height());
    xml.writeAttribute(
        "viewBox",
        Numbers.text(seen.left())
            + " "
            + Numbers.text(seen.top())
            + " "
            + Numbers.text(seen.width())
            + " "
            + Numbers.text(seen.height()));
    content.write(this);
    xml.writeEndElement();
  }

  public void stroke(Stroke stroke) throws XMLStreamException {
    xml.writeEmptyElement(stroke.isCircle() ? "circle" : "path");
    xml.writeAttribute("class", stroke.line().word + " " + stroke.part());
    if (stroke.isCircle()) {
      attribute("cx", stroke.x());
      attribute("cy", stroke.y());
      attribute("r", stroke.radius());
    } else {
      xml.writeAttribute("d", stroke.path());
    }
  }

  public void label(Label label) throws XMLStreamException {
    xml.writeStartElement("text");
    attribute("x", label.x());
    attribute("y", label.y());
    attribute("font-size", label.size());
    // So it takes the room that was kept for it, whatever font stands in.
    attribute("textLength", label.width());
    xml.writeAttribute("lengthAdjust", "spacingAndGlyphs");
    if (label.upwards()) {
      xml.writeAttribute(
          "transform",
          "rotate(-90 " + Numbers.text(label.x()) + " " + Numbers.text(label.y()) + ")");
    }
    xml.writeCharacters(label.text());
    xml.writeEndElement();
  }

  private void element(String name, String text) throws XMLStreamException {
    xml.writeStartElement(name);
    xml.writeCharacters(text);
    xml.writeEndElement();
  }

  private void attribute(String name, double value) throws XMLStreamException {
    xml.writeAttribute(name, Numbers.text(value));
  }
}
