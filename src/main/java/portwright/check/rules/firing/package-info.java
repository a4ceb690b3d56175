/** Rules on the firing over time: whether it reaches its goal, and what brick and elements bear of it. */
package portwright.check.rules.firing;
