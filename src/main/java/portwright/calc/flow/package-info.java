/**
 * What passes through an opening: gas jets, the discharge of a hole in brick and the loss of a damper over it; and the state
 * of gas that these need (viscosity, density, pressure at altitude). SI doubles in, SI doubles out; nothing here knows a kiln.
 */
package portwright.calc.flow;
