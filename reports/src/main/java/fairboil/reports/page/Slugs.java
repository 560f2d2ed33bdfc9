package fairboil.reports.page;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Names for places in a page and for files: lower-case ASCII, each given once. */
final class Slugs {

  private static final int LONGEST = 60;

  private final Set<String> given = new HashSet<>();

  /** A slug that starts with the prefix, and tells the name as far as ASCII can. */
  String of(String prefix, String name) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-");
    String slug = trimmed(prefix + "-" + plain);
    String unique = slug;
    for (int i = 2; !given.add(unique); i++) {
      unique = slug + "-" + i;
    }
    return unique;
  }

  private static String trimmed(String slug) {
    String shortened = slug.length() > LONGEST ? slug.substring(0, LONGEST) : slug;
    return shortened.replaceAll("-+", "-").replaceAll("-$", "");
  }
}
