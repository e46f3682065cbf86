package org.hammerscale.validation;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What is checked against other people's values: a file of cases, and how we answer each of them,
 * in the unit that the case names. Each room of the library lists its own.
 */
record ValidationTopic(String title, String file, ToDoubleFunction<ValidationCase> answer) {
  /** The topics of all rooms, in the order of the page. */
  static List<ValidationTopic> all() {
    return Stream.of(
            StockTopics.all(),
            HeatTopics.all(),
            ScaleTopics.all(),
            ForgingTopics.all(),
            BendingTopics.all(),
            PunchingTopics.all(),
            HingeTopics.all(),
            LoadTopics.all(),
            SwingTopics.all(),
            HingeToolTopics.all(),
            FastenerTopics.all(),
            WoodTopics.all(),
            LatchTopics.all(),
            HoleLayoutTopics.all())
        .flatMap(List::stream)
        .toList();
  }

  List<ValidationCase> cases() {
    return ValidationFile.read(file);
  }

  @Override
  public String toString() {
    return title;
  }
}
