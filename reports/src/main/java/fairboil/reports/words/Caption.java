package fairboil.reports.words;

/**
 * What is said of one chart: short sentences that say what to see.
 *
 * @param title what it shows, in a few words
 * @param subtitle what to know of it, in one line
 * @param text what to see, with n: for below it
 * @param alternative what the chart says: for those who cannot see it
 */
public record Caption(String title, String subtitle, String text, String alternative) {}
