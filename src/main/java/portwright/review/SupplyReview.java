package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import portwright.calc.supply.Drum;
import portwright.calc.supply.Liquid;
import portwright.calc.supply.SupplyRun;
import portwright.data.CylinderSize;
import portwright.data.LpGas;
import portwright.model.Burner;
import portwright.model.Cylinder;
import portwright.model.Design;
import portwright.model.Fuel;
import portwright.model.Supply;
import portwright.units.Kind;
import portwright.units.Quantity;

/**
 * Supply figures of a design.
 *
 * @param burners gas of each burner
 * @param steps the firing's steps with their lengths
 * @param bottled whether any burner burns gas from a cylinder; null while a fuel is unknown
 * @param run the cylinders over the firing; an empty answer when nothing is drawn or all gas comes from the mains
 * @param mostKg most gas that one cylinder of the stated diameter and length can hold, kg, of the densest that a burner burns; null where either is not stated
 * @param timeUnproven fields without which the time that gas burns is a guess, see {@link StepLength#unproven}; empty when it is computed
 */
public record SupplyReview(
        Known<List<BurnerGas>> burners,
        Known<List<StepTime>> steps,
        Boolean bottled,
        Known<Optional<SupplyRun>> run,
        Double mostKg,
        List<String> timeUnproven) {

    private static final double LB = 0.45359237;
    private static final double INCH = 0.0254;

    /** Runs the supply. */
    public static SupplyReview of(Design design, FiringReview firing, Assumptions assume) {
        Known<List<BurnerGas>> burners = BurnerGas.of(design);
        jets(design, assume);
        Known<List<StepTime>> steps = StepTime.of(design, firing, assume);
        Boolean bottled = bottled(design);
        return new SupplyReview(
                burners,
                steps,
                bottled,
                run(design, burners, steps, bottled, assume),
                mostKg(design),
                StepLength.unproven(design, firing));
    }

    /** What a jet is taken for where the design names its bore alone. */
    private static void jets(Design design, Assumptions assume) {
        for (String field : BurnerGas.unstatedJets(design)) {
            assume.add(field, "1", "one jet, not proven: write the number");
        }
        for (int i = 0; design.burners() != null && i < design.burners().size(); i++) {
            Burner b = design.burners().get(i);
            if (b.jet() == null || b.heatNet() != null || b.heatGross() != null) {
                continue;
            }
            if (b.jetClass() == null) {
                assume.add("burners[" + i + "].jetClass", "factory", "the kind that passes the most gas");
            }
        }
    }

    /** Net heat of all burners, W; null while a burner is unknown. */
    public Double netW() {
        return burners.known()
                ? burners.value().stream().mapToDouble(BurnerGas::netW).sum()
                : null;
    }

    /** Gross heat of all burners, W; null while a burner is unknown. */
    public Double grossW() {
        return burners.known()
                ? burners.value().stream().mapToDouble(BurnerGas::grossW).sum()
                : null;
    }

    /** Gas of all burners, kg/s; null while a burner is unknown. */
    public Double kgPerS() {
        return burners.known()
                ? burners.value().stream().mapToDouble(BurnerGas::kgPerS).sum()
                : null;
    }

    /** Share of all gas, by weight, that comes from cylinders; the burners must be known. */
    double bottledShare() {
        double all = kgPerS();
        return all > 0 ? bottledKgPerS(burners.value()) / all : 0;
    }

    /** Gas that the steps take from cylinders where the kiln is as slow as the slow end of the forecast's band, kg; burners and steps must be known. */
    public double slowNeededKg() {
        double draw = bottledKgPerS(burners.value());
        return steps.value().stream()
                .filter(StepTime::gas)
                .mapToDouble(s -> s.slowSeconds() * draw)
                .sum();
    }

    private static double bottledKgPerS(List<BurnerGas> burners) {
        return burners.stream()
                .filter(b -> b.burner().fuel().bottled())
                .mapToDouble(BurnerGas::kgPerS)
                .sum();
    }

    private static Boolean bottled(Design design) {
        if (!design.burnersKnown() || design.burners().stream().anyMatch(b -> b.fuel() == null)) {
            return null;
        }
        return design.burners().stream().anyMatch(b -> b.fuel().bottled());
    }

    private static Known<Optional<SupplyRun>> run(
            Design design,
            Known<List<BurnerGas>> burners,
            Known<List<StepTime>> steps,
            Boolean bottled,
            Assumptions assume) {
        List<String> needs = new ArrayList<>();
        if (Boolean.FALSE.equals(bottled)) {
            return Known.of(Optional.empty());
        }
        needs.addAll(burners.needs());
        needs.addAll(steps.needs());
        Supply s = design.supply();
        Cylinder c = s == null ? null : s.cylinder();
        need(needs, c == null ? null : c.capacity(), "supply.cylinder.capacity");
        need(needs, c == null ? null : c.fill(), "supply.cylinder.fill");
        need(needs, s == null ? null : s.pressure(), "supply.pressure");
        Quantity ambient = s != null && s.ambient() != null
                ? s.ambient()
                : design.room() == null ? null : design.room().outdoor();
        need(needs, ambient, "supply.ambient");
        if (c != null && c.capacity() != null && c.diameter() == null && size(c).isEmpty()) {
            needs.add("supply.cylinder.diameter");
        }
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        if (s.count() == null) {
            assume.add("supply.count", "1", "the least");
        }
        double draw = bottledKgPerS(burners.value());
        List<SupplyRun.Draw> draws = steps.value().stream()
                .map(t -> new SupplyRun.Draw(t.seconds(), t.gas() ? draw : 0))
                .toList();
        double kg = c.capacity().si() * c.fill().share();
        int count = s.count() == null ? 1 : s.count();
        double taken = draws.stream().mapToDouble(d -> d.seconds() * d.kgPerS()).sum() / Math.max(1e-9, kg * count);
        return Known.of(SupplyRun.of(
                cylinder(c, assume),
                count,
                liquid(design, taken, ambient.si()),
                kg,
                ambient.si(),
                s.pressure().si(),
                draws));
    }

    private static Double mostKg(Design design) {
        Cylinder c = design.supply() == null ? null : design.supply().cylinder();
        if (c == null || c.diameter() == null || c.length() == null) {
            return null;
        }
        List<Burner> burners = design.burners() == null ? List.of() : design.burners();
        double densest = burners.stream()
                .map(Burner::fuel)
                .filter(f -> f != null && f.bottled())
                .map(f -> f == Fuel.PROPANE_BUTANE ? Fuel.BUTANE : f)
                .mapToDouble(SupplyReview::liquidKgPerM3)
                .max()
                .orElseGet(() -> liquidKgPerM3(Fuel.PROPANE));
        return Drum.mostKg(c.diameter().metres(), c.length().metres(), densest);
    }

    private static double liquidKgPerM3(Fuel pure) {
        return Liquid.pure(LpGas.named(pure.id())).densityKgPerM3();
    }

    /** What is in the cylinders; of a mix what the firing leaves, poor in propane, counts throughout (safe side). */
    private static Liquid liquid(Design design, double taken, double ambientK) {
        List<Fuel> fuels = design.burners().stream().map(b -> b.fuel()).toList();
        if (fuels.contains(Fuel.BUTANE)) {
            return Liquid.pure(LpGas.named("butane"));
        }
        if (fuels.contains(Fuel.PROPANE_BUTANE)) {
            return Liquid.propaneButaneByMass(BurnerGas.propane(design)).leftAfter(taken, ambientK);
        }
        return fuels.stream()
                .filter(Fuel::bottled)
                .findFirst()
                .map(f -> Liquid.pure(LpGas.named(f.id())))
                .orElseThrow();
    }

    private static Drum cylinder(Cylinder c, Assumptions assume) {
        Optional<CylinderSize> size = size(c);
        Quantity diameter = c.diameter();
        if (diameter == null) {
            diameter = assume.or(
                    null,
                    "supply.cylinder.diameter",
                    size.orElseThrow().diameterIn() + " in",
                    Kind.LENGTH,
                    "usual for this size: " + size.get().source().line());
        }
        double metres = diameter.metres();
        if (c.length() == null && size.isPresent() && size.get().diameterIn() * INCH > metres) {
            metres = size.get().diameterIn() * INCH;
            assume.add(
                    "supply.cylinder.length",
                    "that of a usual cylinder, " + size.get().diameterIn() + " in wide",
                    "a narrower one passes more warmth and would have to be taller: write its length");
        }
        double steel = size.map(z -> z.tareLb() * LB).orElse(0.0);
        return new Drum(c.capacity().si(), metres, steel);
    }

    private static Optional<CylinderSize> size(Cylinder c) {
        return CylinderSize.near(c.capacity().si() / LB);
    }

    private static void need(List<String> needs, Object value, String field) {
        if (value == null) {
            needs.add(field);
        }
    }
}
