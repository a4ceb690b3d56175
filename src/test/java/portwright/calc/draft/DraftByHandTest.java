package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import portwright.Edges;
import portwright.calc.combustion.Air;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Fuels;
import portwright.calc.combustion.Products;
import portwright.calc.flow.GasState;

/** Edges of arguments, and what follows from a solved balance by plain algebra or by the plain formulas of holes and cracks. */
class DraftByHandTest {
    private final DraftCase base = Cases.reference(1100, 4, 0.5, 0.2, 0);

    @Test
    void arguments() {
        Edges.hold("(0,inf)", k -> new DraftCase(k, 1, 1, 1, List.of(), List.of(), List.of(), List.of()));
        Edges.hold("(0,inf)", h -> new DraftCase(300, h, 300, 1e5, List.of(), List.of(), List.of(), List.of()));
        Edges.hold("(0,inf)", k -> new DraftCase(300, 1, k, 1e5, List.of(), List.of(), List.of(), List.of()));
        Edges.hold("(0,inf)", p -> new DraftCase(300, 1, 300, p, List.of(), List.of(), List.of(), List.of()));
        Edges.hold("[0,inf)", d -> Inlet.plain("a", d, 0.06, 0));
        Edges.hold("(0,inf)", l -> Inlet.plain("a", 0.03, l, 0));
        Inlet in = Inlet.plain("a", 0.03, 0.06, 0);
        Edges.hold("[0,inf)", gas -> in.withGas(Cases.PROPANE, gas, 0, 0));
        Edges.hold("[0,inf)", thrust -> in.withGas(Cases.PROPANE, 1, thrust, 0));
        Edges.hold("[0,inf)", share -> in.withGas(Cases.PROPANE, 1, 0, share));
        Edges.hold("[0,inf)", in::withStream);
        assertThatThrownBy(() -> in.withOutsidePressure(Double.NaN)).hasMessageContaining("outside pressure at a");
        assertThatThrownBy(() -> Inlet.plain("a", 0.03, 0.06, Double.NaN)).hasMessageContaining("height of a");
        assertThatThrownBy(() -> in.withGas(null, 1, 0, 0)).hasMessageContaining("not named");
        Edges.hold("[0,inf)", d -> new Flue("f", d, 0.06, 0.6, 1, 0));
        Edges.hold("(0,inf)", l -> new Flue("f", 0.04, l, 0.6, 1, 0));
        Edges.hold("[0,1]", share -> new Flue("f", 0.04, 0.06, 0.6, share, 0));
        assertThatThrownBy(() -> new Flue("f", 0.04, 0.06, Double.NaN, 1, 0)).hasMessageContaining("height of f");
        assertThatThrownBy(() -> new Flue("f", 0.04, 0.06, 0.6, 1, Double.NaN)).hasMessageContaining("outside");
        Edges.hold("[0,inf)", w -> new Crack(0, w, 1, 1));
        Edges.hold("[0,inf)", l -> new Crack(0, 1, l, 1));
        Edges.hold("(0,inf)", d -> new Crack(0, 1, 1, d));
        assertThatThrownBy(() -> new Crack(Double.NaN, 1, 1, 1)).hasMessageContaining("height");
        Edges.hold("[0,inf)", d -> new LeakHole(0, d, 1));
        Edges.hold("(0,inf)", l -> new LeakHole(0, 1, l));
        Edges.hold("[0,inf)", a -> LeakHole.ofArea(0, a, 1));
        assertThatThrownBy(() -> new LeakHole(Double.NaN, 1, 1)).hasMessageContaining("height");
        assertThatThrownBy(() -> LeakHole.ofArea(0, -1, 1)).hasMessageContaining("area of the leak");
        Edges.hold("(0,inf)", d -> new DamperPlate.Hole(d, 0));
        Edges.hold("[0,inf)", o -> new DamperPlate.Hole(0.04, o));
        DamperPlate plate = new DamperPlate(List.of(new DamperPlate.Hole(0.04, 0)));
        Edges.hold("[0,1]", plate::travelFor);
    }

    /** A circle of 3 cm² is 19.5441 mm wide. */
    @Test
    void leakByArea() {
        assertThat(LeakHole.ofArea(0, 3e-4, 0.06).diameter()).isEqualTo(0.0195441, within(1e-7));
    }

    /** Holes of 20 and 40 mm, areas 1 : 4, the large one 100 mm behind: 0.2 open when the small one is; half of both 0.5. */
    @Test
    void aPlateWeighsHolesByArea() {
        DamperPlate p = new DamperPlate(List.of(new DamperPlate.Hole(0.02, 0), new DamperPlate.Hole(0.04, 0.1)));
        assertThat(p.openShare(0.05)).isEqualTo(0.2, within(1e-12));
        assertThat(p.openShare(0.12)).isEqualTo(0.2 + 0.8 * 0.5, within(1e-12));
        assertThat(p.travelFor(0.6)).isEqualTo(0.12, within(1e-9));
    }

    @Test
    void whatSpills() {
        assertThat(new InletFlow("a", 0, 0, 0, 0, 0).spills()).isFalse();
        assertThat(new InletFlow("a", -1e-12, 0, 0, 0, 0).spills()).isTrue();
        assertThat(new InletFlow("a", 1, 1, 0, 1e-12, 0).spills()).isTrue();
    }

    /** Every hole passes what the plain formula gives at its own pressure, and a crack its own law; gas off. */
    @Test
    void everyHolePassesItsOwnFlow() {
        DraftCase k = new DraftExchange(base)
                .at(false, 0.5, base.chamberTemperature())
                .balance()
                .kiln()
                .withLeaks(
                        List.of(new Crack(0.55, 1e-3, 1.8, 0.064)),
                        List.of(new LeakHole(0.5, 0.012, 0.006), new LeakHole(0.5, 0.02, 0.09)));
        DraftBalance b = DraftBalance.of(k);
        double room = Air.ROOM.density(k.atmosphericPressure(), k.roomTemperature());
        double roomMu = GasState.viscosity(k.roomTemperature());
        double rho = b.productDensity();
        double mu = GasState.viscosity(k.chamberTemperature());
        double in = 3 * PlainFlow.hole(0.03, 0.064, -b.floorPressure(), room, roomMu);
        assertThat(b.airFlow()).isEqualTo(in, within(1e-6 * in));
        double mouth = b.floorPressure() + 0.614 * b.gradient();
        double flue = 2 * PlainFlow.hole(0.04, 0.064, mouth, rho, mu, 0.5);
        assertThat(b.flueFlow()).isEqualTo(flue, within(1e-6 * flue));
        double side = b.floorPressure() + 0.5 * b.gradient();
        double lid = b.floorPressure() + 0.55 * b.gradient();
        double leak = PlainFlow.hole(0.012, 0.006, side, rho, mu)
                + PlainFlow.hole(0.02, 0.09, side, rho, mu)
                + PlainFlow.crack(1e-3, 1.8, 0.064, lid, rho, mu);
        assertThat(b.leakOut()).isEqualTo(leak, within(1e-6 * leak));
        assertThat(b.leakIn()).isZero();
        double open = 2 * Math.PI / 4 * 0.04 * 0.04 * 0.5;
        assertThat(b.flueVelocity()).isEqualTo(flue / (rho * open), within(1e-5));
        assertThat(b.lidPressure()).isEqualTo(lid, within(1e-12));
        assertThat(b.inlets().get(0).drive()).isEqualTo(-b.floorPressure(), within(1e-12));
        assertThat(b.throughput()).isEqualTo(in, within(1e-6 * in));
    }

    /** The slope that the solver follows is the derivative of the flow, taken by central differences. */
    @Test
    void slopesAreDerivatives() {
        CrackFlow c = new CrackFlow();
        c.width = 1e-3;
        c.length = 1.8;
        c.depth = 0.064;
        for (double drive : new double[] {-3, 0.5, 4}) {
            c.at(drive + 1e-4, 1.2, 1.8e-5, 0.25, 5e-5);
            double up = c.flow;
            c.at(drive - 1e-4, 1.2, 1.8e-5, 0.25, 5e-5);
            double down = c.flow;
            c.at(drive, 1.2, 1.8e-5, 0.25, 5e-5);
            assertThat(c.slope).isEqualTo((up - down) / 2e-4, within(1e-6 * c.slope));
        }
        c.length = 0;
        c.at(4, 1.2, 1.8e-5, 0.25, 5e-5);
        assertThat(c.flow).isZero();
        assertThat(c.slope).isZero();
    }

    /** A fuel that carries its own nitrogen and oxygen: the balance's molar mass is that of the equilibrium's products, mass for mass. */
    @Test
    void molarMassOfAPoorGas() {
        Fuel poor = Fuels.mixture("poor", Map.of("methane", 0.5, "nitrogen", 0.3, "carbon dioxide", 0.2), null);
        for (double flow : new double[] {1.2e-4, 2.4e-4, 4e-4}) {
            FireState s = FireState.of(base.damper(1)
                    .withInlets(base.inlets().stream()
                            .map(i -> i.withGas(poor, flow, 0, 0))
                            .toList()));
            assertThat(s.balance().productMolarMass())
                    .isEqualTo(
                            s.products().molarMass(), within(3e-4 * s.products().molarMass()));
        }
    }

    @Test
    void whatAFireGives() {
        FireState s = FireState.of(base);
        Products p = s.products();
        double mol = s.balance().gasFlow() / Cases.PROPANE.molarMass();
        assertThat(s.shown()).containsSame(p);
        assertThat(s.formal()).isFalse();
        FireState quiet = new DraftExchange(base).at(false, 1, base.chamberTemperature());
        assertThat(quiet.shown()).isEmpty();
        assertThat(quiet.fuelNetW()).isZero();
        // ideal-gas table of air, from memory: 1483.2 kJ/kg at 1373.15 K, 293.2 at 293.15 K; argon taken as nitrogen
        // adds 0.2 %
        assertThat(-quiet.heatW() / quiet.balance().airFlow()).isEqualTo(1190e3, within(4e3));
    }

    /** As many moles of propane as of butane from two burners: a fuel of C3.5 H9; one burner alone names its own. */
    @Test
    void twoFuelsMix() {
        Fuel butane = Fuels.butane();
        Inlet a = base.inlets().get(0).withGas(Cases.PROPANE, Cases.PROPANE.molarMass() * 1e-3, 0, 0);
        Inlet b = base.inlets().get(1).withGas(butane, butane.molarMass() * 1e-3, 0, 0);
        DraftBalance mixed = DraftBalance.of(
                base.damper(1).withInlets(List.of(a, b, base.inlets().get(2).withGas(butane, 0, 0, 0))));
        assertThat(mixed.spills()).isFalse();
        Fuel f = FireState.fuel(mixed);
        assertThat(f.carbon()).isEqualTo(3.5, within(1e-9));
        assertThat(f.hydrogen()).isEqualTo(9, within(1e-9));
        assertThat(f.molarMass()).isEqualTo((Cases.PROPANE.molarMass() + butane.molarMass()) / 2, within(1e-9));
        assertThat(f.netHeat()).isEqualTo((Cases.PROPANE.netHeat() + butane.netHeat()) / 2, within(1e-3));
        assertThat(FireState.fuel(DraftBalance.of(base))).isSameAs(Cases.PROPANE);
        assertThat(FireState.of(mixed.kiln()).fuelNetW())
                .isEqualTo(1e-3 * (Cases.PROPANE.netHeat() + butane.netHeat()), within(1e-3));
    }

    /** Less gas by a share: thrust by its square, the rest as it was. */
    @Test
    void lessGas() {
        Inlet whole = base.inlets().get(0);
        Inlet half = base.gasShare(0.5).inlets().get(0);
        assertThat(half).isEqualTo(whole.withGas(whole.fuel(), whole.gasFlow() / 2, whole.jetThrust() / 4, 0.2));
        assertThat(base.gasShare(0.5).gasFlow()).isEqualTo(base.gasFlow() / 2, within(1e-15));
    }

    /** 30 mm holes: a core of 180 mm, band 120 to 300 mm, cut by a shelf, never below the neutral level nor above the lid. */
    @Test
    void reachOfUnmixedAir() {
        double open = base.damper(1).chamberHeight();
        FireState s = FireState.of(base.damper(1));
        double neutral = s.balance().neutralLevel().orElseThrow();
        assertThat(neutral).isBetween(0.05, 0.55);
        assertThat(OxidisedZone.of(s, null, OptionalDouble.empty()))
                .isEqualTo(new OxidisedZone(Math.max(0.18, neutral), Math.max(0.12, neutral), Math.max(0.3, neutral)));
        assertThat(OxidisedZone.of(s, null, OptionalDouble.of(0.01)))
                .isEqualTo(new OxidisedZone(neutral, neutral, neutral));
        assertThat(OxidisedZone.of(s, band(0.02, 0.2), OptionalDouble.of(0.15)))
                .isEqualTo(new OxidisedZone(Math.max(0.15, neutral), 0.12, 0.2));
        assertThat(OxidisedZone.of(s, band(-3.0, 9.0), OptionalDouble.of(0.01)))
                .isEqualTo(new OxidisedZone(neutral, 0.01, open));
        assertThat(OxidisedZone.of(s, band(null, null), OptionalDouble.of(0.01)))
                .isEqualTo(new OxidisedZone(neutral, neutral, neutral));
    }

    private static FireBand band(Double low, Double high) {
        Range none = new Range(null, null);
        return new FireBand(none, none, none, none, none, none, new Range(low, high), 0, 0);
    }

    @Test
    void theCurveRunsOverTheWholeTravel() {
        DamperCurve c = DamperCurve.of(base, 4, null);
        assertThat(c.kelvin()).isEqualTo(base.chamberTemperature());
        assertThat(c.points().stream().map(DamperCurve.Point::open)).containsExactly(0.25, 0.5, 0.75, 1.0);
        assertThat(c.points().get(1).state().balance()).isEqualTo(DraftBalance.of(base));
        assertThat(c.points().get(1).band()).isNull();
        FireUncertainty draws = new FireUncertainty(Spread.usual(true, false), 1, 20);
        assertThat(DamperCurve.of(base, 1, draws).points().get(0).band()).isNotNull();
        Thread.currentThread().interrupt();
        assertThat(DamperCurve.of(base, 4, null).points()).isEmpty();
        assertThat(Thread.interrupted()).isTrue();
    }

    @Test
    void aStatedLeakChangesTheLeakAlone() {
        Spread usual = Spread.usual(false, true);
        Spread stated = usual.withStatedLeak();
        assertThat(stated.leak()).isEqualTo(0.5);
        assertThat(usual.leak()).isZero();
        assertThat(stated.peepholeArea()).isEqualTo(usual.peepholeArea());
        assertThat(Spread.usual(true, true).gas()).isEqualTo(0.05);
        assertThat(usual.gas()).isEqualTo(0.10);
    }
}
