package org.hammerscale.hinge;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.hammerscale.heat.Contraction;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/** A tool that gives hot work its size: both grow by their own heat, and meet hot. */
record HotFit(Contraction work, @Nullable Contraction tool) {
  private static final Measure<Temperature> COLD = Measures.celsius(20);

  HotFit {
    Objects.requireNonNull(work, "work");
  }

  HotFit with(Contraction newTool) {
    return new HotFit(work, Objects.requireNonNull(newTool, "newTool"));
  }

  /** What the tool measures cold, to leave a cold size of the work. */
  double toolSize(Notes n, String workName, String toolName, Measure<Length> cold) {
    double b = n.given("B", workName + ", cold", cold.getValue());
    double h = n.length("H", workName + ", hot", "B (1 + e₁)", b * (1 + workGrowth(n)));
    return n.length("D", toolName + ", cold", "H / (1 + e₂)", h / (1 + toolGrowth(n)));
  }

  /** What a tool of a cold size leaves when the work is cold. */
  double workSize(Notes n, String workName, String toolName, Measure<Length> cold) {
    double d = n.given("D", toolName + ", cold", cold.getValue());
    double h = n.length("H", toolName + ", hot", "D (1 + e₂)", d * (1 + toolGrowth(n)));
    return n.length("B", workName + ", cold", "H / (1 + e₁)", h / (1 + workGrowth(n)));
  }

  /** The same where the heat of the work is judged by eye. */
  Estimate<Length> workByEye(Measure<Length> cold) {
    return work.coldByEye(cold.withValue(cold.getValue() * (1 + toolGrowth(Notes.NONE))));
  }

  private double workGrowth(Notes n) {
    return n.number("e₁", "elongation of the work at " + work.heat(), "", work.elongation());
  }

  private double toolGrowth(Notes n) {
    return tool == null
        ? n.number("e₂", "elongation of the tool, cold", "", 0)
        : n.number("e₂", "elongation of the tool at " + tool.heat(), "", tool.elongation());
  }

  Measure<Temperature> toolHeat() {
    return tool == null ? COLD.to(work.heat().getUnit()) : tool.heat();
  }

  List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(work.cautions());
    if (tool != null) {
      cautions.addAll(tool.cautions());
    }
    return cautions;
  }

  /** Adds where the elongations come from. */
  Working sourced(Working working, Measure<Length> size) {
    Working all = working;
    for (Contraction contraction : tool == null ? List.of(work) : List.of(work, tool)) {
      for (var source : contraction.hotWorking(size).sources()) {
        all = all.sources().contains(source) ? all : all.withSource(source);
      }
    }
    return all;
  }
}
