package fairboil.demo;

import java.time.LocalDateTime;
import java.util.List;

/**
 * A run of the demonstration.
 *
 * @param stove the stove burnt
 * @param day the day
 * @param order its place among all runs, from 1
 * @param burnNumber burns of the stove so far, this one counted
 * @param lit when it was lit, on the minute
 * @param fate how it went
 * @param dialect its logger
 * @param cookware its pot
 * @param cover its lid
 * @param happened what truly happened
 * @param fuel what was weighed of the fuel
 * @param blemishes what is wrong with its log
 */
record DemoRun(
    Stove stove,
    Day day,
    int order,
    int burnNumber,
    LocalDateTime lit,
    Fate fate,
    LogDialect dialect,
    Cookware cookware,
    Cookware.Cover cover,
    Happened happened,
    Fuel fuel,
    List<Blemish> blemishes) {

  /** How a run went. */
  enum Fate {
    /** The water boiled. */
    BOILED,
    /** The flame died long before its fuel was used. */
    WENT_OUT,
    /** Somebody's fault, not the stove's. */
    KNOCKED_OVER,
    /** The logger's battery was flat: there are only the stopwatch marks. */
    NO_LOG
  }

  /** Its name. */
  String name() {
    return stove.name() + "-" + day.season();
  }

  /** What truly happened. */
  Burn burn() {
    return happened.burn();
  }
}
