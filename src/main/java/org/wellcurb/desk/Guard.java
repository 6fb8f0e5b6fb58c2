package org.wellcurb.desk;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets only the desk's own page ask: the host must be this machine by one of its loopback names
 * (against names that are made to point here), the origin, where one is given, the desk itself, and
 * every question must carry the token that stands in the page.
 */
final class Guard {
  private final Set<String> hosts;
  private final String token;

  Guard(int port, String token) {
    hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
    this.token = token;
  }

  /** Why the request is refused; null if it may pass. */
  @Nullable String refusal(HttpExchange exchange, boolean needsToken) {
    Headers headers = exchange.getRequestHeaders();
    @Nullable String host = headers.getFirst("Host");
    if (host == null || !hosts.contains(host)) {
      return "this desk answers only on this machine";
    }
    List<String> origins = headers.getOrDefault("Origin", List.of());
    if (!origins.stream()
        .allMatch(origin -> hosts.stream().anyMatch(h -> origin.equals("http://" + h)))) {
      return "this desk answers only its own page";
    }
    return needsToken && !isToken(headers.getFirst("X-Desk-Token"))
        ? "this page is not the desk's own; load it again"
        : null;
  }

  private boolean isToken(@Nullable String given) {
    return given != null
        && MessageDigest.isEqual(
            given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
  }
}
