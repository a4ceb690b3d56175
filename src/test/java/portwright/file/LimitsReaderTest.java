package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.data.LimitRow;
import portwright.data.LimitRow.Safer;
import portwright.data.LimitTable;

/** Every limit of the rule book can be written as the rule book has it; a fixed one moves only to the safer side. */
class LimitsReaderTest {
    private static ReadResult with(LimitRow row, String json) {
        return Starters.find("octagon-17")
                .orElseThrow()
                .set("limits", "{\"" + row.rule() + "\": {\"" + row.name() + "\": " + json + "}}")
                .read();
    }

    private static String json(LimitRow row, double base) {
        return row.kind() == null
                ? Double.toString(base)
                : "\"" + java.math.BigDecimal.valueOf(base).toPlainString() + " "
                        + row.kind().baseUnit() + "\"";
    }

    @Test
    void everyLimitIsReadAsTheTableWritesIt() {
        for (String rule : LimitTable.load().rules()) {
            for (LimitRow row : LimitTable.load().of(rule)) {
                ReadResult r = with(row, row.kind() == null ? row.typed() : "\"" + row.typed() + "\"");
                assertThat(r.problems()).as("%s %s", rule, row.name()).isEmpty();
                assertThat(r.design().limits().get(rule).get(row.name()).value())
                        .isEqualTo(row.value());
            }
        }
    }

    @Test
    void fixedLimitsMoveOnlyToTheSaferSide() {
        int fixed = 0;
        for (String rule : LimitTable.load().rules()) {
            for (LimitRow row :
                    LimitTable.load().of(rule).stream().filter(LimitRow::fixed).toList()) {
                fixed++;
                double step = Math.max(1e-3, Math.abs(row.value()) * 1e-3);
                double safer = row.safer() == Safer.UP ? row.value() + step : row.value() - step;
                double weaker = row.safer() == Safer.UP ? row.value() - step : row.value() + step;
                assertThat(with(row, json(row, safer)).problems())
                        .as("%s %s safer", rule, row.name())
                        .isEmpty();
                List<Problem> problems = with(row, json(row, weaker)).problems();
                assertThat(problems).as("%s %s weaker", rule, row.name()).hasSize(1);
                assertThat(problems.get(0).message()).contains("fixed limit");
            }
        }
        assertThat(fixed).isGreaterThanOrEqualTo(5);
    }

    @Test
    void oneValueMeansTheMainLimit() {
        ReadResult r = Starters.find("octagon-17")
                .orElseThrow()
                .set("limits", "{\"element-clearance\": \"30 mm\", \"flue-inlet-ratio\": 0.9}")
                .read();
        assertThat(r.design().limits().get("element-clearance").get("limit").value())
                .isEqualTo(30);
        assertThat(r.design().limits().get("flue-inlet-ratio").get("stop").value())
                .isEqualTo(0.9);
    }
}
