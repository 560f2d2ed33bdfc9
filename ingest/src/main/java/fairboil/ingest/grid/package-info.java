/**
 * From the bytes of a study folder to lines and rows of cells, each with its place; nothing here
 * knows what a cell means.
 *
 * <p>Start at {@link fairboil.ingest.grid.StudyFolder}: the only way to a file of a study, which
 * never leaves the folder and never opens anything but an ordinary file. It opens a {@link
 * fairboil.ingest.grid.SourceText}, a reader of characters whose encoding was recognised and whose
 * fingerprint, a {@link fairboil.ingest.grid.SourceFile}, is taken in the same pass. {@link
 * fairboil.ingest.grid.TextLines} cuts it into lines of bounded length. A {@link
 * fairboil.ingest.grid.Grid} is a whole sheet as rows of cells, whatever kind of file it came from:
 * {@code grid.csv} makes one from CSV, {@code grid.workbook} from a tab of a workbook. What cannot
 * be read is an {@link fairboil.ingest.grid.UnreadableException}, which is a finding.
 *
 * <p>A file that was read is opened once more for its bytes by an {@link
 * fairboil.ingest.grid.InputOpener}, which tells if it was changed; {@link
 * fairboil.ingest.grid.Fingerprint} is of several files together.
 */
package fairboil.ingest.grid;
