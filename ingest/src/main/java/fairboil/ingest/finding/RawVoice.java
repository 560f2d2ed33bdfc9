package fairboil.ingest.finding;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers for tests and traces: values as they are held, in no unit but that. */
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
    return number.decimals() < 0
        ? Double.toString(number.value())
        : BigDecimal.valueOf(number.value())
            .setScale(number.decimals(), RoundingMode.HALF_EVEN)
            .toPlainString();
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
