package portwright.report;

/**
 * One line of a report: what, and what of it.
 *
 * @param name what it is about; empty where it goes on with the line before
 * @param value in words
 */
public record ReportLine(String name, String value) {}
