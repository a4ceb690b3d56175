/**
 * Records of real firings: reading a log as people keep it, comparing it with the heat balance, finding faults, fitting
 * the kiln's own numbers, and the ledger over several firings. No file is opened here: text comes in, records go out.
 */
package portwright.calc.firing.record;
