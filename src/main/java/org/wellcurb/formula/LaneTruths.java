package org.wellcurb.formula;

/** The kinds of conditions over records side by side, but for comparisons of amounts. */
final class LaneTruths {
  private LaneTruths() {}

  static final class Fixed extends TruthLanes {
    private final boolean value;

    Fixed(boolean value) {
      this.value = value;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      put(value ? mask : 0, value ? 0 : mask, 0);
    }
  }

  /** Whatever has no form of its own: one record after the other. */
  static final class EachAlone extends TruthLanes {
    private final TruthNode node;

    EachAlone(TruthNode node) {
      this.node = node;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        put(lane, node.eval(lanes.frame(lane), 0));
      }
    }
  }

  static final class IsKnown extends TruthLanes {
    private final int entry;

    IsKnown(int entry) {
      this.entry = entry;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      EntryLanes of = lanes.entry(entry);
      put(mask & of.given(), mask & ~of.given() & ~of.notApplicable(), mask & of.notApplicable());
    }
  }

  static final class IsApplicable extends TruthLanes {
    private final int entry;

    IsApplicable(int entry) {
      this.entry = entry;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      EntryLanes of = lanes.entry(entry);
      put(mask & ~of.notApplicable(), mask & of.notApplicable(), 0);
    }
  }

  /** A choice among some, or a yes-no, the choices as bits. */
  static final class ChoiceIn extends TruthLanes {
    private final int entry;
    private final long bits;

    /**
     * @param bits the places of the choices that make it true
     */
    ChoiceIn(int entry, long bits) {
      this.entry = entry;
      this.bits = bits;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      EntryLanes of = lanes.entry(entry);
      long given = mask & of.given();
      long isIn = 0;
      for (long left = given; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        isIn |= ((bits >>> (int) of.lo[lane]) & 1) << lane;
      }
      put(isIn, given & ~isIn, mask & of.notApplicable());
    }
  }

  static final class Negation extends TruthLanes {
    private final TruthLanes a;

    Negation(TruthLanes a) {
      this.a = a;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      a.need(lanes, mask);
      put(mask & a.isFalse(), mask & a.isTrue(), mask & a.isVoid());
    }
  }

  /** {@code between}: one comparison, so void if any of its amounts is. */
  static final class Within extends TruthLanes {
    private final TruthLanes aboveLeast;
    private final TruthLanes belowGreatest;

    Within(TruthLanes aboveLeast, TruthLanes belowGreatest) {
      this.aboveLeast = aboveLeast;
      this.belowGreatest = belowGreatest;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      aboveLeast.need(lanes, mask);
      belowGreatest.need(lanes, mask);
      long isVoid = mask & (aboveLeast.isVoid() | belowGreatest.isVoid());
      long left = mask & ~isVoid;
      put(
          left & aboveLeast.isTrue() & belowGreatest.isTrue(),
          left & (aboveLeast.isFalse() | belowGreatest.isFalse()),
          isVoid);
    }
  }

  /** {@code and}, which one false part decides, or {@code or}, which one true part decides. */
  static final class Joined extends TruthLanes {
    private final boolean isAnd;
    private final TruthLanes[] parts;

    Joined(boolean isAnd, TruthLanes[] parts) {
      this.isAnd = isAnd;
      this.parts = parts;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      long decided = 0;
      long isUnknown = 0;
      long others = 0;
      for (TruthLanes one : parts) {
        // What one part decides needs no look at the others.
        long left = mask & ~decided;
        if (left == 0) {
          break;
        }
        one.need(lanes, left);
        decided |= left & (isAnd ? one.isFalse() : one.isTrue());
        others |= left & (isAnd ? one.isTrue() : one.isFalse());
        isUnknown |= left & ~(one.isTrue() | one.isFalse() | one.isVoid());
      }
      long isVoid = mask & ~(decided | others | isUnknown);
      others &= ~decided & ~isUnknown;
      put(isAnd ? others : decided, isAnd ? decided : others, isVoid);
    }
  }

  /** Where the test is unknown: the branches' truth if alike, else unknown. */
  static final class Choose extends TruthLanes {
    private final TruthLanes test;
    private final TruthLanes then;
    private final TruthLanes otherwise;

    Choose(TruthLanes test, TruthLanes then, TruthLanes otherwise) {
      this.test = test;
      this.then = then;
      this.otherwise = otherwise;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      test.need(lanes, mask);
      long yes = mask & test.isTrue();
      long no = mask & test.isFalse();
      long nothing = mask & test.isVoid();
      long either = mask & ~(yes | no | nothing);
      then.need(lanes, yes | either);
      otherwise.need(lanes, no | either);
      put(
          pick(yes, no, either, then.isTrue(), otherwise.isTrue()),
          pick(yes, no, either, then.isFalse(), otherwise.isFalse()),
          nothing | pick(yes, no, either, then.isVoid(), otherwise.isVoid()));
    }

    private static long pick(long yes, long no, long either, long then, long otherwise) {
      return (yes & then) | (no & otherwise) | (either & then & otherwise);
    }
  }
}
