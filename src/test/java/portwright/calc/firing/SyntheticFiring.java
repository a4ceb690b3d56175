package portwright.calc.firing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.RecordCase;
import portwright.data.Cones;
import portwright.units.Celsius;

/**
 * A computed firing written down as a potter or a meter would: noise, rounding, cones, damper, gas; with a fault planted
 * if wanted. The kiln that burns differs from the design by loss, load and power, seeded.
 */
public final class SyntheticFiring {
    /** What goes wrong. */
    public enum Fault {
        NONE,
        ELEMENT,
        RELAY_OPEN,
        RELAY_WELDED,
        THERMOCOUPLE,
        DAMPER
    }

    private static final double Z = Celsius.ZERO_C;

    private final Random random;
    private final Fault fault;
    private final boolean noteDamper;
    private final double designW;
    private final double loss;
    private final double load;
    private final double power;
    private final double rate;
    private final double gasOnC;
    private final double noise;
    private final int every;
    private final double flowFactor;
    private final double faultC;
    private final double size;
    private final double lead;
    public final String planted;

    public SyntheticFiring(long seed, Fault fault, boolean noteDamper) {
        this(seed, fault, noteDamper, Double.NaN, Double.NaN);
    }

    /** A kiln whose true loss factor and flow factor are given. */
    public SyntheticFiring(long seed, Fault fault, boolean noteDamper, double trueLoss, double trueFlow) {
        random = new Random(seed * 7919 + fault.ordinal());
        this.fault = fault;
        this.noteDamper = noteDamper;
        designW = 10500 + random.nextInt(1500);
        loss = Double.isNaN(trueLoss) ? 1.25 * (0.92 + 0.16 * random.nextDouble()) : trueLoss;
        load = Double.isNaN(trueLoss) ? 70 * (0.88 + 0.24 * random.nextDouble()) : 70;
        power = Double.isNaN(trueLoss) ? 0.97 + 0.06 * random.nextDouble() : 1;
        rate = (90 + random.nextInt(50)) / 3600.0;
        gasOnC = 850 + random.nextInt(70);
        noise = 0.8 + 0.7 * random.nextDouble();
        every = new int[] {60, 120, 300}[random.nextInt(3)];
        lead = Double.isNaN(trueLoss) ? 80 : 250;
        flowFactor = Double.isNaN(trueFlow) ? 0.95 + 0.1 * random.nextDouble() : trueFlow;
        faultC = switch (fault) {
            case RELAY_WELDED -> 400 + random.nextInt(300);
            default -> 600 + random.nextInt(550);
        };
        size = switch (fault) {
            case ELEMENT -> random.nextBoolean() ? 1 / 3.0 : 0.5;
            case THERMOCOUPLE -> 40 + random.nextInt(50);
            case DAMPER -> 0.85 + 0.15 * random.nextDouble();
            default -> 1;
        };
        planted = String.format(
                Locale.ROOT,
                "%s at %.0f C, size %.2f, loss %.2f, load %.0f, %d s, gas on %.0f, %.0f W",
                fault,
                faultC,
                size,
                loss,
                load,
                every,
                gasOnC,
                designW);
    }

    private List<Step> steps() {
        ConeWork ten = ConeWork.of(Cones.load().find("10").orElseThrow());
        Step.DamperSetting medium = new Step.ForLambda(0.90);
        return List.of(
                Step.electric(TestKilns.to(gasOnC - lead), rate),
                TestKilns.full(TestKilns.to(gasOnC)),
                new Step(new Step.ToCone(ten), Step.FULL, true, true, Step.CONTROLLER, true, medium));
    }

    /** The log beside what the potter believes of the kiln. */
    public RecordCase beside(FiringLog log) {
        KilnHeat k = TestKilns.decagon(designW, 1.25, 70, TestKilns.FIVE_PORTS);
        GasExchange gas = new DamperedGas(4000, 1);
        double[] planned = new double[3];
        Arrays.fill(planned, Double.NaN);
        for (StepResult r :
                Simulation.run(k, gas, steps(), List.of(), Numerics.STANDARD).steps()) {
            planned[r.index()] = r.damperShare();
        }
        return new RecordCase(log, k, gas, steps(), planned, new double[3], "", 0, 2740);
    }

    /** The log as text. */
    @SuppressWarnings("OrphanedFormatString") // the per cent sign belongs to a column's head
    public String log() {
        KilnHeat k = TestKilns.decagon(designW * power, loss, load, TestKilns.FIVE_PORTS);
        GasExchange gas = new DamperedGas(4000, flowFactor);
        Balance balance = new Balance(k, k.roomK(), 12);
        double asked = new DamperedGas(4000, 1).damperFor(0.9, 1300);
        double open = fault == Fault.DAMPER ? Math.min(1, Math.max(asked + 0.3, size)) : asked;
        List<Step> steps = steps();
        Step electric = steps.get(0);
        FlowCurve shut = new FlowCurve(k, GasExchange.NONE, electric, 0);
        FlowCurve lit = new FlowCurve(k, gas, steps.get(2), asked);
        FlowCurve wide = new FlowCurve(k, gas, steps.get(2), open);
        StringBuilder b = new StringBuilder("elapsed s,temperature °C,damper %,gas pressure mbar,cone\n");
        ConeWork[] cones = {work("6"), work("9"), work("10")};
        double[] done = new double[3];
        double[] fallS = {Double.NaN, Double.NaN, Double.NaN};
        double t = 0;
        double endS = Double.NaN;
        double stillS = 0;
        double markK = 0;
        boolean gasOn = false;
        boolean faulted = false;
        boolean[] written = new boolean[3];
        while (Double.isNaN(endS) ? t < 20 * 3600 : t < endS + 2400) {
            double readK = balance.chamberK() - drift(balance.chamberK());
            double readC = readK - Z;
            boolean over = !Double.isNaN(endS);
            faulted |= readC > faultC;
            gasOn = !over && (gasOn || readC >= gasOnC);
            double most = over ? 0 : k.elements().fullW();
            if (faulted && fault == Fault.ELEMENT) {
                most *= 1 - size;
            }
            if (faulted && fault == Fault.RELAY_OPEN) {
                most = 0;
            }
            boolean ramp = readC < gasOnC - lead;
            double target =
                    ramp && !(faulted && fault == Fault.RELAY_WELDED) ? balance.chamberK() + rate * 30 : Double.NaN;
            balance.advance(30, target, most, gasOn ? faulted && fault == Fault.DAMPER ? wide : lit : shut);
            balance.accept();
            t += 30;
            for (int i = 0; i < 3; i++) {
                done[i] += 30 * cones[i].perSecond(balance.chamberK());
                if (done[i] >= 1 && Double.isNaN(fallS[i]) && !over) {
                    fallS[i] = t + random.nextGaussian() * 90;
                }
            }
            if (!over && done[2] >= 1) {
                endS = t;
            }
            if (!over && t - stillS >= 3600) {
                if (balance.chamberK() - markK < 3 && t > 3 * 3600) {
                    endS = t + (fault == Fault.RELAY_OPEN ? 0 : 600);
                }
                stillS = t;
                markK = balance.chamberK();
            }
            if (t % every == 0) {
                double shown =
                        Math.round(balance.chamberK() - drift(balance.chamberK()) - Z + random.nextGaussian() * noise);
                b.append((long) t).append(',').append((long) shown).append(',');
                b.append(
                                gasOn && noteDamper
                                        ? Long.toString(
                                                Math.round(100 * (faulted && fault == Fault.DAMPER ? open : asked)))
                                        : "")
                        .append(',');
                b.append(gasOn ? "27.4" : "0").append(',');
                for (int i = 0; i < 3; i++) {
                    if (!written[i] && t >= fallS[i]) {
                        written[i] = true;
                        b.append(cones[i].name());
                        break;
                    }
                }
                b.append('\n');
            }
        }
        return b.toString();
    }

    private double drift(double kelvin) {
        return fault == Fault.THERMOCOUPLE ? size * Math.max(0, (kelvin - Z - 600) / 680) : 0;
    }

    private static ConeWork work(String cone) {
        return ConeWork.of(Cones.load().find(cone).orElseThrow());
    }

    /** Lambda in step with the damper; heat left from the table of the stand-in. */
    record DamperedGas(double netW, double factor) implements GasExchange {
        @Override
        public Flow at(boolean gasOn, double damperShare, double chamberK) {
            double lambda = Math.max(0.5, 1.8 * damperShare * factor);
            return new AvailableHeat(netW, lambda, 0.002 * damperShare * factor).at(gasOn, damperShare, chamberK);
        }

        @Override
        public double damperFor(double lambda, double chamberK) {
            return Math.min(1, lambda / 1.8 / factor);
        }
    }
}
