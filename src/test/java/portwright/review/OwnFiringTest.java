package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.calc.firing.Sample;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.OtherFiring.Why;
import portwright.calc.firing.log.RecordResult;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.RecordText;

/** Sound firings by electricity alone, laid beside a design that plans a reduction: another firing, and no fault. */
class OwnFiringTest {
    private static final String GLAZE = "1000 °F,150 °F/h;2000 °F,270 °F/h;cone 6,108 °F/h";
    private static final String BISQUE = "200 °F,80 °F/h;1000 °F,200 °F/h;cone 04,120 °F/h";
    private static final String ALL_OUT = "cone 6,full";

    private static Review plan(String starter) {
        return Review.of(Starters.find(starter).orElseThrow().read().design());
    }

    private static String log(String starter, String pace, String note) {
        StringBuilder steps = new StringBuilder();
        for (String s : pace.split(";", -1)) {
            String[] x = s.split(",", -1);
            steps.append(steps.isEmpty() ? "[" : ",")
                    .append("{\"to\":\"%s\",\"rate\":\"%s\",\"heat\":\"electric\"}".formatted(x[0], x[1]));
        }
        DesignText own = Starters.find(starter).orElseThrow().set("firing.steps", steps + "]");
        List<Sample> samples = Review.of(own.read().design())
                .firing()
                .forecast()
                .value()
                .nominal()
                .samples();
        Random r = new Random(3);
        StringBuilder b = new StringBuilder("elapsed h,temp °C,note\n");
        double next = 0;
        for (Sample s : samples) {
            if (s.timeS() >= next) {
                next += 300;
                b.append(String.format(
                        Locale.ROOT,
                        "%.4f,%d,%s\n",
                        s.timeS() / 3600,
                        Math.round(s.chamberK() - 273.15 + r.nextGaussian()),
                        s.timeS() == 0 ? note : ""));
            }
        }
        return b.toString();
    }

    private static RecordReview read(String starter, String log) {
        return RecordReview.of(plan(starter), List.of(LogParser.parse(log))).value();
    }

    @ParameterizedTest
    @CsvSource({
        "octagon-17, OWN_RATE, '" + GLAZE + "'",
        "octagon-17, OWN_RATE, '" + BISQUE + "'",
        "octagon-17, FAST_START, '" + ALL_OUT + "'",
        "decagon-56cm, OWN_RATE, '" + BISQUE + "'",
        "oval-23, OWN_RATE, '" + BISQUE + "'"
    })
    void aFiringOfItsOwnIsNotJudgedByThePlan(String starter, Why why, String pace) {
        RecordReview r = read(starter, log(starter, pace, ""));
        RecordResult x = r.results().get(0);
        assertThat(x.own()).isNotNull();
        assertThat(x.own().why()).isEqualTo(why);
        assertThat(x.findings()).isEmpty();
        assertThat(x.gasKg()).isZero();
        assertThat(r.ledger().stoppedShort()).isEmpty();
        assertThat(r.ledger().oxidisedSince()).isFalse();
        assertThat(r.ledger().notTold()).containsExactly(0);
        assertThat(RecordText.write(r, List.of("own.csv"), null))
                .contains(
                        "another than the plan",
                        "the log cannot say",
                        "Not counted",
                        "weigh the cylinder",
                        "an oxidising firing")
                .doesNotContain("of what the steps ask", "stuck shut, unless", "before its goal");
    }

    /** A controller may follow the plan's own rates; then only a note or a gas column can tell. */
    @ParameterizedTest
    @CsvSource({
        "bisque firing, NOTE",
        "all electric, NOTE",
        "no gas, NOTE",
        "oxidation (no gas), NOTE",
        "electric firing, NOTE"
    })
    void aNoteTellsIt(String note, Why why) {
        RecordReview r = read("octagon-17", log("octagon-17", "1700 °F,150 °F/h;cone 6,100 °F/h", note));
        assertThat(r.results().get(0).own().why()).isEqualTo(why);
        assertThat(r.ledger().oxidisedSince()).isTrue();
        assertThat(r.ledger().notTold()).isEmpty();
    }
}
