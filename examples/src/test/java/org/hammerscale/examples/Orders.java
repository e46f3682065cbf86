package org.hammerscale.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.SheetText;

/** What tests of all kinds of orders ask of a file, of its sheets and of its faults. */
final class Orders {
  private Orders() {}

  /** The jobs of a file without a fault. */
  static List<Order> of(List<String> lines) {
    OrderFile file = OrderFile.of(lines);
    assertEquals(List.of(), file.faults());
    return file.orders();
  }

  /** The front of a job as it is printed, which fits its page. */
  static String front(Order order) {
    SheetText sheet = new SheetText(80);
    order.front(sheet);
    String printed = sheet.toString();
    assertTrue(printed.lines().count() <= 60, printed);
    assertTrue(printed.lines().allMatch(line -> line.length() <= 80), printed);
    return printed;
  }

  /** In one line, so that words are found across line ends. */
  static String inOneLine(String printed) {
    return printed.replaceAll("\\s+", " ");
  }

  static void assertSays(String sheet, String... words) {
    for (String each : words) {
      assertTrue(sheet.contains(each), () -> each + "\n" + sheet);
    }
  }

  /** How many orders were made of files with changed values, and how many files were refused. */
  record Told(int made, int refused) {}

  /**
   * Any two values of a sample changed, so many times: a fault in words, or a front that fits.
   *
   * @param changed what a line looks like whose last value may be changed
   */
  static Told toldOrRefused(
      int seed, int times, List<String> sample, String changed, List<String> values) {
    Random random = new Random(seed);
    int made = 0;
    int refused = 0;
    for (int i = 0; i < times; i++) {
      List<String> lines = new ArrayList<>(sample);
      for (int change = 0; change < 2; change++) {
        int at = random.nextInt(lines.size());
        if (lines.get(at).matches(changed)) {
          String value = values.get(random.nextInt(values.size()));
          lines.set(at, lines.get(at).replaceAll(",[^,]*$", ", " + value));
        }
      }
      OrderFile file = OrderFile.of(lines);
      refused += file.faults().isEmpty() ? 0 : 1;
      for (Order order : file.faults().isEmpty() ? file.orders() : List.<Order>of()) {
        made++;
        front(order);
        order.back(new SheetText(100));
        order.drawings();
      }
    }
    return new Told(made, refused);
  }
}
