package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordCase;
import portwright.data.Brick;
import portwright.data.Bricks;
import portwright.data.Cones;
import portwright.file.Starters;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Role;
import portwright.review.ShedKiln.Break;
import portwright.review.ShedKiln.Fault;
import portwright.review.ShedKiln.Fired;
import portwright.review.ShedKiln.Moment;
import portwright.review.ShedKiln.Numbers;
import portwright.review.ShedKiln.Own;
import portwright.review.ShedKiln.Side;
import portwright.review.ShedKiln.Stage;

/**
 * Logs of {@link ShedKiln}: numbers of a starter go in, a log comes out. The flue of the shed is scaled once a design so that the damper of the
 * plan burns as the step asks: the potter who drilled it has set it by the flame.
 */
final class ShedLogs {
    static final String[] KILNS = {"decagon-56cm", "front-loader-18", "six-corner-55cm"};
    private static final String[] WATCHED = {"010", "06", "04", "5", "6", "8"};
    static final double USUAL_LEAK_M2 = 5e-4;
    private static final double WARE_J_PER_KG_K = 1080;
    private static final double SHELF_J_PER_KG_K = 1100;

    final Review plan;
    final Numbers numbers;
    final List<Stage> stages;
    private final double flue;
    private final String gasPressure;

    /** A log and what was planted in it. */
    record Log(String text, Fired fired) {}

    /**
     * @param starter its name
     * @param asked steps; their dampers are the plan's
     * @param leak whether the design states 5 cm² of leak, which then gapes with the ports plugged too; else it is a hairline
     */
    ShedLogs(String starter, List<Stage> asked, boolean leak) {
        var text = Starters.find(starter).orElseThrow().set("firing.steps", json(asked));
        plan = Review.of(
                (leak ? text.setText("kiln.leakArea", "5 cm2") : text).read().design());
        numbers = numbers(plan, leak);
        RecordCase c = RecordReview.caseOf(plan, RecordBench.ANY);
        gasPressure = String.format(Locale.ROOT, "%.1f", c.designGasPa() / 100);
        stages = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            Stage s = asked.get(i);
            double d = c.plannedDamper()[i];
            stages.add(new Stage(
                    s.toC(),
                    s.cone(),
                    s.ratePerH(),
                    s.share(),
                    s.gas(),
                    s.open() ? s.damper() : Double.isNaN(d) ? 0 : d,
                    s.holdS(),
                    s.open()));
        }
        Stage last = stages.get(stages.size() - 1);
        double lo = 0.2;
        double hi = 4;
        for (int k = 0; k < 40; k++) {
            double mid = (lo + hi) / 2;
            if (ShedKiln.lambda(numbers, mid, USUAL_LEAK_M2, last.damper(), 1100) < 0.9) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        flue = lo;
    }

    /** Four ways to fire, each with a known power before the gas. */
    static List<Stage> way(int i, String cone) {
        double no = Double.NaN;
        return switch (i) {
            case 0 ->
                List.of(
                        new Stage(650, null, 110, no, false, 0),
                        new Stage(900, null, no, no, false, 0),
                        new Stage(980, null, no, 0.75, true, 0),
                        new Stage(no, cone, no, no, true, 0));
            case 1 ->
                List.of(
                        new Stage(600, null, 90, no, false, 0),
                        new Stage(880, null, no, no, false, 0),
                        new Stage(960, null, 70, no, true, 0),
                        new Stage(no, cone, no, no, true, 0));
            case 2 ->
                List.of(
                        new Stage(600, null, 100, no, false, 0),
                        new Stage(900, null, no, 0.6, false, 0),
                        new Stage(no, cone, no, 0.9, true, 0));
            default ->
                List.of(
                        new Stage(500, null, 140, no, false, 0),
                        new Stage(910, null, no, no, false, 0),
                        new Stage(no, cone, no, 0.9, true, 0));
        };
    }

    /** A way that tells of leak and loss: two holds at one share before the gas, the first plugged, the second with the inlets open and the plate shut. */
    static List<Stage> telling(String cone, double share) {
        double no = Double.NaN;
        return List.of(
                new Stage(820, null, 110, no, false, 0),
                Stage.minutes(75, share, false, 0),
                Stage.minutes(75, share, true, 0),
                new Stage(no, cone, no, 0.9, true, 0));
    }

    /** The kiln as this potter has it: factors about 1, flue and gas a little off. */
    Own own(double loss, double load, double power, double flueOff, double gasOff, double leakM2) {
        return new Own(plan.firing().kiln().value().lossFactor() * loss, load, power, flue * flueOff, gasOff, leakM2);
    }

    /** Heat of the load that stands for so many kg of ware beside the design's shelves, as a factor on the design's. */
    double load(double wareKg) {
        double shelves = plan.design().firing().shelvesMass().si() * SHELF_J_PER_KG_K;
        return (wareKg * WARE_J_PER_KG_K + shelves) / numbers.loadJPerK();
    }

    /** The log of a sound kiln every two minutes, with the dampers of the plan; its note tells the ware, NaN for no note. */
    String soundLog(Own own, double notedKg, long seed) {
        String text = fire(own, new Break(Fault.NONE, Double.NaN, 0), new Random(seed), true, 120)
                .text();
        String[] line = text.split("\n", 3);
        return Double.isNaN(notedKg)
                ? text
                : line[0] + ",notes\n" + line[1] + String.format(Locale.ROOT, ",load %.0f kg\n", notedKg) + line[2];
    }

    Log fire(Own own, Break b, Random r, boolean damper, double everyS) {
        Map<String, ShedKiln.Cone> cones = new TreeMap<>();
        for (String name : WATCHED) {
            var c = Cones.load().find(name).orElseThrow();
            cones.put(name, new ShedKiln.Cone(c.ss60(), c.ss150()));
        }
        Fired fired = new ShedKiln(numbers, own).fire(stages, cones, b, r);
        return new Log(write(fired, r, damper, everyS), fired);
    }

    private String write(Fired fired, Random r, boolean damper, double everyS) {
        double noise = 0.6 + 0.8 * r.nextDouble();
        StringBuilder b = new StringBuilder("elapsed min,temp °C," + (damper ? "damper %," : "") + "gas mbar,cone\n");
        Map<String, Double> left = new TreeMap<>(fired.cones());
        for (Moment m : fired.moments()) {
            if (m.timeS() % everyS > 0) {
                continue;
            }
            String cone = left.entrySet().stream()
                    .filter(e -> e.getValue() <= m.timeS())
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse("");
            left.remove(cone);
            b.append(Math.round(m.timeS() / 60)).append(',');
            b.append(Math.round(m.readC() + noise * r.nextGaussian())).append(',');
            if (damper) {
                b.append(Double.isNaN(m.damper()) ? "" : Long.toString(Math.round(100 * m.damper())))
                        .append(',');
            }
            b.append(m.gas() ? gasPressure : "0").append(',').append(cone).append('\n');
        }
        return b.toString();
    }

    RecordCase read(String text) {
        return RecordReview.caseOf(plan, LogParser.parse(text));
    }

    private static Numbers numbers(Review review, boolean gapes) {
        Design d = review.design();
        KilnGeometry g = review.geometry();
        double lid = g.thickness(On.LID) / 1e3;
        double floor = g.thickness(On.FLOOR) / 1e3;
        double h = g.height() / 1e3;
        List<Side> sides = List.of(
                side(
                        d.kiln().wall().brick(),
                        g.thickness(On.WALL) / 1e3,
                        g.wallAreaM2(),
                        g.wallOuter().perimeter() / 1e3 * (h + lid + floor),
                        1.31,
                        true),
                side(
                        d.kiln().floor().brick(),
                        floor,
                        g.planAreaM2(),
                        g.slab(On.FLOOR).area() / 1e6,
                        0.6,
                        !Boolean.FALSE.equals(d.kiln().floor().pan())),
                side(
                        d.kiln().lid().brick(),
                        lid,
                        g.planAreaM2(),
                        g.slab(On.LID).area() / 1e6,
                        1.52,
                        !Boolean.FALSE.equals(d.kiln().lid().pan())));
        double inlets = 0;
        double flues = 0;
        double inletZ = 0;
        for (Hole x : g.holes()) {
            if (x.port().role() == Role.FLUE) {
                flues += x.area() / 1e6;
            } else {
                inlets += x.area() / 1e6;
                inletZ = x.face().on() == On.WALL ? 0.08 : 0;
            }
        }
        return new Numbers(
                sides,
                d.kiln().electricW(),
                d.firing().load().si() * WARE_J_PER_KG_K
                        + d.firing().shelvesMass().si() * SHELF_J_PER_KG_K,
                0.9 * (g.wallAreaM2() + 2 * g.planAreaM2()),
                inlets,
                inletZ,
                flues,
                h + lid,
                h,
                gapes ? 1 : 0,
                BurnerGas.of(d).value().stream().mapToDouble(BurnerGas::netW).sum(),
                d.room() == null || d.room().temperature() == null
                        ? 15
                        : d.room().temperature().si() - 273.15);
    }

    /** Conductivity in a straight line through the brick's values at 200 and 1000 °C. */
    private static Side side(String brick, double thick, double inner, double outer, double film, boolean shines) {
        Brick b = Bricks.load().find(brick).orElseThrow();
        double a = b.conductivity().get(0).wattsPerMetreKelvin();
        var top = b.conductivity().get(b.conductivity().size() - 1);
        double k1 = (top.wattsPerMetreKelvin() - a)
                / (top.temperatureC() - b.conductivity().get(0).temperatureC());
        return new Side(
                thick,
                inner,
                outer,
                a - k1 * b.conductivity().get(0).temperatureC(),
                k1,
                b.densityKgPerM3() * b.heatCapacityJPerKgK(),
                film,
                shines ? 0.3 : 0.85);
    }

    private static String json(List<Stage> stages) {
        StringBuilder b = new StringBuilder("[");
        for (Stage s : stages) {
            b.append(b.length() > 1 ? "," : "").append("{\"");
            if (Double.isNaN(s.holdS())) {
                b.append("to\":\"").append(s.cone() == null ? Math.round(s.toC()) + " °C" : "cone " + s.cone());
                b.append("\",\"rate\":\"")
                        .append(Double.isNaN(s.ratePerH()) ? "full" : Math.round(s.ratePerH()) + " °C/h");
            } else {
                b.append("hold\":\"").append(Math.round(s.holdS() / 60)).append(" min");
            }
            b.append("\",\"ports\":\"").append(s.open() || s.gas() ? "open" : "plugged");
            b.append("\",\"heat\":\"").append(s.gas() ? "both" : "electric").append('"');
            if (!Double.isNaN(s.share())) {
                b.append(",\"elements\":\"").append(Math.round(100 * s.share())).append(" %\"");
            }
            b.append(s.gas() ? ",\"atmosphere\":\"medium\"}" : "}");
        }
        return b.append(']').toString();
    }

    static Break plant(Fault f, Random r) {
        return switch (f) {
            case NONE -> new Break(f, 9999, 0);
            case ELEMENT -> new Break(f, 680 + 400 * r.nextDouble(), new double[] {0.5, 1 / 3.0, 0.25}[r.nextInt(3)]);
            case RELAY_OPEN -> new Break(f, 400 + 700 * r.nextDouble(), 1);
            case RELAY_WELDED -> new Break(f, 200 + 280 * r.nextDouble(), new double[] {1, 2 / 3.0, 0.5}[r.nextInt(3)]);
            case THERMOCOUPLE -> new Break(f, 9999, 25 + 45 * r.nextDouble());
            case DAMPER -> new Break(f, 920 + 130 * r.nextDouble(), 0.3 + 0.3 * r.nextDouble());
        };
    }
}
