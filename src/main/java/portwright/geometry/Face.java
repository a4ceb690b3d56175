package portwright.geometry;

import portwright.model.On;

/**
 * One face of one part as someone sees it.
 *
 * @param on floor, lid or wall
 * @param panel panel number from 1 for walls, 0 otherwise
 * @param hot the hot face (inside the chamber), else the cold one
 */
public record Face(On on, int panel, boolean hot) {
    /** Whether the picture is mirrored against the file's frame: floor from below, lid from below (hot), wall from outside. */
    public boolean mirrored() {
        return switch (on) {
            case FLOOR -> !hot;
            case LID -> hot;
            case WALL -> !hot;
        };
    }

    /** Whether another face is one of the same part. */
    public boolean samePart(Face o) {
        return on == o.on && panel == o.panel;
    }
}
