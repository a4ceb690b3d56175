/** Rules on the firing over time. */
package portwright.check.rules.firing;
