package org.wellcurb.report.drawing;

/**
 * Something in a drawing that has a label.
 *
 * @param key key of its entry
 * @param amount where it is, in SI
 * @param text its label
 */
record Tag(String key, double amount, String text) {}
