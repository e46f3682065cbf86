package org.hammerscale.working;

import java.util.Objects;
import org.hammerscale.internal.Arguments;
import org.jspecify.annotations.Nullable;

/**
 * What the smith must know before trusting or using an answer (a {@index warning}): a danger at the
 * work, or a rule that was stretched beyond where it holds. A thing with a caution is possible;
 * what is impossible is refused instead.
 */
public final class Caution {
  private final String text;
  private final boolean danger;
  private final Source source;

  private Caution(String text, boolean danger, Source source) {
    this.text = Arguments.text("text", text);
    this.danger = danger;
    this.source = Objects.requireNonNull(source, "source");
  }

  /**
   * A danger to people.
   *
   * @param text what is dangerous and what to do
   * @return the caution
   * @throws IllegalArgumentException if the text is blank
   */
  public static Caution danger(String text) {
    return new Caution(text, true, Source.commonPractice("usual workshop safety"));
  }

  /**
   * A rule used outside the range in which it holds.
   *
   * @param text the limit, the value and what to do
   * @param source where the limit comes from
   * @return the caution
   * @throws IllegalArgumentException if the text is blank
   */
  public static Caution limit(String text, Source source) {
    return new Caution(text, false, source);
  }

  /** {@return what to know, in one sentence} */
  public String text() {
    return text;
  }

  /** {@return whether people can be hurt, rather than a rule be stretched} */
  public boolean isDanger() {
    return danger;
  }

  /** {@return where the limit or the warning comes from} */
  public Source source() {
    return source;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Caution caution
        && text.equals(caution.text)
        && danger == caution.danger
        && source.equals(caution.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(text, danger, source);
  }

  /** The text. */
  @Override
  public String toString() {
    return text;
  }
}
