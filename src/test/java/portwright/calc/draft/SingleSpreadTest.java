package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * One spread at a time: the ends of the band are the state at the 5 and 95 % ends of that input, 1.645 standard deviations
 * off for a normal spread, 0.9 of the half width for an even one (tables of the normal law). Chance moves the 5 % end of 2000
 * normal draws by 0.047 standard deviations, √(0.05 · 0.95/2000) over the density 0.103 there; three of these are allowed.
 */
class SingleSpreadTest {
    private static final double Z = 1.645;
    private static final double CHANCE = 3 * 0.047;
    private final DraftCase kiln = Cases.reference(1100, 4, 0.5, 0.3, 0).withLeaks(List.of(), List.of());

    /** No spread at all; each test sets one number. */
    private static double[] none() {
        return new double[] {0, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0};
    }

    private static FireBand band(DraftCase k, int which, double value) {
        double[] s = none();
        s[which] = value;
        return band(k, s, false);
    }

    private static FireBand band(DraftCase k, double[] s, boolean flames) {
        Spread spread = new Spread(s[0], s[1], s[2], s[3], s[4], s[5], s[6], s[7], s[8], s[9], s[10], s[11], flames);
        return new FireUncertainty(spread, 5, 2000).of(k);
    }

    private static double lambda(DraftCase k) {
        return DraftBalance.of(k).lambda().orElseThrow();
    }

    /** The band's two ends lie where the two given kilns do. */
    private static void lambdas(FireBand b, DraftCase low, DraftCase high) {
        assertThat(b.lambda().low()).isEqualTo(lambda(low), within(0.012));
        assertThat(b.lambda().high()).isEqualTo(lambda(high), within(0.012));
        assertThat(b.lambda().high() - b.lambda().low()).isGreaterThan(0.03);
    }

    private DraftCase inlets(UnaryOperator<Inlet> change) {
        return kiln.withInlets(kiln.inlets().stream().map(change).toList());
    }

    @Test
    void withoutSpreadTheBandIsTheState() {
        FireBand b = band(kiln, 0, 0);
        FireState s = FireState.of(kiln);
        double[][] pairs = {
            {b.lambda().low(), lambda(kiln)},
            {b.coDry().low(), s.products().dryCo()},
            {b.probeMv().low(), s.products().probeMv()},
            {b.floorPressure().low(), s.balance().floorPressure()},
            {b.lidPressure().low(), s.balance().lidPressure()},
            {b.inletDrive().low(), s.balance().inletDrive().orElseThrow()},
            {b.neutralLevel().low(), s.balance().neutralLevel().orElseThrow()}
        };
        for (double[] p : pairs) {
            assertThat(p[0]).isEqualTo(p[1], within(1e-9 * Math.abs(p[1])));
        }
        assertThat(b.spillShare()).isZero();
        assertThat(b.cleanShare()).isZero();
        FireBand clean = band(Cases.reference(1100, 2, 1, 0, 0), 0, 0);
        assertThat(clean.cleanShare()).isEqualTo(1);
        assertThat(band(kiln.damper(0), 0, 0).spillShare()).isEqualTo(1);
        assertThatThrownBy(() -> new FireUncertainty(Spread.usual(true, true), 1, 19))
                .hasMessageContaining("at least 20 draws");
        assertThat(new FireUncertainty(Spread.usual(true, true), 1, 20)).isNotNull();
    }

    /** All coefficients by one factor: without jet help or leaks the air goes with it, 1 - 0.9 · 0.18 and 1 + 0.9 · 0.08 at next to no gas. */
    @Test
    void coefficients() {
        DraftCase k = Cases.reference(1100, 0.02, 1, 0, 0);
        double[] s = none();
        s[1] = 0.82;
        s[2] = 1.08;
        FireBand b = band(k, s, false);
        assertThat(b.lambda().low() / lambda(k)).isEqualTo(0.838, within(0.004));
        assertThat(b.lambda().high() / lambda(k)).isEqualTo(1.072, within(0.003));
    }

    @Test
    void gasFlowAndThrustGoTogether() {
        lambdas(band(kiln, 3, 0.1), kiln.gasShare(1 + 0.1 * Z), kiln.gasShare(1 - 0.1 * Z));
    }

    @Test
    void holeSizes() {
        double bore = 1e-3;
        lambdas(band(kiln, 0, bore), bored(-Z * bore), bored(Z * bore));
    }

    private DraftCase bored(double by) {
        return inlets(i -> new Inlet(
                        i.name(),
                        i.diameter() + by,
                        i.length(),
                        i.height(),
                        0,
                        i.fuel(),
                        i.gasFlow(),
                        i.jetThrust(),
                        i.momentumShare(),
                        0))
                .withFlues(kiln.flues().stream()
                        .map(f -> new Flue(f.name(), f.diameter() + by, f.length(), f.height(), f.openShare(), 0))
                        .toList());
    }

    /** One drill cuts all holes: inlets and flues are wide together, which moves the air more than one of them wide and the other narrow. */
    @Test
    void inletsAndFluesAreWideTogether() {
        DraftCase k = Cases.build(1100, 4, 1, 0, 0, 3, 0.026, 2, 0.036);
        double by = Z * 1e-3;
        FireBand b = band(k, 0, 1e-3);
        double low = lambda(wider(k, -by, -by));
        double high = lambda(wider(k, by, by));
        assertThat(b.lambda().low()).isEqualTo(low, within(CHANCE / Z * 0.5 * (high - low)));
        assertThat(b.lambda().high()).isEqualTo(high, within(CHANCE / Z * 0.5 * (high - low)));
        double crossed = Math.abs(lambda(wider(k, by, -by)) - lambda(wider(k, -by, by)));
        assertThat(crossed).isLessThan(0.6 * (high - low));
    }

    private static DraftCase wider(DraftCase k, double inlets, double flues) {
        return k.withInlets(k.inlets().stream()
                        .map(i -> Inlet.plain(i.name(), i.diameter() + inlets, i.length(), i.height())
                                .withGas(i.fuel(), i.gasFlow(), 0, 0))
                        .toList())
                .withFlues(k.flues().stream()
                        .map(f -> new Flue(f.name(), f.diameter() + flues, f.length(), f.height(), f.openShare(), 0))
                        .toList());
    }

    @Test
    void damperSetting() {
        lambdas(band(kiln, 5, 0.03), kiln.damper(0.5 - 0.03 * Z), kiln.damper(0.5 + 0.03 * Z));
    }

    @Test
    void temperature() {
        FireBand b = band(kiln, 4, 25);
        double cold =
                DraftBalance.of(kiln.at(kiln.chamberTemperature() - 25 * Z)).lidPressure();
        double hot =
                DraftBalance.of(kiln.at(kiln.chamberTemperature() + 25 * Z)).lidPressure();
        assertThat(b.lidPressure().low()).isEqualTo(Math.min(cold, hot), within(0.004));
        assertThat(b.lidPressure().high()).isEqualTo(Math.max(cold, hot), within(0.004));
    }

    @Test
    void jetHelp() {
        lambdas(band(kiln, 11, 0.4), helped(0.3 - 0.18), helped(0.3 + 0.18));
        // the span is kept whole at both ends of what a share may be
        DraftCase none = helped(0.05);
        lambdas(band(none, 11, 0.4), helped(0.02), helped(0.38));
        lambdas(band(helped(1), 11, 0.4), helped(0.62), helped(0.98));
    }

    private DraftCase helped(double share) {
        return inlets(i -> i.withGas(i.fuel(), i.gasFlow(), i.jetThrust(), share));
    }

    @Test
    void windOnTheFlues() {
        DraftCase k = kiln.withInlets(List.of());
        DraftBalance still = DraftBalance.of(k);
        FireBand b = band(k, 9, 0.8);
        assertThat(b.floorPressure().low()).isEqualTo(still.floorPressure() - 0.8 * Z, within(0.8 * CHANCE));
        assertThat(b.floorPressure().high()).isEqualTo(still.floorPressure() + 0.8 * Z, within(0.8 * CHANCE));
        assertThat(b.inletDrive().low()).isNull();
    }

    @Test
    void windOnAnInlet() {
        DraftCase k = kiln.withFlues(List.of()).withInlets(List.of(Inlet.plain("only", 0.03, 0.064, 0)));
        FireBand b = band(k, 10, 0.1);
        assertThat(b.floorPressure().low()).isEqualTo(-0.1 * Z, within(0.1 * CHANCE));
        assertThat(b.floorPressure().high()).isEqualTo(0.1 * Z, within(0.1 * CHANCE));
    }

    @Test
    void leaks() {
        DraftCase cracked = kiln.withLeaks(List.of(new Crack(0.55, 0, 1.8, 0.064)), List.of());
        FireBand joint = band(cracked, 6, 4e-3);
        lids(joint, joint(0.95 * 4e-3), joint(0.05 * 4e-3));
        FireBand peep = band(kiln, 7, 4e-4);
        lids(peep, peep(0.95 * 4e-4), peep(0.05 * 4e-4));
        DraftCase stated = peep(4e-4);
        lids(band(stated, 8, 0.5), peep(4e-4 * 1.45), peep(4e-4 * 0.55));
    }

    private DraftCase joint(double width) {
        return kiln.withLeaks(List.of(new Crack(0.55, width, 1.8, 0.064)), List.of());
    }

    private DraftCase peep(double area) {
        return kiln.withLeaks(List.of(), List.of(LeakHole.ofArea(0.275, area, 0.06)));
    }

    private static void lids(FireBand b, DraftCase low, DraftCase high) {
        double a = DraftBalance.of(low).lidPressure();
        double z = DraftBalance.of(high).lidPressure();
        assertThat(z - a).isGreaterThan(0.05);
        assertThat(b.lidPressure().low()).isEqualTo(a, within(0.03 * (z - a)));
        assertThat(b.lidPressure().high()).isEqualTo(z, within(0.03 * (z - a)));
    }

    /** A flame not placed is as often above the hole as in it as below it; one that is placed stays. */
    @Test
    void flamePlaces() {
        FireBand b = band(kiln, none(), true);
        lambdas(b, inlets(i -> i.withStream(Spread.STREAM_BELOW)), kiln);
        DraftCase placed = inlets(i -> i.withStream(900));
        assertThat(band(placed, none(), true).lambda().low()).isEqualTo(lambda(placed), within(1e-9));
        assertThat(band(placed, none(), true).lambda().high()).isEqualTo(lambda(placed), within(1e-9));
    }

    @Test
    void quantilesLieOnTheLineBetweenNeighbours() {
        double[] v = {1, 2, 4, 9};
        assertThat(FireUncertainty.quantile(v, 0.25)).isEqualTo(1.75);
        assertThat(FireUncertainty.quantile(v, 0.75)).isEqualTo(5.25);
        assertThat(FireUncertainty.quantile(v, 0.5)).isEqualTo(3);
        assertThat(FireUncertainty.quantile(new double[] {1, 2, 4}, 0.5)).isEqualTo(2);
        assertThat(FireUncertainty.quantile(v, 1)).isEqualTo(9);
        double inf = Double.POSITIVE_INFINITY;
        assertThat(FireUncertainty.quantile(new double[] {1, inf, inf}, 0.75)).isEqualTo(inf);
    }
}
