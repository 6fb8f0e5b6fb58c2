package org.wellcurb.rulepack;

/**
 * A file that a pack was loaded from.
 *
 * @param pack id of the pack in it
 * @param sha256 hash of its bytes, in lower-case hexadecimal
 * @param text its text, for showing where an error is
 */
public record PackFile(String pack, String sha256, String text) {}
