package org.hammerscale.examples.service;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.hammerscale.examples.json.HammerscaleModule;

/**
 * Answers a shop's questions over HTTP: {@code POST /leaf}, {@code /holes}, {@code /pair} and
 * {@code /cut-list}, each with a JSON object; {@code GET /openapi.yaml} describes them. Listens on
 * the loopback address alone. A request may have 64 KiB and a few seconds, to arrive and be
 * answered; one that cannot be answered gets {@code {"error": {"message": ..., "field": ...}}}.
 *
 * <p>Usage: {@code ShopService [port]}.
 */
public final class ShopService implements AutoCloseable {
  private static final int USUAL_PORT = 8385;
  private static final int MOST_BYTES = 64 * 1024;
  private static final int THREADS = 16;
  private static final int BACKLOG = 1024;

  static {
    // The server reads these once: send small answers at once, and wait for no slow header.
    System.setProperty("sun.net.httpserver.nodelay", "true");
    System.setProperty("sun.net.httpserver.maxReqTime", "10");
  }

  private final ObjectMapper json = Questions.reader(new HammerscaleModule());
  private final ExecutorService workers = Executors.newFixedThreadPool(THREADS);
  private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();
  private final HttpServer server;
  private final Duration limit;

  private ShopService(HttpServer server, Duration limit) {
    this.server = server;
    this.limit = limit;
    server.setExecutor(workers);
    server.createContext("/", this::timed);
    server.start();
  }

  /**
   * Starts to listen.
   *
   * @param port the port, 0 for any that is free
   * @param limit how long a request may take
   * @return the running service
   * @throws IOException if the port is taken
   */
  static ShopService listen(int port, Duration limit) throws IOException {
    InetSocketAddress here = new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
    return new ShopService(HttpServer.create(here, BACKLOG), limit);
  }

  /**
   * Runs the service until it is killed.
   *
   * @param args the port, if not 8385
   * @throws IOException if the port is taken
   */
  @SuppressWarnings("resource") // it runs as long as the program
  public static void main(String[] args) throws IOException {
    int port = args.length == 0 ? USUAL_PORT : Integer.parseInt(args[0]);
    System.out.println("listening on port " + listen(port, Duration.ofSeconds(5)).port());
  }

  int port() {
    return server.getAddress().getPort();
  }

  @Override
  public void close() {
    server.stop(0);
    workers.shutdownNow();
    clock.shutdownNow();
  }

  /** Whatever takes too long, the client's sending or our answer, ends with the connection. */
  private void timed(HttpExchange exchange) throws IOException {
    Future<?> end = clock.schedule(exchange::close, limit.toMillis(), TimeUnit.MILLISECONDS);
    try {
      answer(exchange);
    } finally {
      end.cancel(false);
      exchange.close();
    }
  }

  private void answer(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath();
    try {
      if (path.equals("/openapi.yaml") && exchange.getRequestMethod().equals("GET")) {
        send(exchange, 200, "application/yaml", page());
        return;
      }
      Questions.Question question = Questions.at(path);
      if (!exchange.getRequestMethod().equals("POST")) {
        exchange.getResponseHeaders().set("Allow", "POST");
        throw new Refused(405, "", path + " is asked by POST; send a JSON object");
      }
      Object answer = question.answer(json.readTree(body(exchange)), json);
      send(exchange, 200, "application/json", json.writeValueAsBytes(answer));
    } catch (Refused e) {
      refuse(exchange, e);
    } catch (JsonMappingException e) {
      refuse(exchange, Questions.refused(e));
    } catch (JsonProcessingException e) {
      String place = e.getLocation() == null ? "" : ", column " + e.getLocation().getColumnNr();
      refuse(
          exchange,
          new Refused(400, "", "body must be JSON" + place + "; " + e.getOriginalMessage()));
    } catch (RuntimeException e) {
      e.printStackTrace(); // for us; the client can do nothing with it
      refuse(exchange, new Refused(500, "", "this went wrong here; the request is not to blame"));
    }
  }

  private static byte[] body(HttpExchange exchange) throws IOException {
    InputStream in = exchange.getRequestBody();
    byte[] body = in.readNBytes(MOST_BYTES + 1);
    if (body.length > MOST_BYTES) {
      in.skip(16L * MOST_BYTES); // most clients listen only when they have sent it all
      throw new Refused(413, "", "body must have at most " + MOST_BYTES + " bytes; ask for less");
    }
    return body;
  }

  private void refuse(HttpExchange exchange, Refused refused) throws IOException {
    Map<String, String> error = Map.of("message", refused.message(), "field", refused.field());
    byte[] text = json.writeValueAsBytes(Map.of("error", error));
    send(exchange, refused.status(), "application/json", text);
  }

  private static void send(HttpExchange exchange, int status, String type, byte[] text)
      throws IOException {
    exchange.getResponseHeaders().set("Content-Type", type);
    exchange.sendResponseHeaders(status, text.length);
    exchange.getResponseBody().write(text);
  }

  private static byte[] page() throws IOException {
    try (InputStream in = ShopService.class.getResourceAsStream("openapi.yaml")) {
      return Objects.requireNonNull(in, "openapi.yaml").readAllBytes();
    }
  }
}
