package portwright.sheet;

import portwright.drawing.Box;

/**
 * One sheet of a part.
 *
 * @param column from 0 at the picture's left
 * @param row from 0 at the picture's top
 * @param window what the sheet shows, picture mm
 * @param blank whether the part has nothing there
 */
record Tile(int column, int row, String name, Box window, boolean blank) {}
