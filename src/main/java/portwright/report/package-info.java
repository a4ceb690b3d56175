/** The review, its findings and records of firings as text for people, JSON, CSV and Markdown. */
package portwright.report;
