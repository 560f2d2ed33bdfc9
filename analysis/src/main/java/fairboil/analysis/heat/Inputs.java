package fairboil.analysis.heat;

import fairboil.analysis.heat.Restatement.Input;
import java.util.EnumMap;
import java.util.Map;

/** One value for each {@link Input}. Immutable. */
public final class Inputs {

  private final Map<Input, Double> values;

  private Inputs(Map<Input, Double> values) {
    this.values = values;
  }

  /** Nothing yet: all 0, but for UA in the fire, which is that beside it. */
  public static Inputs start() {
    return new Inputs(new EnumMap<>(Input.class)).with(Input.IN_FIRE, 1);
  }

  /** The value of an input, in its unit. */
  public double of(Input input) {
    return values.getOrDefault(input, 0.0);
  }

  /** The same with another value of an input. */
  public Inputs with(Input input, double value) {
    Map<Input, Double> changed = new EnumMap<>(Input.class);
    changed.putAll(values);
    changed.put(input, value);
    return new Inputs(changed);
  }

  /** The same with an input so much larger. */
  public Inputs plus(Input input, double more) {
    return with(input, of(input) + more);
  }
}
