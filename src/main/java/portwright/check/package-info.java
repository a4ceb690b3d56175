/** The rule book: findings, severities, and one small class a rule. A rule reads the review, changes nothing, prints nothing. */
package portwright.check;
