package fairboil.ingest.sheet;

import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What people call the columns of the sheets, and how near a misspelt one is. */
final class Likely {

  /** A question that a header leaves open: nothing is guessed, the column is left out. */
  record Ask(Template problem, Template remedy) {

    Finding at(Place place) {
      return Finding.error(place, problem.with(), remedy.with());
    }
  }

  /** What is longer is no misspelt name. */
  private static final int LONGEST = 100;

  private static final Ask MOISTURE =
      new Ask(
          Template.of(
              "it does not say whether it is water as a share of moist or of dry fuel, so it was"
                  + " left out"),
          Template.of(
              "rename it to moisture wet basis (share of the fuel as weighed) or moisture dry"
                  + " basis"));

  private static final Ask PRESSURE =
      new Ask(
          Template.of(
              "it does not say whether it is the pressure at the place or reduced to sea level, so"
                  + " it was left out"),
          Template.of(
              "rename it to station pressure (a barometer at the place) or sea-level pressure (a"
                  + " forecast, or a barometer set by one)"));

  private static final Template EVENTS =
      Template.of("times of events go into {sheet}, there as event {word}");
  private static final Template RENAME = Template.of("did you mean {word}? Then rename it");
  private static final Template RENAME_WITH_UNIT =
      Template.of("did you mean {word}? Then rename it, with its unit in brackets");

  private static final Map<String, Ask> ASKED =
      Map.of(
          "moisture", MOISTURE,
          "moisturecontent", MOISTURE,
          "fuelmoisture", MOISTURE,
          "mc", MOISTURE,
          "pressure", PRESSURE,
          "airpressure", PRESSURE,
          "barometer", PRESSURE,
          "barometricpressure", PRESSURE);

  private static final Map<String, String> RUNS =
      names(
          Map.ofEntries(
              Map.entry("build", "stove,burner,unit,device,stove id,stove name,build id"),
              Map.entry(
                  "run", "name,id,test,burn,trial,run id,run no,run number,test no,no,number,nr,#"),
              Map.entry("date", "day,test date,date of run"),
              Map.entry("lit at", "time,start,start time,time lit,clock,began"),
              Map.entry("order", "sequence,running order"),
              Map.entry("tester", "operator,person,who,by,observer"),
              Map.entry("site", "place,location,where"),
              Map.entry("notes", "note,comment,comments,remarks,remark"),
              Map.entry("log", "file,filename,log file,data,data file"),
              Map.entry("outcome", "result,status,ended,how it ended"),
              Map.entry("exclude", "excluded,left out,void,discard,skip"),
              Map.entry(
                  "ambient",
                  "temp,temperature,air,air temp,air temperature,outside,outside"
                      + " temp,outdoor temperature,ambient temp,ambient temperature,t air,t ambient"),
              Map.entry("altitude", "elevation,height above sea level,asl"),
              Map.entry("wind", "wind speed,breeze"),
              Map.entry("screen", "windscreen,wind screen,shield"),
              Map.entry("water", "water mass,water weight,water amount,water volume,volume,h2o"),
              Map.entry(
                  "water start",
                  "water temp,water temperature,start temp,initial temp,starting"
                      + " temp,initial water temperature,water temp start,water start temp"),
              Map.entry("water left", "water end,final water,water remaining,water after"),
              Map.entry("pot with water", "pot and water,pot+water,full pot,gross"),
              Map.entry("pot", "kettle,pan,vessel,cookpot,pot mass,pot weight,empty pot"),
              Map.entry("lid", "cover"),
              Map.entry("fuel", "fuel type,wood,wood type,species"),
              Map.entry(
                  "fuel loaded",
                  "fuel mass,fuel weight,fuel amount,fuel in,wood mass,wood weight,load,pellets"),
              Map.entry("fuel left", "fuel remaining,unburnt fuel,wood left"),
              Map.entry("char left", "char,charcoal,ash,char mass"),
              Map.entry("heating value", "lhv,calorific value,energy content"),
              Map.entry("burn number", "burn no,burn count,use"),
              Map.entry("flame probe", "probe,probe moved")));

  private static final Map<SheetSchema, Map<String, String>> OTHERS =
      Map.of(
          RunsSheet.SCHEMA,
          RUNS,
          BuildsSheet.SCHEMA,
          names(Map.of("build", "stove,name,id,unit,stove id", "design", "model,type,plan")),
          PotsSheet.SCHEMA,
          names(Map.of("pot", "name,kettle,id", "mass", "weight,empty", "width", "diameter")),
          HolesSheet.SCHEMA,
          names(
              Map.of(
                  "build",
                  "stove",
                  "hole",
                  "no,number,hole no,#",
                  "along",
                  "position,place,wrap,distance,arc,distance along",
                  "height",
                  "depth",
                  "gap",
                  "spacing",
                  "diameter",
                  "size")),
          RingsSheet.SCHEMA,
          names(
              Map.of(
                  "ring",
                  "name,row",
                  "holes",
                  "number,count,n",
                  "wrap",
                  "circumference",
                  "circle",
                  "radius",
                  "diameter",
                  "size,hole diameter")),
          StopwatchSheet.SCHEMA,
          names(
              Map.of(
                  "run",
                  "name,test,burn,id",
                  "build",
                  "stove",
                  "event",
                  "mark,what,label",
                  "time",
                  "elapsed,clock,at,total,total time,cumulative,split",
                  "by",
                  "tester,person,who")),
          SensorsSheet.SCHEMA,
          names(Map.of("column", "channel,header,name", "role", "what,use", "sensor", "probe")),
          ClaimsSheet.SCHEMA,
          names(Map.of("claim", "name,id,no", "text", "sentence,claim text", "value", "number")));

  private Likely() {}

  private static Map<String, String> names(Map<String, String> wordsByColumn) {
    Map<String, String> names = new HashMap<>();
    wordsByColumn.forEach(
        (column, words) -> {
          for (String word : List.of(words.split(",", -1))) {
            names.put(Words.key(word), column);
          }
        });
    return names;
  }

  /** What is asked of a header that leaves something open. */
  static Optional<Ask> asked(SheetSchema schema, String name) {
    return schema.equals(RunsSheet.SCHEMA)
        ? Optional.ofNullable(ASKED.get(Words.key(name)))
        : Optional.empty();
  }

  /** Says where what the column holds was likely meant to stand. */
  static Optional<Message> column(SheetSchema schema, Set<String> present, String name) {
    Optional<String> event = schema.equals(RunsSheet.SCHEMA) ? event(name) : Optional.empty();
    return event
        .map(
            label ->
                EVENTS.with(Argument.sheet(StopwatchSheet.SCHEMA.file()), Argument.word(label)))
        .or(
            () ->
                name(schema, name)
                    .filter(likely -> !present.contains(likely))
                    .map(likely -> rename(schema, likely).with(Argument.word(likely))));
  }

  private static Template rename(SheetSchema schema, String name) {
    return schema.columns().stream()
            .anyMatch(column -> column.name().equals(name) && !column.dimensions().isEmpty())
        ? RENAME_WITH_UNIT
        : RENAME;
  }

  /** The event that a column of runs is headed with. */
  static Optional<String> event(String name) {
    if (name.length() > LONGEST) {
      return Optional.empty();
    }
    String plain =
        name.replaceFirst("(?i)[\\s_]*(?:time|at)$", "").replaceFirst("(?i)^time (?:to )?", "");
    return Arrays.stream(Event.values())
        .map(Event::label)
        .filter(label -> Words.key(label).equals(Words.key(plain)))
        .findFirst();
  }

  /** The column that was likely meant. */
  static Optional<String> name(SheetSchema schema, String name) {
    String other = OTHERS.getOrDefault(schema, Map.of()).get(Words.key(name));
    List<String> names = schema.columns().stream().map(Column::name).toList();
    return Optional.ofNullable(other).or(() -> Nearest.to(name, names));
  }
}
