package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.len;
import static portwright.TestKiln.mm;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.Bond;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Role;
import portwright.model.Shelf;
import portwright.model.ShelfShape;

/**
 * Three ordinary designs worked by hand, 2 1/2 in walls, ports on the line from front to back: hole to rim = AF/2 + 2 1/2 in − radius − (d + 2 mm)/2;
 * worst lid line 2 (d + 2 mm) / (AF + 5 in); flame path (n tan(π/n) (AF/2)² − shelf area) / (2 π/4 d²). The figures beside them came from a second
 * calculation made apart from this program.
 */
class HandDesignsTest {
    @ParameterizedTest(name = "{0} sides, {1}")
    @Tag("published")
    @CsvSource({
        "8,17 in,1 1/4 in,4 in,15 in,18 in,161,0.12,25",
        "10,22.7 in,1 1/2 in,5 in,20 1/2 in,27 in,205,0.11,25",
        "6,10.6 in,1 1/4 in,2 1/2 in,8.6 in,9 in,118,0.17,16"
    })
    void passWithoutAStop(
            int sides,
            String acrossFlats,
            String d,
            String radius,
            String shelf,
            String height,
            double rimMm,
            double lidShare,
            double path) {
        TestKiln k = kiln(sides, acrossFlats, d, radius, shelf, height);
        CheckResult r = GeoBench.check(k.build());
        assertThat(r.findings()).noneMatch(f -> f.severity() == Severity.STOP);
        assertThat(r.notChecked()).isEmpty();

        KilnGeometry g = KilnGeometry.of(k.build());
        Hole a = g.holes().get(0);
        assertThat(g.slab(On.FLOOR).depth(a.centre()) - a.drilledRadius()).isCloseTo(rimMm, within(0.5));
        double af = len(acrossFlats).mm();
        assertThat(g.slab(On.FLOOR).depth(a.centre()) - a.drilledRadius())
                .isCloseTo(af / 2 + 63.5 - len(radius).mm() - (len(d).mm() + 2) / 2, within(1e-9));
        assertThat(g.weakestSection(On.LID).share()).isCloseTo(lidShare, within(0.005));
        assertThat(g.weakestSection(On.LID).share()).isCloseTo(2 * (len(d).mm() + 2) / (af + 127), within(1e-9));
        double inlets = g.holes(On.FLOOR).stream().mapToDouble(Hole::area).sum();
        assertThat(ShelfLevel.of(g)).hasSize(1);
        assertThat(ShelfLevel.of(g).get(0).freeArea() / inlets).isCloseTo(path, within(0.6));
    }

    private static TestKiln kiln(int sides, String acrossFlats, String d, String radius, String shelf, String height) {
        TestKiln k = TestKiln.polygon(sides, acrossFlats);
        k.height = len(height);
        k.stand = len("10 in");
        for (int i = 0; i < 2; i++) {
            k.port("inlet " + "AB".charAt(i), Role.INLET, On.FLOOR, null, TestKiln.polar(radius, 180.0 * i), len(d));
            k.port("flue " + "AB".charAt(i), Role.FLUE, On.LID, null, TestKiln.polar(radius, 180.0 * i), len(d));
        }
        k.shelves.add(new Shelf(
                "shelf",
                ShelfShape.ROUND,
                len(shelf),
                null,
                null,
                null,
                null,
                null,
                len("3 in"),
                len("5/8 in"),
                TestKiln.at(0, 0),
                posts(len(shelf).mm() / 2 - 30),
                len("1 in")));
        k.wallElement("E1", 100, 16, 19, 0, null).wallElement("E2", 170, 16, 19, 0, null);
        k.fittings.add(new Fitting(
                "thermocouple",
                FittingKind.THERMOCOUPLE,
                null,
                null,
                On.WALL,
                3,
                TestKiln.at(0, 135),
                TestKiln.mm(6),
                null,
                null,
                null,
                null,
                TestKiln.mm(25),
                null));
        k.joints(On.FLOOR, 228.6, 114.3, Bond.HALF, 0, 57, 0).joints(On.LID, 228.6, 114.3, Bond.HALF, 0, 57, 0);
        k.burners = List.of(
                AtTheLimitTest.burner("inlet A", 12, 25, 12.7, 150),
                AtTheLimitTest.burner("inlet B", 12, 25, 12.7, 150));
        return k;
    }

    private static List<Place> posts(double radius) {
        return List.of(place(radius, 90), place(radius, 210), place(radius, 330));
    }

    private static Place place(double radius, double bearing) {
        return new Place.Polar(mm(radius), TestKiln.deg(bearing));
    }
}
