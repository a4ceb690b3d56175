package portwright.app.doc;

import portwright.geometry.Face;
import portwright.model.On;

/** The pictures of the drawing board. */
public enum Picture {
    FLOOR_HOT("Floor\nfrom above", "Floor\nabove", "Floor from above", new Face(On.FLOOR, 0, true)),
    FLOOR_COLD(
            "Floor\nfrom below,\nmirrored", "Floor\nbelow", "Floor from below, MIRRORED", new Face(On.FLOOR, 0, false)),
    LID_COLD("Lid\nfrom above", "Lid\nabove", "Lid from above", new Face(On.LID, 0, false)),
    LID_HOT("Lid\nfrom below,\nmirrored", "Lid\nbelow", "Lid from below, MIRRORED", new Face(On.LID, 0, true)),
    WALLS_HOT("Walls\nfrom inside", "Walls\ninside", "Walls unrolled, from inside", new Face(On.WALL, 0, true)),
    WALLS_COLD(
            "Walls\nfrom outside,\nmirrored",
            "Walls\noutside",
            "Walls unrolled, from outside, MIRRORED",
            new Face(On.WALL, 0, false)),
    SECTION("Section", "Section", "Section, looking to the back", null);

    private final String caption;
    private final String brief;
    private final String title;
    private final Face face;

    Picture(String caption, String brief, String title, Face face) {
        this.caption = caption;
        this.brief = brief;
        this.title = title;
        this.face = face;
    }

    public String caption() {
        return caption;
    }

    /** The caption for a small card. */
    public String brief() {
        return brief;
    }

    public String title() {
        return title;
    }

    /** The face; null for the section; panel 0 for the unrolled walls. */
    public Face face() {
        return face;
    }

    public boolean slab() {
        return face != null && face.on() != On.WALL;
    }

    public boolean walls() {
        return face != null && face.on() == On.WALL;
    }

    public boolean mirrored() {
        return face != null && face.mirrored();
    }

    /** The other face of the same part; the section has none. */
    public Picture turned() {
        return switch (this) {
            case FLOOR_HOT -> FLOOR_COLD;
            case FLOOR_COLD -> FLOOR_HOT;
            case LID_COLD -> LID_HOT;
            case LID_HOT -> LID_COLD;
            case WALLS_HOT -> WALLS_COLD;
            case WALLS_COLD -> WALLS_HOT;
            case SECTION -> SECTION;
        };
    }

    /** The picture that shows a part of the kiln. */
    public static Picture of(On on) {
        return on == On.FLOOR ? FLOOR_HOT : on == On.LID ? LID_COLD : WALLS_HOT;
    }

    /** Whether both show the same part of the kiln. */
    public boolean samePart(Picture o) {
        return face == null || o.face == null ? this == o : face.on() == o.face.on();
    }
}
