package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.Fuel;
import portwright.calc.draft.Crack;
import portwright.calc.draft.DraftCase;
import portwright.calc.draft.Flue;
import portwright.calc.draft.Inlet;
import portwright.calc.draft.LeakHole;
import portwright.calc.draft.Spread;
import portwright.calc.flow.GasState;
import portwright.calc.flow.Jet;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Outline;
import portwright.geometry.Pt;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.FlameAt;
import portwright.model.On;
import portwright.model.Role;
import portwright.model.Room;
import portwright.units.Celsius;
import portwright.units.Kind;
import portwright.units.Quantity;

/** Turns a design into the draft's input, and lists what it assumed. */
final class FireCase {
    /** Temperature that the case carries until someone asks for another, K. */
    static final double ANY_KELVIN = 1000 + Celsius.ZERO_C;

    private static final double MM = 1e-3;
    private static final double GAS_K = 288.15;
    private static final double PEEPHOLE_M2 = 0.5e-4;
    private static final double VENTURI = 0.2;
    /** A stated leak is taken as a sharp-edged opening, discharge coefficient about 0.6, so that it counts by its area. */
    private static final double LEAK_EDGE_M = 1e-3;

    private final Design design;
    private final KilnGeometry geometry;
    private final Assumptions assume;

    FireCase(Design design, KilnGeometry geometry, Assumptions assume) {
        this.design = design;
        this.geometry = geometry;
        this.assume = assume;
    }

    /** The kiln at full gas with its damper as the design says. */
    Known<DraftCase> build(Known<List<BurnerGas>> burners) {
        if (!burners.known()) {
            return Known.lacks(burners.needs());
        }
        Room room = design.room();
        double air = roomKelvin(room);
        Quantity altitude = assume.or(
                room == null ? null : room.altitude(),
                "room.altitude",
                "0 m",
                Kind.LENGTH,
                "sea level; thinner air makes every flame richer");
        double pressure = GasState.pressureAtAltitude(altitude.metres());
        double height = geometry.height() * MM;
        List<Inlet> inlets = new ArrayList<>();
        List<Flue> flues = new ArrayList<>();
        double open = damperOpen();
        for (Hole h : geometry.holes()) {
            On on = h.face().on();
            double length = geometry.thickness(on) * MM;
            double z = on == On.FLOOR ? 0 : on == On.LID ? height : h.centre().y() * MM;
            if (h.port().role() == Role.FLUE) {
                flues.add(new Flue(h.name(), h.diameter() * MM, length, on == On.LID ? height + length : z, open, 0));
            } else {
                inlets.add(withBurners(Inlet.plain(h.name(), h.diameter() * MM, length, z), burners.value(), pressure));
            }
        }
        return Known.of(leaks(new DraftCase(ANY_KELVIN, height, air, pressure, inlets, flues, List.of(), List.of())));
    }

    /** The kiln with every port plugged: its leaks alone. Needs no burner. */
    DraftCase leaksOnly() {
        Quantity altitude = design.room() == null ? null : design.room().altitude();
        return leaks(new DraftCase(
                ANY_KELVIN,
                geometry.height() * MM,
                roomKelvin(design.room()),
                GasState.pressureAtAltitude(altitude == null ? 0 : altitude.metres()),
                List.of(),
                List.of(),
                List.of(),
                List.of()));
    }

    /** Open share of the flues that the design states. */
    double damperOpen() {
        return assume.or(
                        design.damper() == null ? null : design.damper().open(),
                        "damper.open",
                        "100 %",
                        Kind.SHARE,
                        "flues fully open")
                .share();
    }

    /** Whether some burner with gas does not say where its flame burns. */
    boolean flamePlaceUnknown() {
        return design.burners() != null && design.burners().stream().anyMatch(b -> b.flameAt() == null);
    }

    private double roomKelvin(Room room) {
        if (room != null && room.temperature() != null) {
            return room.temperature().si();
        }
        if (room != null && room.outdoor() != null) {
            return room.outdoor().si();
        }
        return assume.or(
                        null,
                        "room.temperature",
                        "20 °C",
                        Kind.TEMPERATURE,
                        "temperature of the air that the kiln draws")
                .si();
    }

    private Inlet withBurners(Inlet hole, List<BurnerGas> burners, double pressure) {
        double flow = 0;
        double thrust = 0;
        double helped = 0;
        double stream = 0;
        Fuel fuel = null;
        for (int i = 0; i < burners.size(); i++) {
            BurnerGas g = burners.get(i);
            Burner b = g.burner();
            if (!hole.name().equals(b.port())) {
                continue;
            }
            double j = thrust(g, pressure);
            thrust += j;
            helped += j * momentumShare(b, j > 0, "burners[" + design.burners().indexOf(b) + "].head");
            flow += g.kgPerS();
            fuel = g.fuel();
            stream = Math.max(stream, stream(b));
            if (b.flameAt() == null) {
                assume.add(
                        "burners[" + design.burners().indexOf(b) + "].flameAt",
                        "chamber",
                        "middle value with cold air in the hole; the band draws all three places");
            }
        }
        return hole.withGas(fuel, flow, thrust, thrust > 0 ? helped / thrust : 0)
                .withStream(stream);
    }

    private double thrust(BurnerGas g, double pressure) {
        Burner b = g.burner();
        Quantity gauge = b.pressure() != null
                ? b.pressure()
                : design.supply() == null ? null : design.supply().pressure();
        if (b.heatNet() != null || b.heatGross() != null || b.jet() == null || gauge == null) {
            return 0;
        }
        return new Jet(g.fuel().molarMass(), g.fuel().isentropicExponent(), GAS_K, pressure)
                .momentum(g.kgPerS(), gauge.si());
    }

    private double momentumShare(Burner b, boolean jet, String field) {
        if (b.head() == null) {
            if (jet) {
                assume.add(field, "ported", "the jet's momentum is counted as lost in the burner head");
            }
            return 0;
        }
        return b.head() == BurnerHead.BARE ? 1 : b.head() == BurnerHead.VENTURI ? VENTURI : 0;
    }

    private static double stream(Burner b) {
        return b.flameAt() == FlameAt.HOLE
                ? Spread.STREAM_IN_HOLE
                : b.flameAt() == FlameAt.BELOW ? Spread.STREAM_BELOW : 0;
    }

    /** Whether the design states its leak area. */
    boolean leakStated() {
        return design.kiln().leakArea() != null;
    }

    /**
     * Leak area: 0.5 cm² a spyhole at its height, at most half of it; the rest stands under the lid. A stated area is open
     * area of gaps and flows like a hole; the assumed one is a tight lid joint, long and narrow, which passes far less.
     */
    private DraftCase leaks(DraftCase k) {
        double area = assume.or(
                        design.kiln().leakArea(),
                        "kiln.leakArea",
                        "5 cm2",
                        Kind.AREA,
                        "hairline lid joint and plugged spyholes of a sound kiln, which pass little; a stated area flows"
                                + " like an open hole; own judgement")
                .si();
        List<Double> heights = new ArrayList<>();
        if (design.kiln().fittings() != null) {
            design.kiln().fittings().stream()
                    .filter(f -> f.kind() == FittingKind.SPYHOLE && f.on() == On.WALL && f.at() != null)
                    .forEach(f -> heights.add(f.at().yMm() * MM));
        }
        double wall = geometry.thickness(On.WALL) * MM;
        double each = heights.isEmpty() ? 0 : Math.min(PEEPHOLE_M2, area / 2 / heights.size());
        double rest = area - each * heights.size();
        double length = leakStated() ? LEAK_EDGE_M : wall;
        List<LeakHole> holes = new ArrayList<>();
        heights.forEach(z -> holes.add(LeakHole.ofArea(z, each, length)));
        if (leakStated()) {
            holes.add(LeakHole.ofArea(k.chamberHeight(), rest, length));
            return k.withLeaks(List.of(), holes);
        }
        double joint = perimeter(geometry.inner()) * MM;
        return k.withLeaks(List.of(new Crack(k.chamberHeight(), rest / joint, joint, wall)), holes);
    }

    private static double perimeter(Outline o) {
        double sum = 0;
        List<Pt> p = o.points();
        for (int i = 0; i < p.size(); i++) {
            sum += p.get(i).distance(p.get((i + 1) % p.size()));
        }
        return sum;
    }
}
