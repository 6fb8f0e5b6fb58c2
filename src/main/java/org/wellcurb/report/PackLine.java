package org.wellcurb.report;

import java.util.List;
import org.wellcurb.rulepack.Pack;

/**
 * A pack as pages name it.
 *
 * @param id its id
 * @param title its title
 * @param authority who to ask
 * @param edition date of the edition
 * @param notice what it says on its face; may be empty
 * @param builtOn ids of the packs that it builds on
 */
public record PackLine(
    String id,
    String title,
    String authority,
    String edition,
    String notice,
    List<String> builtOn) {

  static PackLine of(Pack pack) {
    return new PackLine(
        pack.id(),
        pack.title(),
        pack.authority(),
        pack.edition().toString(),
        pack.notice(),
        pack.builtOn());
  }
}
