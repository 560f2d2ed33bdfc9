package fairboil.analysis.heat;

import fairboil.analysis.water.Saturation;
import fairboil.analysis.water.Water;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * What truly happens to a pan of water: the balance with the heat capacity of the water at each
 * temperature and its mass at each moment, integrated over time by Hipparchus. Shares nothing with
 * the code under test but the properties of water.
 *
 * @param water kg put in
 * @param pot J/K
 * @param loss how it loses heat
 * @param air the air about it
 */
public record Pan(double water, double pot, Loss loss, Surroundings air) {

  private static final double LONG = 40_000;

  /** When a fire brings it from one temperature to another, s; NaN if it does not. */
  public double seconds(DoubleUnaryOperator watts, double from, double to) {
    ODEIntegrator integrator = integrator();
    integrator.addEventDetector(new Reaching(to));
    ODEStateAndDerivative end =
        integrator.integrate(balance(watts), new ODEState(0, new double[] {from, water}), LONG);
    return end.getTime() < LONG ? end.getTime() : Double.NaN;
  }

  /** Its temperature each second, from a temperature on. */
  public double[] course(DoubleUnaryOperator watts, double from, int seconds) {
    double[] course = new double[seconds + 1];
    double[] state = {from, water};
    course[0] = from;
    for (int i = 0; i < seconds; i++) {
      state =
          integrator().integrate(balance(watts), new ODEState(i, state), i + 1).getPrimaryState();
      course[i + 1] = state[0];
    }
    return course;
  }

  private static ODEIntegrator integrator() {
    return new DormandPrince853Integrator(1e-6, 200, 1e-9, 1e-10);
  }

  private OrdinaryDifferentialEquation balance(DoubleUnaryOperator watts) {
    return new OrdinaryDifferentialEquation() {
      @Override
      public int getDimension() {
        return 2;
      }

      @Override
      public double[] computeDerivatives(double time, double[] state) {
        double celsius = Math.max(0.01, Math.min(104.9, state[0]));
        double steam = loss.perPascal() * (Saturation.pressure(celsius) - air.steam());
        double net =
            watts.applyAsDouble(time) - loss.perKelvin() * (celsius - air.ambient()) - steam;
        double capacity = state[1] * Water.heatCapacity(celsius, celsius) + pot;
        return new double[] {net / capacity, -steam / Water.latentHeat(celsius)};
      }
    };
  }

  /** Stops at a temperature. */
  private record Reaching(double celsius) implements ODEEventDetector {

    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return (state, forward) -> 30;
    }

    @Override
    public int getMaxIterationCount() {
      return 100;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, 1e-9, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return (state, detector, increasing) -> Action.STOP;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return state.getPrimaryState()[0] - celsius;
    }
  }
}
