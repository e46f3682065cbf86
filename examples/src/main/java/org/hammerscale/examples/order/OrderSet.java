package org.hammerscale.examples.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The jobs of one name: a set whose parts match, if they are several. */
public final class OrderSet {
  private final List<Order> orders = new ArrayList<>();

  private OrderSet() {}

  /** The jobs of an order, those of one name together, in the order of the file. */
  public static List<OrderSet> of(List<? extends Order> orders) {
    Map<String, OrderSet> sets = new LinkedHashMap<>();
    orders.forEach(
        order -> sets.computeIfAbsent(order.name(), n -> new OrderSet()).orders.add(order));
    return List.copyOf(sets.values());
  }

  public List<Order> orders() {
    return List.copyOf(orders);
  }

  /**
   * Writes what the sheet of a job begins with: on the first what belongs together, on the others
   * which of them it is; of a job that stands alone nothing.
   */
  public void write(SheetText sheet, Order order) {
    int number = orders.indexOf(order) + 1;
    if (orders.size() == 1) {
      return;
    }
    String which = order.name() + ", sheet " + number + " of " + orders.size();
    if (number > 1) {
      sheet.entry("Set", "%s", which);
      return;
    }
    sheet.entry("Set", "%s: %s", which, told(orders.stream().map(Order::what)));
    sheet.entry(
        "", "one cut list at the end, of %s", told(cuts().map(c -> c.bar().section() + "")));
    String finish =
        told(orders.stream().filter(o -> o.coat().getValue() > 0).map(o -> o.coat() + ""));
    sheet.entry(
        "",
        "%s%s",
        finish.isEmpty() ? "bare iron" : "finish of " + finish + " on every face",
        screws());
  }

  private Stream<Cut> cuts() {
    return orders.stream().flatMap(order -> order.cuts().stream());
  }

  /** Each once. */
  private static String told(Stream<String> all) {
    return all.distinct().collect(Collectors.joining(", "));
  }

  private String screws() {
    Map<String, Integer> counts = new TreeMap<>();
    orders.forEach(
        order ->
            order.screws().forEach((screw, n) -> counts.merge(screw.toString(), n, Integer::sum)));
    return counts.entrySet().stream()
        .map(each -> "; " + each.getValue() + " screws: " + each.getKey())
        .collect(Collectors.joining());
  }
}
