package org.wellcurb.report;

/** An office's own template of a notice that cannot be used: one line, where and why. */
public final class NoticeTemplateException extends Exception {
  private static final long serialVersionUID = 1L;

  NoticeTemplateException(String message) {
    super(message);
  }

  NoticeTemplateException(String message, Throwable cause) {
    super(message, cause);
  }
}
