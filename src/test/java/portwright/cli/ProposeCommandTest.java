package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.DesignText;
import portwright.file.Starters;

/** What the command writes, and its exit status, where no layout passes. */
class ProposeCommandTest {
    @TempDir
    Path folder;

    private String said;

    private int propose(String... more) throws IOException {
        return propose(Starters.find("octagon-17").orElseThrow(), more);
    }

    private int propose(DesignText kiln, String... more) throws IOException {
        Path design = folder.resolve("k.json");
        Files.writeString(design, kiln.toText());
        String[] args = new String[more.length + 4];
        args[0] = "propose";
        args[1] = design.toString();
        args[2] = "-o";
        args[3] = folder.resolve("new.json").toString();
        System.arraycopy(more, 0, args, 4, more.length);
        StringWriter out = new StringWriter();
        int exit = Cli.run(new PrintWriter(out), new PrintWriter(new StringWriter()), args);
        said = out.toString().replaceAll("\\s+", " ");
        return exit;
    }

    /** Holes too small for the gas: rules of fire stop every layout. */
    @Test
    void whatPlacesOrSizesStopIsWrittenOnlyToLookAt() throws IOException {
        String[] small = {"--inlets", "2", "--flues", "1", "--inlet-size", "3/4 in", "--flue-size", "1 in"};
        assertThat(propose(small)).isEqualTo(Cli.STOP);
        assertThat(folder.resolve("new.json")).doesNotExist();
        assertThat(said).contains("Nothing was written").contains("Tried: inlets in the floor, 2 of 3/4 in");
        String[] despite = java.util.Arrays.copyOf(small, small.length + 1);
        despite[small.length] = "--despite-stops";
        assertThat(propose(despite)).isEqualTo(Cli.STOP);
        assertThat(folder.resolve("new.json")).exists();
        assertThat(said).contains("stop clean-burn").contains("written, with");
    }

    /** Six holes of 4 in do not fit: everything that stops the nearest miss is named with what it lacks. */
    @Test
    void theNearestMissNamesAllThatStopsIt() throws IOException {
        assertThat(propose(
                        "--inlets",
                        "6",
                        "--flues",
                        "6",
                        "--inlet-size",
                        "4 in",
                        "--flue-size",
                        "4 in",
                        "--inlets-in",
                        "floor"))
                .isEqualTo(Cli.STOP);
        assertThat(folder.resolve("new.json")).doesNotExist();
        String miss = said.substring(said.indexOf("Nearest miss"));
        assertThat(miss).contains("then the worst: ").contains("port-spacing: ").contains("short");
        assertThat(miss).contains("weakest-section: ").contains("too much");
    }

    /** Flues far too small for the inlets stop every layout, wherever the inlets lie: the wall is no advice; the nearest miss is written when asked for. */
    @Test
    void theNearestMissIsWrittenToLookAt() throws IOException {
        String[] small = {
            "--inlets-in=floor", "--inlets=2", "--flues=1", "--inlet-size=1 3/8 in", "--flue-size=1 1/8 in"
        };
        assertThat(propose(small)).isEqualTo(Cli.STOP);
        assertThat(folder.resolve("new.json")).doesNotExist();
        assertThat(said)
                .contains("Nothing was written. To look at the nearest miss on paper add --despite-stops.")
                .doesNotContain("The wall may have room");
        String[] despite = java.util.Arrays.copyOf(small, small.length + 1);
        despite[small.length] = "--despite-stops";
        assertThat(propose(despite)).isEqualTo(Cli.STOP);
        assertThat(folder.resolve("new.json")).exists();
        assertThat(said).contains("flue-inlet-ratio").contains("new.json: the nearest miss written, to look at");
        Files.delete(folder.resolve("new.json"));
        despite[0] = "--json";
        assertThat(propose(despite)).isEqualTo(Cli.STOP);
        JsonNode root = new ObjectMapper().readTree(said);
        assertThat(root.get("written").isNull()).isTrue();
        assertThat(root.at("/nearestMiss/written").asBoolean()).isTrue();
        assertThat(folder.resolve("new.json")).exists();
    }

    /** Grooves 80 mm apart all over the floor leave 64 mm between them: a hole of 35 mm and twice 25 mm of brick find no place there. */
    @Test
    void theWallIsAdvisedWhereTheFloorHasNoPlace() throws IOException {
        DesignText kiln = Starters.find("octagon-17").orElseThrow();
        for (int y = -160; y <= 160; y += 80) {
            kiln = kiln.append(
                    "kiln.elements",
                    "{\"name\": \"row " + y + "\", \"on\": \"floor\", \"path\": [[\"-200 mm\", \"" + y
                            + " mm\"], [\"200 mm\", \"" + y
                            + " mm\"]], \"groove\": {\"width\": \"16 mm\", \"depth\": \"20 mm\"}, \"coil\": \"12 mm\"}");
        }
        String[] floor = {"--inlets=1", "--flues=1", "--inlet-size=35 mm", "--flue-size=38 mm", "--inlets-in=floor"};
        assertThat(propose(kiln, floor)).isEqualTo(Cli.STOP);
        assertThat(said).contains("element-clearance").contains("The wall may have room: ask with --inlets-in wall.");
        floor[4] = "--inlets-in=wall";
        propose(kiln, floor);
        assertThat(said).doesNotContain("The wall may have room");
    }

    /** The design's own layout stands beside each proposal, and what was written is named. */
    @Test
    void asJson() throws IOException {
        assertThat(propose("--json", "--take", "2")).isEqualTo(Cli.OK);
        JsonNode root = new ObjectMapper().readTree(said);
        assertThat(root.get("written").asInt()).isEqualTo(2);
        assertThat(folder.resolve("new.json")).exists();
        double own = root.at("/own/lambdaLow").asDouble();
        assertThat(root.get("proposals")).hasSizeGreaterThan(1).allSatisfy(p -> {
            assertThat(p.get("besideOwn").asText())
                    .contains(p.get("lambdaLow").asDouble() < own ? "less air" : "more air");
            assertThat(p.get("allInside").asDouble()).isBetween(0.0, 1.0);
            assertThat(p.get("ports")).isNotEmpty();
        });
        Files.delete(folder.resolve("new.json"));
        assertThat(propose("--json", "--inlets", "6", "--inlet-size", "4 in", "--inlets-in", "floor"))
                .isEqualTo(Cli.STOP);
        root = new ObjectMapper().readTree(said);
        assertThat(root.get("written").isNull()).isTrue();
        assertThat(root.get("proposals")).isEmpty();
        assertThat(root.at("/nearestMiss/misses")).isNotEmpty();
    }
}
