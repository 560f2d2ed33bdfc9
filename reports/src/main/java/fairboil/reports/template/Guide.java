package fairboil.reports.template;

/** The words at the head of a new study's guide. */
final class Guide {

  static final String START =
      """
      HOW TO FILL IN A STUDY

      1. Open the sheets (files ending in .csv) in a spreadsheet program and save them as CSV; or
         make each a tab of one workbook, study.xlsx, with a tab named runs, one named builds ...
         Only runs.csv is needed, with at least one log or one stopwatch mark. Leave the rest
         empty or delete it: the report says what is missing for want of it.
      2. Lines that start with # are examples or remarks; they are not read. All of them are
         invented.
      3. A number carries its unit in the header, as in "water (g)", or in its cell, as in
         "24 fl oz", "68 F" or "5:43". A cell's own unit wins. Change units in headers as you like.
      4. Put the files that your logger wrote into the folder logs, each named like its run:
         logs/K1-1.csv for the run K1-1. Any table of times and temperatures will do.
      5. Run "fairboil check" with the name of this folder. It lists what is unclear and the very
         row to type. Then run "fairboil report" with the name of this folder, --out and the name
         of a folder for the report.

      For figures to trust: burn each stove several times, and build several stoves of a design.
      Leave the pot on for 60 s after it boils. Weigh fuel and char only when cold. Write claims
      down before the tests.
      """;

  private Guide() {}
}
