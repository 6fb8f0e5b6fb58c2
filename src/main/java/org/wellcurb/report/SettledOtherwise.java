package org.wellcurb.report;

/**
 * A finding that was settled when its record said something else than it does now.
 *
 * @param settlement how, and what the record said
 * @param now what the record says now
 */
public record SettledOtherwise(Settlement settlement, String now) {}
