package org.wellcurb.formula;

/**
 * A condition compiled for records side by side. What it was found to be is kept, so that a
 * condition which many rules share is worked out once: {@link #compute} calls {@link #put}. Belongs
 * to one worker.
 */
public abstract class TruthLanes extends LaneWork {
  private long isTrue;
  private long isFalse;
  private long isVoid;

  @Override
  final void forget() {
    isTrue = 0;
    isFalse = 0;
    isVoid = 0;
  }

  /** Adds records to the three sets; those in none are unknown. */
  final void put(long areTrue, long areFalse, long areVoid) {
    isTrue |= areTrue;
    isFalse |= areFalse;
    isVoid |= areVoid;
  }

  /** Adds one record by its {@link Truth}. */
  final void put(int lane, int truth) {
    long bit = 1L << lane;
    switch (truth) {
      case Truth.TRUE -> isTrue |= bit;
      case Truth.FALSE -> isFalse |= bit;
      case Truth.VOID -> isVoid |= bit;
      default -> {
        // Unknown is what is in none.
      }
    }
  }

  /** Records of which it is true, among those asked for. */
  public final long isTrue() {
    return isTrue;
  }

  /** Records of which it is false. */
  public final long isFalse() {
    return isFalse;
  }

  /** Records of which it is void. */
  public final long isVoid() {
    return isVoid;
  }
}
