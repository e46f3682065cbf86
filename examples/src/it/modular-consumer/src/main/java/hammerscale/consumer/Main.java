package hammerscale.consumer;

import static org.hammerscale.units.Measures.inches;

import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Section;

/** Prints the length of strap that a rolled barrel uses up. */
final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    Barrel barrel = Barrel.around(inches("1/2"), Section.flat(inches("1 1/2"), inches("1/4")));
    System.out.println(barrel.developedLength());
  }
}
