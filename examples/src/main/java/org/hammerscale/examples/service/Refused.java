package org.hammerscale.examples.service;

import java.util.List;
import java.util.function.Supplier;

/** A request that cannot be answered: which of its fields is to blame, and what to do. */
final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int status;
  private final String field;

  Refused(int status, String field, String message) {
    super(message);
    this.status = status;
    this.field = field;
  }

  /**
   * What comes of a field. A refusal of the library is told with the field's name, and with that of
   * the part of it that the refusal begins with.
   */
  static <T> T in(String field, Supplier<T> question, String... parts) {
    try {
      return question.get();
    } catch (IllegalArgumentException e) {
      String message = String.valueOf(e.getMessage());
      String part = message.split(" ", 2)[0];
      boolean isNamed = List.of(parts).contains(part);
      throw new Refused(422, isNamed ? field + "." + part : field, message);
    }
  }

  int status() {
    return status;
  }

  /** Where in the request, such as {@code bar.width}; empty if it is the request itself. */
  String field() {
    return field;
  }

  /** What it says, which cannot be null. */
  String message() {
    return String.valueOf(getMessage());
  }
}
