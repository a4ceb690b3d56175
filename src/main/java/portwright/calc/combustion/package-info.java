/**
 * What burns and what comes of it: species thermochemistry, fuels, equilibrium products, oxygen probe, atmosphere
 * levels, flame temperature. SI doubles in, SI doubles out; nothing here knows a kiln.
 */
package portwright.calc.combustion;
