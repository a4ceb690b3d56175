package portwright.sheet;

import portwright.drawing.Box;

/**
 * One sheet of a part.
 *
 * @param column from 0 at the picture's left
 * @param row from 0 at the picture's top
 * @param name part, face and cell, like {@code FU-B2}
 * @param window what the sheet shows, picture mm
 * @param kept what is left of it between its trim lines; no two of a part overlap
 * @param blank whether the part has nothing there
 */
record Tile(int column, int row, String name, Box window, Box kept, boolean blank) {
    /** The name without part and face. */
    String cell() {
        return name.substring(name.indexOf('-') + 1);
    }
}
