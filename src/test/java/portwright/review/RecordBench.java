package portwright.review;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import portwright.calc.firing.ConeDown;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.SyntheticKiln;
import portwright.calc.firing.SyntheticKiln.Fault;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordCase;
import portwright.data.Cones;
import portwright.file.DesignText;
import portwright.model.Design;

/** A design with electric and gas steps, and logs of firings simulated in it. */
public final class RecordBench {
    static final String STEPS =
            "[{\"to\": \"800 °C\", \"rate\": \"150 °C/h\", \"heat\": \"electric\"}, {\"to\": \"980 °C\", \"rate\": \"full\", \"heat\": \"electric\"},"
                    + "{\"to\": \"1030 °C\", \"rate\": \"full\", \"heat\": \"both\", \"elements\": \"70 %\", \"ports\": \"open\", \"atmosphere\": \"heavy\"},"
                    + "{\"to\": \"cone 10\", \"rate\": \"full\", \"heat\": \"both\", \"atmosphere\": \"medium\"}]";

    private RecordBench() {}

    public static DesignText text() {
        try {
            return DesignText.read(Files.readString(Path.of("src/test/resources/designs/contract-example.json")))
                    .document()
                    .set("firing.steps", STEPS)
                    .setText("firing.load", "40 kg")
                    .setText("firing.shelvesMass", "26 kg")
                    .setText("kiln.power", "5.2 kW");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Design design(DesignText text) {
        return text.read().design();
    }

    static final FiringLog ANY = LogParser.parse("time h, temp °C\n0,20\n1,100\n");

    static SyntheticKiln.Firing fire(Review plan, KilnHeat kiln, Fault fault) {
        RecordCase c = RecordReview.caseOf(plan, ANY);
        return SyntheticKiln.fire(
                kiln,
                c.gas(),
                c.steps(),
                c.plannedDamper(),
                java.util.stream.Stream.of("06", "6", "10")
                        .map(n -> ConeWork.of(Cones.load().find(n).orElseThrow()))
                        .toList(),
                fault,
                30 * 3600);
    }

    /** A log without noise from a kiln with a loss factor and a leak area of its own, fired with the dampers of the design's plan. */
    public static String healthyCsv(double lossFactor, double leakM2) {
        return healthyCsv(lossFactor, leakM2, 0);
    }

    static String healthyCsv(double lossFactor, double leakM2, double noiseK) {
        Review plan = Review.of(design(text()));
        RecordCase c = RecordReview.caseOf(plan, ANY);
        KilnHeat kiln = c.kiln().withLossFactor(lossFactor);
        SyntheticKiln.Firing f = SyntheticKiln.fire(
                kiln,
                RecordReview.draft(plan.design(), leakM2),
                c.steps(),
                c.plannedDamper(),
                java.util.stream.Stream.of("06", "6", "10")
                        .map(n -> ConeWork.of(Cones.load().find(n).orElseThrow()))
                        .toList(),
                Fault.NONE,
                30 * 3600);
        return csv(f, new Random(5), noiseK, true, x -> 0);
    }

    /** Text of a log: noise, whole degrees, a clock with seconds missing, cones as seen within minutes. */
    static String csv(
            SyntheticKiln.Firing f,
            Random r,
            double noiseK,
            boolean damper,
            java.util.function.DoubleUnaryOperator drift) {
        StringBuilder b = new StringBuilder("time,temp °C," + (damper ? "damper %," : "") + "cone,notes\n");
        int every = 1 + r.nextInt(5);
        int start = r.nextInt(24 * 60);
        int cone = 0;
        for (int i = 0; i < f.readings().size(); i += every) {
            var s = f.readings().get(i);
            String down = "";
            if (cone < f.cones().size() && f.cones().get(cone).timeS() <= s.timeS()) {
                down = f.cones().get(cone++).cone();
            }
            line(b, start, s.timeS(), s.chamberK(), r, noiseK, damper, s.damper(), drift, down);
        }
        for (; cone < f.cones().size(); cone++) {
            ConeDown c = f.cones().get(cone);
            line(b, start, c.timeS() + 60, c.chamberK(), r, noiseK, damper, Double.NaN, drift, c.cone());
        }
        return b.toString();
    }

    private static void line(
            StringBuilder b,
            int start,
            double t,
            double k,
            Random r,
            double noise,
            boolean damper,
            double share,
            java.util.function.DoubleUnaryOperator drift,
            String cone) {
        int m = (start + (int) Math.round(t / 60)) % 1440;
        double c = k - 273.15;
        b.append(String.format(
                Locale.ROOT,
                "%02d:%02d,%d,%s%s,%n",
                m / 60,
                m % 60,
                Math.round(c + drift.applyAsDouble(c) + noise * r.nextGaussian()),
                damper ? (Double.isNaN(share) ? "" : Math.round(share * 100)) + "," : "",
                cone));
    }
}
