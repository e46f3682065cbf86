package org.hammerscale.examples.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.ContextualDeserializer;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Length;
import org.hammerscale.cutting.Aim;
import org.hammerscale.cutting.CutBar;
import org.hammerscale.cutting.CutMark;
import org.hammerscale.cutting.CuttingPlan;
import org.hammerscale.cutting.Reached;
import org.hammerscale.piece.Layout;
import org.hammerscale.piece.Mark;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;
import org.hammerscale.working.Step;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * Teaches Jackson the library's things. Copy it into a program of your own:
 *
 * <pre>{@literal
 * ObjectMapper json = new ObjectMapper().registerModule(new HammerscaleModule());
 * json.writeValueAsString(inches(14.46))        {"value":14.46,"unit":"in"}
 * json.writeValueAsString(piece.layout())       {"cutLength":{"low":14.2,"likely":14.46,"high":14.7,"unit":"in"},...}
 * }</pre>
 *
 * <p>Measures and estimates come back as they were, in every unit of {@link ShopUnits}; a plain
 * number has the unit {@code 1}. What is read into a {@code Measure<Length>} must be a length, and
 * may be a text such as {@code "1 1/2 in"}. Answers are written only: to read one, read what it was
 * asked for, and ask again.
 */
public final class HammerscaleModule extends SimpleModule {
  private static final long serialVersionUID = 1;

  /** The module, to register with an object mapper. */
  public HammerscaleModule() {
    super("hammerscale");
    addDeserializer(Measure.class, new Reader<>(Measure.class, null, HammerscaleModule::measure));
    addDeserializer(
        Estimate.class, new Reader<>(Estimate.class, null, HammerscaleModule::estimate));
    write(Measure.class)
        .with("value", measure -> measure.getValue())
        .with("unit", HammerscaleModule::symbol);
    write(Estimate.class)
        .with("low", estimate -> estimate.low().getValue())
        .with("likely", estimate -> estimate.likely().getValue())
        .with("high", estimate -> estimate.high().getValue())
        .with("unit", estimate -> symbol(estimate.likely()));
    write(Source.class)
        .with("title", Source::title)
        .with("locator", Source::locator)
        .with("kind", source -> source.kind().toString());
    write(Caution.class)
        .with("text", Caution::text)
        .with("danger", Caution::isDanger)
        .with("source", Caution::source);
    write(Step.class)
        .with("symbol", Step::symbol)
        .with("meaning", Step::meaning)
        .with("formula", Step::formula)
        .with("value", Step::value);
    write(Working.class)
        .with("title", Working::title)
        .with("steps", Working::steps)
        .with("result", Working::result)
        .with("sources", Working::sources)
        .with("cautions", Working::cautions);
    write(Mark.class)
        .with("label", Mark::label)
        .with("position", Mark::position)
        .with("cut", Mark::isCut);
    write(Layout.class)
        .with("cutLength", Layout::cutLength)
        .with("marks", Layout::marks)
        .with("finishedLength", Layout::finishedLength)
        .with("mass", Layout::mass)
        .with("cautions", Layout::cautions);
    write(HoleLayout.class)
        .with("positions", HoleLayout::positions)
        .with("spacings", HoleLayout::spacings)
        .with("governedBy", HoleLayout::governedBy)
        .with("cautions", HoleLayout::cautions);
    write(CuttingPlan.class)
        .with("bars", CuttingPlan::bars)
        .with("money", CuttingPlan::money)
        .with("newStock", CuttingPlan::newStock)
        .with("longestLeftover", CuttingPlan::longestLeftover)
        .with("reached", plan -> Stream.of(Aim.values()).map(plan::reached).toList());
    write(CutBar.class)
        .with("count", CutBar::count)
        .with("length", CutBar::length)
        .with("offcut", CutBar::isOffcut)
        .with("marks", CutBar::marks)
        .with("leftover", CutBar::leftover);
    write(CutMark.class)
        .with("name", CutMark::name)
        .with("start", CutMark::start)
        .with("end", CutMark::end);
    write(Reached.class)
        .with("aim", reached -> reached.aim().toString())
        .with("value", reached -> plain(reached.value()))
        .with("bound", reached -> plain(reached.bound()))
        .with("proven", Reached::isProven);
  }

  private <T> Writer<T> write(Class<T> type) {
    Writer<T> writer = new Writer<>(type);
    addSerializer(type, writer);
    return writer;
  }

  /** 6000, which its maker may have as 6E+3. */
  private static BigDecimal plain(BigDecimal number) {
    return new BigDecimal(number.toPlainString());
  }

  private static String symbol(Measure<?> measure) {
    String symbol = ShopUnits.symbol(measure.getUnit());
    return symbol.isEmpty() ? "1" : symbol;
  }

  private static <Q extends Quantity<Q>> Measure<Q> measure(JsonNode node, Unit<Q> unit) {
    return Measure.of(number(node, "value"), unit);
  }

  private static <Q extends Quantity<Q>> Estimate<Q> estimate(JsonNode node, Unit<Q> unit) {
    return Estimate.of(
        Measure.of(number(node, "low"), unit),
        Measure.of(number(node, "likely"), unit),
        Measure.of(number(node, "high"), unit));
  }

  private static double number(JsonNode node, String field) {
    if (!node.path(field).isNumber()) {
      throw new IllegalArgumentException(
          field + " must be a number, was " + node.path(field) + "; give it beside its unit");
    }
    return node.path(field).doubleValue();
  }

  /** Writes a thing as an object: a name and a question to the thing for each field. */
  private static final class Writer<T> extends StdSerializer<T> {
    private static final long serialVersionUID = 1;

    private final transient Map<String, Function<T, ?>> fields = new LinkedHashMap<>();

    Writer(Class<T> type) {
      super(type);
    }

    Writer<T> with(String name, Function<T, ?> question) {
      fields.put(name, question);
      return this;
    }

    @Override
    public void serialize(T thing, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      out.writeStartObject(thing);
      for (Map.Entry<String, Function<T, ?>> field : fields.entrySet()) {
        provider.defaultSerializeField(field.getKey(), field.getValue().apply(thing), out);
      }
      out.writeEndObject();
    }
  }

  /** What is made of an object with a unit. */
  private interface Form<T> {
    <Q extends Quantity<Q>> T of(JsonNode node, Unit<Q> unit);
  }

  /** Reads what has a unit, and holds it to the quantity that is wanted, if one is named. */
  private static final class Reader<T> extends StdDeserializer<T>
      implements ContextualDeserializer {
    private static final long serialVersionUID = 1;

    private final @Nullable Class<?> quantity;
    private final transient Form<T> form;

    Reader(Class<?> type, @Nullable Class<?> quantity, Form<T> form) {
      super(type);
      this.quantity = quantity;
      this.form = form;
    }

    @Override
    public JsonDeserializer<?> createContextual(
        DeserializationContext context, @Nullable BeanProperty property) {
      JavaType asked = context.getContextualType().containedType(0);
      boolean isNamed = asked != null && Quantity.class.isAssignableFrom(asked.getRawClass());
      return isNamed ? new Reader<>(handledType(), asked.getRawClass(), form) : this;
    }

    @Override
    public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
      JsonNode node = context.readTree(in);
      try {
        return read(node.isTextual() ? object(Measures.length(node.textValue())) : node);
      } catch (IllegalArgumentException | MeasurementParseException e) {
        return context.reportInputMismatch(this, e.getMessage());
      }
    }

    private static JsonNode object(Measure<Length> length) {
      return JsonNodeFactory.instance
          .objectNode()
          .put("value", length.in(length.getUnit()))
          .put("unit", symbol(length));
    }

    private T read(JsonNode node) {
      String symbol = node.path("unit").asText();
      Unit<?> unit = symbol.equals("1") ? ShopUnits.ONE : ShopUnits.system().getUnit(symbol);
      if (symbol.isEmpty() || unit == null) {
        throw new IllegalArgumentException(
            "unit must be one of the shop's, was " + node.path("unit") + "; give in, mm or kg");
      }
      return of(node, unit);
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // it is asked for its dimension alone
    private <Q extends Quantity<Q>> T of(JsonNode node, Unit<Q> unit) {
      try {
        if (quantity != null) {
          Measure.of(1, unit).asType(quantity.asSubclass(Quantity.class));
        }
      } catch (ClassCastException e) {
        throw new IllegalArgumentException(
            "unit must measure "
                + quantity.getSimpleName()
                + ", was "
                + unit
                + "; give one that does",
            e);
      }
      return form.of(node, unit);
    }
  }
}
