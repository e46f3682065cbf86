package org.hammerscale.validation;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hammerscale.checking.CheckTopic;

/**
 * What is checked against other people's values: a topic of check values, and how we answer each of
 * them, in the unit that the value is in. Each room of the library lists its own.
 */
record ValidationTopic(CheckTopic topic, ToDoubleFunction<ValidationCase> answer) {
  ValidationTopic(String name, ToDoubleFunction<ValidationCase> answer) {
    this(CheckTopic.named(name), answer);
  }

  /** The topics of all rooms, in the order of their index. */
  static List<ValidationTopic> all() {
    List<String> names = CheckTopic.all().stream().map(CheckTopic::name).toList();
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
            ScrewTopics.all(),
            HoleLayoutTopics.all(),
            CuttingTopics.all(),
            RailTopics.all(),
            CarryTopics.all(),
            TrialTopics.all())
        .flatMap(List::stream)
        .sorted(Comparator.comparingInt(topic -> names.indexOf(topic.topic.name())))
        .toList();
  }

  String title() {
    return topic.title();
  }

  List<ValidationCase> cases() {
    return topic.values().map(ValidationCase::new).toList();
  }

  @Override
  public String toString() {
    return title();
  }
}
