package fairboil.ingest.finding;

/** Numbers as they are held, for tests and traces: nothing is rounded and no unit is changed. */
final class RawVoice implements Voice {

  @Override
  public String value(Argument.Value value) {
    return value.held() + " " + value.dimension().heldIn();
  }

  @Override
  public String range(Argument.Range range) {
    return range.low() + " to " + range.high() + " " + range.dimension().heldIn();
  }

  @Override
  public String typed(Argument.Typed typed) {
    return typed.held() + " " + typed.dimension().heldIn();
  }

  @Override
  public String number(Argument.Bare number) {
    return number.decimals() == 0
        ? Long.toString(Math.round(number.value()))
        : Double.toString(number.value());
  }

  @Override
  public String count(long count) {
    return Long.toString(count);
  }

  @Override
  public String share(double fraction) {
    return 100 * fraction + " %";
  }
}
