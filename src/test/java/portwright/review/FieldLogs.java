package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import portwright.calc.firing.ConeDown;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.Elements;
import portwright.calc.firing.FieldFiring;
import portwright.calc.firing.FieldFiring.Fault;
import portwright.calc.firing.FieldFiring.Moment;
import portwright.calc.firing.FieldFiring.Plant;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordCase;
import portwright.data.Cones;
import portwright.file.DesignText;
import portwright.file.Starters;

/**
 * Logs of four starter kilns with schedules, noise, sampling and writing of their own, for faults to be found in. The kiln that fires differs
 * from its design in loss, load, power, leak and room; the log is written by a logger or by hand.
 */
final class FieldLogs {
    private static final String[] KILNS = {"oval-23", "six-corner-55cm", "front-loader-18", "decagon-56cm"};
    private static final String[] SCHEDULES = {
        "[{\"to\":\"650 °C\",\"rate\":\"110 °C/h\",\"heat\":\"electric\"},{\"to\":\"910 °C\",\"rate\":\"full\",\"heat\":\"electric\"},"
                + "{\"to\":\"1000 °C\",\"rate\":\"full\",\"heat\":\"both\",\"elements\":\"75 %\",\"atmosphere\":\"heavy\"},"
                + "{\"to\":\"cone 9\",\"rate\":\"full\",\"heat\":\"both\",\"atmosphere\":\"light\"}]",
        "[{\"to\":\"600 °C\",\"rate\":\"90 °C/h\",\"heat\":\"electric\"},{\"hold\":\"30 min\",\"heat\":\"electric\"},"
                + "{\"to\":\"880 °C\",\"rate\":\"150 °C/h\",\"heat\":\"electric\"},"
                + "{\"to\":\"960 °C\",\"rate\":\"80 °C/h\",\"heat\":\"both\",\"atmosphere\":\"medium\"},"
                + "{\"to\":\"cone 8\",\"rate\":\"full\",\"heat\":\"both\",\"atmosphere\":\"medium\"},{\"hold\":\"20 min\",\"heat\":\"electric\"}]",
        "[{\"to\":\"900 °C\",\"rate\":\"full\",\"heat\":\"electric\"},{\"hold\":\"15 min\",\"heat\":\"electric\"},"
                + "{\"to\":\"cone 6\",\"rate\":\"full\",\"heat\":\"both\",\"elements\":\"90 %\",\"atmosphere\":\"light\"},"
                + "{\"to\":\"1100 °C\",\"rate\":\"120 °C/h\",\"heat\":\"electric\"}]"
    };

    /**
     * A log beside its design.
     *
     * @param visible whether the readings or the time differ from those of the same firing without the fault by 15 K or 15 min, or the
     *     reading from the chamber by as much: what leaves no trace in the log nobody can find
     */
    record Case(String text, Review plan, RecordCase record, String planted, boolean visible) {}

    private FieldLogs() {}

    static Case of(long seed, Fault fault) {
        Random r = new Random(seed * 104_729 + 31L * fault.ordinal() + 5);
        DesignText text = Starters.find(KILNS[r.nextInt(KILNS.length)])
                .orElseThrow()
                .set("firing.steps", SCHEDULES[r.nextInt(SCHEDULES.length)]);
        Review plan = Review.of(text.read().design());
        RecordCase c = RecordReview.caseOf(plan, RecordBench.ANY);
        double loss = 1 + 0.06 * clip(r);
        double load = 1 + 0.08 * clip(r);
        double power = 1 + 0.02 * clip(r);
        KilnHeat k = c.kiln();
        KilnHeat real = new KilnHeat(
                k.parts(),
                k.lossFactor() * loss,
                k.loadHeatCapacityJPerK() * load,
                k.loadSurfaceM2(),
                new Elements(k.elements().nominalW(), 0, Math.sqrt(power)),
                k.ports(),
                k.roomK() + 6 * clip(r));
        double leak = (3 + 5 * r.nextDouble()) * 1e-4;
        double[] damper = c.plannedDamper().clone();
        for (int i = 0; i < damper.length; i++) {
            damper[i] = Double.isNaN(damper[i]) ? 0.5 : Math.max(0, damper[i] + 0.015 * clip(r));
        }
        boolean noted = r.nextInt(3) > 0;
        Plant plant = plant(fault, r);
        List<ConeWork> cones = Stream.of("010", "04", "5", "6", "8", "9")
                .map(n -> ConeWork.of(Cones.load().find(n).orElseThrow()))
                .toList();
        long weather = r.nextLong();
        FieldFiring.Result fired = FieldFiring.fire(
                real, RecordReview.draft(plan.design(), leak), c.steps(), damper, cones, plant, new Random(weather));
        FieldFiring.Result twin = fault == Fault.NONE
                ? fired
                : FieldFiring.fire(
                        real,
                        RecordReview.draft(plan.design(), leak),
                        c.steps(),
                        damper,
                        cones,
                        new Plant(Fault.NONE, 0, 0, false, false),
                        new Random(weather));
        String log = write(fired, plan, noted, r);
        return new Case(
                log,
                plan,
                RecordReview.caseOf(plan, LogParser.parse(log)),
                plant + " loss " + f(loss) + " load " + f(load) + " power " + f(power) + " damper "
                        + (noted ? "noted " : "not noted ") + plan.design().title() + ", "
                        + plan.design().firing().steps().size() + " steps",
                visible(fired, twin));
    }

    private static String f(double v) {
        return String.format(Locale.ROOT, "%.2f", v);
    }

    private static double clip(Random r) {
        return Math.max(-1.5, Math.min(1.5, r.nextGaussian()));
    }

    private static Plant plant(Fault fault, Random r) {
        return switch (fault) {
            case NONE -> new Plant(fault, 0, 0, false, false);
            case ELEMENT ->
                new Plant(
                        fault,
                        400 + 700 * r.nextDouble(),
                        new double[] {0.5, 1 / 3.0, 0.25}[r.nextInt(3)],
                        false,
                        false);
            case RELAY_OPEN -> new Plant(fault, 300 + 800 * r.nextDouble(), 1, r.nextBoolean(), false);
            case RELAY_WELDED ->
                new Plant(
                        fault, 200 + 700 * r.nextDouble(), new double[] {1, 2 / 3.0, 0.5}[r.nextInt(3)], false, false);
            case THERMOCOUPLE ->
                new Plant(fault, 700 + 300 * r.nextDouble(), 25 + 50 * r.nextDouble(), false, r.nextInt(3) == 0);
            case DAMPER -> new Plant(fault, 900 + 150 * r.nextDouble(), 0.3 + 0.4 * r.nextDouble(), false, false);
        };
    }

    private static boolean visible(FieldFiring.Result a, FieldFiring.Result b) {
        int n = Math.min(a.moments().size(), b.moments().size());
        boolean differs = Math.abs(a.moments().size() - b.moments().size()) * 15 > 900;
        for (int i = 0; i < n && !differs; i++) {
            Moment x = a.moments().get(i);
            differs = Math.abs(x.readingK() - b.moments().get(i).readingK()) > 15
                    || Math.abs(x.readingK() - x.chamberK())
                            > 15
                                    + Math.abs(b.moments().get(i).readingK()
                                            - b.moments().get(i).chamberK());
        }
        return differs;
    }

    /** As a logger or a hand writes it: Fahrenheit or Celsius, clock or minutes, damper in mm or percent when it is moved, lost rows, outliers. */
    private static String write(FieldFiring.Result fired, Review plan, boolean noted, Random r) {
        boolean fahrenheit = r.nextBoolean();
        boolean clock = r.nextBoolean();
        boolean mm = r.nextBoolean();
        boolean hand = r.nextInt(3) == 0;
        double noise = hand ? 1.5 : 0.5 + r.nextDouble();
        double slow = 0;
        List<ConeDown> cones = new ArrayList<>(fired.cones());
        StringBuilder b = new StringBuilder(clock ? "time" : "elapsed min")
                .append(fahrenheit ? ";temp °F" : ";temp °C")
                .append(noted ? mm ? ";damper mm" : ";damper %" : "")
                .append(";gas inH2O;cone\n");
        double gasPa = RecordReview.caseOf(plan, RecordBench.ANY).designGasPa();
        String pressure = f(gasPa / 249.089);
        double next = 0;
        int start = r.nextInt(1440);
        for (Moment m : fired.moments()) {
            if (m.timeS() < next) {
                continue;
            }
            next = m.timeS() + (hand ? 600 + r.nextInt(500) : 45 + r.nextInt(60));
            slow = 0.98 * slow + 0.1 * r.nextGaussian();
            if (!hand && r.nextInt(150) == 0) {
                continue;
            }
            double c = m.readingK() - 273.15 + slow + noise * r.nextGaussian();
            c += !hand && r.nextInt(400) == 0 ? 12 * r.nextGaussian() : 0;
            double shown = fahrenheit ? c * 1.8 + 32 : c;
            int at = (start + (int) (m.timeS() / 60)) % 1440;
            b.append(
                            clock
                                    ? String.format(
                                            Locale.ROOT,
                                            "%d:%02d:%02d %s",
                                            (at / 60 + 11) % 12 + 1,
                                            at % 60,
                                            (int) m.timeS() % 60,
                                            at < 720 ? "AM" : "PM")
                                    : f(m.timeS() / 60).replace('.', ','))
                    .append(';')
                    .append(hand ? Long.toString(Math.round(shown)) : f(shown).replace('.', ','));
            if (noted) {
                b.append(';');
                if (!Double.isNaN(m.damper())) {
                    b.append(
                            mm
                                    ? Long.toString(
                                            Math.round(plan.fire().plate().travelFor(m.damper()) * 1000))
                                    : Long.toString(Math.round(m.damper() * 20) * 5));
                }
            }
            b.append(';').append(m.gas() ? pressure : "0").append(';');
            if (!cones.isEmpty() && cones.get(0).timeS() <= m.timeS()) {
                b.append(cones.remove(0).cone());
            }
            b.append('\n');
        }
        return b.toString();
    }
}
