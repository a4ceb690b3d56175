package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.len;
import static portwright.TestKiln.polar;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.HoleSaw;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.On;
import portwright.model.Role;
import portwright.review.Review;

/** Sizes as the trade sells them. */
class SoldSizesTest {
    private static final RuleBook BOOK = new RuleBook(LimitTable.load());
    private static final double LITRES_A_CUBIC_FOOT = 28.316846592;

    private static CheckResult shapes(TestKiln k) {
        return BOOK.check(Review.geometryOnly(k.build()), java.util.Set.of(RuleBook.Section.GEOMETRY));
    }

    /**
     * Chamber volumes as they are sold. Published: a gallery page of things to know before ordering a kiln calls the 23 × 27 in decagon "about 7 ft³";
     * a kiln maker's support page on 48 A kilns calls the 28 × 27 in twelve-sided one "10 ft³". Both are round numbers of the trade: half a
     * cubic foot either way.
     */
    @ParameterizedTest
    @CsvSource({"10, 23 in, 7", "12, 28 in, 10"})
    @Tag("published")
    void chamberVolumeAsSold(int sides, String flats, double cubicFeet) {
        TestKiln k = TestKiln.polygon(sides, flats);
        k.height = len("27 in");
        double volume = KilnGeometry.of(k.build()).chamberVolumeM3() * 1000 / LITRES_A_CUBIC_FOOT;
        assertThat(volume).isCloseTo(cubicFeet, within(0.5));
        double apothemFt = len(flats).mm() / 2 / 304.8;
        assertThat(volume)
                .as("n a² tan(π/n) h")
                .isCloseTo(sides * apothemFt * apothemFt * Math.tan(Math.PI / sides) * 27 / 12, within(1e-9));
    }

    /** Inch sizes of a bi-metal hole-saw operating chart with the millimetres printed beside them (published). */
    @ParameterizedTest
    @CsvSource({
        "3/4 in, 19",
        "7/8 in, 22",
        "1 in, 25",
        "1 1/8 in, 29",
        "1 1/4 in, 32",
        "1 3/8 in, 35",
        "1 1/2 in, 38",
        "1 3/4 in, 44",
        "2 in, 51"
    })
    @Tag("published")
    void holeSawsOfTheChartNeedNoNote(String size, double millimetres) {
        HoleSaw saw = HoleSaw.nearest(len(size).mm(), true);
        assertThat(saw.size().mm()).isCloseTo(len(size).mm(), within(1e-9));
        assertThat(saw.nominalMm()).isEqualTo(millimetres);
        TestKiln k = TestKiln.polygon(10, "23 in").port("A", Role.INLET, On.FLOOR, null, polar("5 in", 0), len(size));
        assertThat(shapes(k).findings()).noneMatch(f -> f.rule().equals("saw-size"));
    }

    /** Common practice, no source: two 1 1/4 in holes in the floor and two in the lid of an ordinary ten-sided kiln may be drilled. */
    @Test
    void theOrdinaryConversionIsAccepted() {
        TestKiln k = TestKiln.polygon(10, "22.7 in");
        k.height = len("27 in");
        k.drilling = null;
        for (String side : List.of("A", "B")) {
            double bearing = side.equals("A") ? 0 : 180;
            k.port("inlet " + side, Role.INLET, On.FLOOR, null, polar("5 in", bearing), len("1 1/4 in"));
            k.port("flue " + side, Role.FLUE, On.LID, null, polar("5 in", bearing + 90), len("1 1/4 in"));
        }
        for (int i = 0; i < 12; i++) {
            k.wallElement("E" + (i + 1), (1.75 + 2.1 * i) * 25.4, 15.9, 19, 25, null);
        }
        k.roundShelf("bottom shelf", 20.5 * 25.4, 76.2, 38, polar("8 in", 90), polar("8 in", 230), polar("8 in", 310));
        CheckResult r = BOOK.check(Review.of(k.build()));
        assertThat(r.findings())
                .filteredOn(f -> f.severity() == Severity.STOP && f.forbids() == Forbids.DRILLING)
                .extracting(Finding::message)
                .isEmpty();
        assertThat(r.findings())
                .filteredOn(f -> f.severity() == Severity.CAUTION && f.forbids() == Forbids.DRILLING)
                .extracting(Finding::message)
                .isEmpty();
        assertThat(r.notChecked())
                .noneMatch(n -> n.forbids() == Forbids.DRILLING && n.rule().equals("element-clearance"));
        assertThat(r.figures().flueToInletRatio()).isCloseTo(1, within(1e-12));
    }
}
