/**
 * The air of the room: carbon monoxide, oxygen, heat, openings, hoods, purge and the plume above a flue. Works on SI
 * numbers of its own records; knows nothing of design files.
 */
package portwright.calc.room;
