package org.hammerscale.internal.pen;

import org.hammerscale.internal.Arguments;

/** Words that come from outside, before they are written on a sheet. */
public final class Words {
  private static final int LONGEST_TITLE = 200;
  private static final int LONGEST_NAME = 60;
  private static final char STAND_IN = '\uFFFD';

  private Words() {}

  /** A title that can be read; one with control characters in it is refused. */
  public static String title(String title) {
    Arguments.text("title", title);
    if (title.length() > LONGEST_TITLE) {
      throw new IllegalArgumentException(
          "title must be at most "
              + LONGEST_TITLE
              + " characters long, was "
              + title.length()
              + "; name the job and the piece");
    }
    for (int i = 0; i < title.length(); i++) {
      if (!isReadable(title, i)) {
        throw new IllegalArgumentException(
            "title must have no control characters, was one of code "
                + (int) title.charAt(i)
                + " at place "
                + (i + 1)
                + "; leave it out");
      }
    }
    return title;
  }

  /** The name of somebody's feature, which may be anything: what no page can hold is replaced. */
  public static String name(String name) {
    return cleaned(name, LONGEST_NAME);
  }

  /** The same of what somebody's thing prints of itself, on one line. */
  public static String sentence(String text) {
    return cleaned(text.replaceAll("\\s*\\R\\s*", ", "), LONGEST_TITLE);
  }

  private static String cleaned(String words, int longest) {
    String cut = words.length() > longest ? words.substring(0, longest) + "..." : words;
    StringBuilder text = new StringBuilder(cut);
    for (int i = 0; i < cut.length(); i++) {
      if (!isReadable(cut, i)) {
        text.setCharAt(i, STAND_IN);
      }
    }
    return text.toString();
  }

  /** Neither a control character nor half of a pair, nor what XML does not allow. */
  private static boolean isReadable(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
    } else if (Character.isLowSurrogate(c)) {
      return i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
    }
    return !Character.isISOControl(c) && c < '\uFFFE';
  }
}
