package portwright.file;

import portwright.data.SupplierGas;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.FlameAt;
import portwright.model.FlameSafety;
import portwright.model.Fuel;
import portwright.model.GasQuality;
import portwright.model.Jet;
import portwright.model.JetClass;
import portwright.units.Kind;
import portwright.units.Quantity;

/** Burners. */
final class BurnerReader {
    private static final int SMALLEST_DRILL = 80;

    private BurnerReader() {}

    static Burner burner(Fields f) {
        String name = f.name();
        f.need("port", "\"…\" (the name of an inlet)");
        String port = f.text("port");
        Fuel fuel = f.word("fuel", Fuel.class);
        GasQuality gas = f.object(
                "gas",
                g -> new GasQuality(
                        g.quantity("grossHeat", Kind.HEATING_VALUE, Range.positive("0 MJ/m3")),
                        g.quantity("netHeat", Kind.HEATING_VALUE, Range.positive("0 MJ/m3")),
                        g.quantity("density", Kind.DENSITY, Range.positive("0 kg/m3"))));
        gasOf(f, fuel, gas);
        Jet jet = jet(f);
        Integer jets = f.integer("jets", 1, 200);
        JetClass jetClass = f.word("jetClass", JetClass.class);
        Quantity pressure = f.quantity("pressure", Kind.PRESSURE, Range.GAUGE);
        Quantity net = f.quantity("heat", Kind.POWER, Range.positive("0 kW"));
        Quantity gross = f.quantity("heatGross", Kind.POWER, Range.positive("0 kW"));
        if (net != null && gross != null) {
            f.fault("heatGross", "the heat is given twice. Keep \"heat\" (net) or \"heatGross\".");
        }
        if ((net != null || gross != null) && f.has("jet")) {
            f.fault(
                    "jet",
                    "the heat is given twice. Keep \"jet\" with \"pressure\", or \""
                            + (net != null ? "heat" : "heatGross") + "\".");
        }
        return new Burner(
                name,
                port,
                fuel,
                gas,
                jet,
                jets,
                jetClass,
                pressure,
                net,
                gross,
                f.word("head", BurnerHead.class),
                f.quantity("tip", Kind.LENGTH, Range.THICKNESS),
                f.quantity("body", Kind.LENGTH, Range.THICKNESS),
                f.quantity("setback", Kind.LENGTH, Range.between("-1 m", "2 m")),
                f.quantity("length", Kind.LENGTH, Range.SIZE),
                f.quantity("primaryAir", Kind.SHARE, Range.SHARE),
                f.word("flameAt", FlameAt.class),
                safety(f));
    }

    /** A supplier's figures stand for a gas that is mostly methane, and heat and density must fit one. */
    private static void gasOf(Fields f, Fuel fuel, GasQuality gas) {
        if (gas == null || fuel == null) {
            return;
        }
        if (!fuel.statedBySupplier()) {
            f.fault(
                    "gas",
                    "a supplier's heat and density describe \"natural-gas\" (or \"methane\") only, not \"" + fuel.id()
                            + "\", whose figures are known. Remove \"gas\", write \"fuel\": \"natural-gas\", or for a mix \"fuel\": "
                            + "\"propane-butane\" with \"supply\": {\"cylinder\": {\"propane\": \"60 %\"}}.");
            return;
        }
        Quantity heat = gas.netHeat() != null ? gas.netHeat() : gas.grossHeat();
        if (heat == null || gas.density() == null) {
            return;
        }
        try {
            SupplierGas.shares(heat.si(), gas.density().si(), gas.netHeat() != null);
        } catch (IllegalArgumentException e) {
            f.fault("gas", e.getMessage() + ".");
        }
    }

    private static Jet jet(Fields f) {
        Json v = f.value("jet");
        if (v == null) {
            return null;
        }
        if (v instanceof Json.Text t && t.value().strip().startsWith("#")) {
            String number = t.value().strip().substring(1).strip();
            if (number.matches("\\d{1,2}")
                    && Integer.parseInt(number) >= 1
                    && Integer.parseInt(number) <= SMALLEST_DRILL) {
                return new Jet(t.value(), null, Integer.valueOf(number));
            }
            f.fault(
                    "jet",
                    "\"" + JsonSyntax.shown(t.value())
                            + "\" is no number drill. Write \"#1\" to \"#80\", or a diameter like \"0.70 mm\".");
            return null;
        }
        Quantity d = f.quantity("jet", Kind.LENGTH, new Range("0 mm", true, "50 mm"));
        return d == null ? null : new Jet(d.typed(), d, null);
    }

    private static FlameSafety safety(Fields f) {
        Json v = f.value("flameSafety");
        if (v == null) {
            return null;
        }
        if (v instanceof Json.Bool b) {
            return new FlameSafety(b.value(), null);
        }
        if (v instanceof Json.Obj) {
            return f.object(
                    "flameSafety",
                    s -> new FlameSafety(true, s.needQuantity("closes", Kind.DURATION, Range.between("1 s", "1 h"))));
        }
        f.fault("flameSafety", "true, false or {\"closes\": \"20 s\"} is expected, not " + v.word() + ".");
        return null;
    }
}
