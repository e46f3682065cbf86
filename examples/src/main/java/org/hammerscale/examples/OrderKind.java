package org.hammerscale.examples;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hammerscale.examples.carry.BracketItem;
import org.hammerscale.examples.carry.BracketOrder;
import org.hammerscale.examples.carry.CarryingHookItem;
import org.hammerscale.examples.carry.CarryingHookOrder;
import org.hammerscale.examples.carry.ChainItem;
import org.hammerscale.examples.carry.ChainOrder;
import org.hammerscale.examples.drive.DriftBoltItem;
import org.hammerscale.examples.drive.DriftBoltOrder;
import org.hammerscale.examples.drive.PintleItem;
import org.hammerscale.examples.drive.PintleOrder;
import org.hammerscale.examples.drive.SpikeItem;
import org.hammerscale.examples.drive.SpikeOrder;
import org.hammerscale.examples.drive.StapleItem;
import org.hammerscale.examples.drive.StapleOrder;
import org.hammerscale.examples.latch.BoltItem;
import org.hammerscale.examples.latch.BoltOrder;
import org.hammerscale.examples.latch.EyePlateItem;
import org.hammerscale.examples.latch.EyePlateOrder;
import org.hammerscale.examples.latch.HaspItem;
import org.hammerscale.examples.latch.HaspOrder;
import org.hammerscale.examples.latch.HookItem;
import org.hammerscale.examples.latch.HookOrder;
import org.hammerscale.examples.latch.LatchItem;
import org.hammerscale.examples.latch.LatchOrder;
import org.hammerscale.examples.latch.SpringItem;
import org.hammerscale.examples.latch.SpringOrder;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.rail.BasketItem;
import org.hammerscale.examples.rail.BasketOrder;
import org.hammerscale.examples.rail.CollarItem;
import org.hammerscale.examples.rail.CollarOrder;
import org.hammerscale.examples.rail.TenonItem;
import org.hammerscale.examples.rail.TenonOrder;
import org.hammerscale.piece.TrialBook;
import org.jspecify.annotations.Nullable;

/** What can be made: the items of its block in an order file, and the job they make. */
@SuppressWarnings("ImmutableEnumChecker") // items and maker are set once
enum OrderKind {
  STRAP_HINGES(HingeItem.ALL, HingeOrder::from),
  THUMB_LATCH(LatchItem.ALL, LatchOrder::from),
  SLIDE_BOLT(BoltItem.ALL, BoltOrder::from),
  CABIN_HOOK(HookItem.ALL, HookOrder::from),
  HASP(HaspItem.ALL, HaspOrder::from),
  EYE_PLATE(EyePlateItem.ALL, EyePlateOrder::from),
  LATCH_SPRING(SpringItem.ALL, SpringOrder::from),
  PICKETS(PicketItem.ALL, PicketOrder::from),
  BRACKET(BracketItem.ALL, BracketOrder::from),
  CARRYING_HOOK(CarryingHookItem.ALL, CarryingHookOrder::from),
  CHAIN(ChainItem.ALL, ChainOrder::from),
  COLLAR(CollarItem.ALL, CollarOrder::from),
  TENON(TenonItem.ALL, TenonOrder::from),
  BASKET(BasketItem.ALL, BasketOrder::from),
  PINTLE(PintleItem.ALL, PintleOrder::from),
  SPIKE(SpikeItem.ALL, SpikeOrder::from),
  STAPLE(StapleItem.ALL, StapleOrder::from),
  DRIFT_BOLT(DriftBoltItem.ALL, DriftBoltOrder::from);

  /** Makes a job of what its column says. */
  private interface Maker {
    Order make(OrderColumn job, Optional<TrialBook> trials);
  }

  private static final Map<String, OrderKind> BY_LABEL =
      Arrays.stream(values()).collect(Collectors.toMap(OrderKind::label, Function.identity()));

  private final Map<String, OrderItem> items;
  private final List<OrderItem> inOrder;
  private final Maker maker;

  /** Kinds that no trials are written down of. */
  OrderKind(List<OrderItem> items, Function<OrderColumn, Order> from) {
    this(items, (job, trials) -> from.apply(job));
  }

  OrderKind(List<OrderItem> items, Maker maker) {
    this.inOrder = items;
    this.items = items.stream().collect(Collectors.toMap(OrderItem::label, Function.identity()));
    this.maker = maker;
  }

  /** How it is called in a file, such as {@code strap hinges}. */
  String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Its items, in the order that they are told in. */
  List<OrderItem> items() {
    return inOrder;
  }

  /** The item that is written so. */
  @Nullable OrderItem item(String label) {
    return items.get(label);
  }

  /** The names of its items. */
  String itemNames() {
    return inOrder.stream().map(OrderItem::label).collect(Collectors.joining(", "));
  }

  /** Whether its jobs may take values from the hinges of the same name. */
  boolean isBesideHinges() {
    return this != STRAP_HINGES;
  }

  /**
   * The job in a column of an order file.
   *
   * @throws org.hammerscale.examples.order.Blame if its values cannot be put together
   */
  Order make(OrderColumn job, Optional<TrialBook> trials) {
    return maker.make(job, trials);
  }

  /** The one that is written so. */
  static @Nullable OrderKind named(String label) {
    return BY_LABEL.get(label);
  }

  static String names() {
    return Arrays.stream(values()).map(OrderKind::label).collect(Collectors.joining(", "));
  }
}
