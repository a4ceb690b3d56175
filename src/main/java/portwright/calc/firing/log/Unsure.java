package portwright.calc.firing.log;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Replay;
import portwright.units.Celsius;

/**
 * What a sound kiln may differ in from its design, each carried through the heat balance along a record: how much more element power, as a
 * share of full power, is needed at chosen intervals when one input is off by its standard deviation. The deviations are this project's
 * judgement of what a potter's figures are good to.
 */
final class Unsure {
    static final double LOSS = 0.10;
    static final double LOAD = 0.10;
    /** The same where a note of the log tells the ware. */
    static final double LOAD_TOLD = 0.05;

    private static final double POWER = 0.03;
    private static final double LAG_S = 60;
    private static final double GAS = 0.15;
    /** Air drawn at a damper setting: how well a draught is reckoned, joints aside. */
    private static final double AIR = 0.10;
    /** Both against each other: how well lambda is known from a damper and a pressure. */
    static final double AIR_TO_GAS = Math.hypot(AIR, GAS);

    /** A leak area is a gap judged by eye: 5 to 95 % are none to twice what is stated. */
    private static final double LEAK = 0.6;
    /** Without a stated one so much may gape all the same, m², a standard deviation. */
    private static final double UNSEEN_M2 = 3e-4;

    /** Drift of a base metal thermocouple begins about here and is counted at {@link ProbeBand#CONE_10_C}. */
    private static final double DRIFT_C = 600;

    private final Followed f;
    private final int[] told;

    Unsure(Followed f, int[] told) {
        this.f = f;
        this.told = told;
    }

    double[] column(IntToDoubleFunction at) {
        double[] out = new double[told.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = at.applyAsDouble(told[i]);
        }
        return out;
    }

    /** The walls lose more. */
    double[] loss() {
        KilnHeat k = f.c.kiln();
        return moved(k.withLossFactor(k.lossFactor() * (1 + LOSS)));
    }

    /** More stands in the kiln. */
    double[] load() {
        KilnHeat k = f.c.kiln();
        return moved(k.withLoad(k.loadHeatCapacityJPerK() * (1 + LOAD)));
    }

    /** The elements give less than stated. */
    double[] power() {
        return column(i -> POWER * f.asked[i] / f.c.kiln().elements().fullW());
    }

    /** Less gas flows. */
    double[] gas() {
        return column(i -> f.gasOn(i)
                ? GAS
                        * f.logged.get(i).flow().fuelNetW()
                        / f.c.kiln().elements().fullW()
                : 0);
    }

    /** The open damper draws more air than reckoned: as if it stood farther open. */
    double[] draught() {
        GasExchange gas = f.c.gas();
        GasExchange wider = new GasExchange() {
            @Override
            public Flow at(boolean gasOn, double share, double kelvin) {
                return gas.at(gasOn, Math.min(1, share * (1 + AIR)), kelvin);
            }

            @Override
            public double damperFor(double lambda, double kelvin) {
                return gas.damperFor(lambda, kelvin) / (1 + AIR);
            }

            @Override
            public double lightingS() {
                return gas.lightingS();
            }

            @Override
            public Flow plugged(double kelvin) {
                return gas.plugged(kelvin);
            }
        };
        return column(f.with(f.c.with(f.c.kiln(), wider)).logged);
    }

    /** More leaks than the design says: with the ports plugged it reads as loss. */
    double[] leak(DoubleFunction<GasExchange> draft, double designM2) {
        GasExchange wider = draft.apply(Double.isNaN(designM2) ? UNSEEN_M2 : designM2 * (1 + LEAK));
        return column(f.with(f.c.with(f.c.kiln(), wider)).logged);
    }

    /** The chamber ahead of a probe that lags. */
    double[] lagging() {
        double[] ahead = f.kelvin.clone();
        for (int i = 0; i < ahead.length; i++) {
            ahead[i] += LAG_S * f.grid.climbKPerS()[i];
        }
        return column(f.need(f.c, ahead, true));
    }

    /** The thermocouple off by a share of its reading, and by a drift that begins in the heat. */
    List<double[]> probe() {
        return List.of(
                reading(t -> f.band.sdShare() * t),
                reading(t -> f.band.sdShare()
                        * ProbeBand.CONE_10_C
                        * Math.max(0, t - DRIFT_C)
                        / (ProbeBand.CONE_10_C - DRIFT_C)));
    }

    /** The chamber hotter than the reading by an error that depends on the reading, both in °C. */
    double[] reading(DoubleUnaryOperator error) {
        double[] along = f.kelvin.clone();
        for (int i = 0; i < along.length; i++) {
            along[i] += error.applyAsDouble(along[i] - Celsius.ZERO_C);
        }
        return column(f.need(f.c, along, true));
    }

    private double[] moved(KilnHeat other) {
        return column(f.with(f.c.with(other, f.c.gas())).logged);
    }

    private double[] column(List<Replay.Need> need) {
        double full = f.c.kiln().elements().fullW();
        return column(i -> (need.get(i).neededW() - f.logged.get(i).neededW()) / full);
    }
}
