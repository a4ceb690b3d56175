/** Findings, severities, verdicts, and what a rule is; the rules themselves are in {@code check.rules}. A rule reads the review, changes nothing, prints nothing. */
package portwright.check;
