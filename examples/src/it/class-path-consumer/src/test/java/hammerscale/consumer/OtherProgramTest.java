package hammerscale.consumer;

import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.hammerscale.checking.CheckTopic;
import org.hammerscale.checking.CheckValue;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OtherProgramTest {
  static Stream<CheckValue> fullTurns() {
    Stream<CheckValue> barrels = CheckTopic.named("hinge/barrels").values();
    return barrels.filter(value -> value.question().equals("developed length"));
  }

  @ParameterizedTest
  @MethodSource("fullTurns")
  void fullTurn(CheckValue value) {
    var bore = value.input("bore", Length.class);
    double thickness = value.input("thickness", Length.class).in(bore.getUnit());
    var theirs = bore.withValue(OtherProgram.fullTurn(bore.getValue(), thickness));
    value.tolerance(Length.class).check(value.expected(Length.class), theirs).orThrow();
  }
}
