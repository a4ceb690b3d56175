package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import portwright.calc.firing.Conductivity;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.Elements;
import portwright.calc.firing.Facing;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Layer;
import portwright.calc.firing.OutsideFilm;
import portwright.calc.firing.ShellPart;
import portwright.calc.firing.Step;
import portwright.data.Cones;

/**
 * A log of straight lines, in minutes and °C, of a kiln without walls: it takes 36 kJ/K, so that a climb of 100 °C/h needs 1 kW, and what leaks take. Full power
 * is 10 kW; gas at 2740 Pa burns 0.1 g/s, 4 kW, at a lambda of twice the damper's share and leaves no heat.
 */
final class SmallFiring {
    static final double Z = HandLog.ZERO_C;
    static final double FULL_W = 10_000;
    static final double GAS_PA = 2740;
    static final double GAS_KG_PER_S = 1e-4;
    private static final double LOAD_J_PER_K = 36_000;

    private List<LogRow> rows = new ArrayList<>();
    private final List<DeadSpell> dead = new ArrayList<>();
    private DoubleUnaryOperator leaksW = c -> 0;
    private double fullW = FULL_W;
    private double[] plannedDamper;
    private double[] plannedRise;
    private String plannedCone = "";
    private double plannedWare = 0;
    private double designPa = GAS_PA;
    private double lightingS = 600;
    private boolean doubted;

    private SmallFiring() {}

    /** Readings every so many seconds along straight lines: minute, °C, minute, °C and so on. */
    static SmallFiring every(double seconds, double... minuteCelsius) {
        SmallFiring out = new SmallFiring();
        int k = 0;
        double last = minuteCelsius[minuteCelsius.length - 2] * 60;
        for (double t = minuteCelsius[0] * 60; t <= last + 1e-6; t += seconds) {
            while (k + 4 < minuteCelsius.length && t > minuteCelsius[k + 2] * 60) {
                k += 2;
            }
            double f = (t / 60 - minuteCelsius[k]) / (minuteCelsius[k + 2] - minuteCelsius[k]);
            double c = minuteCelsius[k + 1] + f * (minuteCelsius[k + 3] - minuteCelsius[k + 1]);
            out.rows.add(row(out.rows.size() + 2, t, c));
        }
        return out;
    }

    /** Readings as given: minute, °C, minute, °C and so on. */
    static SmallFiring at(double... minuteCelsius) {
        SmallFiring out = new SmallFiring();
        for (int k = 0; k < minuteCelsius.length; k += 2) {
            out.rows.add(row(out.rows.size() + 2, minuteCelsius[k] * 60, minuteCelsius[k + 1]));
        }
        return out;
    }

    static LogRow row(int line, double seconds, Double celsius) {
        return new LogRow(line, seconds, celsius == null ? null : celsius + Z, null, null, null, null, "");
    }

    /** Changes the row at or first after a minute. */
    private SmallFiring change(double minute, UnaryOperator<LogRow> how) {
        int k = 0;
        while (rows.get(k).timeS() < minute * 60 - 1e-6) {
            k++;
        }
        rows.set(k, how.apply(rows.get(k)));
        return this;
    }

    SmallFiring gas(double minute, double pa) {
        return change(
                minute,
                r -> new LogRow(r.line(), r.timeS(), r.kelvin(), r.damperShare(), r.damperM(), pa, r.cone(), r.note()));
    }

    SmallFiring damper(double minute, double share) {
        return change(
                minute,
                r -> new LogRow(r.line(), r.timeS(), r.kelvin(), share, r.damperM(), r.gasPa(), r.cone(), r.note()));
    }

    SmallFiring cone(double minute, String cone) {
        return change(
                minute,
                r -> new LogRow(
                        r.line(), r.timeS(), r.kelvin(), r.damperShare(), r.damperM(), r.gasPa(), cone, r.note()));
    }

    SmallFiring note(double minute, String note) {
        return change(
                minute,
                r -> new LogRow(
                        r.line(), r.timeS(), r.kelvin(), r.damperShare(), r.damperM(), r.gasPa(), r.cone(), note));
    }

    SmallFiring celsius(double minute, double c) {
        return change(minute, r -> r.reading(c + Z));
    }

    /** Adds a row without a reading that notes a cone. */
    SmallFiring look(double minute, String cone) {
        int k = 0;
        while (k < rows.size() && rows.get(k).timeS() < minute * 60) {
            k++;
        }
        rows.add(k, new LogRow(1000 + rows.size(), minute * 60, null, null, null, null, cone, ""));
        return this;
    }

    /** Takes out the rows after one minute and before another. */
    SmallFiring without(double fromMinute, double toMinute) {
        rows.removeIf(r -> r.timeS() > fromMinute * 60 + 1e-6 && r.timeS() < toMinute * 60 - 1e-6);
        return this;
    }

    /** What leaks take with the ports plugged, W, by the chamber in °C. */
    SmallFiring leaks(DoubleUnaryOperator watts) {
        leaksW = watts;
        return this;
    }

    SmallFiring elements(double watts) {
        fullW = watts;
        return this;
    }

    SmallFiring plannedDamper(double... shares) {
        plannedDamper = shares;
        return this;
    }

    SmallFiring plannedRise(double... kelvin) {
        plannedRise = kelvin;
        return this;
    }

    SmallFiring plannedCone(String cone) {
        plannedCone = cone;
        return this;
    }

    SmallFiring plannedWare(double kg) {
        plannedWare = kg;
        return this;
    }

    SmallFiring designPa(double pa) {
        designPa = pa;
        return this;
    }

    SmallFiring lighting(double seconds) {
        lightingS = seconds;
        return this;
    }

    SmallFiring doubted() {
        doubted = true;
        return this;
    }

    FiringLog log() {
        return new FiringLog(rows, List.of(), List.of(), dead, Double.NaN, doubted);
    }

    RecordCase beside(Step... steps) {
        double[] damper = plannedDamper;
        if (damper == null) {
            damper = new double[steps.length];
            Arrays.fill(damper, 0.45);
        }
        double[] rise = plannedRise == null ? new double[steps.length] : plannedRise;
        return new RecordCase(
                log(), kiln(fullW), gas(), List.of(steps), damper, rise, plannedCone, plannedWare, designPa);
    }

    Followed by(Step... steps) {
        return new Followed(beside(steps), true);
    }

    Tracker tracked(Step... steps) {
        return by(steps).tracker;
    }

    static KilnHeat kiln(double fullW) {
        ShellPart wall = new ShellPart(
                "wall",
                List.of(new Layer(0.1, Conductivity.constant(0.2), 500, 1000)),
                1e-9,
                1e-9,
                OutsideFilm.of(Facing.SIDE, 1, 0.3));
        return new KilnHeat(List.of(wall), 1, LOAD_J_PER_K, 1000, Elements.fresh(fullW), List.of(), 293.15);
    }

    private GasExchange gas() {
        return new GasExchange() {
            @Override
            public Flow at(boolean gasOn, double damperShare, double chamberK) {
                return gasOn
                        ? new Flow(0, 4000, GAS_KG_PER_S, 0.003 * damperShare, 2 * damperShare)
                        : new Flow(0, 0, 0, 0.003 * damperShare, 0);
            }

            @Override
            public double damperFor(double lambda, double chamberK) {
                return lambda / 2;
            }

            @Override
            public Flow plugged(double chamberK) {
                return new Flow(-leaksW.applyAsDouble(chamberK - Z), 0, 0, 0, 0);
            }

            @Override
            public double lightingS() {
                return lightingS;
            }
        };
    }

    /** A climb or fall by elements that a controller leads, °C/h. */
    static Step to(double celsius, double perHour) {
        return Step.electric(new Step.To(celsius + Z), perHour / 3600);
    }

    static Step full(double celsius) {
        return HandLog.full(celsius);
    }

    static Step hold(double minutes) {
        return HandLog.hold(minutes);
    }

    /** The same with a fixed share of the elements. */
    static Step share(Step s, double share) {
        return new Step(s.goal(), s.rateKPerS(), true, s.gas(), share, s.portsOpen(), s.damper());
    }

    /** The same with gas. */
    static Step gas(Step s) {
        return new Step(s.goal(), s.rateKPerS(), s.electric(), true, s.elementShare(), true, new Step.ForLambda(0.9));
    }

    /** The same with the elements off. */
    static Step off(Step s) {
        return new Step(s.goal(), s.rateKPerS(), false, s.gas(), Step.CONTROLLER, s.portsOpen(), s.damper());
    }

    /** The same with ports open. */
    static Step open(Step s) {
        return new Step(s.goal(), s.rateKPerS(), s.electric(), s.gas(), s.elementShare(), true, s.damper());
    }

    static Step cone(String name, double perHour) {
        return Step.electric(new Step.ToCone(work(name)), perHour / 3600);
    }

    static ConeWork work(String name) {
        return ConeWork.of(Cones.load().find(name).orElseThrow());
    }
}
