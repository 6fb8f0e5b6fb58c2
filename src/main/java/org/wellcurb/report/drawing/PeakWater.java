package org.wellcurb.report.drawing;

import org.wellcurb.quantity.Interval;

/**
 * Where the water of the busiest period comes from, in m3. What the form leaves open stays open:
 * each part is from the least to the most that it may be.
 *
 * @param draw what the household draws
 * @param could what the yield could give, at least 0; its upper end may be infinite
 * @param lacking what neither the yield nor water in store gives
 * @param lackingAtLeastYield what lacks at the least if the yield is the least that it may be
 */
record PeakWater(double draw, Interval could, Interval lacking, double lackingAtLeastYield) {
  PeakWater {
    lacking = new Interval(Math.min(draw, lacking.lo()), Math.min(draw, lacking.hi()));
    lackingAtLeastYield = Math.min(draw, lackingAtLeastYield);
  }

  /** What is drawn of the yield: no more than is drawn or covered. */
  Interval byYield() {
    double most = Math.min(draw - lacking.lo(), could.hi());
    return new Interval(Math.min(Math.min(draw - lacking.hi(), could.lo()), most), most);
  }

  /**
   * What is drawn from store: the least where the yield leaves least room for it or the store is
   * least, which is when most is lacking; the most where the yield is least.
   */
  Interval stored() {
    double atWorst = Math.max(0, draw - lacking.hi() - byYield().lo());
    double room = Math.max(0, draw - lacking.lo() - byYield().hi());
    double most = Math.max(0, draw - lackingAtLeastYield - byYield().lo());
    double least = could.isPoint() || lacking.lo() > 0 ? atWorst : Math.min(atWorst, room);
    return new Interval(least, Math.max(least, most));
  }
}
