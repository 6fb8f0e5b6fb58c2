package org.wellcurb.desk;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
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
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.quantity.Comma;
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

  /** What is past the bound is read to here, so that whoever sends it hears why it is refused. */
  private static final long MOST_PASSED_OVER = 64L << 20;

  /** A question that is not whole after so many seconds is given up. */
  private static final String MOST_SECONDS = "20";

  static {
    // The server of the JDK reads this once, when the first one is made.
    String name = "sun.net.httpserver.maxReqTime";
    if (System.getProperty(name) == null) {
      System.setProperty(name, MOST_SECONDS);
    }
  }

  private final HttpServer server;

  /** What sends half a question and waits holds a thread of its own, and nobody else's. */
  private final ExecutorService workers = Executors.newCachedThreadPool();

  private final Guard guard;
  private final Answers answers;
  private final String page;

  /** Guarded by the answers, which are given one after another. */
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
      String method = exchange.getRequestMethod();
      boolean isQuestion = method.equals("POST");
      boolean isLook = method.equals("GET") || method.equals("HEAD");
      @Nullable String refusal = guard.refusal(exchange, isQuestion);
      if (refusal != null) {
        send(exchange, 403, "text/plain", refusal + "\n");
      } else if (isQuestion && asked.getPath().equals("/check")) {
        boolean isEither = "comma=either".equals(asked.getQuery());
        Comma comma = isEither ? Comma.EITHER : Comma.THOUSANDS;
        say(exchange, "", body -> answers.check(body, comma));
      } else if (isQuestion && asked.getPath().equals("/read")) {
        say(exchange, name(asked), body -> answers.read(name(asked), body));
      } else if (isLook && asked.getPath().equals("/")) {
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
    synchronized (answers) {
      if (!isWarm) {
        isWarm = true;
        byte[] empty = "{\"record\":{\"id\":\"-\"}}".getBytes(StandardCharsets.UTF_8);
        answers.whole(() -> answers.check(empty, Comma.THOUSANDS));
      }
    }
  }

  private void say(HttpExchange exchange, String name, Function<byte[], String> answer)
      throws IOException {
    byte[] body = exchange.getRequestBody().readNBytes(Bounds.DESK_BODY + 1);
    if (body.length > Bounds.DESK_BODY) {
      passOver(exchange.getRequestBody());
      send(exchange, 413, "application/json", answers.large(name));
    } else {
      String said;
      synchronized (answers) {
        said = answers.whole(() -> answer.apply(body));
      }
      send(exchange, 200, "application/json", said);
    }
  }

  /** Whoever is still sending would else see a broken connection and no answer. */
  private static void passOver(InputStream rest) throws IOException {
    byte[] some = new byte[1 << 16];
    long passed = 0;
    for (int n = rest.read(some); n >= 0 && passed < MOST_PASSED_OVER; n = rest.read(some)) {
      passed += n;
    }
  }

  private static String name(URI asked) {
    String query = asked.getQuery();
    return query != null && query.startsWith("name=") ? query.substring("name=".length()) : "";
  }

  private static void send(HttpExchange exchange, int status, String type, String text)
      throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
    exchange.getResponseHeaders().set("Cache-Control", "no-store");
    exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
    exchange.getResponseHeaders().set("Referrer-Policy", "no-referrer");
    if (exchange.getRequestMethod().equals("HEAD")) {
      exchange.sendResponseHeaders(status, -1);
      return;
    }
    exchange.sendResponseHeaders(status, bytes.length);
    try (OutputStream out = exchange.getResponseBody()) {
      out.write(bytes);
    }
  }
}
