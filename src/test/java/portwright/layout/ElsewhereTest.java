package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;

/** Further proposals of the same holes put both inlets and flues elsewhere. */
class ElsewhereTest {
    /** One inlet and one flue, with a vent in the lid and a leg on the floor that tell one side from the other. */
    @Test
    void threeOfOneInletAndOneFlue() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        k.fitting("vent", FittingKind.VENT, On.LID, null, TestKiln.at(90, 20), 12);
        k.fitting("leg", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-60, 80), 50);
        Proposals p = Proposer.propose(k.build(), new Wishes(1, 1, 35.0, 45.0), Progress.none());
        assertThat(p.best()).hasSize(3);
        assertThat(p.few()).isEmpty();
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < i; j++) {
                assertThat(elsewhere(p.best().get(i), p.best().get(j)))
                        .as("proposals %d and %d", i + 1, j + 1)
                        .isGreaterThan(0.5);
            }
            assertThat(p.best().get(i).margin())
                    .isGreaterThanOrEqualTo(Math.min(1, p.best().get(0).margin() / 2));
        }
    }

    private static double elsewhere(Proposal a, Proposal b) {
        return (share(a, b, Role.INLET) + share(a, b, Role.FLUE)) / 2;
    }

    /** Share of the holes of both that have none of the other within a hole's diameter. */
    private static double share(Proposal a, Proposal b, Role role) {
        List<Port> x = of(a, role);
        List<Port> y = of(b, role);
        return (double) (alone(x, y) + alone(y, x)) / (x.size() + y.size());
    }

    private static List<Port> of(Proposal p, Role role) {
        return p.ports().stream().filter(o -> o.role() == role).toList();
    }

    private static long alone(List<Port> some, List<Port> others) {
        return some.stream()
                .filter(p -> others.stream()
                        .noneMatch(o -> Math.hypot(p.at().xMm() - o.at().xMm(), p.at().yMm() - o.at().yMm())
                                < p.diameter().mm()))
                .count();
    }
}
