package org.wetmil.catalogue;

import java.util.List;

/** Words that answer a question, such as yes, no and never, in the languages built in. */
public final class Answers {
  private static final String TABLE = "Answers";

  private Answers() {}

  /** The English word for an answer: no for nein; any other word as it is. */
  public static String plain(String word) {
    return OtherWords.find(TABLE, word).map(OtherWords.Word::means).orElse(word);
  }

  /** The words of other languages for an answer, in small letters. */
  public static List<String> wordsFor(String answer) {
    return OtherWords.of(TABLE).stream()
        .filter(word -> word.means().equals(answer))
        .map(OtherWords.Word::key)
        .toList();
  }
}
