package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.DesignFile;
import portwright.file.PortsText;
import portwright.file.ReadResult;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.model.Place;
import portwright.model.Port;
import portwright.model.UnitSystem;

/** What a proposal says of itself is true of the design that is handed over, with its places as typed. */
class ProposalFiguresTest {
    private static final Pattern COST =
            Pattern.compile("would pass with ([0-9]+(?:\\.[0-9]+)?) times, ([0-9.]+) % wider\\.");
    private static final Pattern PASSES = Pattern.compile("passes with ([0-9.]+) times");

    @TempDir
    Path folder;

    @Test
    void aStarter() throws IOException {
        starters(List.of("hexagon-27cm"));
    }

    @Tag("slow")
    @Test
    void allStarters() throws IOException {
        starters(Starters.names());
    }

    @Test
    void aRandomKiln() {
        kilns(IntStream.of(4, 14));
    }

    @Tag("slow")
    @Test
    void sixtyRandomKilns() {
        kilns(IntStream.range(0, 60));
    }

    private void starters(List<String> names) throws IOException {
        for (String name : names) {
            ReadResult read = DesignFile.read(Path.of("templates", name + ".json"));
            Proposals p = Proposer.propose(read.design(), Wishes.none(), Progress.none());
            assertThat(p.best()).as(name).isNotEmpty();
            for (Proposal q : p.best()) {
                Path file = Files.writeString(
                        folder.resolve("proposed.json"),
                        PortsText.put(read.document(), q.ports(), q.renamed()).toText());
                hold(name, p, q, DesignFile.read(file).design());
            }
        }
    }

    private static void kilns(IntStream seeds) {
        seeds.forEach(seed -> {
            Proposals p = Proposer.propose(SomeKilns.of(seed).build(), SomeKilns.wishes(seed), Progress.none());
            p.best().forEach(q -> hold("seed " + seed, p, q, q.design()));
        });
    }

    /** The figures against the margin of the design read anew. */
    private static void hold(String name, Proposals all, Proposal q, Design written) {
        Term own = Proposer.own(written).orElseThrow().limiting();
        String where = name + ", " + q.arrangement() + ": " + q.reason();
        assertThat(q.margin()).as(where).isCloseTo(own.margin(), within(1e-9));
        assertThat(q.limits()).as(where).isEqualTo("Limited by " + Words.term(own) + ".");
        assertThat(q.margin()).as(where).isLessThanOrEqualTo(all.widest().margin() + 1e-9);
        assertThat(q.reason()).as(where).doesNotStartWith("Everything");
        assertThat(q.reason().contains("not from a tape")).as(where).isEqualTo(!onTape(q));
        Matcher passes = PASSES.matcher(q.reason());
        assertThat(passes.find()).as(where).isEqualTo(own.margin() >= 1);
        if (own.margin() >= 1) {
            assertThat(Double.parseDouble(passes.group(1))).as(where).isCloseTo(own.margin(), within(0.0051));
        }
        Matcher cost = COST.matcher(q.reason());
        if (cost.find()) {
            double most = Double.parseDouble(cost.group(1));
            assertThat(Double.parseDouble(cost.group(2)))
                    .as(where)
                    .isCloseTo(100 * (most / own.margin() - 1), within(0.06 + 0.6 / own.margin()));
            assertThat(most)
                    .as(where)
                    .isLessThanOrEqualTo(all.widest().margin() * (1 + SlabSearch.SYMMETRY_WORTH) + 0.01);
        }
        if (q.reason().contains("as large as any that was tried")) {
            assertThat(own.margin())
                    .as(where)
                    .isGreaterThanOrEqualTo(all.widest().margin() * (1 - SlabSearch.SYMMETRY_WORTH));
        }
    }

    /** Whether every length is a whole half millimetre or 32nd of an inch and every bearing a half degree. */
    private static boolean onTape(Proposal q) {
        double step = q.design().units() == UnitSystem.METRIC ? 0.5 : 25.4 / 32;
        return q.ports().stream()
                .map(Port::at)
                .flatMapToDouble(p -> p instanceof Place.Polar at
                        ? DoubleStream.of(
                                at.radius().mm() / step,
                                Math.toDegrees(at.bearing().base()) / 0.5)
                        : DoubleStream.of(p.xMm() / step, p.yMm() / step))
                .allMatch(v -> Math.abs(v - Math.rint(v)) < 1e-6);
    }
}
