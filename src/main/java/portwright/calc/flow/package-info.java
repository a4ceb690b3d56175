/**
 * What passes through an opening: gas jets, holes in brick with and without a damper, cracks; and the state of gas that
 * these need (viscosity, density, pressure at altitude). SI doubles in, SI doubles out; nothing here knows a kiln.
 */
package portwright.calc.flow;
