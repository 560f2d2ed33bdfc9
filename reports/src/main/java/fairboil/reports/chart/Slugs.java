package fairboil.reports.chart;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Names for files made from what people call things: lower-case ASCII letters, digits and hyphens,
 * at most {@value #LONGEST} characters, never a name that a system keeps for itself, and no two
 * alike.
 */
public final class Slugs {

  /** How long a slug may be. */
  public static final int LONGEST = 64;

  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHERS = Pattern.compile("[^a-z0-9]+");
  private static final Pattern EDGES = Pattern.compile("^-+|-+$");
  // Names that Windows keeps for devices, whatever their ending.
  private static final Pattern RESERVED =
      Pattern.compile("con|prn|aux|nul|com[0-9]|lpt[0-9]|conin|conout|clock");

  private Slugs() {}

  /** One slug for each name, in the same order; names that come out alike are numbered. */
  public static List<String> of(List<String> names) {
    Set<String> taken = new HashSet<>();
    List<String> slugs = new ArrayList<>();
    for (String name : names) {
      slugs.add(free(plain(name), taken));
    }
    return List.copyOf(slugs);
  }

  private static String free(String slug, Set<String> taken) {
    String candidate = slug;
    for (int number = 2; !taken.add(candidate); number++) {
      String suffix = "-" + number;
      candidate = cut(slug, LONGEST - suffix.length()) + suffix;
    }
    return candidate;
  }

  private static String plain(String name) {
    String decomposed = isAscii(name) ? name : Normalizer.normalize(name, Normalizer.Form.NFKD);
    String letters = MARKS.matcher(decomposed).replaceAll("").toLowerCase(Locale.ROOT);
    String slug =
        cut(EDGES.matcher(OTHERS.matcher(letters).replaceAll("-")).replaceAll(""), LONGEST);
    if (slug.isEmpty()) {
      return "unnamed";
    }
    return RESERVED.matcher(slug).matches() ? "x-" + slug : slug;
  }

  private static boolean isAscii(String name) {
    return name.chars().allMatch(character -> character < 0x80);
  }

  private static String cut(String slug, int length) {
    String shorter = slug.length() > length ? slug.substring(0, length) : slug;
    return EDGES.matcher(shorter).replaceAll("");
  }
}
