package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A slip on the command line is answered in two lines: what, where, what to write instead; then where all options stand. */
class MisuseTest {
    private static final String KILN = "templates/octagon-17.json";

    static Stream<Arguments> slips() {
        return Stream.of(
                slip("sheet", "--scale-x \"abc\" is no number", "sheet", KILN, "-o", "x.pdf", "--scale-x", "abc"),
                slip("sheet", "--scale-y \"1,004\" is no number", "sheet", KILN, "-o", "x.pdf", "--scale-y", "1,004"),
                slip("sheet", "corrects more than 1.5 %", "sheet", KILN, "-o", "x.pdf", "--scale-x", "1.2"),
                slip("sheet", "\"b52\" is not a paper size. Write a4", "sheet", KILN, "-o", "x.pdf", "--paper", "b52"),
                slip("sheet", "none of floor, lid, wall, all", "sheet", KILN, "-o", "x.pdf", "--part", "roof"),
                slip("sheet", "none of hot, cold, both, drilled", "sheet", KILN, "-o", "x.pdf", "--face", "warm"),
                slip("sheet", "-o FILE.pdf (where to write) is missing", "sheet", KILN),
                slip("sheet", "-o FILE.pdf (where to write) is missing", "sheet", KILN, "-o"),
                slip("sheet", "--paper stands there twice", "sheet", KILN, "-o", "x", "--paper", "a4", "--paper", "a3"),
                slip("check", "no option --jsno. Did you mean --json?", "check", KILN, "--jsno"),
                slip("check", "DESIGN (design file) is missing", "check"),
                slip("check", "\"more.json\" is one word too many", "check", KILN, "more.json"),
                slip("burn", "--at TEMPERATURE", "burn", KILN),
                slip("burn", "Write \"1100 °C\" or \"1100 °F\"", "burn", KILN, "--at", "1100"),
                slip("burn", "stands in quotes", "burn", KILN, "--at", "1100", "°C"),
                slip("burn", "outside -23 to 1727 °C", "burn", KILN, "--at", "9000 °C"),
                slip("burn", "outside 0 to 100 %", "burn", KILN, "--at", "1100 °C", "--damper", "120 %"),
                slip("burn", "--damper", "burn", KILN, "--at", "1100 °C", "--damper", "half"),
                slip("propose", "--inlets \"two\" is no whole number", "propose", KILN, "-o", "x", "--inlets", "two"),
                slip("propose", "99 inlets", "propose", KILN, "-o", "x.json", "--inlets", "99"),
                slip("propose", "--inlet-size", "propose", KILN, "-o", "x.json", "--inlet-size", "wide"),
                slip(
                        "propose",
                        "--inlets-in roof: write floor or wall",
                        "propose",
                        KILN,
                        "-o",
                        "x",
                        "--inlets-in",
                        "roof"),
                slip("card", "is not a paper size", "card", KILN, "-o", "x.pdf", "--paper", "5x5"),
                slip("export", "say what to export", "export", KILN),
                slip("new", "Write new NAME -o FILE.json", "new"),
                slip("", "no command \"chekc\". Did you mean check?", "chekc", KILN),
                slip("", "no option --verbose", "--verbose"));
    }

    private static Arguments slip(String command, String says, String... args) {
        return Arguments.of(List.of(args), command, says);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("slips")
    void twoLinesSayWhatToWrite(List<String> args, String command, String says) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        assertThat(Cli.run(new PrintWriter(out), new PrintWriter(err), args.toArray(String[]::new)))
                .isEqualTo(Cli.MISUSE);
        assertThat(out.toString()).isEmpty();
        List<String> lines = err.toString().lines().toList();
        assertThat(lines).as(err.toString()).hasSize(2);
        assertThat(lines.get(0))
                .contains(says)
                .doesNotContain(" '")
                .doesNotContain("double")
                .matches(".*[.?]");
        assertThat(lines.get(0)).startsWith(command.isEmpty() ? "" : command + ": ");
        assertThat(lines.get(1)).isEqualTo("See portwright " + (command.isEmpty() ? "" : command + " ") + "--help");
    }
}
