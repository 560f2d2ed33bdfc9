package fairboil.demo;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which stove is burnt when, with which pot, lid and logger. */
final class DemoPlan {

  private static final List<Cookware> POTS = List.of(Cookware.values());
  private static final List<LogDialect> LOGGERS = List.of(LogDialect.values());
  private static final int ENOUGH_COOLING_LOGS = 3;

  private final long seed;
  private final List<DemoRun> runs = new ArrayList<>();
  private final Map<String, Integer> coolingLogs = new HashMap<>();
  private final Map<Stove, Integer> burns = new HashMap<>();

  private DemoPlan(long seed) {
    this.seed = seed;
  }

  /** All runs in the order in which they were burnt. */
  static List<DemoRun> of(long seed) {
    DemoPlan plan = new DemoPlan(seed);
    List<Day> days = Day.all();
    for (int i = 0; i < days.size(); i += 2) {
      plan.weekend(days.get(i), days.get(i + 1));
    }
    return List.copyOf(plan.runs);
  }

  /** Every stove once, three of each design a day, in random order. */
  private void weekend(Day saturday, Day sunday) {
    Chance chance = Chance.of(seed, "order " + saturday.season());
    List<Stove> first = new ArrayList<>();
    List<Stove> second = new ArrayList<>();
    for (Design design : Design.values()) {
      List<Stove> order = chance.shuffled(of(design));
      first.addAll(order.subList(0, 3));
      second.addAll(order.subList(3, 6));
    }
    day(saturday, chance.shuffled(first));
    day(sunday, chance.shuffled(second));
  }

  private static List<Stove> of(Design design) {
    return Stove.all().stream().filter(stove -> stove.design() == design).toList();
  }

  private void day(Day day, List<Stove> stoves) {
    for (int slot = 0; slot < stoves.size(); slot++) {
      if (!isRainedOff(stoves.get(slot), day)) {
        runs.add(run(stoves.get(slot), day, slot));
      }
    }
  }

  private static boolean isRainedOff(Stove stove, Day day) {
    return stove.name().equals("L2") && day.season() == 4;
  }

  private DemoRun run(Stove stove, Day day, int slot) {
    int place = Stove.all().indexOf(stove);
    int order = runs.size() + 1;
    Cookware cookware = POTS.get((place + day.season()) % 2);
    Cookware.Cover cover =
        day.season() == 2 + place % 2 * 2 ? Cookware.Cover.OFF : Cookware.Cover.ON;
    DemoRun.Fate fate = fate(stove, day);
    LogDialect dialect = LOGGERS.get((order + day.season()) % 5);
    BurnMaker maker = new BurnMaker(seed, stove, day, slot, cookware, cover, dialect);
    Happened happened = Happened.in(maker.burn(fate, after(cookware, cover, day, fate)));
    return new DemoRun(
        stove,
        day,
        order,
        burns.merge(stove, 1, Integer::sum) + 1,
        lit(day, slot),
        fate,
        dialect,
        cookware,
        cover,
        happened,
        maker.fuel(fate, happened),
        DemoBlemishes.of(order));
  }

  private static DemoRun.Fate fate(Stove stove, Day day) {
    return switch (stove.name() + "-" + day.season()) {
      case "M4-1" -> DemoRun.Fate.WENT_OUT;
      case "L5-3" -> DemoRun.Fate.KNOCKED_OVER;
      case "M1-3" -> DemoRun.Fate.NO_LOG;
      default -> DemoRun.Fate.BOILED;
    };
  }

  /** The first burns with a pot, lid and wind are logged until the pot is cold enough. */
  private BurnMaker.After after(
      Cookware cookware, Cookware.Cover cover, Day day, DemoRun.Fate fate) {
    if (fate != DemoRun.Fate.BOILED) {
      return BurnMaker.After.PACK_UP;
    }
    String kind = cookware + " " + cover + " " + day.wind();
    return coolingLogs.merge(kind, 1, Integer::sum) <= ENOUGH_COOLING_LOGS
        ? BurnMaker.After.COOL
        : BurnMaker.After.PACK_UP;
  }

  private LocalDateTime lit(Day day, int slot) {
    int late = Chance.of(seed, "lit " + day.date() + " " + slot).whole(0, 9);
    return day.date().atTime(9, 30).plusMinutes(70L * slot + late);
  }
}
