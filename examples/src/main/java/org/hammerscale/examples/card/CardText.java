package org.hammerscale.examples.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.hammerscale.examples.order.SheetText;

/**
 * A sheet as its parts rather than as lines, so that a page can set them out in its own way: the
 * same words as on the printed sheet.
 */
final class CardText extends SheetText {
  /** What a part is on the sheet. */
  enum Kind {
    /** A line across, where something new begins. */
    RULE,
    /** A line; its cells if it is one of several that are laid out alike. */
    LINE,
    /** A line to fill in. */
    BLANK,
    /** A label and what stands behind it; without a label it goes on from the one before. */
    ENTRY,
    /** A picture made of characters. */
    PICTURE,
    CAUTION,
    /** Running text. */
    TEXT,
    /** A working: its title, then its steps. */
    WORKING
  }

  /** A part: its words, in as many pieces as its kind has. */
  record Part(Kind kind, List<String> words) {
    String first() {
      return words.get(0);
    }
  }

  private final List<Part> parts = new ArrayList<>();

  CardText() {
    super(Integer.MAX_VALUE);
  }

  List<Part> parts() {
    return parts;
  }

  private void add(Kind kind, String... words) {
    parts.add(new Part(kind, List.of(words)));
  }

  /** A page of a card has room: it is counted in parts. */
  @Override
  public int lines() {
    return parts.size();
  }

  @Override
  public void line(String format, Object... arguments) {
    add(Kind.LINE, String.format(Locale.ROOT, format, arguments).strip());
  }

  @Override
  public void cells(String format, Object... cells) {
    parts.add(new Part(Kind.LINE, Arrays.stream(cells).map(String::valueOf).toList()));
  }

  @Override
  public void heading(String label, String words) {
    add(Kind.ENTRY, label, words + ":");
  }

  @Override
  public void fillIn(String words) {
    add(Kind.BLANK, words);
  }

  @Override
  public void block(String block) {
    add(Kind.PICTURE, block);
  }

  @Override
  public void rule(char c) {
    add(Kind.RULE, String.valueOf(c));
  }

  @Override
  public void entry(String label, String format, Object... arguments) {
    add(Kind.ENTRY, label, joined(String.format(Locale.ROOT, format, arguments)));
  }

  @Override
  public void caution(String words) {
    add(Kind.CAUTION, joined(words));
  }

  @Override
  public void wrapped(String first, int indent, String words) {
    add(Kind.TEXT, first + joined(words));
  }

  @Override
  public void packed(List<String> all) {
    parts.add(new Part(Kind.WORKING, List.copyOf(all)));
  }
}
