package portwright.form;

import static portwright.form.FieldSpec.loose;
import static portwright.form.FieldSpec.place;
import static portwright.form.FieldSpec.quantity;
import static portwright.form.FieldSpec.text;
import static portwright.form.FieldSpec.word;
import static portwright.form.FieldSpec.yes;

import java.util.List;
import portwright.form.FieldSpec.Type;
import portwright.model.Atmosphere;
import portwright.model.BurnerHead;
import portwright.model.Duct;
import portwright.model.FlameAt;
import portwright.model.Fuel;
import portwright.model.Heat;
import portwright.model.JetClass;
import portwright.model.LeadsTo;
import portwright.model.LedBy;
import portwright.model.On;
import portwright.model.PortsState;
import portwright.model.Role;
import portwright.model.RoomBuilding;
import portwright.model.RoomPlace;
import portwright.model.SupplyPlace;
import portwright.model.UnitSystem;
import portwright.units.Kind;

/**
 * Every field of the design file beside those of the kiln ({@link KilnCatalog}), grouped as the forms show them. A fresh part leaves out what a rule
 * counts with and only a measurement can tell, so that the rule stays unchecked until it is typed.
 */
public final class Catalog {
    private Catalog() {}

    public static FormSpec design() {
        return FormSpec.object(
                "",
                "Title, notes, units",
                null,
                List.of(
                        text("title", "title"),
                        FieldSpec.of("notes", "notes", Type.LONG_TEXT, ""),
                        word("units", "units", UnitSystem.class)));
    }

    public static FormSpec ports() {
        return FormSpec.list(
                "ports",
                "Ports",
                "{\"name\": \"{name}\", \"role\": \"inlet\", \"on\": \"floor\", \"at\": [\"{0 in|0 mm}\", \"{0 in|0 mm}\"], \"diameter\": \"{1 3/8 in|35 mm}\"}",
                List.of(
                        text("name", "name"),
                        word("role", "role", Role.class),
                        word("on", "in the", On.class),
                        FieldSpec.of("panel", "panel", Type.WHOLE, "e.g. 1"),
                        quantity("diameter", "hole", Kind.LENGTH, "{1 3/8 in|35 mm}"),
                        place("place")));
    }

    public static FormSpec drilling() {
        return FormSpec.object(
                "drilling",
                "Drilling",
                "{}",
                List.of(
                        quantity("oversize", "oversize", Kind.LENGTH, "{1/16 in|2 mm}"),
                        quantity("centre", "centre error", Kind.LENGTH, "{1/16 in|1.5 mm}"),
                        quantity("tilt", "tilt", Kind.ANGLE, "1 deg")));
    }

    public static FormSpec burners() {
        return FormSpec.list(
                "burners",
                "Burners",
                "{\"name\": \"{name}\", \"port\": \"{inlet}\", \"fuel\": \"propane\"}",
                List.of(
                        text("name", "name"),
                        text("port", "under port"),
                        word("fuel", "gas", Fuel.class),
                        loose("jet", "jet", "{#70 or 0.70 mm|0.70 mm or #70}"),
                        FieldSpec.of("jets", "jets", Type.WHOLE, "1"),
                        word("jetClass", "jet made", JetClass.class),
                        quantity("pressure", "pressure", Kind.PRESSURE, "{11 inH2O|28 mbar}"),
                        quantity("heat", "heat, net", Kind.POWER, "{15000 Btu/h|4.5 kW}"),
                        quantity("heatGross", "heat, gross", Kind.POWER, "{16500 Btu/h|4.9 kW}"),
                        word("head", "head", BurnerHead.class),
                        quantity("tip", "tip", Kind.LENGTH, "{5/8 in|16 mm}"),
                        quantity("body", "body", Kind.LENGTH, "{1 1/2 in|40 mm}"),
                        quantity("setback", "set-back", Kind.LENGTH, "{1 in|25 mm}"),
                        quantity("length", "length", Kind.LENGTH, "{5 in|125 mm}"),
                        quantity("primaryAir", "primary air", Kind.SHARE, "50 %"),
                        word("flameAt", "flame burns", FlameAt.class),
                        FieldSpec.of("flameSafety", "flame failure", Type.FLAME_SAFETY, "no, yes or 20 s")),
                FormSpec.object(
                        "gas",
                        "Mains gas as supplied",
                        "{\"netHeat\": \"36 MJ/m3\", \"density\": \"0.74 kg/m3\"}",
                        List.of(
                                quantity("grossHeat", "gross heat", Kind.HEATING_VALUE, "{1050 Btu/ft3|39 MJ/m3}"),
                                quantity("netHeat", "net heat", Kind.HEATING_VALUE, "{950 Btu/ft3|36 MJ/m3}"),
                                quantity("density", "density", Kind.DENSITY, "{0.046 lb/ft3|0.74 kg/m3}"))));
    }

    public static FormSpec damper() {
        return FormSpec.object(
                "damper",
                "Damper",
                "{}",
                List.of(quantity("open", "open", Kind.SHARE, "60 %")),
                FormSpec.object(
                        "plate",
                        "Plate",
                        "{}",
                        List.of(
                                quantity("thickness", "thickness", Kind.LENGTH, "{5/8 in|16 mm}"),
                                quantity("width", "width", Kind.LENGTH, "{4 in|100 mm}"),
                                quantity("length", "length", Kind.LENGTH, "{6 in|150 mm}"),
                                yes("shared", "covers all flues"))));
    }

    public static FormSpec room() {
        return FormSpec.object(
                "room",
                "Room",
                "{\"place\": \"studio\"}",
                List.of(
                        word("place", "place", RoomPlace.class),
                        word("building", "from a dwelling", RoomBuilding.class),
                        quantity("volume", "volume", Kind.VOLUME, "{2100 ft3|60 m3}"),
                        quantity("temperature", "indoors", Kind.TEMPERATURE, "{68 °F|20 °C}"),
                        quantity("outdoor", "outdoors", Kind.TEMPERATURE, "{50 °F|10 °C}"),
                        quantity("wind", "wind", Kind.SPEED, "{3 mph|1.5 m/s}"),
                        quantity("altitude", "altitude", Kind.LENGTH, "{1500 ft|450 m}"),
                        loose("ceiling", "ceiling", "e.g. {8 ft|2.5 m}, or none"),
                        loose("floor", "floor", "e.g. brick on concrete"),
                        quantity("ventilator", "fan", Kind.FLOW, "{530 cfm|900 m3/h}"),
                        quantity("ledOutdoors", "led outdoors", Kind.SHARE, "0 %"),
                        word("ledBy", "led by", LedBy.class),
                        quantity("burntAtFlue", "burnt at flue", Kind.SHARE, "0 %"),
                        quantity("infiltration", "leaks, closed", Kind.FLOW, "{20 cfm|35 m3/h}"),
                        quantity("joinedVolume", "joined rooms", Kind.VOLUME, "{3500 ft3|100 m3}"),
                        yes("coAlarm", "CO alarm"),
                        yes("gasAlarm", "gas alarm, low"),
                        loose("family", "limits of", "strictest, or us, eu, uk")),
                FormSpec.list(
                        "openings",
                        "Openings",
                        "{}",
                        List.of(
                                quantity("area", "area", Kind.AREA, "{6 ft2|0.6 m2}"),
                                quantity("level", "level", Kind.LENGTH, "{3 ft|1 m}"),
                                word("to", "leads to", LeadsTo.class),
                                quantity("free", "free share", Kind.SHARE, "100 %"),
                                quantity("height", "height", Kind.LENGTH, "{6 ft|2 m}"),
                                word("duct", "duct", Duct.class))),
                FormSpec.object(
                        "hood",
                        "Hood",
                        "{}",
                        List.of(
                                quantity("flow", "flow", Kind.FLOW, "{530 cfm|900 m3/h}"),
                                quantity("diameter", "diameter", Kind.LENGTH, "{2 ft|600 mm}"),
                                quantity("height", "above kiln", Kind.LENGTH, "{2 ft|600 mm}"))));
    }

    public static FormSpec supply() {
        return FormSpec.object(
                "supply",
                "Gas supply",
                "{}",
                List.of(
                        word("place", "place", SupplyPlace.class),
                        FieldSpec.of("count", "cylinders", Type.WHOLE, "1"),
                        quantity("ambient", "air there", Kind.TEMPERATURE, "{60 °F|15 °C}"),
                        quantity("pressure", "pressure", Kind.PRESSURE, "{11 inH2O|28 mbar}"),
                        quantity("regulator.max", "regulator to", Kind.PRESSURE, "{5 psi|350 mbar}")),
                FormSpec.object(
                        "cylinder",
                        "Cylinder",
                        "{}",
                        List.of(
                                quantity("capacity", "holds", Kind.MASS, "{40 lb|18 kg}"),
                                quantity("fill", "filled", Kind.SHARE, "80 %"),
                                quantity("diameter", "diameter", Kind.LENGTH, "{12 in|300 mm}"),
                                quantity("length", "length", Kind.LENGTH, "{30 in|760 mm}"),
                                quantity("propane", "propane in a mix", Kind.SHARE, "60 %"))));
    }

    public static FormSpec firing() {
        return FormSpec.object(
                "firing",
                "Firing",
                "{\"steps\": []}",
                List.of(
                        quantity("load", "ware", Kind.MASS, "{25 lb|11 kg}"),
                        quantity("shelvesMass", "shelves", Kind.MASS, "{20 lb|9 kg}")),
                FormSpec.list(
                        "steps",
                        "Steps",
                        "{\"to\": \"{1650 °F|900 °C}\", \"rate\": \"{180 °F/h|100 °C/h}\", \"heat\": \"electric\"}",
                        stepFields()),
                FormSpec.object(
                        "prices",
                        "Prices",
                        "{\"currency\": \"EUR\"}",
                        List.of(
                                text("currency", "currency"),
                                FieldSpec.of("perKwh", "per kWh", Type.NUMBER, "e.g. 0.32"),
                                FieldSpec.of("perKg", "gas per kg", Type.NUMBER, "e.g. 2.1"))));
    }

    public static List<FieldSpec> stepFields() {
        return List.of(
                loose("to", "to", "{1650 °F|900 °C} or cone 10"),
                loose("rate", "rate", "{180 °F/h|100 °C/h} or full"),
                quantity("hold", "or hold", Kind.DURATION, "30 min"),
                word("heat", "heat", Heat.class),
                loose("elements", "elements", "controller, or 60 %"),
                word("ports", "ports", PortsState.class),
                word("atmosphere", "atmosphere", Atmosphere.class));
    }
}
