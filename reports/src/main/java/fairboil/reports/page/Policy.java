package fairboil.reports.page;

import fairboil.reports.page.view.HeadView;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The style sheet and the script of a page, and the Content Security Policy that allows these two
 * by their fingerprints, pictures that the page brings, and nothing else.
 */
final class Policy {

  private static final List<String> SHEETS =
      List.of("frame.css", "tables.css", "sections.css", "print.css");

  private final String style;
  private final String script;

  Policy() {
    style = SHEETS.stream().map(Policy::resource).collect(Collectors.joining("\n"));
    script = resource("page.js");
  }

  HeadView head(String title) {
    return new HeadView(title, policy(), style, script);
  }

  private String policy() {
    return "default-src 'none'; img-src data:; style-src '"
        + fingerprint(style)
        + "'; script-src '"
        + fingerprint(script)
        + "'; base-uri 'none'; form-action 'none'";
  }

  private static String fingerprint(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static String resource(String name) {
    try (InputStream in = Policy.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + name + " of the program itself", e);
    }
  }
}
