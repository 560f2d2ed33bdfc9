package fairboil.demo;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** The loggers of the demonstration, each with its own way to write. */
enum LogDialect {
  /** Seconds since the start, commas, °C. */
  PLAIN(
      List.of("time (s),flame (°C),water (°C),ambient (°C)"),
      ",",
      '.',
      Scale.CELSIUS,
      Clock.SECONDS),
  /** Date and time of day, semicolons and decimal commas. */
  SEMICOLONS(
      List.of("time;flame (°C);water (°C);ambient (°C)"),
      ";",
      ',',
      Scale.CELSIUS,
      Clock.DATE_AND_TIME),
  /** Four lines about the logger, h:mm:ss since the start, °F. */
  FAHRENHEIT(
      List.of(
          "Four-channel recorder of the allotment society",
          "Interval: 1 s",
          "Channel 4 not used",
          "",
          "Elapsed,Flame 2 (°F),Water 2 (°F),Ambient 2 (°F)"),
      ",",
      '.',
      Scale.FAHRENHEIT,
      Clock.HOURS),
  /** Time of day and bare names, which say neither role nor unit. */
  BARE_NAMES(List.of("Time,T1,T2,T3"), ",", '.', Scale.CELSIUS, Clock.TIME_OF_DAY),
  /** Tabs, m:ss since the start. */
  TABS(
      List.of("time\tflame 2 [°C]\twater 2 [°C]\tambient 2 [°C]"),
      "\t",
      '.',
      Scale.CELSIUS,
      Clock.MINUTES);

  private static final Probes FIRST_SET = new Probes(0, -0.3, 0.06, 0.12);
  private static final Probes SECOND_SET = new Probes(4, 0.1, 0.06, 0.12);

  private final List<String> head;
  private final String separator;
  private final char decimalMark;
  private final Scale scale;
  private final Clock clock;

  LogDialect(List<String> head, String separator, char decimalMark, Scale scale, Clock clock) {
    this.head = head;
    this.separator = separator;
    this.decimalMark = decimalMark;
    this.scale = scale;
    this.clock = clock;
  }

  /** The probes on its leads: two sets went round, the second with the slower water probe. */
  Probes probes() {
    return this == PLAIN || this == SEMICOLONS ? FIRST_SET : SECOND_SET;
  }

  /** Whether its times are times of day. */
  boolean tellsTimeOfDay() {
    return clock == Clock.DATE_AND_TIME || clock == Clock.TIME_OF_DAY;
  }

  /**
   * Writes a log.
   *
   * @param lit when the stove was lit
   */
  String write(LocalDateTime lit, Readings readings, List<Blemish> blemishes) {
    StringBuilder text = new StringBuilder();
    head.forEach(line -> text.append(line).append('\n'));
    for (int i = 0; i < readings.size(); i++) {
      int second = readings.first() + i;
      if (!Blemish.missing(blemishes, second)) {
        text.append(clock.text(i, lit.plusSeconds(second)));
        for (Channel channel : Channel.values()) {
          text.append(separator).append(cell(readings.at(channel, i), channel, second, blemishes));
        }
        text.append('\n');
      }
    }
    return text.toString();
  }

  private String cell(double celsius, Channel channel, int second, List<Blemish> blemishes) {
    return Blemish.fault(blemishes, channel, second)
        .orElseGet(() -> number(celsius + Blemish.spike(blemishes, channel, second)));
  }

  private String number(double celsius) {
    return Decimal.text(scale.of(celsius), 1).replace('.', decimalMark);
  }

  private enum Scale {
    CELSIUS,
    FAHRENHEIT;

    double of(double celsius) {
      return this == CELSIUS ? celsius : celsius * 1.8 + 32;
    }
  }

  private enum Clock {
    SECONDS {
      @Override
      String text(int elapsed, LocalDateTime now) {
        return Integer.toString(elapsed);
      }
    },
    MINUTES {
      @Override
      String text(int elapsed, LocalDateTime now) {
        return Decimal.minutes(elapsed);
      }
    },
    HOURS {
      @Override
      String text(int elapsed, LocalDateTime now) {
        int minute = elapsed / 60 % 60;
        return elapsed / 3600
            + ":"
            + Decimal.twoDigits(minute)
            + ":"
            + Decimal.twoDigits(elapsed % 60);
      }
    },
    TIME_OF_DAY {
      @Override
      String text(int elapsed, LocalDateTime now) {
        return TIME.format(now);
      }
    },
    DATE_AND_TIME {
      @Override
      String text(int elapsed, LocalDateTime now) {
        return DATE_TIME.format(now);
      }
    };

    private static final DateTimeFormatter TIME =
        DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter DATE_TIME =
        DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    abstract String text(int elapsed, LocalDateTime now);
  }
}
