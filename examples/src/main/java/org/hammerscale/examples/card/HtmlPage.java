package org.hammerscale.examples.card;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** An HTML page in the making. An XML writer escapes what is told, so that no name breaks out. */
final class HtmlPage {
  /** What is written within an element. */
  interface Content {
    void write() throws XMLStreamException;
  }

  private final StringWriter text = new StringWriter(1 << 16);
  private final XMLStreamWriter xml;

  HtmlPage() throws XMLStreamException {
    xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
    xml.writeDTD("<!DOCTYPE html>");
  }

  /** An element with attributes, name and value by turns. */
  void element(String name, Content content, String... attributes) throws XMLStreamException {
    xml.writeStartElement(name);
    attributes(attributes);
    content.write();
    xml.writeEndElement();
    if (name.matches("h[1-6]|p|tr|li|table|ul|section|article|figure|style|div|details")) {
      xml.writeCharacters("\n");
    }
  }

  /** An element that holds words alone. */
  void words(String name, String words, String... attributes) throws XMLStreamException {
    element(name, () -> words(words), attributes);
  }

  /** Words; what no page may hold of them is replaced. */
  void words(String words) throws XMLStreamException {
    xml.writeCharacters(readable(words));
  }

  /** An element that HTML leaves empty. */
  void empty(String name, String... attributes) throws XMLStreamException {
    xml.writeEmptyElement(name);
    attributes(attributes);
  }

  private void attributes(String... attributes) throws XMLStreamException {
    for (int i = 0; i < attributes.length; i += 2) {
      xml.writeAttribute(attributes[i], readable(attributes[i + 1]));
    }
  }

  /** The same without control characters and halves of pairs. */
  static String readable(String words) {
    return words.replaceAll("[\\p{Cntrl}&&[^\\n]]|\\p{Cs}|[\\uFFFE\\uFFFF]", "\uFFFD");
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
