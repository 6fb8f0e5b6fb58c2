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
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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

  /** The page can then say that it is not the desk that is gone, and that the form is kept. */
  @Test
  void whatFailsInsideIsSaidToThePage() throws Exception {
    Answers answers =
        new Answers(
            List.of(PackLoader.load("fenwick-county")), LocalDate.of(2026, 1, 1), PageStyle.PLAIN);
    String said =
        answers.whole(
            () -> {
              throw new IllegalStateException("of the test");
            });
    assertTrue(JSON.readTree(said).path("problem").asText().contains("kept"), said);
    assertEquals("{}", answers.whole(() -> "{}"));
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
    HttpRequest request =
        question("read?name=large.csv", large).header("X-Desk-Token", token).build();
    HttpResponse<byte[]> answer = CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
    assertEquals(413, answer.statusCode());
    String said = JSON.readTree(answer.body()).path("problem").asText();
    assertTrue(said.startsWith("large.csv: larger"), said);
  }

  @Test
  void aLookForTheHeadAloneIsAnswered() throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(desk.address()))
            .method("HEAD", HttpRequest.BodyPublishers.noBody())
            .build();
    assertEquals(200, CLIENT.send(request, HttpResponse.BodyHandlers.discarding()).statusCode());
  }

  /** Who sends half a question and waits keeps nobody else waiting. */
  @Test
  void halfAQuestionHoldsUpNobody() throws Exception {
    URI at = URI.create(desk.address());
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress("127.0.0.1", at.getPort()));
      String half =
          "POST /check HTTP/1.1\r\nHost: 127.0.0.1:"
              + at.getPort()
              + "\r\nX-Desk-Token: "
              + token
              + "\r\nContent-Length: 100\r\n\r\n{";
      socket.getOutputStream().write(half.getBytes(StandardCharsets.US_ASCII));
      socket.getOutputStream().flush();
      assertEquals(1, ask("read?name=a.json", bytes("{\"record\": {\"id\": \"A\"}}")).size());
    }
  }

  /** The header of a table goes with its numbers, which are then no bare ones any more. */
  @Test
  void theUnitOfAHeaderStaysWithItsNumbers() throws Exception {
    JsonNode opened =
        ask("read?name=a.csv", bytes("record.id,well.depth [ft],pump.intake_depth\nA,120,80\n"));
    JsonNode record = opened.path("records").path(0).path("record");
    assertEquals("120 ft", record.path("well").path("depth").asText());
    assertEquals("80", record.path("pump").path("intake_depth").asText());
    String bare = ask("check", JSON.writeValueAsBytes(record)).path("bare").asText();
    assertTrue(bare.contains("one number without a unit"), bare);
  }

  @Test
  void aPictureIsSaidToBeOne() throws Exception {
    byte[] picture = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 0, 1, 2, 3, 4, 5};
    String said = ask("read?name=form.jpg", picture).path("problem").asText();
    assertTrue(said.startsWith("form.jpg: is a picture"), said);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** A blank entry is not to blame for a sum of others. */
  @Test
  void aFindingOfASumStandsAtTheEntriesThatAreFilledIn() throws Exception {
    JsonNode answer =
        ask(
            "check",
            bytes(
                """
                {"record": {"id": "A", "jurisdiction": "fenwick", "units": "us"},
                 "pump": {"type": "submersible", "intake_depth": "100 ft"},
                 "water": {"static_level": "40 ft", "pumping_level": "118 ft"}}
                """));
    String said = answer.path("notes").path("pump").asText();
    assertEquals("", said);
    String intake = answer.path("notes").path("pump.intake_depth").toString();
    assertTrue(intake.contains("The pump intake hangs 18 ft above the pumping level"), intake);
    assertTrue(answer.path("notes").path("pump.dry_run_protection").isMissingNode());
    assertEquals("", answer.path("bare").asText());
    String sheet = answer.path("sheet").asText();
    int dry = sheet.indexOf("The pump may draw air.");
    int ask = sheet.indexOf("cannot be told from the record. Ask for:");
    assertTrue(dry > 0 && ask > dry, dry + " " + ask);
  }

  @Test
  void whatIsNoRecordIsSaid() throws Exception {
    JsonNode answer = ask("check", "[not json".getBytes(StandardCharsets.UTF_8));
    assertTrue(!answer.path("problem").asText().isEmpty(), answer.toString());
  }

  @Test
  void layersWithoutKnownEndsAreOpened() throws Exception {
    String form =
        """
        {"record": {"id": "A"}, "layers": [
          {"from": "unknown", "to": "?", "material": "clay"},
          {"from": ">3 m", "to": "12-15 ft", "material": "rock"}]}
        """;
    JsonNode opened =
        ask("read?name=form.json", form.getBytes(StandardCharsets.UTF_8)).path("records");
    assertEquals(1, opened.size(), opened.toString());
    JsonNode record = opened.get(0).path("record");
    assertEquals("unknown", record.path("layers").path(0).path("from").asText());
    assertEquals(">3 m", record.path("layers").path(1).path("from").asText());
    JsonNode answer = ask("check", JSON.writeValueAsBytes(record));
    assertTrue(answer.path("problem").isMissingNode(), answer.toString());
  }

  static List<String> samples() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("sample-records"))) {
      return files.map(each -> each.getFileName().toString()).sorted().toList();
    }
  }

  /**
   * Opens a file as the page would, asks about each record, and compares with the committed run:
   * how many findings and rules that cannot be told, and the whole text of each finding.
   */
  @ParameterizedTest
  @MethodSource("samples")
  void findsWhatARunFinds(String file) throws Exception {
    byte[] bytes = Files.readAllBytes(Path.of("sample-records", file));
    Map<String, CSVRecord> screened = new HashMap<>();
    for (CSVRecord row : rows("records.csv")) {
      if (row.get("file").equals(file)) {
        screened.put(row.get("record_id"), row);
      }
    }
    Map<String, String> sheets = new HashMap<>();
    for (JsonNode record : JSON.readTree(DEMO.resolve("findings.json").toFile()).path("records")) {
      if (record.path("file").asText().equals(file)) {
        sheets.put(record.path("record_id").asText(), record.path("sheet").asText());
      }
    }
    JsonNode opened = ask("read?name=" + file, bytes).path("records");
    Set<String> seen = new HashSet<>();
    for (JsonNode one : opened) {
      String id = one.path("name").asText();
      CSVRecord expected = screened.get(id);
      if (expected == null) {
        // No pack of the run judges it: the run set it aside, and the desk takes the first.
        continue;
      }
      seen.add(id);
      JsonNode answer = ask("check", JSON.writeValueAsBytes(one.path("record")));
      assertEquals(expected.get("falls_short"), answer.path("findings").asText(), id);
      assertEquals(expected.get("cannot_tell"), answer.path("untold").asText(), id);
      String sheet = sheets.get(id);
      if (sheet != null) {
        String committed = Files.readString(DEMO.resolve(sheet));
        assertEquals(findings(committed), findings(answer.path("sheet").asText()), id);
      }
    }
    assertEquals(screened.keySet(), seen, file);
  }

  private static final Path DEMO = Path.of("reports", "demo");

  private static List<CSVRecord> rows(String name) throws Exception {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(Files.readString(DEMO.resolve(name)), format)) {
      return parser.getRecords();
    }
  }

  /** The part of a sheet that tells the findings. */
  private static String findings(String sheet) {
    Matcher part =
        Pattern.compile("(?s)<section aria-labelledby=\"findings\">.*?</section>").matcher(sheet);
    return part.find() ? part.group() : "";
  }
}
