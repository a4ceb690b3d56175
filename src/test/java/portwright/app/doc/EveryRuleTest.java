package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.check.Rule;
import portwright.check.rules.RuleBook;
import portwright.form.RuleWords;

/** Every rule of the book has a heading of its own and stands in one step of the window. */
class EveryRuleTest {
    static Stream<String> rules() {
        return RuleBook.rules().stream().map(Rule::id);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void hasAHeadingAndAStep(String rule) {
        assertThat(RuleWords.isListed(rule)).as("heading in RuleWords").isTrue();
        assertThat(Stream.of(Step.values()).filter(s -> s.holds(rule)))
                .as("steps that list it")
                .hasSize(1);
    }
}
