/** The geometry rules: where a hole may be, what brick is left, where the flame goes. */
package portwright.check.rules.geometry;
