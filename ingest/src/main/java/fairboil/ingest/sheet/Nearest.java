package fairboil.ingest.sheet;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the name that a person most likely meant. */
public final class Nearest {

  private Nearest() {}

  /**
   * The name that differs least from what was written, if it differs by at most one letter in
   * three; capital letters, blanks, hyphens and underscores do not count. Of names that are equally
   * near, the first.
   */
  public static Optional<String> to(String written, Collection<String> names) {
    String key = Words.key(written);
    int most = Math.max(1, key.length() / 3);
    LevenshteinDistance distance = new LevenshteinDistance(most);
    record Candidate(String name, int apart) {}
    return names.stream()
        .map(name -> new Candidate(name, distance.apply(key, Words.key(name))))
        .filter(candidate -> candidate.apart() >= 0 && candidate.apart() < key.length())
        .min(Comparator.comparingInt(Candidate::apart))
        .map(Candidate::name);
  }
}
