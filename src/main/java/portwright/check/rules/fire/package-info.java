/** Rules on flues, air and fire, one small class each. */
package portwright.check.rules.fire;
