package fairboil.analysis.fault;

import java.util.Optional;

/**
 * What came of a part.
 *
 * @param value what it gave, unless there was a fault
 * @param fault the fault, if there was one
 */
public record Tried<R>(Optional<R> value, Optional<Fault> fault) {}
