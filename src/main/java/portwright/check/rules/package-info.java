/** One small class a rule, and one list a section in the order of the rule book. */
package portwright.check.rules;
