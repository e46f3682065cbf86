package org.hammerscale.examples.sweep;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.BarrelOpening;
import org.hammerscale.strength.PermissibleStress;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * Tries every pair of strap hinges of a grid of bars, pins and openings, on all processors, and
 * tells for each opening the lightest one whose open barrels bear a pull.
 *
 * <p>Usage: {@code LightestPair [widths]}, the widths of bar to try: 20 mm and up, half a
 * millimetre apart. Each is tried in 25 thicknesses, with 20 pins, for 20 openings: 100 widths make
 * a million pairs. It is a way to ask, no design: loads and safety are the caller's to choose.
 */
public final class LightestPair {
  private static final int THICKNESSES = 25;
  private static final int PINS = 20;
  private static final int OPENINGS = 20;
  private static final int USUAL_WIDTHS = 100;
  private static final Measure<Force> PULL = newtons(400);
  private static final PermissibleStress IRON = PermissibleStress.of(megapascals(235), 3);
  private static final Measure<Length> REACH = millimetres(300);

  /** A choice that bears the pull. */
  record Choice(Bar bar, Bore bore, int opening, Measure<Mass> mass) {
    @Override
    public String toString() {
      return mass + ", bar " + bar.section() + ", pin " + bore.pin();
    }
  }

  private final LongAdder impossible = new LongAdder();
  private final LongAdder weak = new LongAdder();

  private LightestPair() {}

  /**
   * Runs the sweep.
   *
   * @param args how many widths of bar, if not 100
   */
  public static void main(String[] args) {
    int widths = args.length == 0 ? USUAL_WIDTHS : Integer.parseInt(args[0]);
    run(widths, new PrintStream(System.out, true, StandardCharsets.UTF_8));
  }

  static List<Choice> run(int widths, PrintStream out) {
    LightestPair sweep = new LightestPair();
    long start = System.nanoTime();
    List<Choice> best =
        IntStream.range(0, OPENINGS)
            .mapToObj(step -> sweep.lightest(widths, 90 + 9 * step))
            .flatMap(Optional::stream)
            .toList();
    double seconds = (System.nanoTime() - start) / 1e9;
    String last = "";
    for (Choice choice : best) {
      if (!choice.toString().equals(last)) {
        last = choice.toString();
        out.println("opening " + degrees(choice.opening) + " and more: " + last);
      }
    }
    long tried = (long) widths * THICKNESSES * PINS * OPENINGS;
    out.println(tried + " pairs: " + sweep.impossible + " do not fit, " + sweep.weak + " too weak");
    out.println(seconds + " s, at most " + peakMegabytes() + " MB of heap");
    return best;
  }

  private Optional<Choice> lightest(int widths, int opening) {
    return IntStream.range(0, widths * THICKNESSES * PINS)
        .parallel()
        .mapToObj(number -> choice(number, opening))
        .flatMap(Optional::stream)
        .min(Comparator.comparing(Choice::mass));
  }

  /** The choice of a number, if its leaves fit and its barrel bears the pull. */
  private Optional<Choice> choice(int number, int opening) {
    int wider = number / (THICKNESSES * PINS);
    int thicker = number / PINS % THICKNESSES;
    int stouter = number % PINS;
    Section section = Section.flat(millimetres(20 + 0.5 * wider), millimetres(3 + 0.25 * thicker));
    Bar bar = Bar.of(section, Material.MILD_STEEL);
    Bore bore = Bore.forPin(millimetres(6 + 0.5 * stouter)).clearing(millimetres(0.4));
    HingePair pair;
    try {
      pair =
          HingePair.of(bar, bore)
              .leaves(Plain.of(bar.section(), REACH))
              .opening(degrees(opening), Hanging.JOINT)
              .pair();
    } catch (IllegalArgumentException e) { // it says why; here it only counts
      impossible.increment();
      return Optional.empty();
    }
    if (isWeak(pair, Leaf.FIRST) || isWeak(pair, Leaf.SECOND)) {
      weak.increment();
      return Optional.empty();
    }
    return Optional.of(new Choice(bar, bore, opening, mass(pair)));
  }

  /** Of both leaves, their slots cut out. */
  static Measure<Mass> mass(HingePair pair) {
    return finished(pair, Leaf.FIRST).add(finished(pair, Leaf.SECOND));
  }

  private static Measure<Mass> finished(HingePair pair, Leaf leaf) {
    Measure<Volume> cutOut = pair.metalCutOut(leaf).likely();
    Measure<Mass> bar = pair.leaf(leaf).layout().mass();
    return bar.subtract(Measures.mass(cutOut, pair.strap().material().density()));
  }

  private static boolean isWeak(HingePair pair, Leaf leaf) {
    return BarrelOpening.of(pair.barrel())
        .withKnuckles(pair.knuckles().bearingLength(leaf))
        .safePull(IRON)
        .isLessThan(PULL);
  }

  private static long peakMegabytes() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .map(MemoryPoolMXBean::getPeakUsage)
            .mapToLong(usage -> usage.getUsed())
            .sum()
        >> 20;
  }
}
