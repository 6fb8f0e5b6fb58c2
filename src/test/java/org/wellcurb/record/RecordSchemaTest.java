package org.wellcurb.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordSchemaTest {
  private static final String MADE = RecordSchema.text(Catalogue.standard());
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(MADE, InputFormat.JSON);

  @Test
  void theSchemaThatShipsIsTheOneTheCatalogueGives() throws IOException {
    Path made = Files.createDirectories(Path.of("target")).resolve("record.schema.json");
    Files.writeString(made, MADE);
    try (InputStream in = RecordSchema.class.getResourceAsStream("record.schema.json")) {
      assertEquals(
          MADE,
          in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8),
          "the catalogue has changed: copy target/record.schema.json over"
              + " src/main/resources/org/wellcurb/record/record.schema.json");
    }
  }

  private static List<com.networknt.schema.Error> errors(String json) {
    return SCHEMA.validate(json, InputFormat.JSON);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{'record':{'id':'A-1'}}",
        "{'record':{'id':17}}",
        "{'record':{'id':'A','units':'metric'},'well':{'depth':64.6}}",
        "{'record':{'id':'A'},'well':{'depth':'212 ft','open_hole':true,'tag':null}}",
        "{'record':{'id':'A'},'well':{'depth':'no idea'},'pump':{'phase':1,'type':'rope'}}",
        "{'record':{'id':'A'},'office':{'desk':[1,2,{'a':null}]},'well':{'colour':'red'}}",
        "{'record':{'id':'A'},'layers':[{'from':0,'to':'12 ft','material':'clay','hue':1},{}]}",
        "{'record':{'id':'A'},'setbacks':[{'from':'septic tank','distance':'60 ft'}]}",
        "{'record':{'id':'A','variances':['r-1: V 7','r-2']}}",
        "{'record':{'id':'A','variances':'r-1: V 7; r-2'}}",
        "{'record':{'id':'N/A'},'pump':null}",
        "{'record':{'id':'A'},'layers':null,'dates':{'completed':2009}}",
      })
  void takes(String json) {
    assertEquals(List.of(), errors(json.replace('\'', '"')), json);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "[]",
        "{'record':{}}",
        "{'record':null}",
        "{'record':{'id':''}}",
        "{'record':{'id':' \\u00A0'}}",
        "{'record':{'id':'\\u0000'}}",
        "{'record':{'id':null}}",
        "{'record':{'id':true}}",
        "{'record':{'id':'A'},'well':3}",
        "{'record':{'id':'A'},'well':{'depth':[1]}}",
        "{'record':{'id':'A'},'well':{'depth':{'ft':1}}}",
        "{'record':{'id':'A'},'well':{'depth':true}}",
        "{'record':{'id':'A'},'well':{'open_hole':1}}",
        "{'record':{'id':'A'},'well':{'tag':false}}",
        "{'record':{'id':'A'},'layers':3}",
        "{'record':{'id':'A'},'layers':['clay']}",
        "{'record':{'id':'A'},'layers':[{'to':true}]}",
        "{'record':{'id':'A'},'layers':[{'material':4}]}",
        "{'record':{'id':'A'},'setbacks':[{'from':3,'distance':4}]}",
        "{'record':{'id':'A','variances':[3]}}",
      })
  void refuses(String json) {
    assertEquals(1, errors(json.replace('\'', '"')).isEmpty() ? 0 : 1, json);
  }

  @Test
  void theSchemaIsItselfASchema() throws IOException {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(
                com.networknt.schema.SchemaLocation.of(
                    "https://json-schema.org/draft/2020-12/schema"));
    assertEquals(List.of(), meta.validate(MADE, InputFormat.JSON));
    assertNotNull(new ObjectMapper().readTree(MADE).get("properties").get("setback"));
  }
}
