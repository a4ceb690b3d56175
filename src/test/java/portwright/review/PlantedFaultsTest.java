package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Elements;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.SyntheticKiln;
import portwright.calc.firing.SyntheticKiln.Fault;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordResult;

/**
 * Simulated firings with one fault planted, a few of each: what is found, and what is found that is not there. The kiln that fires has a
 * loss factor and a supply voltage of its own, and the readings have noise; the diagnosis knows only the design.
 */
class PlantedFaultsTest {
    int cases() {
        return 8;
    }

    private static Review plan;
    private static SyntheticKiln.Firing healthy;

    @BeforeAll
    static void plan() {
        // a tight kiln: with a stated 5 cm² of open leak an over-open damper that is not logged is not found (0 of 8)
        plan = Review.of(RecordBench.design(RecordBench.text().remove("kiln.leakArea")));
        healthy = RecordBench.fire(plan, plan.firing().kiln().value(), Fault.NONE);
    }

    private static KilnHeat kiln(Random r) {
        KilnHeat k = plan.firing().kiln().value();
        return k.withLossFactor(k.lossFactor() * (1 + 0.04 * r.nextGaussian()))
                .withElements(new Elements(k.elements().nominalW(), 0, 1 + 0.01 * r.nextGaussian()));
    }

    private static double hour(int step, double into) {
        double begin = healthy.readings().stream()
                .filter(x -> x.step() == step)
                .findFirst()
                .orElseThrow()
                .timeS();
        double end = healthy.readings().stream()
                .filter(x -> x.step() == step)
                .reduce((a, b) -> b)
                .orElseThrow()
                .timeS();
        return begin + into * (end - begin);
    }

    private interface Plant {
        Fault of(Random r);
    }

    private String study(String name, boolean damper, DoubleUnaryOperator noDrift, Plant plant, Kind... hit) {
        int hits = 0;
        int falseAlarms = 0;
        int spells = 0;
        Map<Kind, Integer> seen = new EnumMap<>(Kind.class);
        StringBuilder missed = new StringBuilder();
        for (int seed = 1; seed <= cases(); seed++) {
            Random r = new Random(seed * 7919L);
            KilnHeat kiln = kiln(r);
            Fault fault = plant.of(r);
            double size = -25 - 45 * r.nextDouble();
            DoubleUnaryOperator drift = noDrift != null ? noDrift : c -> c < 600 ? 0 : size * (c - 600) / 680;
            var fired = RecordBench.fire(plan, kiln, fault);
            RecordResult result = RecordResult.of(
                    RecordReview.caseOf(plan, LogParser.parse(RecordBench.csv(fired, r, 1.5, damper, drift))));
            boolean found = false;
            boolean wrong = false;
            for (LogFinding f : result.findings()) {
                seen.merge(f.kind(), 1, Integer::sum);
                if (List.of(hit).contains(f.kind())) {
                    found = true;
                } else if (f.kind() != Kind.WEAK || hit.length == 0) {
                    // That power may be short is a note: no hit, and wrong only in a sound kiln.
                    wrong = true;
                }
            }
            hits += found ? 1 : 0;
            falseAlarms += wrong ? 1 : 0;
            spells += result.spells().isEmpty() ? 0 : 1;
            if (!found && hit.length > 0 || wrong) {
                missed.append(" seed ").append(seed).append(' ').append(result.findings());
            }
        }
        return String.format(
                "%s: %d hits, %d with a wrong finding, %d with falls or stands; %s%s",
                name, hits, falseAlarms, spells, seen, missed);
    }

    private void hold(String line, int leastHits, int mostFalse) {
        System.out.println(line);
        String[] n = line.split(": ", -1)[1].split(" ", -1);
        assertThat(Integer.parseInt(n[0])).as(line).isGreaterThanOrEqualTo(leastHits * cases() / 100);
        assertThat(Integer.parseInt(n[2])).as(line).isLessThanOrEqualTo(mostFalse * cases() / 100);
    }

    @Test
    void cleanLogsShowNothing() {
        hold(study("clean", false, c -> 0, r -> Fault.NONE), 0, 0);
        hold(
                study("clean with damper column", true, c -> 0, r -> {
                    double jitter = 0.02 * (2 * r.nextDouble() - 1);
                    return new Fault(t -> 1, t -> jitter);
                }),
                0,
                0);
    }

    @Test
    void failedElementIsFound() {
        hold(
                study(
                        "element",
                        true,
                        c -> 0,
                        r -> {
                            double at = hour(r.nextBoolean() ? 1 : 3, 0.25 + 0.4 * r.nextDouble());
                            double left = 1 - 1.0 / (3 + r.nextInt(2));
                            return new Fault(t -> t < at ? 1 : left, t -> 0);
                        },
                        Kind.ELEMENT),
                90,
                10);
    }

    @Test
    void failedRelayIsFound() {
        hold(
                study(
                        "relay",
                        false,
                        c -> 0,
                        r -> {
                            double at = hour(r.nextInt(4), 0.3 + 0.4 * r.nextDouble());
                            double off = (30 + 20 * r.nextDouble()) * 60;
                            double period = off + (30 + 30 * r.nextDouble()) * 60;
                            boolean forGood = r.nextBoolean();
                            return new Fault(t -> t < at || !forGood && (t - at) % period > off ? 1 : 0, t -> 0);
                        },
                        Kind.RELAY),
                90,
                10);
    }

    @Test
    void driftedThermocoupleIsFound() {
        hold(study("thermocouple", false, null, r -> Fault.NONE, Kind.THERMOCOUPLE), 90, 10);
    }

    @Test
    void overOpenDamperIsFound() {
        hold(
                study(
                        "over-open damper, logged",
                        true,
                        c -> 0,
                        r -> {
                            double at = hour(3, 0.1 + 0.5 * r.nextDouble());
                            double more = 0.3 + 0.4 * r.nextDouble();
                            return new Fault(t -> 1, t -> t < at ? 0 : more);
                        },
                        Kind.TOO_MUCH_AIR),
                90,
                10);
        hold(
                study(
                        "over-open damper from gas on, not logged",
                        false,
                        c -> 0,
                        r -> {
                            double more = 0.3 + 0.4 * r.nextDouble();
                            return new Fault(t -> 1, t -> more);
                        },
                        Kind.TOO_MUCH_AIR,
                        Kind.ELEMENT_OR_AIR),
                // Open from the start and not logged it shows as heat that may be missing for other reasons too: mostly
                // a note.
                25,
                10);
    }
}
