package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.model.UnitSystem;
import portwright.report.CheckJson;
import portwright.report.CheckText;
import portwright.review.Review;

/** Leaving a field out is answered without a fault of the program and never improves a verdict. */
class AbsentFieldTest {
    private static final RuleBook RULES = new RuleBook(LimitTable.load());

    @Test
    void neverImprovesAVerdictInASample() throws IOException {
        leaveOut(13);
    }

    @Test
    @Tag("slow")
    void neverImprovesAVerdict() throws IOException {
        leaveOut(1);
    }

    private static void leaveOut(int step) throws IOException {
        List<String> wrong = new ArrayList<>();
        int read = 0;
        for (DesignText whole : List.of(
                DesignFile.read(ContractExampleTest.EXAMPLE).document(),
                Starters.find("front-loader-18").orElseThrow())) {
            CheckResult full = check(whole);
            List<String> paths = Paths.all(whole);
            for (int i = 0; i < paths.size(); i += step) {
                String path = paths.get(i);
                ReadResult r = whole.remove(path).read();
                if (!r.ok()) {
                    continue;
                }
                read++;
                try {
                    CheckResult less = check(whole.remove(path));
                    CheckJson.write(less, null);
                    CheckText.write(less, null, UnitSystem.INCH, 80, false);
                    boolean better = less.drilling().compareTo(full.drilling()) > 0
                            || less.lighting().compareTo(full.lighting()) > 0;
                    if (better && !takesAPartAway(path) && !isThenAskedFor(path, full, less)) {
                        wrong.add(path + ": drilling " + full.drilling() + " to " + less.drilling() + ", lighting "
                                + full.lighting() + " to " + less.lighting());
                    }
                } catch (RuntimeException e) {
                    wrong.add(path + ": " + e + " at " + e.getStackTrace()[0]);
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(read).isGreaterThan(300 / step);
    }

    /** Whether the rule that stopped can no longer be told and asks for what was left out: incomplete refuses as a stop does. */
    private static boolean isThenAskedFor(String path, CheckResult full, CheckResult less) {
        return less.drilling().compareTo(full.drilling()) <= 0
                && full.lighting() == Verdict.STOP
                && less.lighting() == Verdict.INCOMPLETE
                && full.findings().stream()
                        .filter(f -> f.severity() == Severity.STOP)
                        .allMatch(f -> less.notChecked().stream()
                                .anyMatch(n -> n.rule().equals(f.rule())
                                        && n.needs().stream().anyMatch(field -> field.startsWith(path))));
    }

    /** Taking a part away, not a statement about it, may cure what the part was found guilty of. */
    private static boolean takesAPartAway(String path) {
        return path.matches(
                "(kiln\\.(elements|fittings)|shelves|ports|burners|firing\\.steps|room\\.openings)\\[\\d+\\]|.*\\.(posts|path|panels)\\[\\d+\\]|limits.*");
    }

    private static CheckResult check(DesignText d) {
        return RULES.check(Review.of(d.read().design()));
    }
}
