package fairboil.reports.page.view;

/** How a word is set off; always beside the word itself, never instead of it. */
public enum Tone {
  /** As any text. */
  PLAIN,
  /** As wished or claimed. */
  GOOD,
  /** Not as wished or claimed. */
  BAD,
  /** Undecided. */
  OPEN,
  /** To look at. */
  LOOK,
  /** Of less weight. */
  QUIET;

  /** The class of the style sheet. */
  public String css() {
    return switch (this) {
      case PLAIN -> "plain";
      case GOOD -> "good";
      case BAD -> "bad";
      case OPEN -> "open";
      case LOOK -> "look";
      case QUIET -> "quiet";
    };
  }
}
