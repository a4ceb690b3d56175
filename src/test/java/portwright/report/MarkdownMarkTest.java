package portwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Verdict;

/** The findings as Markdown carry the content mark that every paper of the design carries. */
class MarkdownMarkTest {
    @Test
    void theMarkStandsBesideTheVerdict() {
        CheckResult r = new CheckResult("a kiln", Verdict.CLEAR, Verdict.CLEAR, List.of(), List.of(), List.of(), null);
        assertThat(FindingsMarkdown.write(r, "88ee 178b"))
                .startsWith("# a kiln\n\n**Drilling: ")
                .contains("** Content 88ee 178b.\n\nLocal codes");
    }
}
