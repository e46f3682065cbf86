package org.hammerscale.working;

import java.util.Objects;
import org.hammerscale.internal.Arguments;
import org.jspecify.annotations.Nullable;

/**
 * Where a rule or a value comes from (its {@index citation}), and how sure that is.
 *
 * <pre>{@code
 * Source.read("Ilgen, Forge Work, 1912", "sec. 111")   // Ilgen, Forge Work, 1912, sec. 111 (read)
 * }</pre>
 */
public final class Source {
  /** How the library knows. */
  public enum Kind {
    /** Read in the published page. */
    READ("read"),
    /** A published standard or handbook, quoted from memory and not read again. */
    FROM_MEMORY("standard, from memory"),
    /** Follows from geometry or arithmetic alone. */
    COMPUTED("computed"),
    /** What smiths do; no published source is claimed. */
    COMMON_PRACTICE("common practice");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The kind in words. */
    @Override
    public String toString() {
      return words;
    }
  }

  private final String title;
  private final String locator;
  private final Kind kind;

  private Source(String title, String locator, Kind kind) {
    this.title = Arguments.text("title", title);
    this.locator = locator;
    this.kind = kind;
  }

  /**
   * A publication that was read.
   *
   * @param title author, title and edition or year
   * @param locator page, section, table or equation
   * @return the source
   * @throws IllegalArgumentException if the title is blank
   */
  public static Source read(String title, String locator) {
    return new Source(title, Objects.requireNonNull(locator, "locator"), Kind.READ);
  }

  /**
   * A standard or handbook quoted from memory.
   *
   * @param title number or author, title and edition or year
   * @param locator page, section, table or equation
   * @return the source
   * @throws IllegalArgumentException if the title is blank
   */
  public static Source fromMemory(String title, String locator) {
    return new Source(title, Objects.requireNonNull(locator, "locator"), Kind.FROM_MEMORY);
  }

  /**
   * Geometry or arithmetic that anybody can check.
   *
   * @param law the law it follows from, such as {@code prismoidal formula}
   * @return the source
   * @throws IllegalArgumentException if the law is blank
   */
  public static Source computed(String law) {
    Objects.requireNonNull(law, "law");
    return new Source(law, "", Kind.COMPUTED);
  }

  /**
   * What smiths do.
   *
   * @param rule the rule in words
   * @return the source
   * @throws IllegalArgumentException if the rule is blank
   */
  public static Source commonPractice(String rule) {
    Objects.requireNonNull(rule, "rule");
    return new Source(rule, "", Kind.COMMON_PRACTICE);
  }

  /** {@return author, title and edition, or the rule in words} */
  public String title() {
    return title;
  }

  /** {@return page, section, table or equation; empty if there is none} */
  public String locator() {
    return locator;
  }

  /** {@return how the library knows} */
  public Kind kind() {
    return kind;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Source source
        && title.equals(source.title)
        && locator.equals(source.locator)
        && kind == source.kind;
  }

  @Override
  public int hashCode() {
    return Objects.hash(title, locator, kind);
  }

  /** Title, locator and kind, as it is printed under a calculation. */
  @Override
  public String toString() {
    return title + (locator.isEmpty() ? "" : ", " + locator) + " (" + kind + ")";
  }
}
