package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.AmountWriter;

/** rules/WORKINGS.md lists every working and figure, and what they were checked against. */
class WorkingsPageTest {
  private static final Path PAGE = Path.of("rules/WORKINGS.md");

  @Test
  void pageAgreesWithTheCatalogue() throws IOException {
    String page = page();
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target/WORKINGS.md"), page);
    assertEquals(
        page,
        Files.readString(PAGE),
        "rules/WORKINGS.md is out of date: copy target/WORKINGS.md over it, having read the change");
  }

  @Test
  void nothingIsLeftUnsaid() {
    for (Working working : WorkingCatalogue.standard().workings()) {
      assertFalse(working.meaning().isBlank(), working.name());
      assertFalse(working.formula().isBlank(), working.name());
      assertFalse(working.source().isBlank(), working.name());
    }
    for (Figure figure : WorkingCatalogue.standard().figures()) {
      assertFalse(figure.meaning().isBlank() || figure.source().isBlank(), figure.name());
    }
  }

  private static String page() {
    StringBuilder out = new StringBuilder();
    out.append(
        """
        # Workings

        What the numbers on a form imply. A pack names them `workings.NAME`, and a figure
        `figures.NAME`; it may set a figure of its own. Over ranges a working is evaluated at every
        corner of the entries and at every turning point inside; where an input that it needs is
        blank it is unknown and says so. Sheets show each with its numbers, and what is computed on
        the way (in braces, without a point) by its value. Every sum that a sheet prints is done
        again by a calculator that knows nothing of the program (`ReplayTest`, over a thousand
        records); what is read off a table is compared with it, a line on the globe with a geodesic
        library. The last column names the published figures (below) by their quantity, and how
        many; where it is empty the file has none. This page is made from the catalogue of workings;
        a test compares it.

        | working | what it is | units | formula | needs | may use | source | published figures |
        |---|---|---|---|---|---|---|---|
        """);
    for (Working working : WorkingCatalogue.standard().workings()) {
      List<String> needs = new ArrayList<>();
      List<String> uses = new ArrayList<>();
      for (Input input : working.inputs()) {
        List<String> into = input.isRequired() ? needs : uses;
        String name = "`" + input.key() + "`";
        if (!into.contains(name)) {
          into.add(name);
        }
      }
      working.figures().forEach(figure -> uses.add("`figures." + figure + "`"));
      row(
          out,
          "`" + working.name() + "`",
          working.meaning(),
          units(working),
          "`" + working.formula() + "`",
          String.join(", ", needs),
          String.join(", ", uses),
          working.source(),
          cases(working.name()));
    }
    out.append(
        """

        ## Figures

        | figure | what it is | value | source |
        |---|---|---|---|
        """);
    for (Figure figure : WorkingCatalogue.standard().figures()) {
      String value = AmountWriter.amount(figure.value(), figure.unit());
      row(out, "`" + figure.name() + "`", figure.meaning(), value, figure.source());
    }
    out.append(
        """

        ## What they were checked against

        Published figures, by quantity (`src/test/resources/published/check-values.csv`, each with
        its source and tolerance; `PublishedValuesTest` computes them all). The last column says why
        some differ by more than half of their last digit; where it is empty, all that are
        computed come out as printed.

        | quantity | published figures | what is done with them | why some differ |
        |---|---|---|---|
        """);
    Map<String, Integer> rows = new LinkedHashMap<>();
    for (PublishedRow row : PublishedRow.all()) {
      rows.merge(row.quantity(), 1, Integer::sum);
    }
    rows.forEach(
        (quantity, count) ->
            row(
                out,
                "`" + quantity + "`",
                "" + count,
                PublishedValuesTest.use(quantity),
                WideTolerances.why(quantity)));
    return out.toString();
  }

  private static String cases(String working) {
    List<String> cases = new ArrayList<>();
    for (String quantity : PublishedCases.of(working)) {
      long count = PublishedRow.all().stream().filter(r -> r.quantity().equals(quantity)).count();
      cases.add("`" + quantity + "` " + count);
    }
    return String.join(", ", cases);
  }

  /** A quantity that a working names is one that the published values are computed for. */
  @Test
  void everyCaseNamedIsComputed() {
    for (Working working : WorkingCatalogue.standard().workings()) {
      for (String quantity : PublishedCases.of(working.name())) {
        assertEquals(
            PublishedValuesTest.use("drawdown"), PublishedValuesTest.use(quantity), quantity);
      }
    }
  }

  private static String units(Working working) {
    String us = working.usUnit().symbol();
    String metric = working.metricUnit().symbol();
    return us.isEmpty() ? "" : us.equals(metric) ? us : us + ", " + metric;
  }

  private static void row(StringBuilder out, String... cells) {
    for (String cell : cells) {
      out.append("| ").append(cell.replace("|", "\\|").replace('\n', ' ')).append(' ');
    }
    out.append("|\n");
  }
}
