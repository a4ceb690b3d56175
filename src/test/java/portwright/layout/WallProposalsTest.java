package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;
import portwright.review.Review;

/** Inlets in the wall: where the floor is full, where they are asked for, and where the design has them. */
class WallProposalsTest {
    private static final Set<String> WALL_MARGINS =
            Set.of("edge-distance", "port-spacing", "element-clearance", "fitting-clearance", "flame-on-element");

    @Test
    void whereTheFloorIsFullTheInletsGoThroughTheWall() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        for (int i = -4; i <= 4; i++) {
            k.slabElement("row " + (i + 5), On.FLOOR, 14, 16, TestKiln.at(-240, i * 50), TestKiln.at(240, i * 50));
        }
        k.wallElement("E1", 70, 16, 19, 0, List.of(1, 2, 3, 5, 6, 7));
        Proposals p = Proposer.propose(k.build(), new Wishes(2, 2, 35.0, 38.0), Progress.none());
        wallInlets(p, 2);
        assertThat(p.best().get(0).ports().stream().filter(x -> x.on() == On.WALL))
                .allMatch(x -> x.panel() == 4 || x.panel() == 8);
    }

    /** Where the floor takes two holes that a drill by hand often brings too near a coil, those in the floor still stand first, and safer ones in the wall behind. */
    @Test
    void theFloorComesFirstWhileItPasses() {
        Proposals p = Proposer.propose(SomeKilns.of(4).build(), SomeKilns.wishes(4), Progress.none());
        Proposal first = p.best().get(0);
        assertThat(first.ports()).noneMatch(x -> x.on() == On.WALL);
        assertThat(DrillOutlook.oddsAlone(first.design(), first.check()).allInside())
                .isLessThan(HoleOdds.TARGET);
        assertThat(first.reason()).contains("That one has its inlets in the wall");
        Proposal wall = p.best().stream()
                .filter(q -> q.ports().stream().anyMatch(x -> x.on() == On.WALL))
                .findFirst()
                .orElseThrow();
        assertThat(wall.margin()).isGreaterThan(first.margin());
        assertThat(DrillOutlook.oddsAlone(wall.design(), wall.check()).allInside())
                .isGreaterThan(HoleOdds.TARGET);
    }

    @Test
    void wallInletsOnRequestAndWhereTheDesignHasThem() throws Exception {
        Design plain = TestKiln.polygon(6, "500 mm").build();
        wallInlets(Proposer.propose(plain, new Wishes(3, 2, 30.0, null, On.WALL), Progress.none()), 3);
        Design door =
                DesignFile.read(Path.of("templates", "front-loader-18.json")).design();
        wallInlets(Proposer.propose(door, new Wishes(null, 2, 53.975, null), Progress.none()), 1);
    }

    /** All inlets in the wall, in its lower third, and no rule of geometry says otherwise than the margin. */
    private static void wallInlets(Proposals p, int n) {
        assertThat(p.best()).isNotEmpty();
        for (Proposal q : p.best()) {
            List<Port> in =
                    q.ports().stream().filter(x -> x.role() == Role.INLET).toList();
            assertThat(in).hasSize(n).allMatch(x -> x.on() == On.WALL && x.panel() != null);
            assertThat(in)
                    .allMatch(x -> x.at().yMm() <= q.design().kiln().height().mm() / 3 + 1);
            for (Finding f : new RuleBook(LimitTable.load())
                    .check(Review.geometryOnly(q.design()), Set.of(RuleBook.Section.GEOMETRY))
                    .findings()) {
                assertThat(f.severity()).as("%s: %s", f.rule(), f.message()).isNotEqualTo(Severity.STOP);
                if (WALL_MARGINS.contains(f.rule()) && f.severity() == Severity.CAUTION) {
                    assertThat(q.margin()).as("%s: %s", f.rule(), f.message()).isLessThan(1);
                }
            }
        }
    }

    @Test
    void wallInletsWithoutRoomStillLieApart() {
        Proposals p = Proposer.propose(
                TestKiln.polygon(6, "300 mm").build(), new Wishes(7, 1, 90.0, 40.0, On.WALL), Progress.none());
        assertThat(p.best()).isEmpty();
        List<String> places = p.nearestMiss().ports().stream()
                .filter(x -> x.on() == On.WALL)
                .map(x -> x.panel() + " " + x.at())
                .toList();
        assertThat(places).hasSize(7).doesNotHaveDuplicates();
    }
}
