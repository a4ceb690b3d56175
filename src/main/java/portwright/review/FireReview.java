package portwright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.DamperCurve;
import portwright.calc.draft.DamperPlate;
import portwright.calc.draft.DraftCase;
import portwright.calc.draft.DraftExchange;
import portwright.calc.draft.FireBand;
import portwright.calc.draft.FireState;
import portwright.calc.draft.FireUncertainty;
import portwright.calc.draft.OxidisedZone;
import portwright.calc.draft.Spread;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.OpenSpell;
import portwright.geometry.KilnGeometry;
import portwright.geometry.ShelfPlate;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Role;
import portwright.model.ShelfShape;

/**
 * Fire figures of a design. States and bands are computed when first asked for and kept; asking again is free. May be asked
 * from several threads.
 */
public final class FireReview {
    /** Every band of every design rests on these random numbers. */
    public static final long SEED = 20260101;

    private final Design design;
    private final KilnGeometry geometry;
    private final Known<DraftCase> kiln;
    private final Known<List<AskedState>> asked;
    private final double damperOpen;
    private final Spread spread;
    private final int draws;
    private final Map<List<Double>, FireBand> bands = new HashMap<>();
    private final Map<Asked, LevelSetting> levels = new ConcurrentHashMap<>();
    private FireUncertainty uncertainty;
    private List<FireSetting> settings;

    private record Asked(AtmosphereLevel level, double kelvin) {}

    private FireReview(
            Design design,
            KilnGeometry geometry,
            Known<DraftCase> kiln,
            Known<List<AskedState>> asked,
            double damperOpen,
            Spread spread,
            int draws) {
        this.design = design;
        this.geometry = geometry;
        this.kiln = kiln;
        this.asked = asked;
        this.damperOpen = damperOpen;
        this.spread = spread;
        this.draws = draws;
    }

    /** The draft's input alone, for the firing's heat balance. */
    static Known<DraftCase> draft(Design design, KilnGeometry geometry, Assumptions assume) {
        return new FireCase(design, geometry, assume).build(BurnerGas.of(design));
    }

    /** What flows in the firing's heat balance: the draft where it is known, else the leaks alone. */
    static GasExchange gas(Design design, KilnGeometry geometry, Known<DraftCase> draft) {
        return draft.known()
                ? new DraftGas(
                        draft.value(),
                        OpenSpell.lightingS(
                                UnlitFigures.purge(geometry, draft.value()).seconds()))
                : new DraftGas(
                        new FireCase(design, geometry, new Assumptions()).leaksOnly(), OpenSpell.lightingS(Double.NaN));
    }

    /** Prepares the fire of a design. */
    public static FireReview of(Design design, KilnGeometry geometry, SupplyReview supply, Assumptions assume) {
        FireCase c = new FireCase(design, geometry, assume);
        Known<DraftCase> kiln = c.build(supply.burners());
        Known<List<AskedState>> asked = supply.steps().known()
                ? Known.of(AskedState.of(supply.steps().value()))
                : Known.lacks(supply.steps().needs());
        boolean stated = design.damper() != null && design.damper().open() != null;
        if (stated
                && asked.known()
                && !asked.value().isEmpty()
                && asked.value().stream().allMatch(a -> a.level() != null)) {
            assume.add(
                    "damper.open",
                    "not used",
                    "every gas step asks for an atmosphere: the damper is set for it, not left at the stated share");
        }
        boolean gauge = design.burners() != null
                && !design.burners().isEmpty()
                && design.burners().stream().allMatch(b -> b.pressure() != null);
        Spread usual = Spread.usual(gauge, c.flamePlaceUnknown());
        return new FireReview(
                design,
                geometry,
                kiln,
                asked,
                c.damperOpen(),
                c.leakStated() ? usual.withStatedLeak() : usual,
                FireUncertainty.USUAL_DRAWS);
    }

    /** The draft's input at full gas; lacks fields while a burner's gas is not known. */
    public Known<DraftCase> kiln() {
        return kiln;
    }

    /** Gas steps with their levels and temperatures; empty when no step burns gas. */
    public Known<List<AskedState>> asked() {
        return asked;
    }

    /** Open share that the design states. */
    public double damperOpen() {
        return damperOpen;
    }

    /** Whether a gas step asks no level while the design does not say how far the damper stands open: then no one knows how it burns. */
    public boolean damperUnstated() {
        return (design.damper() == null || design.damper().open() == null)
                && asked.known()
                && asked.value().stream().anyMatch(a -> a.level() == null);
    }

    /** Whether gas flows at all. */
    public boolean gas() {
        return kiln.known() && kiln.value().gasFlow() > 0;
    }

    /** Chamber temperature when gas opens, K; empty without gas steps. */
    public OptionalDouble gasOn() {
        return asked.known()
                ? asked.value().stream().mapToDouble(AskedState::litK).findFirst()
                : OptionalDouble.empty();
    }

    /** Highest chamber temperature with gas, K; empty without gas steps. */
    public OptionalDouble top() {
        return asked.known()
                ? asked.value().stream()
                        .mapToDouble(a -> Math.max(a.startK(), a.endK()))
                        .max()
                : OptionalDouble.empty();
    }

    /** Fire at a chamber temperature, K, an open share and a share of the gas. */
    public FireState state(double kelvin, double open, double gasShare) {
        return FireState.of(at(kelvin, open, gasShare));
    }

    /** Middle value of lambda with all gas; empty without gas and when an inlet spills. */
    public OptionalDouble lambda(double kelvin, double open) {
        return state(kelvin, open).lambda();
    }

    /** The 5 % end of lambda with all gas; null without gas, when an inlet spills, and where there is none. */
    public Double lambdaLow(double kelvin, double open) {
        return lambda(kelvin, open).isEmpty()
                ? null
                : band(kelvin, open).lambda().low();
    }

    /** Fire with all gas. */
    public FireState state(double kelvin, double open) {
        return state(kelvin, open, 1);
    }

    /** Band of the same state. */
    public synchronized FireBand band(double kelvin, double open, double gasShare) {
        return bands.computeIfAbsent(List.of(kelvin, open, gasShare), k -> {
            uncertainty = uncertainty == null ? new FireUncertainty(spread, SEED, draws) : uncertainty;
            return uncertainty.of(at(kelvin, open, gasShare));
        });
    }

    /** Band with all gas. */
    public FireBand band(double kelvin, double open) {
        return band(kelvin, open, 1);
    }

    /** The damper's curve with bands at a chamber temperature, K. Takes up to a second: run it in the background. */
    public DamperCurve curve(double kelvin) {
        return DamperCurve.of(at(kelvin, 1, 1), DamperCurve.USUAL_POINTS, new FireUncertainty(spread, SEED, draws));
    }

    /** The damper's curve without bands, quick. */
    public DamperCurve quickCurve(double kelvin) {
        return DamperCurve.of(at(kelvin, 1, 1), 4 * DamperCurve.USUAL_POINTS, null);
    }

    /** Damper settings of every level at a chamber temperature, K, lean to rich. */
    public List<LevelSetting> levels(double kelvin) {
        List<LevelSetting> out = new ArrayList<>();
        for (AtmosphereLevel level : AtmosphereLevel.values()) {
            if (level != AtmosphereLevel.BEYOND && level != AtmosphereLevel.OXIDIZING) {
                out.add(level(level, kelvin));
            }
        }
        return out;
    }

    /** Damper setting of one level, K. */
    public LevelSetting level(AtmosphereLevel level, double kelvin) {
        return levels.computeIfAbsent(
                new Asked(level, kelvin),
                a -> LevelSetting.of(level, kelvin, new DraftExchange(kiln.value()), plate()));
    }

    /** Plate setting of a level with the band it may stand in; the design must have flues. */
    public PlateSetting plateSetting(AtmosphereLevel level, double kelvin) {
        LevelSetting s = level(level, kelvin);
        return PlateSetting.of(s, band(kelvin, s.openMid()).lambda(), kelvin, new DraftExchange(kiln.value()), plate());
    }

    /** Every state that the gas steps ask for, at start and end of each; empty when nothing is asked or no gas flows. */
    public synchronized List<FireSetting> settings() {
        if (settings == null) {
            List<FireSetting> out = new ArrayList<>();
            if (gas() && asked.known()) {
                DraftExchange draft = new DraftExchange(kiln.value());
                for (AskedState a : asked.value()) {
                    for (double k :
                            a.startK() == a.endK() ? new double[] {a.endK()} : new double[] {a.startK(), a.endK()}) {
                        double open =
                                a.level() == null ? damperOpen : draft.damperFor(LevelSetting.middle(a.level()), k);
                        out.add(new FireSetting(a.step(), a.level(), k, open));
                    }
                }
            }
            settings = List.copyOf(out);
        }
        return settings;
    }

    /** The plate over the flues; null without flues. */
    public DamperPlate plate() {
        return FluePlate.of(design, geometry);
    }

    /** How far up unmixed air reaches. */
    public OxidisedZone oxidisedZone(double kelvin, double open) {
        return OxidisedZone.of(state(kelvin, open), band(kelvin, open), coveringShelf());
    }

    /** Underside of the lowest shelf that lies over every floor inlet, m. */
    private OptionalDouble coveringShelf() {
        return geometry.shelves().stream()
                .filter(this::coversInlets)
                .mapToDouble(s -> s.bottom() / 1000)
                .min();
    }

    private boolean coversInlets(ShelfPlate plate) {
        if (plate.shelf().shape() != ShelfShape.ROUND || plate.shelf().diameter() == null) {
            return false;
        }
        double x = plate.shelf().at() == null ? 0 : plate.shelf().at().xMm();
        double y = plate.shelf().at() == null ? 0 : plate.shelf().at().yMm();
        double r = plate.shelf().diameter().mm() / 2;
        return geometry.holes().stream()
                .filter(h -> h.port().role() == Role.INLET)
                .allMatch(h -> h.face().on() == On.FLOOR
                        && Math.hypot(h.centre().x() - x, h.centre().y() - y) <= r);
    }

    private DraftCase at(double kelvin, double open, double gasShare) {
        DraftCase k = kiln.value().at(kelvin).damper(open);
        return gasShare == 1 ? k : k.gasShare(gasShare);
    }
}
