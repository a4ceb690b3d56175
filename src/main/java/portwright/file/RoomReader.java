package portwright.file;

import portwright.data.LimitFamily;
import portwright.model.Duct;
import portwright.model.Hood;
import portwright.model.LeadsTo;
import portwright.model.LedBy;
import portwright.model.Opening;
import portwright.model.Room;
import portwright.model.RoomBuilding;
import portwright.model.RoomPlace;
import portwright.units.Kind;

/** The room round the kiln. */
final class RoomReader {
    private static final Range AIR_FLOW = Range.between("0 m3/h", "1000000 m3/h");

    private static final String NO_CEILING = "none";

    private RoomReader() {}

    static Room room(Fields f) {
        RoomPlace place = f.word("place", RoomPlace.class);
        boolean noCeiling = noCeiling(f, place);
        return new Room(
                place,
                f.quantity("volume", Kind.VOLUME, Range.VOLUME),
                f.quantity("temperature", Kind.TEMPERATURE, Range.AIR),
                f.quantity("outdoor", Kind.TEMPERATURE, Range.AIR),
                f.quantity("wind", Kind.SPEED, Range.between("0 m/s", "60 m/s")),
                f.quantity("altitude", Kind.LENGTH, Range.between("-500 m", "6000 m")),
                f.objects(
                        "openings",
                        o -> new Opening(
                                o.quantity("area", Kind.AREA, Range.between("0 m2", "1000 m2")),
                                o.quantity("level", Kind.LENGTH, Range.between("-5 m", "50 m")),
                                o.word("to", LeadsTo.class),
                                o.quantity("free", Kind.SHARE, Range.SHARE),
                                o.quantity("height", Kind.LENGTH, Range.SIZE),
                                o.word("duct", Duct.class))),
                f.quantity("ventilator", Kind.FLOW, AIR_FLOW),
                f.object(
                        "hood",
                        h -> new Hood(
                                h.quantity("flow", Kind.FLOW, AIR_FLOW),
                                h.quantity("diameter", Kind.LENGTH, Range.SIZE),
                                h.quantity("height", Kind.LENGTH, Range.SIZE))),
                f.quantity("ledOutdoors", Kind.SHARE, Range.SHARE),
                f.quantity("burntAtFlue", Kind.SHARE, Range.SHARE),
                f.text("floor"),
                noCeiling ? null : f.quantity("ceiling", Kind.LENGTH, Range.SIZE),
                f.bool("coAlarm"),
                f.bool("gasAlarm"),
                family(f),
                f.quantity("infiltration", Kind.FLOW, AIR_FLOW),
                f.quantity("joinedVolume", Kind.VOLUME, Range.VOLUME),
                f.word("building", RoomBuilding.class),
                noCeiling,
                f.word("ledBy", LedBy.class));
    }

    /** Under the open sky the word stands where a room has its height; a room and a shed have a roof. */
    private static boolean noCeiling(Fields f, RoomPlace place) {
        boolean none = f.value("ceiling") instanceof Json.Text t && t.value().equals(NO_CEILING);
        if (none && place != null && place != RoomPlace.OUTDOORS) {
            f.fault(
                    "ceiling",
                    "\"" + NO_CEILING + "\" is for a kiln outdoors; where the place is " + place.id()
                            + ", there is a ceiling or roof: write its height over the ground, for example \"2.5 m\".");
        }
        return none;
    }

    private static String family(Fields f) {
        String word = f.text("family");
        if (word != null) {
            try {
                LimitFamily.of(word);
            } catch (IllegalArgumentException e) {
                f.fault("family", e.getMessage() + ".");
            }
        }
        return word;
    }
}
