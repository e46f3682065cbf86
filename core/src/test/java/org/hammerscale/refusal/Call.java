package org.hammerscale.refusal;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.TypeVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** One call of a public method, ready to be made as often as wanted. */
record Call(
    Executable method, Object receiver, List<Object> arguments, Map<TypeVariable<?>, Want> known) {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  /** What came of it: an answer, which may be null, or what was thrown; and the time it took. */
  record Outcome(Object answer, Throwable thrown, double milliseconds) {}

  Outcome outcome() {
    long start = THREADS.getCurrentThreadCpuTime();
    Object answer = null;
    Throwable thrown = null;
    try {
      answer =
          method instanceof Method asked
              ? asked.invoke(receiver, arguments.toArray())
              : ((Constructor<?>) method).newInstance(arguments.toArray());
    } catch (InvocationTargetException e) {
      thrown = e.getCause();
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(toString(), e);
    }
    return new Outcome(answer, thrown, (THREADS.getCurrentThreadCpuTime() - start) / 1e6);
  }

  /** The same call with one argument put in place of another. */
  Call with(int place, Object argument) {
    List<Object> changed = new ArrayList<>(arguments);
    changed.set(place, argument);
    return new Call(method, receiver, changed, known);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    String owner = method.getDeclaringClass().getSimpleName();
    text.append(receiver == null ? owner : owner + " <" + print(receiver) + ">");
    text.append('.').append(method.getName()).append('(');
    for (int i = 0; i < arguments.size(); i++) {
      text.append(i == 0 ? "" : ", ").append(method.getParameters()[i].getName()).append(" = ");
      text.append(print(arguments.get(i)));
    }
    return text.append(')').toString();
  }

  private static String print(Object thing) {
    String text;
    try {
      text =
          thing instanceof Object[] things
              ? Arrays.toString(things)
              : thing instanceof double[] numbers ? Arrays.toString(numbers) : "" + thing;
    } catch (RuntimeException e) {
      text = "a " + thing.getClass().getSimpleName() + " that cannot print itself";
    }
    return text.length() > 200 ? text.substring(0, 200) + "…" : text;
  }
}
