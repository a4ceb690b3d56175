package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordCase;
import portwright.data.Cones;
import portwright.review.ShedKiln.Break;
import portwright.review.ShedKiln.Fault;
import portwright.review.ShedKiln.Fired;
import portwright.review.ShedKiln.Moment;
import portwright.review.ShedKiln.Stage;

/**
 * Logs of {@link ShedKiln} with time and temperature alone, fired at a pace of their own: every rate of the plan times a factor, and a probe that
 * drifts off. The plan burns gas after its electric steps; the kiln did as well.
 */
final class PaceLogs {
    static final int WAYS = 6;

    /**
     * A log beside its plan.
     *
     * @param pace factor on every rate of the plan
     */
    record Case(ShedLogs shed, Fired fired, Break fault, double pace, String text) {
        RecordCase record() {
            return RecordReview.caseOf(shed.plan, LogParser.parse(text));
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s, pace %.2f, %s from %.0f °C, size %.2f, probe %.0f K low",
                    shed.plan.design().title(),
                    pace,
                    fault.fault(),
                    fault.fromC(),
                    fault.size(),
                    fault.lowK());
        }
    }

    private PaceLogs() {}

    static Case of(long seed, Fault fault) {
        Random r = new Random(seed * 32_452_843L + fault.ordinal());
        double pace = 0.8 + 0.45 * r.nextDouble();
        double low = -10 + 70 * r.nextDouble();
        String kiln = ShedLogs.KILNS[r.nextInt(ShedLogs.KILNS.length)];
        List<Stage> way = way(r.nextInt(WAYS), r.nextBoolean() ? "6" : "8");
        Break b = switch (fault) {
            case ELEMENT ->
                new Break(fault, 100 + 650 * r.nextDouble(), new double[] {0.5, 1 / 3.0}[r.nextInt(2)], low);
            case RELAY_WELDED ->
                new Break(fault, 100 + 380 * r.nextDouble(), new double[] {1, 2 / 3.0, 0.5}[r.nextInt(3)], low);
            default -> new Break(fault, 9999, 0, low);
        };
        return of(kiln, way, pace, b, r);
    }

    static Case of(String kiln, List<Stage> way, double pace, Break b, Random r) {
        ShedLogs shed = new ShedLogs(kiln, way, false);
        var own = shed.own(
                1 + 0.06 * clip(r),
                1 + 0.10 * clip(r),
                1 + 0.02 * clip(r),
                1 + 0.05 * clip(r),
                1 + 0.04 * clip(r),
                (3 + 5 * r.nextDouble()) * 1e-4);
        Map<String, ShedKiln.Cone> cones = new TreeMap<>();
        for (String name : List.of("6", "8")) {
            var c = Cones.load().find(name).orElseThrow();
            cones.put(name, new ShedKiln.Cone(c.ss60(), c.ss150()));
        }
        List<Stage> fired = new ArrayList<>();
        for (Stage s : shed.stages) {
            fired.add(new Stage(
                    s.toC(), s.cone(), s.ratePerH() * pace, s.share(), s.gas(), s.damper(), s.holdS(), s.open()));
        }
        Fired out = new ShedKiln(shed.numbers, own).fire(fired, cones, b, r);
        return new Case(shed, out, b, pace, write(out, r, 60 * (1 + r.nextInt(5))));
    }

    /** The ways of {@link ShedLogs}, and two led by the controller from cold to the last cone. */
    static List<Stage> way(int i, String cone) {
        double no = Double.NaN;
        return switch (i) {
            case 4 ->
                List.of(
                        new Stage(600, null, 100, no, false, 0),
                        new Stage(920, null, 120, no, false, 0),
                        new Stage(960, null, 60, no, true, 0),
                        new Stage(no, cone, 60, no, true, 0));
            case 5 ->
                List.of(
                        new Stage(880, null, 150, no, false, 0),
                        new Stage(960, null, 80, no, true, 0),
                        new Stage(no, cone, 80, no, true, 0));
            default -> ShedLogs.way(i, cone);
        };
    }

    private static double clip(Random r) {
        return Math.max(-1.5, Math.min(1.5, r.nextGaussian()));
    }

    private static String write(Fired fired, Random r, double everyS) {
        double noise = 0.6 + 0.8 * r.nextDouble();
        StringBuilder b = new StringBuilder("elapsed min,temp °C\n");
        for (Moment m : fired.moments()) {
            if (m.timeS() % everyS == 0) {
                b.append(Math.round(m.timeS() / 60))
                        .append(',')
                        .append(Math.round(m.readC() + noise * r.nextGaussian()))
                        .append('\n');
            }
        }
        return b.toString();
    }
}
