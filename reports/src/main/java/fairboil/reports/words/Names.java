package fairboil.reports.words;

import java.text.Bidi;

/** Names that people gave, made safe to stand inside a sentence of ours. */
public final class Names {

  private static final char FIRST_STRONG_ISOLATE = '\u2068';
  private static final char POP_ISOLATE = '\u2069';
  // Hebrew; no character below it runs right to left.
  private static final char FIRST_RIGHT_TO_LEFT = '\u0590';

  private Names() {}

  /**
   * The name on one line, without the invisible characters that turn the direction of text, and
   * isolated from its surroundings where it reads from right to left.
   */
  public static String inSentence(String name) {
    StringBuilder plain = new StringBuilder(name.length());
    name.codePoints()
        .map(character -> Character.isISOControl(character) ? ' ' : character)
        .filter(character -> !turnsDirection(character))
        .forEach(plain::appendCodePoint);
    return runsRightToLeft(plain) ? FIRST_STRONG_ISOLATE + "" + plain + POP_ISOLATE : "" + plain;
  }

  private static boolean turnsDirection(int character) {
    return character == 0x061c
        || character == 0x200e
        || character == 0x200f
        || (character >= 0x202a && character <= 0x202e)
        || (character >= 0x2066 && character <= 0x2069);
  }

  private static boolean runsRightToLeft(CharSequence text) {
    if (text.chars().allMatch(character -> character < FIRST_RIGHT_TO_LEFT)) {
      return false;
    }
    char[] characters = text.toString().toCharArray();
    return Bidi.requiresBidi(characters, 0, characters.length);
  }
}
