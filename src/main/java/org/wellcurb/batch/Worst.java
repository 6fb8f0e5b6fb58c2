package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/** Keeps so many of the first in an order, whatever the order in which they come. */
final class Worst<T> {
  private final int most;
  private final Comparator<T> order;
  private final PriorityQueue<T> lastFirst;

  Worst(int most, Comparator<T> order) {
    this.most = most;
    this.order = order;
    lastFirst = new PriorityQueue<>(order.reversed());
  }

  /** True if it would be kept. */
  boolean wants(T candidate) {
    if (most <= 0) {
      return false;
    }
    T last = bar();
    return last == null || order.compare(candidate, last) < 0;
  }

  /** Keeps it, if it is among the first. */
  void offer(T candidate) {
    if (wants(candidate)) {
      if (lastFirst.size() == most) {
        lastFirst.poll();
      }
      lastFirst.add(candidate);
    }
  }

  /** What a candidate must come before; null while there is room. */
  @Nullable T bar() {
    return lastFirst.size() < most ? null : lastFirst.peek();
  }

  /** Those kept, in order. */
  List<T> sorted() {
    List<T> all = new ArrayList<>(lastFirst);
    all.sort(order);
    return all;
  }

  void clear() {
    lastFirst.clear();
  }
}
