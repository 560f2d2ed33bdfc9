/**
 * Printing at true scale: measuring strips, base discs and forms as PDF.
 *
 * <p>Start at {@link fairboil.reports.print.Prints}: it takes a {@link fairboil.ingest.Study} and a
 * {@link fairboil.reports.print.Paper} and hands back a {@link fairboil.reports.print.PrintJob} of
 * {@link fairboil.reports.print.Printed} files. Nothing else is public.
 *
 * <p>Within: {@code RingPlan} and {@code Owners} say what is to be drawn for whom. {@code
 * StripLayout} (with {@code Cuts}) and {@code Disc} (with {@code DiscTiles}) say where, in
 * millimetres and without drawing; {@code StripDrawing} and {@code DiscDrawing} draw it; {@code
 * StripFile}, {@code DiscFile}, {@code RunSheet} and {@code HoleForm} are the files. {@code
 * Booklet}, {@code Canvas} and {@code Flow} are the only ones that know how a page is made, {@code
 * Typefaces} and {@code Lettering} how letters are.
 */
package fairboil.reports.print;
