package org.wellcurb.report;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers of sections as people count them: 4.2 comes before 4.10, and (9) before (10). Capital and
 * small letters are one, unless nothing else tells two apart.
 */
final class NaturalOrder implements Comparator<String> {
  static final NaturalOrder OF_SECTIONS = new NaturalOrder();

  private static final Pattern PARTS = Pattern.compile("0*([0-9]+)|[^0-9]+");

  private NaturalOrder() {}

  @Override
  public int compare(String a, String b) {
    Matcher left = PARTS.matcher(a);
    Matcher right = PARTS.matcher(b);
    while (true) {
      boolean isLeft = left.find();
      boolean isRight = right.find();
      if (!isLeft || !isRight) {
        int shorter = Boolean.compare(isLeft, isRight);
        return shorter != 0 ? shorter : a.compareTo(b);
      }
      int order = parts(left, right);
      if (order != 0) {
        return order;
      }
    }
  }

  private static int parts(Matcher a, Matcher b) {
    String left = a.group(1);
    String right = b.group(1);
    if (left == null || right == null) {
      return a.group().compareToIgnoreCase(b.group());
    }
    int digits = Integer.compare(left.length(), right.length());
    return digits != 0 ? digits : left.compareTo(right);
  }
}
