package fairboil.ingest.finding;

/** How numbers are shown to people: in which units and with which digits. */
public interface Voice {

  /** Numbers as they are held, for tests and traces: nothing is rounded and no unit is changed. */
  Voice RAW = new RawVoice();

  /** A value with its unit. */
  String value(Argument.Value value);

  /** Two ends with their unit. */
  String range(Argument.Range range);

  /** A value as one types it into a cell. */
  String typed(Argument.Typed typed);

  /** A bare number. */
  String number(Argument.Bare number);

  /** A whole number. */
  String count(long count);

  /** A share in per cent. */
  String share(double fraction);
}
