package org.wellcurb.report;

/** Makes correction notices: in the form that ships, or in an office's own. */
@FunctionalInterface
public interface NoticePages {
  /**
   * The page of one notice. It links to nothing of the office's: it is sent to its licence.
   *
   * @throws NoticeTemplateException if an office's own template fails
   */
  String notice(NoticeView notice) throws NoticeTemplateException;
}
