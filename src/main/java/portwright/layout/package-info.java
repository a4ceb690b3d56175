/** Proposes places for inlets and flues, and says how far a wandering drill may stray. Knows no file and no screen. */
package portwright.layout;
