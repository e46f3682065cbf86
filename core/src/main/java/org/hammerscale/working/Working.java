package org.hammerscale.working;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;

/**
 * How one answer was found, ready to print: the steps from what was given to the result, the
 * sources and the cautions. Its numbers are those of the answer itself, to the last bit. Other
 * name: {@index derivation}.
 *
 * <p>A caller's own {@code Feature} gets its working from {@link Notes#taken}.
 */
public final class Working {
  private final String title;
  private final List<Step> steps;
  private final List<Source> sources;
  private final List<Caution> cautions;

  private Working(String title, List<Step> steps, List<Source> sources, List<Caution> cautions) {
    this.title = Arguments.text("title", title);
    this.steps = steps;
    this.sources = sources;
    this.cautions = cautions;
  }

  static Working of(String title, List<Step> steps) {
    if (steps.isEmpty()) {
      throw new IllegalArgumentException(
          "calculation must note at least its result; pass it through the notes");
    }
    return new Working(title, List.copyOf(steps), List.of(), List.of());
  }

  /**
   * This working with a source added.
   *
   * @param source where its rule comes from
   * @return the working
   */
  public Working withSource(Source source) {
    Objects.requireNonNull(source, "source");
    List<Source> all = new ArrayList<>(sources);
    all.add(source);
    return new Working(title, steps, List.copyOf(all), cautions);
  }

  /**
   * This working with cautions added.
   *
   * @param more what to know before trusting it
   * @return the working
   */
  public Working withCautions(List<Caution> more) {
    Objects.requireNonNull(more, "more");
    List<Caution> all = new ArrayList<>(cautions);
    all.addAll(more);
    return new Working(title, steps, sources, List.copyOf(all));
  }

  /** {@return what is calculated} */
  public String title() {
    return title;
  }

  /** {@return the steps in order; the last one is the result} */
  public List<Step> steps() {
    return steps;
  }

  /** {@return the value of the last step} */
  public Measure<?> result() {
    return steps.get(steps.size() - 1).value();
  }

  /** {@return where the rules come from} */
  public List<Source> sources() {
    return sources;
  }

  /** {@return what to know before trusting the result} */
  public List<Caution> cautions() {
    return cautions;
  }

  /** All of it on a few lines: formulas with their numbers, meanings, sources, cautions. */
  @Override
  public String toString() {
    Map<String, String> numbers = new HashMap<>();
    List<String> lines = new ArrayList<>();
    int width = 0;
    for (Step step : steps) {
      String line = step.withNumbers(numbers);
      lines.add(line);
      width = Math.max(width, line.length());
      numbers.put(step.symbol(), step.number());
    }
    StringBuilder text = new StringBuilder(title);
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      text.append("\n  ").append(line).append(" ".repeat(width - line.length() + 3));
      text.append(steps.get(i).meaning());
    }
    sources.forEach(source -> text.append("\n  Source: ").append(source));
    cautions.forEach(caution -> text.append("\n  Caution: ").append(caution));
    return text.toString();
  }
}
