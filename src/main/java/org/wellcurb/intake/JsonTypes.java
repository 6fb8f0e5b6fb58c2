package org.wellcurb.intake;

import com.fasterxml.jackson.core.JsonToken;
import org.wellcurb.record.Kind;

/** Which JSON values an entry of a kind may have. Null is blank, everywhere. */
final class JsonTypes {
  private JsonTypes() {}

  static boolean allows(Kind kind, JsonToken token) {
    return switch (token) {
      case VALUE_STRING -> true;
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> kind != Kind.YES_NO && kind != Kind.LIST;
      case VALUE_TRUE, VALUE_FALSE -> kind == Kind.YES_NO;
      default -> false;
    };
  }

  static String label(Kind kind) {
    return switch (kind) {
      case YES_NO -> "text, true or false";
      case LIST -> "text";
      default -> "a number or text";
    };
  }
}
