package fairboil.ingest.log;

import java.util.Set;

/**
 * How the rows of a log are read for their times.
 *
 * @param reader reads the time of a row
 * @param columns the columns, from 0, that tell time, used or not; unmodifiable
 * @param emptyTimes what a row with an empty time cell is
 */
record TimePlan(TimeReader reader, Set<Integer> columns, RowFate emptyTimes) {

  TimePlan {
    columns = Set.copyOf(columns);
  }
}
