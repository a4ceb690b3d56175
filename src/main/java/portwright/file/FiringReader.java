package portwright.file;

import java.util.Locale;
import portwright.model.Atmosphere;
import portwright.model.FiringPlan;
import portwright.model.FiringStep;
import portwright.model.Heat;
import portwright.model.PortsState;
import portwright.model.Prices;
import portwright.units.Kind;
import portwright.units.Quantity;

/** The firing plan. */
final class FiringReader {
    /** No kiln climbs faster; more is a slip of the keyboard. */
    private static final Range RATE = new Range("0 °C/h", true, "20000 °C/h");

    private static final Range CHAMBER = Range.between("-60 °C", "1600 °C");

    private FiringReader() {}

    static FiringPlan firing(Fields f) {
        return new FiringPlan(
                f.quantity("load", Kind.MASS, Range.between("0 kg", "100000 kg")),
                f.quantity("shelvesMass", Kind.MASS, Range.between("0 kg", "100000 kg")),
                f.objects("steps", FiringReader::step),
                f.object("prices", p -> {
                    p.need("currency", "\"EUR\"");
                    return new Prices(p.text("currency"), p.number("perKwh", 0, 1e6), p.number("perKg", 0, 1e6));
                }));
    }

    private static FiringStep step(Fields f) {
        Quantity to = null;
        String cone = null;
        if (f.value("to") instanceof Json.Text t
                && t.value().strip().toLowerCase(Locale.ROOT).startsWith("cone")) {
            cone = cone(f, t.value().strip());
        } else {
            to = f.quantity("to", Kind.TEMPERATURE, CHAMBER);
        }
        boolean full = f.value("rate") instanceof Json.Text t && t.value().equals("full");
        Quantity rate = full ? null : f.quantity("rate", Kind.TEMPERATURE_RATE, RATE);
        Quantity hold = f.quantity("hold", Kind.DURATION, Range.between("0 s", "1000 h"));
        if (!f.has("to") && !f.has("hold")) {
            f.fault(
                    "to",
                    "is missing. A step has \"to\" with \"rate\" (\"to\": \"900 °C\", \"rate\": \"100 °C/h\"), or \"hold\": \"30 min\".");
        } else if (f.has("to") && f.has("hold")) {
            f.fault("hold", "a step either rises (\"to\", \"rate\") or holds. Make two steps.");
        } else if (f.has("to") && !f.has("rate")) {
            f.need("rate", "\"100 °C/h\" or \"full\"");
        } else if (f.has("hold") && f.has("rate")) {
            f.fault("rate", "a hold has no rate.");
        }
        Heat heat = f.word("heat", Heat.class);
        Quantity share = f.value("elements") instanceof Json.Text t && t.value().equals("controller")
                ? null
                : f.quantity("elements", Kind.SHARE, Range.SHARE);
        Atmosphere fire = f.word("atmosphere", Atmosphere.class);
        if ((heat == Heat.ELECTRIC || heat == Heat.NONE) && fire != null && fire != Atmosphere.OXIDIZING) {
            f.fault(
                    "atmosphere",
                    "no gas burns in this step (\"heat\": \"" + heat.id()
                            + "\"), so it has no fire. Remove \"atmosphere\", or write \"heat\": \"both\" to burn gas.");
        }
        return new FiringStep(
                to, cone, rate, full, hold, heat, share, f.has("elements"), f.word("ports", PortsState.class), fire);
    }

    private static String cone(Fields f, String typed) {
        String number = typed.substring("cone".length()).strip();
        boolean known =
                number.matches("0(0?[1-9]|1\\d|2[0-2])") && !number.startsWith("00") || number.matches("[1-9]|1[0-4]");
        if (!known) {
            f.fault(
                    "to",
                    "\"" + JsonSyntax.shown(typed)
                            + "\" is no pyrometric cone. Write \"cone 022\" to \"cone 01\", or \"cone 1\" to \"cone 14\".");
            return null;
        }
        return number;
    }
}
