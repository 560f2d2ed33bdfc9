package fairboil.reports.page.view;

import java.util.List;

/**
 * Findings that say the same, once.
 *
 * @param severity how much they matter, in a word
 * @param tone how that word is set off
 * @param count how many there are
 * @param problem what is wrong, a sentence
 * @param remedy what to do, a sentence; empty where nothing need be done
 * @param places where; the first few
 * @param morePlaces where else; may be empty
 * @param mend the lines of a sheet that would mend them; may be empty
 */
public record FindingView(
    String severity,
    Tone tone,
    int count,
    String problem,
    String remedy,
    List<String> places,
    List<String> morePlaces,
    List<String> mend) {}
