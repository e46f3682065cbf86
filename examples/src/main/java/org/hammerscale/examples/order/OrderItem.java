package org.hammerscale.examples.order;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a block of an order file says of each of its jobs, and what it may say there. */
public final class OrderItem {
  private final String label;
  private final Reading<?> reading;
  private final @Nullable OrderItem limit;
  private final boolean ofSet;

  private OrderItem(String label, Reading<?> reading, @Nullable OrderItem limit, boolean ofSet) {
    this.label = label;
    this.reading = reading;
    this.limit = limit;
    this.ofSet = ofSet;
  }

  /** An item that is called so in a file, such as {@code bar width}, and how its cells are read. */
  public static OrderItem of(String label, Reading<?> reading) {
    return new OrderItem(label, reading, null, false);
  }

  /** The same, whose length may not be more than that of another. */
  public OrderItem atMost(OrderItem other) {
    return new OrderItem(label, reading, other, ofSet);
  }

  /** The same, which hinges and what belongs to them have in common: {@code as hinges}. */
  OrderItem ofSet() {
    return new OrderItem(label, reading, limit, true);
  }

  /** How it is called in a file. */
  public String label() {
    return label;
  }

  /** How its cells are read. */
  public Reading<?> reading() {
    return reading;
  }

  /** The item that its length may not be more than. */
  public Optional<OrderItem> limit() {
    return Optional.ofNullable(limit);
  }

  /** Whether it may be told {@code as hinges}. */
  public boolean isOfSet() {
    return ofSet;
  }

  /** Its label. */
  @Override
  public String toString() {
    return label;
  }
}
