package org.wellcurb.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.report.PageStyle;
import org.wellcurb.rulepack.PackLoader;

/** The desk answers only its own page, and says of a record what a run says. */
class DeskTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final HttpClient CLIENT = HttpClient.newHttpClient();
  private static Desk desk;
  private static String token;

  @BeforeAll
  static void open() throws Exception {
    desk =
        Desk.open(
            0,
            List.of(PackLoader.load("fenwick-county"), PackLoader.load("tarn-district")),
            LocalDate.of(2026, 1, 1),
            PageStyle.PLAIN);
    Matcher found = Pattern.compile("data-token=\"([0-9a-f]+)\"").matcher(page());
    assertTrue(found.find());
    token = found.group(1);
  }

  @AfterAll
  static void close() {
    desk.close();
  }

  private static String page() throws Exception {
    HttpRequest request = HttpRequest.newBuilder(URI.create(desk.address())).build();
    return CLIENT.send(request, HttpResponse.BodyHandlers.ofString()).body();
  }

  private static HttpRequest.Builder question(String path, byte[] body) {
    return HttpRequest.newBuilder(URI.create(desk.address() + path))
        .POST(HttpRequest.BodyPublishers.ofByteArray(body));
  }

  private static JsonNode ask(String path, byte[] body) throws Exception {
    HttpRequest request = question(path, body).header("X-Desk-Token", token).build();
    HttpResponse<byte[]> answer = CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
    assertEquals(200, answer.statusCode());
    return JSON.readTree(answer.body());
  }

  @Test
  void aQuestionWithoutTheTokenIsRefused() throws Exception {
    HttpRequest request = question("check", "{}".getBytes(StandardCharsets.UTF_8)).build();
    assertEquals(403, CLIENT.send(request, HttpResponse.BodyHandlers.discarding()).statusCode());
  }

  @Test
  void aQuestionFromAnotherPageIsRefused() throws Exception {
    HttpRequest request =
        question("check", "{}".getBytes(StandardCharsets.UTF_8))
            .header("X-Desk-Token", token)
            .header("Origin", "http://elsewhere.example")
            .build();
    assertEquals(403, CLIENT.send(request, HttpResponse.BodyHandlers.discarding()).statusCode());
  }

  @Test
  void anotherHostNameIsRefused() throws Exception {
    URI at = URI.create(desk.address());
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress("127.0.0.1", at.getPort()));
      String request = "GET / HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(answer.startsWith("HTTP/1.1 403"), answer);
    }
  }

  @Test
  void aBodyPastTheBoundIsRefusedInWords() throws Exception {
    byte[] large = new byte[Bounds.DESK_BODY + 10];
    java.util.Arrays.fill(large, (byte) ' ');
    assertTrue(ask("read?name=large.csv", large).path("problem").asText().contains("larger"));
  }

  @Test
  void whatIsNoRecordIsSaid() throws Exception {
    JsonNode answer = ask("check", "[not json".getBytes(StandardCharsets.UTF_8));
    assertTrue(!answer.path("problem").asText().isEmpty(), answer.toString());
  }

  /**
   * Opens a file as the page would, asks about each record, and compares with the committed run.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "fenwick-2023.csv",
        "tarn-2022.csv",
        "tarn-semicolon.csv",
        "fenwick-array.json",
        "fenwick-valve-before-relief.json"
      })
  void findsWhatARunFinds(String file) throws Exception {
    byte[] bytes = Files.readAllBytes(Path.of("sample-records", file));
    List<String> findings = Files.readAllLines(Path.of("reports", "demo", "findings.csv"));
    JsonNode opened = ask("read?name=" + file, bytes).path("records");
    assertTrue(opened.size() > 0, file);
    for (JsonNode one : opened) {
      String id = one.path("name").asText();
      long expected =
          findings.stream().filter(line -> line.startsWith(id + "," + file + ",")).count();
      JsonNode answer = ask("check", JSON.writeValueAsBytes(one.path("record")));
      assertEquals(
          expected, answer.path("findings").asLong(-1), id + ": " + answer.path("problem"));
    }
  }
}
