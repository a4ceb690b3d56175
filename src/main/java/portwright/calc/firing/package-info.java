/**
 * The firing over time: heat through walls, floor and lid, into the load, from elements and from gas; cones by heat
 * work. Pure calculation in SI units (kelvin, seconds, watts): no design file, no text for people.
 */
package portwright.calc.firing;
