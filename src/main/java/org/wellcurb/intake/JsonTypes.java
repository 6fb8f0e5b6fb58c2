package org.wellcurb.intake;

import com.fasterxml.jackson.core.JsonToken;
import org.wellcurb.record.Kind;

/** Which JSON values an entry of a kind may have. Null is blank, everywhere. */
final class JsonTypes {
  private JsonTypes() {}

  static boolean allows(Kind kind, JsonToken token) {
    return switch (token) {
      case VALUE_STRING -> true;
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> kind.isAmount() && kind != Kind.DATE;
      case VALUE_TRUE, VALUE_FALSE -> kind == Kind.YES_NO;
      default -> false;
    };
  }

  static String label(Kind kind) {
    if (kind == Kind.YES_NO) {
      return "text, true or false";
    }
    return kind.isAmount() && kind != Kind.DATE ? "a number or text" : "text";
  }
}
