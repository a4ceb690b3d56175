package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import portwright.Changed;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.LimitsInForce;
import portwright.check.NotChecked;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.LimitTable;
import portwright.model.Atmosphere;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.Damper;
import portwright.model.DamperPlate;
import portwright.model.Design;
import portwright.model.FiringPlan;
import portwright.model.FiringStep;
import portwright.model.FlameAt;
import portwright.model.Fuel;
import portwright.model.Heat;
import portwright.model.Jet;
import portwright.model.Room;
import portwright.model.RoomPlace;
import portwright.review.Review;
import portwright.units.Kind;
import portwright.units.Quantity;

/** A kiln to run one fire rule on: eight-sided, 17 in across, two floor inlets and two lid flues unless said otherwise. */
final class FireBench {
    private static final LimitTable TABLE = LimitTable.load();

    final TestKiln kiln = TestKiln.polygon(8, "17 in");
    double inletMm = 35;
    double flueMm = 38;
    double flueApartMm = 200;
    double heatKw = 3.2;
    boolean burners = true;
    boolean steps = true;
    String jet;
    BurnerHead head;
    RoomPlace place = RoomPlace.OUTDOORS;
    String wind = "0 m/s";
    String altitude = "0 m";
    String open = "100 %";
    double wallMm;
    FlameAt flameAt = FlameAt.CHAMBER;
    DamperPlate plate = new DamperPlate(mm(16), mm(100), mm(150), false);
    final List<FiringStep> firing = new ArrayList<>();

    static Quantity mm(double v) {
        return TestKiln.mm(v);
    }

    static Quantity q(String text, Kind kind) {
        return Quantity.parse(text, kind);
    }

    FireBench step(String to, Heat heat, Atmosphere level) {
        firing.add(new FiringStep(
                q(to, Kind.TEMPERATURE),
                null,
                q("80 °C/h", Kind.TEMPERATURE_RATE),
                false,
                null,
                heat,
                null,
                true,
                null,
                level));
        return this;
    }

    FireBench usual(Atmosphere level) {
        return step("900 °C", Heat.ELECTRIC, null).step("1200 °C", Heat.BOTH, level);
    }

    Design design() {
        kiln.ports.clear();
        if (kiln.elements.isEmpty()) {
            kiln.wallElement("E1", 200, 12, 12, 0, null);
        }
        if (inletMm > 0 && wallMm > 0) {
            kiln.wallInlet("inlet A", 1, 0, wallMm, inletMm).wallInlet("inlet B", 5, 0, wallMm, inletMm);
        } else if (inletMm > 0) {
            kiln.inlet("inlet A", -100, 0, inletMm).inlet("inlet B", 100, 0, inletMm);
        }
        if (flueMm > 0) {
            kiln.flue("flue A", 0, flueApartMm / 2, flueMm).flue("flue B", 0, -flueApartMm / 2, flueMm);
        }
        List<Burner> list = null;
        if (burners) {
            list = List.of(burner("burner A", "inlet A"), burner("burner B", "inlet B"));
        }
        Design d = kiln.build();
        Room room = new Room(
                place,
                null,
                q("20 °C", Kind.TEMPERATURE),
                null,
                wind == null ? null : q(wind, Kind.SPEED),
                altitude == null ? null : q(altitude, Kind.LENGTH),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                true,
                null);
        return Changed.of(d)
                .burners(list)
                .damper(new Damper(open == null ? null : q(open, Kind.SHARE), plate))
                .supply(null)
                .room(room)
                .firing(steps ? new FiringPlan(null, null, firing, null) : null)
                .design();
    }

    private Burner burner(String name, String port) {
        Quantity heat = jet == null ? q(heatKw / 2 + " kW", Kind.POWER) : null;
        Jet bore = jet == null ? null : new Jet(jet, q(jet, Kind.LENGTH), null);
        return new Burner(
                name,
                port,
                Fuel.PROPANE,
                null,
                bore,
                null,
                null,
                jet == null ? null : q("11 inH2O", Kind.PRESSURE),
                heat,
                null,
                head,
                null,
                null,
                null,
                null,
                null,
                flameAt,
                null);
    }

    FireBench limit(String rule, String name, double value) {
        kiln.limit(rule, name, value);
        return this;
    }

    List<Finding> run(Rule rule) {
        Findings out = new Findings();
        Design d = design();
        rule.check(Review.of(d), new LimitsInForce(TABLE, d), out);
        return out.findings();
    }

    List<NotChecked> lacks(Rule rule) {
        Findings out = new Findings();
        Design d = design();
        rule.check(Review.of(d), new LimitsInForce(TABLE, d), out);
        assertThat(out.findings()).isEmpty();
        return out.notChecked();
    }

    /** Fields that the rule asks for although it could compute a finding. */
    List<String> asks(Rule rule) {
        Findings out = new Findings();
        Design d = design();
        rule.check(Review.of(d), new LimitsInForce(TABLE, d), out);
        return out.notChecked().stream().flatMap(n -> n.needs().stream()).toList();
    }

    static List<Finding> of(List<Finding> all, Severity severity) {
        return all.stream().filter(f -> f.severity() == severity).toList();
    }

    /** At exactly the measured value as limit the rule is silent at that severity; a millionth stricter it fires. */
    void edge(Rule rule, String name, Severity severity, double measured, int stricter) {
        limit(rule.id(), name, measured);
        assertThat(of(run(rule), severity)).as("at the limit").isEmpty();
        limit(rule.id(), name, measured + stricter * Math.abs(measured) * 1e-6);
        assertThat(of(run(rule), severity)).as("just beyond").isNotEmpty().allMatch(Finding::limitSetByUser);
    }
}
