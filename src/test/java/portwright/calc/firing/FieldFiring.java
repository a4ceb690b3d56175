package portwright.calc.firing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import portwright.units.Celsius;

/**
 * A kiln that stands in somebody's shed: voltage that wanders over the day, a sheathed probe that lags, a controller that waits when the kiln
 * falls behind, elements in two or three groups with a relay each. One fault may be planted. Shares no code with the other generators but the
 * heat balance.
 */
public final class FieldFiring {
    /** What goes wrong. */
    public enum Fault {
        NONE,
        ELEMENT,
        RELAY_OPEN,
        RELAY_WELDED,
        THERMOCOUPLE,
        DAMPER
    }

    /**
     * A fault with its details.
     *
     * @param fromC chamber temperature at which it begins; for the damper: chamber temperature once gas burns
     * @param size element: share of the power lost; welded relay: share that stays on; thermocouple: K at 1280 °C, read too low;
     *     damper: open share added
     * @param spells open relay: works again for half of each 50 minutes
     * @param sudden thermocouple: the whole error at once from {@code fromC} on
     */
    public record Plant(Fault fault, double fromC, double size, boolean spells, boolean sudden) {}

    /** A moment: reading, not chamber; {@code damper} NaN with the ports plugged. */
    public record Moment(double timeS, double chamberK, double readingK, double damper, boolean gas) {}

    /** What happened; cones with the time at which they fell. */
    public record Result(List<Moment> moments, List<ConeDown> cones) {}

    private static final double DT = 15;
    private static final double Z = Celsius.ZERO_C;

    private FieldFiring() {}

    /** Fires; after the last step the kiln is logged for 40 minutes more. */
    public static Result fire(
            KilnHeat kiln,
            GasExchange gas,
            List<Step> steps,
            double[] damper,
            List<ConeWork> cones,
            Plant plant,
            Random r) {
        Balance b = new Balance(kiln, kiln.roomK(), 12);
        Map<String, FlowCurve> curves = new HashMap<>();
        List<Moment> out = new ArrayList<>();
        List<ConeDown> down = new ArrayList<>();
        double[] work = new double[cones.size()];
        double lagS = 40 + 60 * r.nextDouble();
        double wander = 0.015 * r.nextDouble();
        double phase = 6.28 * r.nextDouble();
        boolean waits = r.nextBoolean();
        double reading = b.chamberK();
        double t = 0;
        double sinceS = Double.NaN;
        double overS = Double.NaN;
        int s = 0;
        double beginS = 0;
        double startK = reading;
        double set = reading;
        double behindS = 0;
        while (t < 32 * 3600 && (Double.isNaN(overS) || t < overS + 2400)) {
            boolean over = !Double.isNaN(overS);
            Step step = steps.get(Math.min(s, steps.size() - 1));
            boolean burns = !over && step.gas();
            if (Double.isNaN(sinceS) && b.chamberK() - Z > plant.fromC() && (plant.fault() != Fault.DAMPER || burns)) {
                sinceS = t;
            }
            boolean now = !Double.isNaN(sinceS) && plant.fault() != Fault.NONE;
            double d = damper[Math.min(s, steps.size() - 1)];
            if (now && burns && plant.fault() == Fault.DAMPER) {
                d = Math.min(1, d + plant.size());
            }
            double full = kiln.elements().fullW() * (1 + wander * Math.sin(phase + t / 9000));
            double want = 0;
            double target = Double.NaN;
            if (!over && step.electric()) {
                want = full * (step.controlled() ? 1 : step.elementShare());
                if (step.controlled() && step.goal() instanceof Step.Hold) {
                    target = b.chamberK() + 0.2 * (startK - reading);
                } else if (step.controlled() && step.rateKPerS() < Step.FULL) {
                    boolean falls = step.goal() instanceof Step.To to && to.temperatureK() < startK;
                    double rate = falls ? -step.rateKPerS() : step.rateKPerS();
                    boolean wait = waits && Math.abs(set - reading) > 20;
                    set += wait ? 0 : DT * rate;
                    if (step.goal() instanceof Step.To to) {
                        set = falls ? Math.max(set, to.temperatureK() - 1) : Math.min(set, to.temperatureK() + 1);
                    }
                    target = b.chamberK() + DT * rate + 0.2 * (set - lagS * rate - reading);
                }
            }
            if (now && plant.fault() == Fault.ELEMENT) {
                want *= 1 - plant.size();
            }
            if (now && plant.fault() == Fault.RELAY_OPEN && !(plant.spells() && (t - sinceS) % 3000 > 1500)) {
                want = 0;
            }
            boolean open = !over && step.portsOpen();
            String key = over ? "over" : s + "/" + Math.round(d * 1000);
            double share = d;
            FlowCurve flow = curves.computeIfAbsent(
                    key,
                    k -> over
                            ? new FlowCurve(kiln, GasExchange.NONE, Step.electric(new Step.Hold(1), Step.FULL), 1)
                            : new FlowCurve(kiln, gas, step, share));
            b.advance(DT, target, want, flow);
            double least = now && plant.fault() == Fault.RELAY_WELDED ? full * plant.size() : 0;
            if (b.powerW() < least) {
                b.advance(DT, Double.NaN, least, flow);
            }
            double before = b.chamberK();
            b.accept();
            t += DT;
            reading += (b.chamberK() - error(plant, now, b.chamberK()) - reading) * DT / lagS;
            for (int i = 0; i < work.length; i++) {
                double w = work[i];
                work[i] += DT * cones.get(i).perSecond((before + b.chamberK()) / 2);
                if (w < 1 && work[i] >= 1) {
                    down.add(new ConeDown(cones.get(i).name(), t, b.chamberK()));
                }
            }
            out.add(new Moment(t, b.chamberK(), reading, open ? d : Double.NaN, burns));
            if (over) {
                continue;
            }
            boolean cools = step.goal() instanceof Step.To to && to.temperatureK() < startK;
            behindS = cools || reading > out.get(Math.max(0, out.size() - 241)).readingK() + 3 ? 0 : behindS + DT;
            boolean holding = step.goal() instanceof Step.Hold;
            boolean done = holding
                    ? t - beginS >= ((Step.Hold) step.goal()).seconds()
                    : step.goal() instanceof Step.To to
                            ? startK <= to.temperatureK() ? reading >= to.temperatureK() : reading <= to.temperatureK()
                            : fallen(down, ((Step.ToCone) step.goal()).cone());
            boolean givenUp = !holding && behindS > 5400 && t - beginS > 5400;
            if (done || givenUp) {
                s++;
                beginS = t;
                startK = reading;
                set = reading;
                behindS = 0;
                if (s >= steps.size() || givenUp) {
                    overS = t;
                }
            }
        }
        return new Result(out, down);
    }

    private static boolean fallen(List<ConeDown> down, ConeWork cone) {
        return down.stream().anyMatch(c -> c.cone().equals(cone.name()));
    }

    private static double error(Plant p, boolean now, double kelvin) {
        if (p.fault() != Fault.THERMOCOUPLE) {
            return 0;
        }
        if (p.sudden()) {
            return now ? p.size() : 0;
        }
        return p.size() * Math.max(0, (kelvin - Z - 500) / 780);
    }
}
