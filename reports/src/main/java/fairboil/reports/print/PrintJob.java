package fairboil.reports.print;

import fairboil.analysis.fault.Fault;
import fairboil.ingest.finding.Finding;
import java.util.List;

/**
 * What there is to print for a study, and what could not be drawn.
 *
 * @param files the files, in the order in which a person needs them; unmodifiable
 * @param findings rings that could not be drawn and why, sorted; unmodifiable
 * @param faults files at which the program failed; each is a finding too; unmodifiable
 */
public record PrintJob(List<Printed> files, List<Finding> findings, List<Fault> faults) {

  /** Copies the lists. */
  public PrintJob {
    files = List.copyOf(files);
    findings = List.copyOf(findings);
    faults = List.copyOf(faults);
  }
}
