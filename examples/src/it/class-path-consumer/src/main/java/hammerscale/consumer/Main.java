package hammerscale.consumer;

import static org.hammerscale.units.Measures.inches;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.hammerscale.checking.CheckTopic;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Section;

/** Uses the library as it was used before there were modules: a length, a copy of it, a check. */
final class Main {
  private Main() {}

  public static void main(String[] arguments) throws IOException, ClassNotFoundException {
    Barrel barrel = Barrel.around(inches("1/2"), Section.flat(inches("1 1/2"), inches("1/4")));
    System.out.println(barrel.developedLength());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(barrel.developedLength());
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      System.out.println("sent and read: " + in.readObject());
    }
    System.out.println(CheckTopic.named("hinge/swing").title());
  }
}
