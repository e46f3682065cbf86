package org.hammerscale.checking;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What programs of the trade can be checked in, such as how far hinges open, with the values to
 * check them by ({@index "test data"}, {@index "reference values"}).
 *
 * <pre>{@code
 * CheckTopic.all().size() > 50                        // true  the length of a taper, the pull of a screw, ...
 * CheckTopic barrels = CheckTopic.named("hinge/barrels");
 * barrels.title()                                     // "Eyes, rings and barrels"
 * barrels.values().findFirst().get()                  // ring of 2 in stock, 5 in inside, developed length: 21.991 in ± 0.0005
 * barrels.values().filter(v -> v.kind() == Source.Kind.READ).count()  // 5  read in print, not computed
 * }</pre>
 */
public final class CheckTopic {
  private static final String INDEX = "topics";

  private final String name;
  private final String title;
  private final String remarks;

  private CheckTopic(List<String> fields) {
    this.name = fields.get(0);
    this.title = fields.get(1);
    this.remarks = fields.get(2);
  }

  /** {@return all topics, in the order of the rooms of the library} */
  public static List<CheckTopic> all() {
    return CsvTable.rows(INDEX).map(CheckTopic::new).toList();
  }

  /**
   * The topic of a name.
   *
   * @param name its name, as {@link #all()} has it: a room of the library and a matter in it, such
   *     as {@code hinge/swing}
   * @return the topic
   * @throws IllegalArgumentException if there is none of that name
   */
  public static CheckTopic named(String name) {
    Objects.requireNonNull(name, "name");
    return all().stream()
        .filter(topic -> topic.name.equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "name must be that of a topic such as hinge/swing, was "
                        + name
                        + "; take one of CheckTopic.all()"));
  }

  /** {@return its name, such as {@code hinge/swing}; its file is {@code hinge/swing.csv}} */
  public String name() {
    return name;
  }

  /** {@return what it is about, as a heading} */
  public String title() {
    return title;
  }

  /** {@return what a reader of its values should know: conventions, and what was left out} */
  public String remarks() {
    return remarks;
  }

  /** {@return its values, in the order of its file; read when the stream is made} */
  public Stream<CheckValue> values() {
    return CsvTable.rows(name).map(fields -> new CheckValue(name, fields));
  }

  /** Name and title. */
  @Override
  public String toString() {
    return name + ": " + title;
  }
}
