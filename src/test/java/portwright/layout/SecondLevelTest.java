package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Port;
import portwright.model.Role;

/** Where something that no place changes holds the margin down, the holes still lie where they have most room. */
class SecondLevelTest {
    private static final List<String> BY_SIZE = List.of("flue-inlet-ratio", "burner-fit", "flame-path");

    /** A flue of 41 mm for two inlets of 32 mm has 0.82 of their area, next to the stop: every layout has the margin 0.1. */
    @Test
    void wideWhereTheSizesSetTheMargin() {
        TestKiln k = square(500);
        k.slabElement("bar", On.FLOOR, 16, 20, TestKiln.at(-150, 60), TestKiln.at(150, 70));
        Design d = k.build();
        double rival = least(d, List.of(inlet(-150, 150), inlet(150, -150), flue(0, 0, 41)), t -> places(t));
        Proposals p = Proposer.propose(d, new Wishes(2, 1, 32.0, 41.0, On.FLOOR), Progress.none());
        Proposal first = p.best().get(0);
        assertThat(first.limiting().rule()).isEqualTo("flue-inlet-ratio");
        assertThat(first.reason()).contains("their places alone pass with");
        assertThat(rival).isGreaterThan(1.5);
        assertThat(least(d, first.ports(), t -> places(t))).isGreaterThan(0.995 * rival);
        assertThat(p.best()).allSatisfy(o -> {
            assertThat(o.margin()).isEqualTo(first.margin());
            assertThat(least(d, o.ports(), t -> places(t))).isGreaterThan(Math.min(1, rival / 2) - 0.01);
        });
    }

    /** Legs 60 mm apart leave an inlet 15.4 mm in the middle of four, wherever: the flue keeps off its axis and by the middle. */
    @Test
    void theFlueIsFreeWhereTheInletIsTrapped() {
        TestKiln k = square(300);
        for (int x = -120; x <= 120; x += 60) {
            for (int y = -120; y <= 120; y += 60) {
                k.fitting("leg " + x + " " + y, FittingKind.LEG, On.FLOOR, null, TestKiln.at(x, y), 20);
            }
        }
        k.inlet("inlet", 30, 30, 32).flue("flue", 0, 0, 38);
        Design d = k.build();
        Predicate<Term> ofFlue =
                t -> t.rule().equals("flue-over-inlet") || t.parts().contains("flue");
        double rival = least(d, List.of(inlet(30, 90), flue(0, 0, 38)), ofFlue);
        Proposals p = Proposer.propose(d, new Wishes(1, 1, 32.0, 38.0, On.FLOOR), Progress.none());
        assertThat(p.best().get(0).limiting().rule()).isEqualTo("fitting-clearance");
        assertThat(rival).isGreaterThan(1.3);
        assertThat(least(d, p.best().get(0).ports(), ofFlue)).isGreaterThan(0.99 * rival);
        // by hand: the next inlet lies 60 mm off, nearer than two diameters, and the balance keeps a flue within 76 mm
        // of the middle
        assertThat(p.best()).hasSize(1);
        assertThat(p.few()).startsWith("Only one is shown");
    }

    private static boolean places(Term t) {
        return !BY_SIZE.contains(t.rule());
    }

    private static double least(Design d, List<Port> ports, Predicate<Term> some) {
        KilnGeometry kiln = KilnGeometry.of(d);
        LayoutLimits limits = new LayoutLimits(d, LimitTable.load());
        List<Port> in = ports.stream().filter(q -> q.role() == Role.INLET).toList();
        List<Port> out = ports.stream().filter(q -> q.role() == Role.FLUE).toList();
        Sizes.Choice c = new Sizes.Choice(
                in.size(),
                in.get(0).diameter().mm(),
                out.size(),
                out.get(0).diameter().mm(),
                null);
        return new LayoutTerms(d, kiln, limits, new Sites(d, kiln, limits))
                .of(c, ports).stream()
                        .filter(some)
                        .mapToDouble(Term::margin)
                        .min()
                        .orElseThrow();
    }

    private static TestKiln square(double side) {
        return TestKiln.of(new PlanShape.RectanglePlan(TestKiln.mm(side), TestKiln.mm(side), TestKiln.deg(0)));
    }

    private static Port inlet(double x, double y) {
        return new Port("inlet " + x, Role.INLET, On.FLOOR, null, TestKiln.at(x, y), TestKiln.mm(32));
    }

    private static Port flue(double x, double y, double d) {
        return new Port("flue", Role.FLUE, On.LID, null, TestKiln.at(x, y), TestKiln.mm(d));
    }
}
