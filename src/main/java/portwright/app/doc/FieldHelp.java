package portwright.app.doc;

import java.util.Map;

/** What a field asks for, in plain words, where its name alone does not say it; shown while the mouse rests on it. */
public final class FieldHelp {
    /** By path without numbers, or by the key alone where it means the same everywhere. */
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry(
                    "turn",
                    "How far it is turned clockwise, seen from above. At 0 deg a flat side (of a half shelf the round side) faces the back;"
                            + " rows of brick run left to right."),
            Map.entry(
                    "acrossFlats",
                    "From one flat side to the opposite one, inside. With an odd number of sides: twice from the middle to a flat."),
            Map.entry("stretch", "How much longer the oval is than it is wide."),
            Map.entry("kiln.height", "From the floor to the underside of the lid, inside."),
            Map.entry("kiln.stand.height", "From the ground to the underside of the floor."),
            Map.entry("kiln.power", "What all elements draw together at full power; it stands on the kiln's plate."),
            Map.entry(
                    "lossFactor",
                    "How much heat the kiln really loses, as a multiple of its plain walls: 1 is the walls alone, a sound kiln is 1 to 1.5."
                            + " Leave it empty when you do not know: 1.25 is assumed and said."),
            Map.entry(
                    "elementRise",
                    "How much more resistance the elements have than when new: old elements give less power. Measure it cold with a meter."),
            Map.entry(
                    "leakArea",
                    "All gaps together that let air in or out while the ports are shut: under the lid, at spyholes, through cracks."),
            Map.entry("kiln.wall.thickness", "The brick alone, without the metal jacket."),
            Map.entry(
                    "pan",
                    "Whether sheet metal lies under the floor or over the lid: it is cut first, with a hole of its own."),
            Map.entry(
                    "overhang",
                    "How far the slab stands out beyond the outer face of the wall, on each side; negative where it stops short of it."),
            Map.entry("row", "Height of one row of bricks, joint to joint, as seen on the face."),
            Map.entry("bond", "half: each row is shifted by half a brick; stacked: joints run on from row to row."),
            Map.entry("offset", "Any place where two joints cross: all others follow from it."),
            Map.entry("kiln.elements.height", "Middle of the groove above the floor."),
            Map.entry("panels", "The wall panels that it runs through, by number; all where it is empty."),
            Map.entry("coil", "Outside diameter of the wound wire."),
            Map.entry("slope", "How far the bottom of the groove tilts down into the wall."),
            Map.entry("kiln.elements.tails.diameter", "The hole in which the element's ends pass the wall."),
            Map.entry("standoff", "How far it stands off the outer face of the wall."),
            Map.entry("reach", "How far it stands into the chamber, from the hot face."),
            Map.entry("clear", "The brick or air this part wants round it. Leave it empty for the usual room."),
            Map.entry("type", "Letter of the thermocouple, as on its plug: K, N, S, R, B."),
            Map.entry("class", "How true the thermocouple is when new: standard, or special where it was bought so."),
            Map.entry("shelves.height", "From the floor to the underside of the shelf."),
            Map.entry("oversize", "How much wider than the saw a hole comes out at most."),
            Map.entry("drilling.centre", "How far off its mark a hole comes out: 95 of 100 lie nearer."),
            Map.entry("tilt", "How far from square a bore leans: 95 of 100 lean less."),
            Map.entry("ports.diameter", "Diameter of the hole saw."),
            Map.entry("burners.port", "The inlet that the burner stands at."),
            Map.entry("jet", "Bore of the hole that the gas leaves by, or the number of its drill."),
            Map.entry("jets", "How many such holes the burner has."),
            Map.entry(
                    "jetClass",
                    "factory: bored by the maker; drilled: by hand; sheet: a plain hole in thin metal. It decides how much gas passes."),
            Map.entry("burners.pressure", "Of the gas at the jet, while it burns."),
            Map.entry("heat", "What the maker states. Needed only where jet and pressure are not known."),
            Map.entry("heatGross", "The same counted with the heat of the steam; makers in America state this one."),
            Map.entry(
                    "head",
                    "ported: many small holes; venturi: an open throat; bare: the jet alone. It decides how much air the jet drives in."),
            Map.entry("tip", "Outside diameter of the end that points into the hole."),
            Map.entry("body", "Outside diameter of its widest part."),
            Map.entry("setback", "From the tip to the outer face of the floor or wall; positive away from the kiln."),
            Map.entry("primaryAir", "Share of the air for complete burning that the burner mixes in before its tip."),
            Map.entry("flameAt", "Where the flame stands: in the chamber, in the hole, or below it."),
            Map.entry(
                    "flameSafety",
                    "Whether a device shuts the gas when the flame is lost; type how long it takes if you know it."),
            Map.entry(
                    "netHeat",
                    "Heat of the gas without that of the steam, at 15 °C, from the supplier. One of the two is enough."),
            Map.entry(
                    "grossHeat",
                    "Heat of the gas with that of the steam, at 15 °C, from the supplier. One of the two is enough."),
            Map.entry(
                    "damper.open",
                    "Open share of all flues in steps with gas that ask for no atmosphere of their own."),
            Map.entry("shared", "yes: one plate covers all flues; no: each flue has its own."),
            Map.entry("supply.place", "Where the cylinders stand. Gas that leaks indoors or in a pit gathers."),
            Map.entry("supply.ambient", "Air round the cylinders: cold liquid gives less gas."),
            Map.entry("supply.pressure", "After the regulator."),
            Map.entry("regulator.max", "The most that the regulator can give; it stands on it."),
            Map.entry("supply.cylinder.capacity", "The gas that one holds when full."),
            Map.entry("supply.cylinder.fill", "Share that is left when the firing begins."),
            Map.entry("supply.cylinder.propane", "Share of propane in a propane-butane mix, by mass."),
            Map.entry("room.building", "Whether wall, floor, door or duct join the studio or garage to a dwelling."),
            Map.entry("outdoor", "The coldest air outdoors that you fire in."),
            Map.entry("altitude", "Height above the sea: thin air carries less oxygen."),
            Map.entry("ceiling", "Height over the ground of what is above the kiln; none under the open sky."),
            Map.entry("floor", "What stands under the kiln, each layer in plain words, such as brick on concrete."),
            Map.entry("ventilator", "Air that a fan moves out of the room."),
            Map.entry("ledOutdoors", "Share of the flue gas that is led outdoors; 0 unless you can prove more."),
            Map.entry("ledBy", "pipe: tight on the flues; hood: hangs over them."),
            Map.entry(
                    "burntAtFlue", "Share of the CO that burns in the flame at the flue; 0 unless you can prove more."),
            Map.entry(
                    "infiltration",
                    "Air that gets into the closed room through cracks: its changes an hour times its volume. Leave it empty unless it was measured."),
            Map.entry("joinedVolume", "Volume of the rooms that openings lead to."),
            Map.entry("gasAlarm", "A gas alarm near the floor: bottled gas sinks."),
            Map.entry(
                    "family",
                    "Whose limits for CO and other gas count: us, eu or uk; the strictest where it is empty."),
            Map.entry("room.openings.level", "Height of its middle over the floor."),
            Map.entry("free", "Share of the area that louvres or mesh leave open."),
            Map.entry("room.openings.height", "From its lower to its upper edge."),
            Map.entry("room.hood.height", "From the flues up to the hood's edge."),
            Map.entry("load", "Weight of the ware, glaze and all."),
            Map.entry("shelvesMass", "Weight of shelves and posts."),
            Map.entry("firing.steps.to", "A temperature or a cone. Leave it empty where the step only holds."),
            Map.entry("rate", "How fast it climbs; full: with all the power there is."),
            Map.entry("hold", "How long it stays where the step before ended; then leave temperature and rate empty."),
            Map.entry("firing.steps.heat", "What heats in this step."),
            Map.entry(
                    "firing.steps.elements",
                    "controller: as much power as the climb asks for; or a fixed share of full power."),
            Map.entry("firing.steps.ports", "Whether inlets and flues stand open or plugged while no gas burns."),
            Map.entry("atmosphere", "What the damper is set for, from oxidizing to heavy reduction."));

    private FieldHelp() {}

    /** Help for a field by its path; null where its name says enough. */
    public static String of(String path) {
        String plain = path.replaceAll("\\[\\d*]", "");
        for (String at = plain; ; at = at.substring(at.indexOf('.') + 1)) {
            if (WORDS.containsKey(at)) {
                return WORDS.get(at);
            }
            if (at.indexOf('.') < 0) {
                return null;
            }
        }
    }
}
