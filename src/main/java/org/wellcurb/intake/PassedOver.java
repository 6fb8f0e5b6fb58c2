package org.wellcurb.intake;

/**
 * A file that was met and not read.
 *
 * @param file how outputs name it
 * @param reason why
 */
public record PassedOver(String file, String reason) {}
