package org.wellcurb.report;

/** On which side of its limit a value is; keys of the bundle that say so. */
enum MissedBy {
  BELOW("finding.below", "finding.below.strict", "finding.fits.below", "finding.fits.below.strict"),
  ABOVE("finding.above", "finding.above.strict", "finding.fits.above", "finding.fits.above.strict"),
  EARLY("finding.early", "finding.early.strict", "finding.fits.early", "finding.fits.early.strict"),
  LATE("finding.late", "finding.late.strict", "finding.fits.late", "finding.fits.late.strict");

  private final String limit;
  private final String strictLimit;
  private final String fits;
  private final String strictFits;

  MissedBy(String limit, String strictLimit, String fits, String strictFits) {
    this.limit = limit;
    this.strictLimit = strictLimit;
    this.fits = fits;
    this.strictFits = strictFits;
  }

  static MissedBy of(boolean isDate, boolean isLess) {
    return isDate ? (isLess ? EARLY : LATE) : (isLess ? BELOW : ABOVE);
  }

  /**
   * The key of the sentence.
   *
   * @param isStrict whether the limit itself would not do
   * @param isFit whether it is no limit, but what would fit the other entries
   */
  String key(boolean isStrict, boolean isFit) {
    return isFit ? (isStrict ? strictFits : fits) : (isStrict ? strictLimit : limit);
  }
}
