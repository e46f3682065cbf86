package org.hammerscale.examples;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.hammerscale.benchmarks.SteadyBenchmark;
import org.hammerscale.cutting.Rack;
import org.hammerscale.examples.card.BenchCard;
import org.hammerscale.examples.order.CutSheet;
import org.hammerscale.examples.order.Order;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;

/**
 * What the bench card costs, from an order that has been read: drawings, sheets and cut list as one
 * page. Of two jobs at most 50 ms. It stands in the room of the program that it times, which is
 * public in its main method alone.
 */
public class CardBenchmark extends SteadyBenchmark {
  private List<Order> sample = List.of();
  private List<Order> twoJobs = List.of();
  private Rack rack = Rack.empty();

  /** Reads the sample order. */
  @Setup
  public void read() throws IOException {
    sample = OrderFile.of(JobSheet.sampleLines()).orders();
    twoJobs = sample.subList(0, 2);
    rack = RackFile.of(new StringReader(RackFile.NOTHING)).rack();
  }

  @Benchmark
  public String twoJobs() {
    return BenchCard.of(twoJobs, CutSheet.of(twoJobs, rack));
  }

  @Benchmark
  public String wholeSample() {
    return BenchCard.of(sample, CutSheet.of(sample, rack));
  }
}
