package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.combustion.Air;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Fuels;
import portwright.calc.combustion.Products;
import portwright.calc.flow.GasState;

/** What enters, burns, spills and stays outside, added up by hand from masses and moles; bands where a figure is missing. */
class DraftSumsTest {
    private static final Spread NO_SPREAD = new Spread(0, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, false);
    private final DraftCase base = Cases.reference(1100, 4, 1, 0, 0);

    private DraftCase with(Inlet... more) {
        List<Inlet> all = new ArrayList<>(base.inlets());
        all.addAll(List.of(more));
        return base.withInlets(all);
    }

    private static Inlet plugged(Fuel fuel, double gas) {
        return Inlet.plain("plugged", 0, 0.064, 0).withGas(fuel, gas, 0, 0);
    }

    private static Spread wind(double pascal) {
        return new Spread(0, 1, 1, 0, 0, 0, 0, 0, 0, pascal, 0, 0, false);
    }

    /** Gas under plugged holes stays outside: it spills, needs no air and heats nothing. */
    @Test
    void gasThatStaysOutsideHeatsNothing() {
        FireState sound = FireState.of(base);
        FireState s = FireState.of(with(plugged(Cases.PROPANE, 2e-5), plugged(Fuels.methane(), 3e-5)));
        assertThat(s.balance().spills()).isTrue();
        assertThat(s.products()).isNull();
        assertThat(s.balance().gasSpilled()).isEqualTo(5e-5, within(1e-15));
        assertThat(s.balance().airNeed()).isEqualTo(sound.balance().airNeed(), within(1e-15));
        assertThat(s.balance().gasFlow()).isEqualTo(sound.balance().gasFlow(), within(1e-15));
        assertThat(s.heatW()).isEqualTo(sound.heatW(), within(1e-6 * sound.heatW()));
        assertThat(s.fuelNetW()).isEqualTo(4000, within(0.1));
    }

    /** With every burner's hole plugged the draft only cools, as with the gas off. */
    @Test
    void allGasOutsideOnlyCools() {
        Inlet open = Inlet.plain("open", 0.03, 0.064, 0);
        FireState off = FireState.of(base.withInlets(List.of(open)));
        FireState s = FireState.of(base.withInlets(List.of(open, plugged(Cases.PROPANE, 2e-5))));
        assertThat(off.heatW()).isLessThan(-500);
        assertThat(s.heatW()).isEqualTo(off.heatW(), within(1e-9));
    }

    /** Joints and holes low in the wall draw air by their own laws; all that enters is air, and all of it leaves by the flues. */
    @Test
    void lowLeaksDrawAir() {
        DraftCase k = base.withLeaks(
                List.of(new Crack(0, 1e-3, 1.8, 0.064), new Crack(0.01, 0.8e-3, 1, 0.064)),
                List.of(new LeakHole(0, 0.012, 0.06), new LeakHole(0.01, 0.02, 0.09)));
        DraftBalance b = DraftBalance.of(k);
        double room = Air.ROOM.density(k.atmosphericPressure(), k.roomTemperature());
        double mu = GasState.viscosity(k.roomTemperature());
        double low = -b.floorPressure();
        double higher = low - 0.01 * b.gradient();
        double leaks = PlainFlow.crack(1e-3, 1.8, 0.064, low, room, mu)
                + PlainFlow.crack(0.8e-3, 1, 0.064, higher, room, mu)
                + PlainFlow.hole(0.012, 0.06, low, room, mu)
                + PlainFlow.hole(0.02, 0.09, higher, room, mu);
        assertThat(leaks).isPositive();
        assertThat(b.leakIn()).isEqualTo(leaks, within(1e-9 * leaks));
        double inlets = b.inlets().stream().mapToDouble(InletFlow::air).sum();
        assertThat(b.airFlow()).isEqualTo(inlets + leaks, within(1e-9 * leaks));
        assertThat(b.throughput()).isEqualTo(b.airFlow() + b.gasFlow(), within(1e-12));
        assertThat(b.flueFlow()).isEqualTo(b.throughput(), within(1e-9 * b.throughput()));
        assertThat(b.leakOut()).isZero();
    }

    /** Leaks alone, without inlet and flue: what the low ones draw the high ones give. */
    @Test
    void aKilnOfCracksAloneBreathes() {
        DraftCase k = base.withInlets(List.of())
                .withFlues(List.of())
                .withLeaks(List.of(new Crack(0, 1e-3, 1.8, 0.064), new Crack(0.55, 1e-3, 1.8, 0.064)), List.of());
        DraftBalance b = DraftBalance.of(k);
        assertThat(b.sealed()).isFalse();
        assertThat(b.floorPressure()).isBetween(-0.55 * b.gradient(), 0.0);
        assertThat(b.leakIn()).isPositive().isEqualTo(b.leakOut(), within(1e-12 * b.leakOut()));
        assertThat(DraftBalance.of(
                                k.withLeaks(List.of(new Crack(0, 0, 1.8, 0.064), new Crack(0, 1, 0, 0.06)), List.of()))
                        .sealed())
                .isTrue();
    }

    /** Two gases: each needs its own air, by its own atoms: 5 mol of oxygen a mol of propane, 2 a mol of methane. */
    @Test
    void eachGasNeedsItsOwnAir() {
        Fuel methane = Fuels.methane();
        double mol = 5e-4;
        Inlet a = base.inlets().get(0).withGas(Cases.PROPANE, mol * Cases.PROPANE.molarMass(), 0, 0);
        Inlet b = base.inlets().get(1).withGas(methane, mol * methane.molarMass(), 0, 0);
        FireState s =
                FireState.of(base.withInlets(List.of(a, b, base.inlets().get(2).withGas(null, 0, 0, 0))));
        double need = mol * (5 + 2) / 0.2095 * 0.0289651;
        assertThat(s.balance().airNeed()).isEqualTo(need, within(1e-9 * need));
        assertThat(s.lambda().orElseThrow()).isEqualTo(s.balance().airFlow() / need, within(1e-9));
        assertThat(s.balance().productMolarMass())
                .isEqualTo(s.products().molarMass(), within(3e-4 * s.products().molarMass()));
        FireBand band = new FireUncertainty(NO_SPREAD, 1, 20).of(s.balance().kiln());
        assertThat(band.coDry().high()).isEqualTo(s.products().dryCo(), within(1e-9));
        assertThat(band.probeMv().high()).isEqualTo(s.products().probeMv(), within(1e-6));
    }

    /** So rich that oxygen does not reach for CO: moles by atoms are CO, H2 and N2, the carbon left over rides along as mass. */
    @Test
    void carbonLeftOverIsMassNotGas() {
        int seen = 0;
        for (double open = 0.02; open < 0.4; open += 0.01) {
            FireState s = FireState.of(Cases.reference(1100, 9, open, 1, 0));
            double lambda = s.lambda().orElse(1);
            if (lambda > 0.02 && lambda < 0.28) {
                seen++;
                double air = lambda * 5 / 0.2095;
                double gas = 2 * 5 * lambda + 4 + air * 0.7905;
                double mass = Cases.PROPANE.molarMass() + air * 0.0289651;
                assertThat(s.balance().productMolarMass()).isEqualTo(mass / gas, within(1e-6 * mass / gas));
                Products p = s.products();
                assertThat(p.solidCarbon()).isPositive();
                assertThat(p.molarMass()).isEqualTo(mass / gas, within(2e-3 * mass / gas));
            }
        }
        assertThat(seen).isGreaterThan(3);
    }

    /** A kiln that blows out of its inlets as it stands, and draws in half of all winds: the fire of those draws is that of its gas. */
    @Test
    void gasThatEntersInSomeDrawsOnly() {
        DraftCase against = with().withFlues(base.flues().stream()
                .map(f -> new Flue(f.name(), 0.04, 0.064, 0.614, 1, 6.5))
                .toList());
        DraftCase first = against.withInlets(List.of(
                Inlet.plain("bare", 0.01, 0.064, 0),
                against.inlets().get(0),
                against.inlets().get(1)));
        assertThat(DraftBalance.of(first).gasFlow()).isZero();
        FireBand b = new FireUncertainty(wind(6), 1, 400).of(first);
        assertThat(b.spillShare()).isBetween(0.4, 0.7);
        assertThat(b.cleanShare()).isBetween(0.05, 0.55);
        assertThat(b.lambda().low()).isNull();
        assertThat(b.lambda().high()).isGreaterThan(1);
        assertThat(b.coDry().low()).isBetween(0.0, 1e-3);
        assertThat(b.coDry().high()).isNull();
    }

    /** Inlets in the wall, higher one by one, in wind: each is driven by the pressure at its own height, and the band's drive is the least. */
    @Test
    void wallInletsAreDrivenAtTheirOwnHeight() {
        List<Inlet> in = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            Inlet h = base.inlets().get(i);
            in.add(Inlet.plain("wall " + i, 0.03, 0.064, 0.02 + 0.03 * i)
                    .withOutsidePressure(0.1 * i)
                    .withGas(h.fuel(), h.gasFlow(), h.jetThrust(), 0.2));
        }
        DraftBalance b = DraftBalance.of(base.withInlets(in));
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            Inlet h = in.get(i);
            double jet = 0.2 * h.jetThrust() / (Math.PI / 4 * 0.03 * 0.03);
            double drive = 0.1 * i + jet - b.floorPressure() - b.gradient() * (0.02 + 0.03 * i);
            assertThat(b.inlets().get(i).drive()).isEqualTo(drive, within(1e-9));
            least = Math.min(least, drive);
        }
        FireBand band = new FireUncertainty(NO_SPREAD, 1, 20).of(b.kiln());
        assertThat(band.inletDrive().low()).isEqualTo(least, within(1e-9));
        assertThat(band.lambda().high()).isEqualTo(b.lambda().orElseThrow(), within(1e-9));
    }

    /** Below 200 K the tables of the gases end: the draft has a band, CO and probe have none. */
    @Test
    void belowTheTablesOnlyTheDraftHasABand() {
        DraftCase frozen = base.at(190)
                .withFlues(base.flues().stream()
                        .map(f -> new Flue(f.name(), 0.04, 0.064, 0.614, 1, -30))
                        .toList());
        FireBand b = new FireUncertainty(NO_SPREAD, 1, 20).of(frozen);
        assertThat(b.lambda().low())
                .isEqualTo(DraftBalance.of(frozen).lambda().orElseThrow(), within(1e-9))
                .isGreaterThan(Products.LAMBDA_VALID);
        assertThat(b.coDry()).isEqualTo(new Range(null, null));
        assertThat(b.probeMv()).isEqualTo(new Range(null, null));
        assertThat(new FireUncertainty(NO_SPREAD, 1, 20)
                        .of(frozen.at(200))
                        .coDry()
                        .low())
                .isNotNull();
    }

    /** As warm as the room and without gas there is no neutral level, in no draw; without inlets there is no drive. */
    @Test
    void figuresThatNoDrawHas() {
        FireBand b = new FireUncertainty(NO_SPREAD, 1, 20)
                .of(Cases.reference(20, 0, 1, 0, 0).withInlets(List.of()));
        assertThat(b.neutralLevel()).isEqualTo(new Range(null, null));
        assertThat(b.inletDrive()).isEqualTo(new Range(null, null));
        assertThat(b.floorPressure().low()).isEqualTo(0, within(1e-9));
    }

    @Test
    void aBandThatNobodyWaitsForIsCalledOff() {
        FireUncertainty draws = new FireUncertainty(NO_SPREAD, 1, 20);
        Thread.currentThread().interrupt();
        assertThatThrownBy(() -> draws.of(base)).isInstanceOf(CancellationException.class);
        assertThat(Thread.interrupted()).isTrue();
    }

    /** Halving alone would take 43 evaluations for one molar mass (13 digits), over a hundred for a kiln; the steps keep it under twenty. */
    @Test
    @Tag("regression")
    void fewEvaluationsFindTheBalance() {
        DraftSolver s = new DraftSolver(RandomKilns.of(0));
        int many = 3000;
        for (long seed = 0; seed < many; seed++) {
            s.set(RandomKilns.of(seed));
            s.solve();
        }
        assertThat(s.evaluations).isBetween(many, 18 * many);
        DraftCase wide = Cases.reference(1150, 5, 1, 0.2, 300);
        DraftSolver slide = new DraftSolver(wide);
        int before = 0;
        for (int i = 20; i <= 1000; i++) {
            slide.set(wide.damper(i / 1000.0));
            slide.solve();
            assertThat(slide.evaluations - before).as("open " + i / 1000.0).isLessThan(40);
            before = slide.evaluations;
        }
        assertThat(slide.evaluations).isLessThan(19 * 981);
    }
}
