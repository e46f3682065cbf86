package org.hammerscale.examples.order;

/** What jobs of several kinds say, so that the parts of a set can have it in common. */
@SuppressWarnings("ImmutableEnumChecker") // a reading holds what it is made with, and no more
public enum SetItem implements OrderItem {
  NAME(Reading.TEXT, false),
  COUNT(Reading.count(1, 1000), false),
  BAR(Reading.SECTION, true),
  WIRE(Reading.ROUND, false),
  CLEARANCE(Reading.LENGTH_OR_ZERO, false),
  COAT(Reading.LENGTH_OR_ZERO, true),
  KERF(Reading.LENGTH_OR_ZERO, true),
  HEAT(Reading.HEAT, true),
  SCREW(Reading.SCREW, true),
  WOOD(Reading.WOOD, true),
  GRADUATION(Reading.GRADUATION, true);

  private final Reading<?> reading;
  private final boolean ofSet;

  SetItem(Reading<?> reading, boolean ofSet) {
    this.reading = reading;
    this.ofSet = ofSet;
  }

  @Override
  public Reading<?> reading() {
    return reading;
  }

  @Override
  public boolean isOfSet() {
    return ofSet;
  }
}
