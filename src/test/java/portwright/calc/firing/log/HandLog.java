package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import portwright.calc.firing.Conductivity;
import portwright.calc.firing.Elements;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Layer;
import portwright.calc.firing.OpenPort;
import portwright.calc.firing.Replay;
import portwright.calc.firing.ShellPart;
import portwright.calc.firing.Step;

/**
 * Records written by hand, of a kiln whose heat balance is one line: power = C dT/dt + factor U (T − room), C = 180 kJ/K, so that 10 kW climb by 200 K/h where
 * nothing is lost. The wall is thin and stores nothing, the load takes heat at once.
 */
final class HandLog {
    static final double FULL_W = 10_000;
    static final double LOAD_J_PER_K = 180_000;
    static final double ROOM_K = 293.15;
    static final double ZERO_C = 273.15;

    private final List<LogRow> rows = new ArrayList<>();
    private double everyS = 300;
    private Double damper;
    private Double gasPa;
    private KilnHeat kiln = kiln(1, 1e-6);
    private GasExchange gas = GasExchange.NONE;
    private double designGasPa = 2000;
    private double[] plannedDamper;
    private double wareKg;

    /** Begins at a temperature, °C. */
    HandLog(double celsius) {
        rows.add(row(1, 0, celsius));
    }

    static LogRow row(int line, double timeS, double celsius) {
        return new LogRow(line, timeS, celsius + ZERO_C, null, null, null, null, "");
    }

    static KilnHeat kiln(double lossFactor, double wallWPerK) {
        ShellPart wall = new ShellPart(
                "wall",
                List.of(new Layer(1e-3, Conductivity.constant(wallWPerK * 1e-3), 1e-3, 1)),
                1,
                1,
                (face, room) -> 1e9);
        return new KilnHeat(
                List.of(wall), lossFactor, LOAD_J_PER_K, 1e6, Elements.fresh(FULL_W), List.<OpenPort>of(), ROOM_K);
    }

    HandLog of(KilnHeat other) {
        kiln = other;
        return this;
    }

    HandLog of(GasExchange other) {
        gas = other;
        return this;
    }

    HandLog plannedDamper(double... shares) {
        plannedDamper = shares;
        return this;
    }

    HandLog wareKg(double kg) {
        wareKg = kg;
        return this;
    }

    HandLog designGasPa(double pa) {
        designGasPa = pa;
        return this;
    }

    HandLog every(double seconds) {
        everyS = seconds;
        return this;
    }

    HandLog damper(Double share) {
        damper = share;
        return this;
    }

    HandLog gasPa(Double pa) {
        gasPa = pa;
        return this;
    }

    HandLog note(String text) {
        LogRow r = last();
        rows.set(
                rows.size() - 1,
                new LogRow(r.line(), r.timeS(), r.kelvin(), r.damperShare(), r.damperM(), r.gasPa(), r.cone(), text));
        return this;
    }

    HandLog cone(String name) {
        LogRow r = last();
        rows.set(
                rows.size() - 1,
                new LogRow(r.line(), r.timeS(), r.kelvin(), r.damperShare(), r.damperM(), r.gasPa(), name, r.note()));
        return this;
    }

    private LogRow last() {
        return rows.get(rows.size() - 1);
    }

    /** A straight line of so many minutes at so many K/h. */
    HandLog climb(double minutes, double kPerH) {
        LogRow from = last();
        for (double t = everyS; t <= minutes * 60 + 1e-6; t += everyS) {
            add(from.timeS() + t, from.kelvin() + kPerH / 3600 * t);
        }
        return this;
    }

    /** So many minutes at a share of full power, where a wall loses so much, W/K: T' = (P − U (T − room)) / C. */
    HandLog fire(double minutes, double share, double lossWPerK) {
        return fire(minutes, share, lossWPerK, 0);
    }

    /** The same with so much heat besides, W. */
    HandLog fire(double minutes, double share, double lossWPerK, double moreW) {
        LogRow from = last();
        double gained = (share * FULL_W + moreW) / lossWPerK;
        double end = ROOM_K + gained;
        for (double t = everyS; t <= minutes * 60 + 1e-6; t += everyS) {
            add(from.timeS() + t, end + (from.kelvin() - end) * Math.exp(-t * lossWPerK / LOAD_J_PER_K));
        }
        return this;
    }

    private void add(double timeS, double kelvin) {
        rows.add(new LogRow(rows.size() + 1, timeS, kelvin, damper, null, gasPa, null, ""));
    }

    FiringLog log() {
        return new FiringLog(rows, List.of(), List.of(), List.of(), Double.NaN, false);
    }

    FiringLog log(boolean scaleDoubted, DeadSpell... dead) {
        return new FiringLog(rows, List.of(), List.of(), List.of(dead), Double.NaN, scaleDoubted);
    }

    RecordCase beside(Step... steps) {
        return beside(log(), steps);
    }

    RecordCase beside(FiringLog log, Step... steps) {
        double[] none = new double[steps.length];
        Arrays.fill(none, Double.NaN);
        double[] rise = new double[steps.length];
        return new RecordCase(
                log,
                kiln,
                gas,
                List.of(steps),
                plannedDamper == null ? none : plannedDamper,
                rise,
                "",
                wareKg,
                designGasPa);
    }

    /** The record followed by a plan, whether or not it looks like another firing. */
    Followed followed(Step... steps) {
        return new Followed(beside(steps), true);
    }

    /** A step with all elements on, up to so many °C. */
    static Step full(double celsius) {
        return Step.electric(new Step.To(celsius + ZERO_C), Step.FULL);
    }

    /** A step at a rate, K/h. */
    static Step rate(double celsius, double kPerH) {
        return Step.electric(new Step.To(celsius + ZERO_C), kPerH / 3600);
    }

    static Step hold(double minutes) {
        return Step.electric(new Step.Hold(minutes * 60), Step.FULL);
    }

    /** A step at a fixed share of the elements. */
    static Step share(double celsius, double share) {
        return new Step(new Step.To(celsius + ZERO_C), Step.FULL, true, false, share, false, new Step.Share(1));
    }

    /** Gas and all elements. */
    static Step gas(double celsius) {
        return new Step(
                new Step.To(celsius + ZERO_C), Step.FULL, true, true, Step.CONTROLLER, true, new Step.Share(0.5));
    }

    /** Writes by hand what the elements gave in an interval, as a share of full power. */
    static void gave(Followed f, int i, double share) {
        Replay.Need n = f.logged.get(i);
        f.logged.set(i, new Replay.Need(n.timeS(), n.chamberK(), share * FULL_W, n.begin(), n.flow()));
    }

    /** The same from one interval to before another. */
    static void gave(Followed f, int from, int to, double share) {
        for (int i = from; i < to; i++) {
            gave(f, i, share);
        }
    }

    /** Asks just what was given, and from an interval on so much that a share of it is missing; smoothing spreads the edge over two intervals to either side. */
    static Followed lost(Followed f, int at, double share) {
        for (int i = 0; i < f.intervals(); i++) {
            double gone = Math.max(0, Math.min(1, 0.5 + (i - at) / 4.0));
            f.asked[i] = f.logged.get(i).neededW() / (1 - share * gone);
            f.leastAsked[i] = f.asked[i];
        }
        return f;
    }

    /**
     * Gas and air whose heat is a straight line in temperature. Open ports draw with the damper's share, a leak all the time.
     *
     * @param gasW heat of the gas
     * @param airWPerK taken by the air of a damper all open
     * @param leakWPerK taken by the leak with the ports plugged
     * @param openLeakWPerK taken by the leak beside open ports
     */
    record Lines(double gasW, double airWPerK, double leakWPerK, double openLeakWPerK) implements GasExchange {
        @Override
        public Flow at(boolean gasOn, double damperShare, double chamberK) {
            double air = (airWPerK * damperShare + openLeakWPerK) * (chamberK - ROOM_K);
            double fuel = gasOn ? gasW : 0;
            return new Flow(fuel - air, fuel, fuel / 46e6, 0.01 * damperShare, gasOn ? 2 * damperShare : 0);
        }

        @Override
        public double damperFor(double lambda, double chamberK) {
            return lambda / 2;
        }

        @Override
        public Flow plugged(double chamberK) {
            return new Flow(-leakWPerK * (chamberK - ROOM_K), 0, 0, 0, 0);
        }

        @Override
        public double lightingS() {
            return 0;
        }
    }
}
