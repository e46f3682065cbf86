package org.hammerscale.examples.service;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The service as its clients see it: answers, refusals, limits, and many at once. */
@Timeout(value = 2, unit = TimeUnit.MINUTES)
class ShopServiceTest {
  private static final String LEAF =
      """
      {"bar": {"width": "1 1/2 in", "thickness": "1/4 in"}, "pin": "1/2 in", "plain": "9 in",
       "taper": "6 in", "tip": {"width": "3/4 in", "thickness": {"value": 0.125, "unit": "in"}}}
      """;
  private static final String HOLES =
      """
      {"along": "12 in", "holes": 3, "startingFrom": "1 in", "endingBefore": "1 in",
       "missing": [{"from": "6 in", "to": "7 in"}]}
      """;
  private static final String PAIR =
      """
      {"bar": {"width": "40 mm", "thickness": "6 mm"}, "pin": "12 mm", "clearance": "0.5 mm",
       "leaf": "300 mm", "opening": {"value": 180, "unit": "°"}, "hanging": "face"}
      """;
  private static final String CUTS =
      """
      {"bar": {"width": "40 mm", "thickness": "6 mm"}, "rule": "1 mm", "kerf": "3 mm",
       "pieces": [{"name": "leaf", "length": "435 mm", "count": 12}],
       "buying": [{"length": "3 m", "price": 14.5}], "offcuts": [{"length": "910 mm", "count": 1}]}
      """;

  private static final ObjectMapper JSON = new ObjectMapper();
  private static ShopService service;
  private static HttpClient client;

  @BeforeAll
  static void start() throws IOException {
    // A busy machine may let a thread wait for long; only the test of the limit is impatient.
    service = ShopService.listen(0, Duration.ofSeconds(30));
    client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  private static HttpRequest.Builder to(String path) {
    URI uri = URI.create("http://127.0.0.1:" + service.port() + path);
    return HttpRequest.newBuilder(uri).timeout(Duration.ofSeconds(30));
  }

  private static HttpRequest post(String path, String body) {
    return to(path).POST(BodyPublishers.ofString(body)).build();
  }

  private static HttpResponse<String> sent(HttpRequest request) throws Exception {
    return client.send(request, BodyHandlers.ofString());
  }

  private static JsonNode answer(String path, String body) throws Exception {
    HttpResponse<String> response = sent(post(path, body));
    assertEquals(200, response.statusCode(), response::body);
    return JSON.readTree(response.body());
  }

  @Test
  void answersAsTheLibraryDoes() throws Exception {
    JsonNode leaf = answer("/leaf", LEAF);
    // As the README has it: 14.4635 in (14.2135 in to 14.7135 in).
    assertEquals(14.4635, leaf.at("/layout/cutLength/likely").doubleValue(), 0.00005);
    assertEquals(14.7135, leaf.at("/layout/cutLength/high").doubleValue(), 0.00005);
    assertEquals(1.9635, leaf.at("/barrel/result/value").doubleValue(), 0.00005);

    JsonNode holes = answer("/holes", HOLES);
    assertEquals(1, holes.at("/positions/0/value").doubleValue());
    assertEquals(6, holes.at("/positions/1/value").doubleValue());
    assertEquals(11, holes.at("/positions/2/value").doubleValue());

    JsonNode pair = answer("/pair", PAIR);
    assertEquals("mm", pair.at("/notchDepth/unit").asText());
    assertTrue(pair.at("/opening/value").doubleValue() >= 180);
    assertTrue(pair.at("/first/layout/cutLength/high").doubleValue() > 300);
    assertFalse(pair.at("/second/slots").isEmpty());

    // Two of 435 mm from the offcut: 435 + 3 + 435 = 873. Six from 3 m: 6 × 435 + 5 × 3 = 2625.
    JsonNode cuts = answer("/cut-list", CUTS);
    assertEquals(29.0, cuts.at("/money").doubleValue());
    assertTrue(cuts.at("/reached/0/proven").booleanValue());
    assertEquals("6000", cuts.at("/reached/1/value").toString());
  }

  @Test
  void tellsHowItIsAsked() throws Exception {
    HttpResponse<String> page = sent(to("/openapi.yaml").GET().build());
    assertEquals(200, page.statusCode());
    for (String path : List.of("/leaf:", "/holes:", "/pair:", "/cut-list:")) {
      assertTrue(page.body().contains("\n  " + path + "\n"), path);
    }
    assertTrue(page.body().lines().count() <= 120, "one page");
  }

  /** Every field that a request can have is on the page, and no other. */
  @Test
  void thePageNamesEveryField() throws Exception {
    String page = sent(to("/openapi.yaml").GET().build()).body();
    Map<String, Class<?>> schemas =
        Map.of(
            "Flat",
            Flat.class,
            "Leaf",
            Leaf.class,
            "Holes",
            Holes.class,
            "Pair",
            Pair.class,
            "Stretch",
            Holes.Stretch.class,
            "Cuts",
            Cuts.class,
            "Wanted",
            Cuts.Wanted.class,
            "Bought",
            Cuts.Bought.class);
    for (Map.Entry<String, Class<?>> schema : schemas.entrySet()) {
      String part = page.split("\n    " + schema.getKey() + ":\n", 2)[1].split("\n    \\w", 2)[0];
      String properties = part.substring(part.indexOf("properties:") + "properties:".length());
      List<String> named = new ArrayList<>();
      var names =
          java.util.regex.Pattern.compile("(?:^|[{,]|\n) *(\\w+): \\{")
              .matcher(properties.replaceFirst("^ *\\{", ""));
      while (names.find()) {
        if (!names.group(1).equals("items")) {
          named.add(names.group(1));
        }
      }
      List<String> fields = new ArrayList<>();
      for (var component : schema.getValue().getRecordComponents()) {
        fields.add(component.getName());
      }
      assertEquals(fields, named, schema.getKey());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "/leaf     | {                       | 400 |                   | body must be JSON, column 2; Unexpected end-of-input",
        "/leaf     | [1]                     | 400 |                   | body must be a JSON object; see /openapi.yaml",
        "/leaf     | ``                      | 400 |                   | body must be a JSON object; see /openapi.yaml",
        "/leaf     | {} {}                   | 400 |                   | body must be one JSON object, each field once; see /openapi.yaml",
        "/leaf     | {'pin': '1 in', 'pin': '2 in'} | 400 | | body must be one JSON object, each field once",
        "/leaf     | {}                      | 422 | bar               | bar must be given; see /openapi.yaml",
        "/leaf     | {'bar': {}}             | 422 | bar.width         | width must be given; see /openapi.yaml",
        "/leaf     | {'bar': 3}              | 422 | bar               | must be an object; see /openapi.yaml",
        "/leaf     | {'bar': {'width': 3}}   | 422 | bar.width         | unit must be one of the shop's",
        "/leaf     | {'bar': {'width': '3'}} | 422 | bar.width         | expected",
        "/leaf     | {'bar': {'width': '-3 in', 'thickness': '1 in'}} | 422 | bar.width | width must be more than zero, was -3 in",
        "/leaf     | {'bar': {'width': {'value': 3, 'unit': 'kg'}}} | 422 | bar.width | unit must measure Length, was kg; give one that does",
        "/leaf     | {'baar': {}}            | 422 | baar              | baar is no field here; take one of [bar, clearance, pin, plain, taper, tip]",
        "/pair     | {'hanging': 'slack'}    | 422 | hanging           | must be one of face, joint, corner; write one of them",
        "/holes    | {'holes': 2.5}          | 422 | holes             | must be a whole number; count the pieces",
        "/holes    | {'holes': '2'}          | 422 | holes             | must be a whole number; count the pieces",
        "/holes    | {'missing': [{'from': '1 in'}, {'from': '2 stones'}]} | 422 | missing[1].from | expected",
        "/holes    | {'along': '3 in', 'holes': 2, 'startingFrom': '1 in', 'endingBefore': '1 in', 'missing': [{'from': '2 in', 'to': '1 in'}]} | 422 | missing[0].to | to must not lie before from",
        "/holes    | {'along': '3 in', 'holes': 0, 'startingFrom': '1 in', 'endingBefore': '1 in'} | 422 | holes | must be",
        "/cut-list | {'bar': {'width': '1 in', 'thickness': '1/4 in'}, 'rule': '1/16 in', 'pieces': [{'name': 'a', 'length': '9 ft', 'count': 1}], 'buying': [{'length': '8 ft'}]} | 422 | | must",
        "/anvil    | {}                      | 404 |                   | there is no /anvil; ask /cut-list, /holes, /leaf, /pair"
      })
  void refusesWithFieldAndAdvice(String path, String body, int status, String field, String message)
      throws Exception {
    HttpResponse<String> response = sent(post(path, body.replace('\'', '"')));
    JsonNode error = JSON.readTree(response.body()).path("error");
    assertEquals(status, response.statusCode(), response::body);
    assertEquals(field == null ? "" : field, error.path("field").asText(), response::body);
    assertTrue(error.path("message").asText().contains(message), response::body);
    assertFalse(response.body().contains("org.hammerscale"), response::body);
    assertFalse(response.body().contains("\tat "), response::body);
  }

  @Test
  void asksForPostAndForLess() throws Exception {
    HttpResponse<String> got = sent(to("/leaf").GET().build());
    assertEquals(405, got.statusCode());
    assertEquals("POST", got.headers().firstValue("Allow").orElseThrow());
    HttpResponse<String> large = sent(post("/leaf", " ".repeat(70_000)));
    assertEquals(413, large.statusCode());
    assertTrue(large.body().contains("at most 65536 bytes"), large::body);
  }

  /** Who sends half a request and stops is hung up on. */
  @Test
  void slowClientIsHungUpOn() throws Exception {
    try (ShopService impatient = ShopService.listen(0, Duration.ofSeconds(1));
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), impatient.port())) {
      String head = "POST /leaf HTTP/1.1\r\nHost: x\r\nContent-Length: 100\r\n\r\n{";
      socket.getOutputStream().write(head.getBytes(UTF_8));
      socket.setSoTimeout(20_000);
      long start = System.nanoTime();
      assertEquals(-1, socket.getInputStream().read());
      assertTrue(System.nanoTime() - start < TimeUnit.SECONDS.toNanos(10));
    }
  }

  /** Ten thousand requests, a hundred at once, every fifth of them faulty: each is answered. */
  @Test
  void manyAtOnceAreAllAnswered() throws Exception {
    record Ask(String path, String body, int status) {}
    List<Ask> asks =
        List.of(
            new Ask("/leaf", LEAF, 200),
            new Ask("/holes", HOLES, 200),
            new Ask("/leaf", "{", 400),
            new Ask("/pair", PAIR, 200),
            new Ask("/leaf", LEAF, 200),
            new Ask("/holes", HOLES, 200),
            new Ask("/pair", "{\"bar\": {\"width\": \"1 kg\"}}", 422),
            new Ask("/holes", HOLES, 200),
            new Ask("/anvil", "{}", 404),
            new Ask("/cut-list", CUTS, 200));
    int count = 10_000;
    Semaphore inFlight = new Semaphore(100);
    List<CompletableFuture<HttpResponse<String>>> all = new ArrayList<>();
    List<Socket> hanging = new ArrayList<>();
    long start = System.nanoTime();
    for (int i = 0; i < count; i++) {
      if (i % 1000 == 500) { // who connects and says nothing
        hanging.add(new Socket(InetAddress.getLoopbackAddress(), service.port()));
      }
      Ask ask = asks.get(i % asks.size());
      inFlight.acquire();
      all.add(
          client
              .sendAsync(post(ask.path(), ask.body()), BodyHandlers.ofString())
              .whenComplete((response, failure) -> inFlight.release()));
    }
    Map<Integer, Integer> statuses = new TreeMap<>();
    for (int i = 0; i < count; i++) {
      HttpResponse<String> response = all.get(i).get();
      assertEquals(asks.get(i % asks.size()).status(), response.statusCode(), response::body);
      statuses.merge(response.statusCode(), 1, Integer::sum);
    }
    for (Socket socket : hanging) {
      socket.close();
    }
    assertEquals(Map.of(200, 7000, 400, 1000, 404, 1000, 422, 1000), statuses);
    System.out.printf("%d requests in %d ms%n", count, (System.nanoTime() - start) / 1_000_000);
  }
}
