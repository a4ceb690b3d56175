/**
 * Logged firings: reading a logger's or a notebook's table, and what it says of kiln, elements, air and thermocouple against the
 * firing model. Plain records in, plain records out; no design file.
 */
package portwright.calc.firing.log;
