package fairboil.ingest.sheet;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the name that a person most likely meant. */
public final class Nearest {

  /** What is longer is no misspelt name. */
  private static final int LONGEST = 100;

  private static final Template DID_YOU_MEAN = Template.of("did you mean {name}?");

  private Nearest() {}

  /**
   * The name that differs least from what was written, if it differs by at most one letter in
   * three; capital letters, blanks, hyphens and underscores do not count. Another number is another
   * thing: K2 is no misspelt K1. Of names that are equally near, the first.
   */
  public static Optional<String> to(String written, Collection<String> names) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    String key = Words.key(written);
    int most = Math.max(1, key.length() / 3);
    LevenshteinDistance distance = new LevenshteinDistance(most);
    record Candidate(String name, int apart) {}
    return names.stream()
        .filter(name -> digits(name).equals(digits(written)))
        .map(name -> new Candidate(name, apart(distance, key, Words.key(name))))
        .filter(candidate -> candidate.apart() >= 0 && candidate.apart() < key.length())
        .min(Comparator.comparingInt(Candidate::apart))
        .map(Candidate::name);
  }

  /** What is said of a name that was likely meant. */
  public static Message didYouMean(String likely) {
    return DID_YOU_MEAN.with(Argument.name(likely));
  }

  /** What to do about a name that is not known: asks for the nearest, else says the other. */
  public static Message orElse(String written, Collection<String> names, Message other) {
    return to(written, names).map(Nearest::didYouMean).orElse(other);
  }

  private static String digits(String name) {
    return name.replaceAll("\\D", "");
  }

  // Two letters in the wrong order are one mistake, as in feul.
  private static int apart(LevenshteinDistance distance, String written, String name) {
    return isSwapped(written, name) ? 1 : distance.apply(written, name);
  }

  private static boolean isSwapped(String written, String name) {
    int at = 0;
    while (at < Math.min(written.length(), name.length())
        && written.charAt(at) == name.charAt(at)) {
      at++;
    }
    return written.length() == name.length()
        && at + 1 < name.length()
        && written.charAt(at) == name.charAt(at + 1)
        && written.charAt(at + 1) == name.charAt(at)
        && written.substring(at + 2).equals(name.substring(at + 2));
  }
}
