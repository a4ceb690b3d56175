package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * A kiln reckoned apart from the product, for logs that the product has not made itself: five cells a wall stepped forward in time, a load of one
 * piece, a controller that works on its error, a draught of three openings, heat left of the gas by its mass and a mean specific heat. Nothing here
 * is the product's but numbers of the design. Heat of gas by hand: 0.0216 kg fuel and 0.339 kg air a megajoule net (propane); what is not burnt for lack of air 1.3 of the lack.
 */
final class ShedKiln {
    private static final int CELLS = 5;
    private static final double DT = 2;
    private static final double SIGMA = 5.67e-8;
    private static final double Z = 273.15;
    /** Four kilograms of wire and its hangers, J/K; the face is the wall's. */
    private static final double QUICK_J_PER_K = 3000;

    private static final double FUEL_KG_PER_J = 0.0216e-6;
    private static final double AIR_KG_PER_J = 0.339e-6;

    /**
     * One side of the box.
     *
     * @param k0 conductivity at 0 °C, W/mK
     * @param k1 its rise, W/mK²
     * @param rhoC heat of the brick, J/m³K
     * @param film outside: factor of the cube root of the excess, W/m²K^(4/3)
     * @param shine emissivity outside
     */
    record Side(
            double thickM,
            double innerM2,
            double outerM2,
            double k0,
            double k1,
            double rhoC,
            double film,
            double shine) {}

    /** What the design says of the rest; areas m², heights m over the floor, gas W net. Gap share: of the leak that gapes also while the ports are plugged; 0 for a hairline. */
    record Numbers(
            List<Side> sides,
            double powerW,
            double loadJPerK,
            double loadM2,
            double inletM2,
            double inletZ,
            double flueM2,
            double flueZ,
            double leakZ,
            double gapShare,
            double gasW,
            double roomC) {}

    /**
     * A step of the plan; NaN for what it does not have.
     *
     * @param ratePerH K/h; NaN: full
     * @param share of the elements; NaN: controller
     * @param holdS length of a hold, s; NaN for none
     * @param open whether ports stand open without gas
     */
    record Stage(
            double toC,
            String cone,
            double ratePerH,
            double share,
            boolean gas,
            double damper,
            double holdS,
            boolean open) {
        Stage(double toC, String cone, double ratePerH, double share, boolean gas, double damper) {
            this(toC, cone, ratePerH, share, gas, damper, Double.NaN, false);
        }

        /** Some minutes at a share of the elements, ports plugged or open with the plate at a share. */
        static Stage minutes(double minutes, double share, boolean open, double damper) {
            return new Stage(Double.NaN, null, Double.NaN, share, false, damper, minutes * 60, open);
        }
    }

    /** How this kiln differs: factors on loss, load, power, flue and gas, and its leak in m². */
    record Own(double loss, double load, double power, double flue, double gas, double leakM2) {}

    /** End temperatures of a cone at 60 and 150 K/h, °C, from its chart. */
    record Cone(double at60, double at150) {
        /** Share of its work an hour: at a steady climb it ends where the chart says. */
        double perHour(double c) {
            double w = (at150 - at60) / Math.log(2.5);
            return 60 / w * Math.exp((c - at60) / w);
        }
    }

    /** What breaks, when the chamber passes a temperature. */
    enum Fault {
        NONE,
        ELEMENT,
        RELAY_OPEN,
        RELAY_WELDED,
        THERMOCOUPLE,
        DAMPER
    }

    /** Size: share of the power lost or stuck on, or of the damper added. Low: K that the probe reads low at 1280 °C, drifting from 600 °C on. */
    record Break(Fault fault, double fromC, double size, double lowK) {
        Break(Fault fault, double fromC, double size) {
            this(fault, fromC, size, fault == Fault.THERMOCOUPLE ? size : 0);
        }
    }

    /** One minute of a firing; damper NaN without gas. */
    record Moment(double timeS, double readC, double chamberC, double damper, boolean gas, double lambda) {}

    /** The firing with the hours at which cones fell, s. */
    record Fired(List<Moment> moments, Map<String, Double> cones) {}

    private final Numbers n;
    private final Own own;

    ShedKiln(Numbers n, Own own) {
        this.n = n;
        this.own = own;
    }

    /** Air drawn, kg/s: openings at floor, lid and joint under the pull of the hot chamber; what goes in comes out. */
    static double air(Numbers n, double flueFactor, double leakM2, double damper, double c, double fuelKgPerS) {
        double cold = 353.0 / (n.roomC + Z);
        double hot = 353.0 / (c + Z);
        double lift = 9.81 * (cold - hot);
        double lo = -lift * n.flueZ;
        double hi = 0;
        double in = 0;
        double flue =
                flueFactor * n.flueM2 / Math.sqrt(1 / (0.75 * 0.75) + Math.pow(0.62 * Math.max(damper, 1e-3), -2));
        for (int i = 0; i < 50; i++) {
            double p = (lo + hi) / 2;
            in = through(0.7 * n.inletM2, -(p + lift * n.inletZ), cold, hot);
            double out =
                    through(flue, p + lift * n.flueZ, hot, cold) + through(0.6 * leakM2, p + lift * n.leakZ, hot, cold);
            if (in + fuelKgPerS > out) {
                lo = p;
            } else {
                hi = p;
            }
        }
        return Math.max(0, in);
    }

    private static double through(double m2, double pa, double there, double back) {
        return pa >= 0 ? m2 * Math.sqrt(2 * there * pa) : -m2 * Math.sqrt(-2 * back * pa);
    }

    /** Lambda of the full gas. */
    static double lambda(Numbers n, double flueFactor, double leakM2, double damper, double c) {
        return air(n, flueFactor, leakM2, damper, c, n.gasW * FUEL_KG_PER_J) / (n.gasW * AIR_KG_PER_J);
    }

    /** Heat that the gas leaves in the chamber, W. */
    static double left(double gasW, double lambda, double c, double roomC) {
        double kg = gasW * (FUEL_KG_PER_J + lambda * AIR_KG_PER_J);
        double cp = 1160 + 0.09 * c - 150 * Math.max(0, 1 - 1 / lambda);
        return gasW * (1 - 1.3 * Math.max(0, 1 - lambda)) - kg * cp * (c - roomC);
    }

    Fired fire(List<Stage> stages, Map<String, Cone> cones, Break b, Random r) {
        double[][] cell = new double[n.sides.size()][CELLS];
        for (double[] x : cell) {
            java.util.Arrays.fill(x, n.roomC);
        }
        double chamber = n.roomC;
        double load = n.roomC;
        double probe = n.roomC;
        double lagS = 30 + 60 * r.nextDouble();
        double sway = 0.01 * r.nextDouble();
        double phase = 7 * r.nextDouble();
        List<Moment> out = new ArrayList<>();
        Map<String, Double> fell = new TreeMap<>();
        Map<String, Double> work = new TreeMap<>();
        int s = 0;
        double set = n.roomC;
        double sum = 0;
        boolean broken = false;
        double bestC = n.roomC;
        double bestS = 0;
        double overS = Double.NaN;
        double stageS = 0;
        for (double t = 0; t < 40 * 3600 && !(t > overS + 2400); t += DT) {
            boolean over = !Double.isNaN(overS);
            Stage stage = stages.get(Math.min(s, stages.size() - 1));
            boolean gas = !over && stage.gas;
            broken |= chamber > b.fromC && (b.fault != Fault.DAMPER || gas);
            double reading = probe - b.lowK * Math.max(0, probe - 600) / 680;
            double full = n.powerW * own.power * (1 + sway * Math.sin(phase + t / 7000));
            double ask = 0;
            if (!over && !Double.isNaN(stage.share)) {
                ask = full * stage.share;
            } else if (!over && Double.isNaN(stage.ratePerH)) {
                ask = full;
            } else if (!over) {
                set += set - reading > 15 ? 0 : stage.ratePerH / 3600 * DT;
                double e = set - reading;
                sum = Math.max(0, Math.min(1, sum + e / 6 * DT / 600));
                ask = full * Math.max(0, Math.min(1, e / 6 + sum));
            }
            set = Double.isNaN(stage.ratePerH) ? reading : set;
            double power = !broken
                    ? ask
                    : switch (b.fault) {
                        case ELEMENT -> ask * (1 - b.size);
                        case RELAY_OPEN -> 0;
                        case RELAY_WELDED -> Math.max(ask, full * b.size);
                        default -> ask;
                    };
            double damper = Math.min(1, stage.damper + (broken && b.fault == Fault.DAMPER ? b.size : 0));
            double lambda = gas ? lambda(n, own.flue, own.leakM2, damper, chamber) / own.gas : Double.NaN;
            if (t % 60 == 0) {
                out.add(new Moment(t, reading, chamber, gas || !over && stage.open ? damper : Double.NaN, gas, lambda));
            }
            double heat = power;
            if (gas) {
                heat += left(n.gasW * own.gas, lambda, chamber, n.roomC);
                heat -= 0.36 * SIGMA * Math.pow(chamber + Z, 4) * (n.inletM2 + n.flueM2);
            }
            heat -= over || gas || stage.open ? 0 : ShedLeak.heatW(n.gapShare, own.leakM2, n.leakZ, chamber, n.roomC);
            if (!over && !gas && stage.open) {
                double kg = air(n, own.flue, own.leakM2, damper, chamber, 0);
                heat -= kg * (1010 + 0.09 * chamber) * (chamber - n.roomC);
                heat -= 0.36 * SIGMA * Math.pow(chamber + Z, 4) * (n.inletM2 + damper * n.flueM2);
            }
            double exchange = n.loadM2
                    * (5 * (chamber - load) + 0.75 * SIGMA * (Math.pow(chamber + Z, 4) - Math.pow(load + Z, 4)));
            heat -= exchange;
            for (int i = 0; i < cell.length; i++) {
                heat -= through(n.sides.get(i), cell[i], chamber);
            }
            chamber += heat * DT / QUICK_J_PER_K;
            load += exchange * DT / (n.loadJPerK * own.load);
            probe += (chamber - probe) * DT / lagS;
            for (var c : cones.entrySet()) {
                if (work.merge(c.getKey(), c.getValue().perHour(chamber) * DT / 3600, Double::sum) >= 1) {
                    fell.putIfAbsent(c.getKey(), t);
                }
            }
            if (reading > bestC + 4) {
                bestC = reading;
                bestS = t;
            }
            boolean done = !Double.isNaN(stage.holdS)
                    ? t >= stageS + stage.holdS
                    : stage.cone == null ? reading >= stage.toC - 0.5 : fell.containsKey(stage.cone);
            if (!over && done) {
                s++;
                stageS = t;
                bestS = t;
                sum = Math.min(sum, 0.5);
            }
            if (!over && (s == stages.size() || t > bestS + 5400)) {
                overS = t;
            }
        }
        return new Fired(out, fell);
    }

    /** Steps one side; returns what it takes from the chamber, W. */
    private double through(Side w, double[] cell, double chamber) {
        double dx = w.thickM / CELLS;
        double[] flow = new double[CELLS + 1];
        for (int j = 0; j <= CELLS; j++) {
            double area = w.innerM2 + (w.outerM2 - w.innerM2) * j / CELLS;
            double hot = j == 0 ? chamber : cell[j - 1];
            if (j == CELLS) {
                double half = own.loss * (w.k0 + w.k1 * hot) / (dx / 2);
                double skin = hot;
                for (int k = 0; k < 8; k++) {
                    double over = Math.max(0.1, skin - n.roomC);
                    double h = w.film * Math.cbrt(over)
                            + w.shine * SIGMA * (Math.pow(skin + Z, 4) - Math.pow(n.roomC + Z, 4)) / over;
                    skin = (skin + (half * hot + h * n.roomC) / (half + h)) / 2;
                }
                flow[j] = half * (hot - skin) * area;
            } else {
                double k = own.loss * (w.k0 + w.k1 * (hot + cell[j]) / 2);
                double face = 1 / (20 + 2.4 * SIGMA * Math.pow(chamber + Z, 3));
                flow[j] = area * (hot - cell[j]) / (j == 0 ? dx / 2 / k + face : dx / k);
            }
        }
        for (int j = 0; j < CELLS; j++) {
            double area = w.innerM2 + (w.outerM2 - w.innerM2) * (j + 0.5) / CELLS;
            cell[j] += (flow[j] - flow[j + 1]) * DT / (w.rhoC * area * dx);
        }
        return flow[0];
    }
}
