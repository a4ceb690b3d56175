package portwright.calc.firing.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Reads a log as people and meters write it: comma, tab or semicolon; °C or °F from heading, cells or values; clock time
 * (12 or 24 hours, with or without seconds or date, past midnight) or elapsed time; decimal point or comma; byte-order
 * mark, blank lines and remarks ({@code #}) passed over. A bad row is skipped and listed by line, never silently.
 */
public final class LogReader {
    private static final double LOWEST_C = -40;
    private static final double HIGHEST_C = 1700;
    private static final double SPIKE_K = 120;
    private static final double DAY_S = 86400;
    private static final int TEXT_LIMIT = 40;

    private final List<LogRow> rows = new ArrayList<>();
    private final List<SkippedRow> skipped = new ArrayList<>();

    private LogReader() {}

    /**
     * Reads a log.
     *
     * @throws LogException if there is no time or temperature column, fewer than two good rows, a bare number as time
     *     without a unit, or a temperature scale that neither heading nor values settle
     */
    public static FiringLog read(String text) {
        return new LogReader().parse(text);
    }

    private FiringLog parse(String text) {
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<String> lines = Arrays.asList(body.split("\r\n|\r|\n", -1));
        char separator = Cells.separator(lines);
        Heading heading = null;
        char scale = ' ';
        String scaleFrom = "heading";
        boolean clock = false;
        double offset = 0;
        double last = Double.NaN;
        double lastDay = Double.NaN;
        double first = Double.NaN;
        double before = Double.NaN;
        for (int i = 0; i < lines.size(); i++) {
            int line = i + 1;
            String raw = lines.get(i);
            if (raw.isBlank() || raw.stripLeading().startsWith("#") || raw.chars().allMatch(c -> c == separator || c == ' ')) {
                continue;
            }
            List<String> cells = Cells.cut(raw, separator);
            if (heading == null) {
                if (Heading.looksLike(cells)) {
                    heading = Heading.of(cells);
                    scale = heading.scale();
                    continue;
                }
                if (cells.size() < 2) {
                    skip(line, "no heading yet and only one cell: '" + shown(raw) + "'");
                    continue;
                }
                heading = Heading.none();
            }
            String timeCell = cell(cells, heading.time());
            String degrees = cell(cells, heading.temperature());
            Times t = Times.of(timeCell, cell(cells, heading.date()), heading);
            if (t == null) {
                Numbers bare = Numbers.of(timeCell);
                if (bare != null && bare.unit().isEmpty() && Double.isNaN(heading.timeUnitS())) {
                    throw new LogException("line " + line + ": the time '" + shown(timeCell)
                            + "' is a bare number: name the unit in the heading, for example time min, or write 1:30");
                }
                skip(line, timeCell.isEmpty() ? "no time" : "'" + shown(timeCell) + "' is not a time");
                continue;
            }
            Numbers n = Numbers.of(degrees);
            if (n == null) {
                skip(line, degrees.isEmpty() ? "no temperature" : "'" + shown(degrees) + "' is not a temperature");
                continue;
            }
            char unit = n.unit().isEmpty() ? ' ' : Heading.scale(n.unit());
            if (unit != ' ' && scale == ' ') {
                scale = unit;
                scaleFrom = "cells";
            }
            if (!n.unit().isEmpty() && unit == ' ' || unit != ' ' && unit != scale) {
                skip(line, "'" + shown(degrees) + "' is in another unit than the log");
                continue;
            }
            clock |= t.clock();
            double seconds = t.seconds();
            if (!Double.isNaN(t.day())) {
                if (!Double.isNaN(lastDay) && t.day() < lastDay) {
                    skip(line, "the date '" + shown(timeCell) + "' lies before the row above");
                    continue;
                }
                lastDay = t.day();
                seconds += t.day() * DAY_S;
            } else {
                seconds += offset;
                if (!Double.isNaN(last) && seconds < last - DAY_S / 2 && !heading.elapsed()) {
                    offset += DAY_S;
                    seconds += DAY_S;
                    clock = true;
                }
            }
            if (!Double.isNaN(before) && seconds < before) {
                skip(line, "time '" + shown(timeCell) + "' runs backwards");
                continue;
            }
            if (!Double.isNaN(before) && seconds - before > 2 * DAY_S) {
                skip(line, "time '" + shown(timeCell) + "' is more than two days after the row above");
                continue;
            }
            before = seconds;
            last = seconds;
            if (Double.isNaN(first)) {
                first = seconds;
            }
            addRow(line, seconds - first, n.value(), cells, heading);
        }
        if (rows.size() < 2) {
            throw new LogException("fewer than two good rows" + (skipped.isEmpty() ? "" : "; first bad one: line "
                    + skipped.get(0).line() + ", " + skipped.get(0).what()));
        }
        if (scale == ' ') {
            scale = guess();
            scaleFrom = "values";
        }
        boolean fahrenheit = scale == 'F';
        List<LogRow> good = clean(fahrenheit);
        if (good.size() < 2) {
            throw new LogException("fewer than two rows hold a temperature between " + LOWEST_C + " and " + HIGHEST_C + " °C");
        }
        skipped.sort((a, b) -> Integer.compare(a.line(), b.line()));
        return new FiringLog(good, skipped, fahrenheit, clock, scaleFrom);
    }

    private void addRow(int line, double seconds, double degrees, List<String> cells, Heading h) {
        double share = Double.NaN;
        double mm = Double.NaN;
        String damper = cell(cells, h.damper());
        Numbers d = Numbers.of(damper);
        if (d != null) {
            String unit = d.unit().isEmpty() ? h.damperUnit() : d.unit();
            if (unit.equals("%") && d.value() >= 0 && d.value() <= 100) {
                share = d.value() / 100;
            } else if (unit.equals("mm") && d.value() >= 0) {
                mm = d.value();
            } else {
                skip(line, "damper '" + shown(damper) + "' left out of a good row: write it with % or mm");
            }
        } else if (damper.equalsIgnoreCase("open") || damper.equalsIgnoreCase("off")) {
            share = 1;
        } else if (damper.equalsIgnoreCase("shut") || damper.equalsIgnoreCase("closed")) {
            share = 0;
        } else if (!damper.isEmpty() && !damper.equals("-")) {
            skip(line, "damper '" + shown(damper) + "' left out of a good row: write it with % or mm");
        }
        double pa = Double.NaN;
        String gas = cell(cells, h.pressure());
        Numbers p = Numbers.of(gas);
        if (p != null) {
            pa = p.value() == 0 ? 0 : p.unit().isEmpty() ? p.value() * h.pressurePa() : Heading.pascal(p.value(), p.unit());
            if (Double.isNaN(pa)) {
                skip(line, "gas pressure '" + shown(gas) + "' left out of a good row: write it with mbar, kPa, psi or inH2O");
            }
        } else if (gas.equalsIgnoreCase("off")) {
            pa = 0;
        } else if (!gas.isEmpty() && !gas.equals("-")) {
            skip(line, "gas pressure '" + shown(gas) + "' left out of a good row: write it with mbar, kPa, psi or inH2O");
        }
        String cone = cell(cells, h.cone()).toLowerCase(Locale.ROOT).replaceFirst("^(cone|[δ∆^▲])\\s*", "").replaceFirst("\\s*down$", "");
        rows.add(new LogRow(line, seconds, degrees, share, mm, pa, cone.equals("-") ? "" : cone, cell(cells, h.note())));
    }

    private char guess() {
        double most = rows.stream().mapToDouble(LogRow::temperatureC).max().orElseThrow();
        double start = rows.get(0).temperatureC();
        if (most > 1420) {
            return 'F';
        }
        if (start < 45) {
            return 'C';
        }
        throw new LogException("°C or °F? Neither heading nor values say (first " + start + ", highest " + most
                + "): write temperature °C or temperature °F in the heading");
    }

    private List<LogRow> clean(boolean fahrenheit) {
        List<LogRow> range = new ArrayList<>(rows.size());
        for (LogRow r : rows) {
            double c = fahrenheit ? (r.temperatureC() - 32) / 1.8 : r.temperatureC();
            if (c < LOWEST_C || c > HIGHEST_C) {
                skip(r.line(), r.temperatureC() + (fahrenheit ? " °F" : " °C") + " is outside what a kiln can read");
            } else {
                range.add(new LogRow(r.line(), r.timeS(), c, r.damperShare(), r.damperMm(), r.gasPa(), r.cone(), r.note()));
            }
        }
        List<LogRow> out = new ArrayList<>(range.size());
        for (int i = 0; i < range.size(); i++) {
            double c = range.get(i).temperatureC();
            boolean inside = i > 0 && i < range.size() - 1;
            double a = inside ? range.get(i - 1).temperatureC() : c;
            double b = inside ? range.get(i + 1).temperatureC() : c;
            if (Math.abs(a - b) < SPIKE_K / 3 && Math.min(Math.abs(c - a), Math.abs(c - b)) > SPIKE_K) {
                skip(range.get(i).line(), Math.round(c) + " °C stands alone between " + Math.round(a) + " and " + Math.round(b) + " °C");
            } else {
                out.add(range.get(i));
            }
        }
        return out;
    }

    private void skip(int line, String what) {
        skipped.add(new SkippedRow(line, what));
    }

    private static String cell(List<String> cells, int i) {
        return i >= 0 && i < cells.size() ? cells.get(i) : "";
    }

    private static String shown(String s) {
        return s.length() > TEXT_LIMIT ? s.substring(0, TEXT_LIMIT) + "…" : s;
    }
}
