/** The review and its findings as text for people, JSON and CSV. */
package portwright.report;
