/** Quantities as typed, exact unit factors and their display. Imports nothing of ours; every conversion of the program lives here. */
package portwright.units;
