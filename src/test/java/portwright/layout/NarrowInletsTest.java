package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Severity;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Role;

/** Where the usual ring of air round a tip has no room, a narrower hole is a caution, not an impossibility. */
class NarrowInletsTest {
    private static final Wishes FLOOR = new Wishes(2, 1, null, null, On.FLOOR);

    /** The floor full of grooves with so much brick between them and less along two walls, and two burners with tips of 18 mm. By hand: a hole needs its drilled diameter and twice 25 mm. */
    private static Design grooved(double between) {
        TestKiln k = TestKiln.polygon(4, "600 mm").oversize(2);
        double pitch = between + 14;
        for (int i = -5; i < 5; i++) {
            double y = (i + 0.5) * pitch;
            if (Math.abs(y) < 290) {
                k.slabElement("row " + i, On.FLOOR, 14, 16, TestKiln.at(-295, y), TestKiln.at(295, y));
            }
        }
        k.slabElement("front", On.FLOOR, 14, 16, TestKiln.at(-295, -285), TestKiln.at(295, -285));
        k.slabElement("back", On.FLOOR, 14, 16, TestKiln.at(-295, 285), TestKiln.at(295, 285));
        k.burners = List.of(burner("A"), burner("B"));
        return k.build();
    }

    private static Burner burner(String name) {
        return new Burner(
                "burner " + name,
                "inlet " + name,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                mm(18),
                null,
                mm(13),
                null,
                null,
                null,
                null);
    }

    /** 80 mm of brick: 32 mm, the smallest saw that leaves 6 mm round the tip, needs 84, 29 mm needs 81, 25 mm needs 77. */
    @Test
    void aNarrowerRingIsProposedWhereTheUsualOneHasNoPlace() {
        Proposals p = Proposer.propose(grooved(80), FLOOR, Progress.none());
        assertThat(p.impossible()).isEmpty();
        assertThat(p.best()).isNotEmpty().allSatisfy(q -> {
            assertThat(q.ports())
                    .filteredOn(o -> o.role() == Role.INLET)
                    .hasSize(2)
                    .allSatisfy(o -> assertThat(o.diameter().mm()).isEqualTo(25));
            assertThat(q.check().findings())
                    .noneMatch(f -> f.severity() == Severity.STOP)
                    .anyMatch(f -> f.rule().equals("burner-fit") && f.severity() == Severity.CAUTION);
            assertThat(q.reason())
                    .contains("Inlets of 32 mm (1 1/4 in) or more leave less room, or none at all")
                    .contains(
                            "a ring of 3.5 mm (1/8 in) round a tip of 18 mm (11/16 in), where 6 mm (1/4 in) are wanted")
                    .contains("burner-fit cautions it");
        });
    }

    /** With room for the usual ring, 84 mm and a little, nothing smaller is taken. */
    @Test
    void theUsualRingComesFirst() {
        Proposals p = Proposer.propose(grooved(88), FLOOR, Progress.none());
        assertThat(p.best().get(0).ports())
                .filteredOn(o -> o.role() == Role.INLET)
                .allSatisfy(o -> assertThat(o.diameter().mm()).isGreaterThanOrEqualTo(32));
        assertThat(p.best().get(0).reason()).doesNotContain("burner-fit");
    }

    /** 60 mm: the smallest saw needs 71. Then the nearest miss has that saw, not a larger one, and the grooves are to blame. */
    @Test
    void theNearestMissIsThatOfTheSmallestHole() {
        Proposals p = Proposer.propose(grooved(60), FLOOR, Progress.none());
        assertThat(p.best()).isEmpty();
        assertThat(p.nearestMiss().ports())
                .filteredOn(o -> o.role() == Role.INLET)
                .allSatisfy(o -> assertThat(o.diameter().mm()).isEqualTo(19));
        assertThat(p.impossible()).singleElement().satisfies(i -> {
            assertThat(i.rule()).isEqualTo("element-clearance");
            assertThat(i.alone()).isTrue();
        });
    }

    /** A size that was asked for stays. */
    @Test
    void aSizeAskedForIsKept() {
        Proposals p = Proposer.propose(grooved(80), new Wishes(2, 1, 32.0, null, On.FLOOR), Progress.none());
        assertThat(p.best()).isEmpty();
    }
}
