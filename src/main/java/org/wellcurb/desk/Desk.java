package org.wellcurb.desk;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.Pages;
import org.wellcurb.rulepack.Pack;

/**
 * A page on this machine for one record: it listens on 127.0.0.1 only, answers only its own page,
 * and keeps nothing on disk.
 */
public final class Desk implements AutoCloseable {
  private static final int TOKEN_BYTES = 24;

  private final HttpServer server;
  private final ExecutorService workers = Executors.newSingleThreadExecutor();
  private final Guard guard;
  private final Answers answers;
  private final String page;

  /** Of the one thread that answers. */
  private boolean isWarm;

  private Desk(HttpServer server, List<Pack> packs, LocalDate asOf, PageStyle plain) {
    PageStyle style = plain.about(packs);
    this.server = server;
    String token = token();
    guard = new Guard(server.getAddress().getPort(), token);
    answers = new Answers(packs, asOf, style);
    page = new Pages(style).desk(Catalogue.standard(), packs, token);
    server.setExecutor(workers);
    server.createContext("/", this::answer);
  }

  /**
   * Opens the desk.
   *
   * @param port port to listen on; 0 for any that is free
   * @param packs the packs that judge; the record's jurisdiction chooses where there are several
   * @throws IOException if the port cannot be had
   */
  public static Desk open(int port, List<Pack> packs, LocalDate asOf, PageStyle style)
      throws IOException {
    HttpServer server =
        HttpServer.create(
            new InetSocketAddress(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port), 0);
    Desk desk = new Desk(server, packs, asOf, style);
    server.start();
    return desk;
  }

  /** Where a browser on this machine finds it. */
  public String address() {
    return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
  }

  @Override
  public void close() {
    server.stop(0);
    workers.shutdown();
  }

  private static String token() {
    byte[] bytes = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      URI asked = exchange.getRequestURI();
      boolean isQuestion = exchange.getRequestMethod().equals("POST");
      @Nullable String refusal = guard.refusal(exchange, isQuestion);
      if (refusal != null) {
        send(exchange, 403, "text/plain", refusal + "\n");
      } else if (isQuestion && asked.getPath().equals("/check")) {
        byte[] body = body(exchange);
        json(exchange, answers.whole(() -> answers.check(body)));
      } else if (isQuestion && asked.getPath().equals("/read")) {
        byte[] body = body(exchange);
        json(exchange, answers.whole(() -> answers.read(name(asked), body)));
      } else if (exchange.getRequestMethod().equals("GET") && asked.getPath().equals("/")) {
        send(exchange, 200, "text/html", page);
        warm();
      } else {
        send(exchange, 404, "text/plain", "there is nothing here\n");
      }
    }
  }

  /**
   * Checks a form that says nothing, once: what the first check makes ready takes seconds, which
   * whoever fills in the form would else wait for.
   */
  private void warm() {
    if (!isWarm) {
      isWarm = true;
      String empty = "{\"record\":{\"id\":\"-\"}}";
      answers.whole(() -> answers.check(empty.getBytes(StandardCharsets.UTF_8)));
    }
  }

  /** The body, up to the bound; one byte more where it is longer, which the answers then refuse. */
  private static byte[] body(HttpExchange exchange) throws IOException {
    return exchange.getRequestBody().readNBytes(Bounds.DESK_BODY + 1);
  }

  private static String name(URI asked) {
    String query = asked.getQuery();
    return query != null && query.startsWith("name=") ? query.substring("name=".length()) : "";
  }

  private static void json(HttpExchange exchange, String body) throws IOException {
    send(exchange, 200, "application/json", body);
  }

  private static void send(HttpExchange exchange, int status, String type, String text)
      throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
    exchange.getResponseHeaders().set("Cache-Control", "no-store");
    exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
    exchange.getResponseHeaders().set("Referrer-Policy", "no-referrer");
    exchange.sendResponseHeaders(status, bytes.length);
    try (OutputStream out = exchange.getResponseBody()) {
      out.write(bytes);
    }
  }
}
