package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Verdict;
import portwright.model.Bond;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.model.Slab;
import portwright.units.Quantity;

/** Absent is unknown, an empty list is none: a rule that lacks input says which field to add, and the verdict never improves. */
class NotCheckedTest {
    private record Case(String rule, Forbids forbids, String needs, Consumer<TestKiln> leaveOut) {}

    static TestKiln full() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", 0, 0, 40)
                .flue("F", 150, 0, 40)
                .wallElement("E1", 300, 16, 20, 0, null)
                .fitting("leg", FittingKind.LEG, On.FLOOR, null, at(-200, 0), 50)
                .roundShelf("shelf", 500, 75, 40, at(0, 150), at(150, -100), at(-150, -100))
                .joints(On.FLOOR, 228.6, 114.3, Bond.HALF, 0, 50, 50)
                .joints(On.LID, 228.6, 114.3, Bond.HALF, 0, 50, 50);
        k.burners = new ArrayList<>(List.of(AtTheLimitTest.burner("A", 20, 30, 15, 150)));
        k.stand = mm(400);
        return k;
    }

    private static ElementRun wall(Groove groove, Double height, Double coil) {
        return new ElementRun(
                "E1",
                On.WALL,
                height == null ? null : mm(height),
                null,
                null,
                groove,
                coil == null ? null : mm(coil),
                null);
    }

    private static void burner(TestKiln k, Double tip, Double body, Double setback, Double length) {
        Burner b = k.burners.get(0);
        k.burners.set(
                0,
                new Burner(
                        b.name(),
                        b.port(),
                        b.fuel(),
                        null,
                        b.jet(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        b.head(),
                        q(tip),
                        q(body),
                        q(setback),
                        q(length),
                        null,
                        null,
                        null));
    }

    private static void head(TestKiln k, BurnerHead head, Double setback) {
        burner(k, 20.0, 30.0, setback, 150.0);
        Burner b = k.burners.get(0);
        k.burners.set(
                0,
                new Burner(
                        b.name(),
                        b.port(),
                        b.fuel(),
                        null,
                        b.jet(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        head,
                        b.tip(),
                        b.body(),
                        b.setback(),
                        b.length(),
                        null,
                        null,
                        null));
    }

    private static Quantity q(Double v) {
        return v == null ? null : mm(v);
    }

    private static void shelf(TestKiln k, Double diameter, Double height, List<Place> posts, Double postSize) {
        k.shelves.set(
                0,
                new Shelf(
                        "shelf",
                        ShelfShape.ROUND,
                        q(diameter),
                        null,
                        null,
                        null,
                        null,
                        null,
                        q(height),
                        mm(16),
                        at(0, 0),
                        posts,
                        q(postSize)));
    }

    private static List<Case> cases() {
        List<Case> c = new ArrayList<>();
        Groove groove = new Groove(mm(16), null, mm(20), null);
        for (String rule : List.of("element-clearance", "weakest-section")) {
            c.add(new Case(rule, Forbids.DRILLING, "kiln.elements", k -> k.elements = null));
            c.add(new Case(
                    rule,
                    Forbids.DRILLING,
                    "kiln.elements[0].groove",
                    k -> k.elements.set(0, wall(null, 300.0, 12.0))));
            c.add(new Case(
                    rule,
                    Forbids.DRILLING,
                    "kiln.elements[0].groove.depth",
                    k -> k.elements.set(0, wall(new Groove(mm(16), null, null, null), 300.0, 12.0))));
            c.add(new Case(
                    rule,
                    Forbids.DRILLING,
                    "kiln.elements[0].height",
                    k -> k.elements.set(0, wall(groove, null, 12.0))));
        }
        c.add(new Case("flame-on-element", Forbids.LIGHTING, "kiln.elements", k -> k.elements = null));
        c.add(new Case(
                "flame-on-element",
                Forbids.LIGHTING,
                "kiln.elements[0].coil",
                k -> k.elements.set(0, wall(groove, 300.0, null))));
        c.add(new Case("flame-on-element", Forbids.LIGHTING, "shelves", k -> k.shelves = null));
        c.add(new Case("fitting-clearance", Forbids.DRILLING, "kiln.fittings", k -> k.fittings = null));
        c.add(new Case(
                "fitting-clearance",
                Forbids.DRILLING,
                "kiln.fittings[0].diameter",
                k -> k.fittings.set(
                        0,
                        new Fitting(
                                "leg",
                                FittingKind.LEG,
                                null,
                                null,
                                On.FLOOR,
                                null,
                                at(-200, 0),
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null))));
        c.add(new Case("weakest-section", Forbids.DRILLING, "kiln.fittings", k -> k.fittings = null));
        c.add(new Case("groove-room", Forbids.NOTHING, "kiln.fittings", k -> k.fittings = null));
        c.add(new Case("groove-room", Forbids.NOTHING, "kiln.elements", k -> k.elements = null));
        c.add(new Case("flame-on-fitting", Forbids.NOTHING, "kiln.fittings", k -> k.fittings = null));
        c.add(new Case(
                "joint-sliver",
                Forbids.NOTHING,
                "kiln.floor.joints",
                k -> k.floor = new Slab(mm(60), "ifb-23", mm(0), true, null)));
        c.add(new Case(
                "one-brick",
                Forbids.NOTHING,
                "kiln.floor.joints",
                k -> k.floor = new Slab(mm(60), "ifb-23", mm(0), true, null)));
        c.add(new Case("jet-in-hole", Forbids.NOTHING, "burners", k -> k.burners = null));
        c.add(new Case("jet-in-hole", Forbids.NOTHING, "burners[0].setback", k -> head(k, BurnerHead.BARE, null)));
        c.add(new Case("jet-in-hole", Forbids.NOTHING, "burners[0].head", k -> head(k, null, 15.0)));
        for (String rule : List.of("post-in-flame", "shelf-over-inlet", "flame-path")) {
            c.add(new Case(rule, Forbids.LIGHTING, "shelves", k -> k.shelves = null));
            c.add(new Case(rule, Forbids.LIGHTING, "shelves[0].height", k -> shelf(k, 500.0, null, List.of(), 40.0)));
            c.add(new Case(rule, Forbids.LIGHTING, "shelves[0].diameter", k -> shelf(k, null, 75.0, List.of(), 40.0)));
        }
        c.add(new Case("post-in-flame", Forbids.LIGHTING, "shelves[0].posts", k -> shelf(k, 500.0, 75.0, null, 40.0)));
        c.add(new Case(
                "post-in-flame",
                Forbids.LIGHTING,
                "shelves[0].postSize",
                k -> shelf(k, 500.0, 75.0, List.of(at(0, 150)), null)));
        for (String rule : List.of("burner-room", "burner-fit")) {
            c.add(new Case(rule, Forbids.LIGHTING, "burners", k -> k.burners = null));
            c.add(new Case(rule, Forbids.LIGHTING, "burners[0].setback", k -> burner(k, 20.0, 30.0, null, 150.0)));
        }
        c.add(new Case("burner-fit", Forbids.LIGHTING, "burners[0].tip", k -> burner(k, null, 30.0, 15.0, 150.0)));
        c.add(new Case("burner-room", Forbids.LIGHTING, "burners[0].body", k -> burner(k, 20.0, null, 15.0, 150.0)));
        c.add(new Case("burner-room", Forbids.LIGHTING, "burners[0].length", k -> burner(k, 20.0, 30.0, 15.0, null)));
        c.add(new Case("burner-room", Forbids.LIGHTING, "kiln.stand.height", k -> k.stand = null));
        c.add(new Case("burner-room", Forbids.LIGHTING, "kiln.fittings", k -> k.fittings = null));
        c.add(new Case(
                "brick-kind",
                Forbids.NOTHING,
                "kiln.lid.brick",
                k -> k.lid = new Slab(mm(60), null, mm(0), null, null)));
        return c;
    }

    @TestFactory
    Stream<DynamicTest> aMissingFieldIsNamedAndNeverImprovesAVerdict() {
        return cases().stream()
                .map(c -> DynamicTest.dynamicTest(c.rule() + " without " + c.needs(), () -> {
                    CheckResult before = GeoBench.check(full().build());
                    assertThat(before.notChecked()).isEmpty();
                    TestKiln k = full();
                    c.leaveOut().accept(k);
                    CheckResult r = GeoBench.check(k.build());
                    List<NotChecked> n = r.notChecked().stream()
                            .filter(x -> x.rule().equals(c.rule()))
                            .toList();
                    assertThat(n)
                            .isNotEmpty()
                            .allSatisfy(x -> assertThat(x.forbids()).isEqualTo(c.forbids()))
                            .anySatisfy(x -> assertThat(x.needs()).contains(c.needs()));
                    assertThat(rank(r.drilling())).isGreaterThanOrEqualTo(rank(before.drilling()));
                    assertThat(rank(r.lighting())).isGreaterThanOrEqualTo(rank(before.lighting()));
                    if (c.forbids() == Forbids.DRILLING) {
                        assertThat(r.drilling()).isEqualTo(Verdict.INCOMPLETE);
                    } else if (c.forbids() == Forbids.LIGHTING) {
                        assertThat(r.lighting()).isEqualTo(Verdict.INCOMPLETE);
                    }
                }));
    }

    private static int rank(Verdict v) {
        return switch (v) {
            case CLEAR -> 0;
            case CAUTION -> 1;
            case INCOMPLETE -> 2;
            case STOP -> 3;
        };
    }

    @Test
    void emptyListsMeanNone() {
        TestKiln k = full();
        k.elements = List.of();
        k.fittings = List.of();
        k.shelves = List.of();
        k.burners = List.of();
        assertThat(GeoBench.check(k.build()).notChecked()).isEmpty();
    }
}
