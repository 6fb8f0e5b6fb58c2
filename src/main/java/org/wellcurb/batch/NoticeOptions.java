package org.wellcurb.batch;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.Cap;

/**
 * What is asked of correction notices.
 *
 * @param wanted whether any are written
 * @param most how many at most, the licences with most records that fall short first
 * @param replyDays days after the as-of date by which an answer is asked for
 * @param template an office's own template; null for the one that ships
 */
public record NoticeOptions(boolean wanted, int most, int replyDays, @Nullable Path template) {
  /** Days to answer, unless {@code --reply-days} says otherwise. */
  public static final int REPLY_DAYS = 30;

  /** Days to answer at most: ten years. */
  public static final int MOST_REPLY_DAYS = 3660;

  /** A notice for each licence, in the form that ships. */
  public static final NoticeOptions PLAIN =
      new NoticeOptions(true, Cap.NOTICES.most(), REPLY_DAYS, null);

  /** No notices. */
  public static final NoticeOptions NONE = new NoticeOptions(false, 0, REPLY_DAYS, null);
}
