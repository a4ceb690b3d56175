package portwright.calc.firing.log;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a logged firing from a table with a header line. Whatever is left out is told by line and reason. */
public final class LogParser {
    private static final int HEADER_WITHIN = 60;
    private static final String EXAMPLE = "Write a first line such as: time, temp °C, damper %, cone, notes";

    private final List<LogFault> faults = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final ConeCell cones = new ConeCell(faults);
    private final SecondReading second = new SecondReading();
    private final EmptyCells empty = new EmptyCells();

    private LogParser() {}

    /** Reads the bytes of a file: UTF-8 or UTF-16 with or without mark, else Western single bytes. */
    public static FiringLog parse(byte[] bytes) {
        return parse(decode(bytes));
    }

    /**
     * Reads a text.
     *
     * @throws LogException when no header with time and temperature is found, a unit is missing, or no row can be used
     */
    public static FiringLog parse(String text) {
        return new LogParser().read(text.startsWith("\ufeff") ? text.substring(1) : text);
    }

    private static String decode(byte[] b) {
        if (b.length > 1
                && (b[0] == (byte) 0xFF && b[1] == (byte) 0xFE || b[0] == (byte) 0xFE && b[1] == (byte) 0xFF)) {
            return new String(b, StandardCharsets.UTF_16);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(b))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(b, Charset.forName("windows-1252"));
        }
    }

    private FiringLog read(String text) {
        String[] lines = text.lines().toArray(String[]::new);
        Header h = header(lines);
        List<List<String>> cells = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        String above = "";
        int repeated = 0;
        int comments = 0;
        for (int i = h.line(); i < lines.length; i++) {
            if (lines[i].equals(above) && !lines[i].isBlank()) {
                repeated++;
                continue;
            }
            above = lines[i];
            if (lines[i].isBlank()) {
                continue;
            }
            List<String> row = Cells.split(lines[i], h.delimiter());
            if (lines[i].matches("#+[^#].*") && none(row.subList(1, row.size()))) {
                comments++;
                continue;
            }
            if (none(row)) {
                empty.nothing(i + 1);
                continue;
            }
            cells.add(row);
            numbers.add(i + 1);
        }
        Cells.Comma comma = Cells.comma(cells.stream()
                .filter(r -> r.size() > h.temperature())
                .map(r -> r.get(h.temperature()))
                .toList());
        checkUnits(h, cells);
        checkCommas(h, cells);
        List<LogRow> rows = new ArrayList<>();
        List<Clock> clocks = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            row(h, cells.get(i), numbers.get(i), comma, rows, clocks);
        }
        if (repeated > 0) {
            remarks.add(
                    repeated == 1
                            ? "1 row repeats the row above word for word; it counts once"
                            : repeated + " rows repeat the row above word for word; each counts once");
        }
        if (comments > 0) {
            remarks.add(comments
                    + (comments == 1
                            ? " line beginning with # holds no columns: a comment, not read"
                            : " lines beginning with # hold no columns: comments, not read"));
        }
        remarks.addAll(empty.words());
        Optional<String> doubt = ScaleDoubt.of(rows, h.celsius());
        doubt.ifPresent(remarks::add);
        columns(h, Cells.split(lines[h.line() - 1].replaceFirst("^#\\s*", ""), h.delimiter()));
        Times times = new Times(h.elapsed(), faults, remarks);
        DeadProbe.Left alive = DeadProbe.leftOut(times.order(rows, clocks), faults);
        List<LogRow> timed = ConeOrder.checked(alive.rows(), faults);
        if (timed.stream().noneMatch(r -> r.kelvin() != null)) {
            throw new LogException((second.told()
                            ? "the first temperature column holds no reading, the second does; take the first one out of the log. "
                            : "")
                    + "no row with both a time and a temperature can be used"
                    + (faults.isEmpty()
                            ? ""
                            : "; line " + faults.get(0).line() + ": "
                                    + faults.get(0).reason()) + ". " + EXAMPLE);
        }
        faults.sort((a, b) -> Integer.compare(a.line(), b.line()));
        return new FiringLog(timed, faults, remarks, alive.spells(), times.startS(), doubt.isPresent());
    }

    private void columns(Header h, List<String> names) {
        if (h.second() >= 0) {
            remarks.add(second.words(names.get(h.temperature()), names.get(h.second())));
        }
        if (!h.unused().isEmpty()) {
            remarks.add("columns not used: "
                    + String.join(
                            ", ",
                            h.unused().stream()
                                    .map(i -> '"' + names.get(i) + '"')
                                    .toList()));
        }
    }

    private Header header(String[] lines) {
        int seen = 0;
        for (int i = 0; i < lines.length && seen < HEADER_WITHIN; i++) {
            if (lines[i].isBlank()) {
                continue;
            }
            seen++;
            Header best = null;
            for (char d : new char[] {'\t', ';', ','}) {
                Header h = Header.of(i + 1, Cells.split(lines[i].replaceFirst("^#\\s*", ""), d), d);
                if (h != null && (best == null || h.columns() > best.columns())) {
                    best = h;
                }
            }
            if (best != null) {
                if (seen > 1) {
                    remarks.add("the header is line " + (i + 1) + "; what stands before it is not read");
                }
                return best;
            }
        }
        throw new LogException("no line names a time column and a temperature column. " + EXAMPLE);
    }

    private static void checkUnits(Header h, List<List<String>> cells) {
        List<List<String>> some = cells.stream()
                .filter(r -> r.size() > Math.max(h.time(), h.temperature()))
                .limit(200)
                .toList();
        if (h.celsius() == null
                && !some.isEmpty()
                && some.stream().noneMatch(r -> Reading.scale(Cells.unit(r.get(h.temperature()))) != null)) {
            throw new LogException(
                    "the temperature column does not say its scale. Name it temp °C or temp °F in line " + h.line());
        }
        if (Double.isNaN(h.timeUnitS())
                && !some.isEmpty()
                && some.stream().allMatch(r -> Clock.bare(r.get(h.time())))) {
            throw new LogException(
                    "the time column holds bare numbers and does not say their unit. Name it time min or time h in line "
                            + h.line());
        }
    }

    /** Decimal commas between commas: every row one cell longer than the header, the cell behind the temperature one digit and never empty. */
    private static void checkCommas(Header h, List<List<String>> cells) {
        if (h.delimiter() == ','
                && h.temperature() + 1 < h.columns()
                && cells.size() > 2
                && cells.stream()
                        .allMatch(r -> r.size() == h.columns() + 1
                                && r.get(h.temperature() + 1).matches("\\d"))) {
            throw new LogException("a decimal comma between commas. Write a point, or put ; between cells, in line "
                    + h.line() + " too");
        }
    }

    private void row(Header h, List<String> cells, int line, Cells.Comma comma, List<LogRow> rows, List<Clock> clocks) {
        if (cells.size() > h.columns()) {
            if (h.note() == h.columns() - 1) {
                String rest = String.join(", ", cells.subList(h.note(), cells.size()));
                cells = new ArrayList<>(cells.subList(0, h.note()));
                cells.add(rest);
            } else if (!none(cells.subList(h.columns(), cells.size()))) {
                skip(
                        line,
                        "more cells than the header has names; a decimal comma between commas? Write a point, or put ; between cells");
                return;
            }
        }
        String when = cell(cells, h.time());
        Clock clock = Clock.read(when, h.date() < 0 ? null : cell(cells, h.date()), h.timeUnitS());
        if (clock == null) {
            skip(
                    line,
                    when.isEmpty()
                            ? "no time"
                            : "\"" + when + "\" is no time" + Cells.instead(when, "14:05, 2:05 PM or 1.5 h"));
            return;
        }
        String note = cell(cells, h.note());
        List<String> down = cones.read(line, cell(cells, h.cone()), note);
        String cone = down.isEmpty() ? null : down.get(0);
        DamperCell damper = damper(h, line, cell(cells, h.damper()));
        Double gas = pressure(h, line, cell(cells, h.pressure()));
        LogRow row = new LogRow(line, 0, null, damper.share(), damper.travelM(), gas, cone, note);
        Reading reading = Reading.of(cell(cells, h.temperature()), h.celsius(), comma, row);
        if (reading.why() == null && Double.valueOf(Double.NaN).equals(reading.kelvin())) {
            empty.noReading(line);
        }
        if (reading.why() != null) {
            faults.add(new LogFault(line, !row.tells(), reading.why()));
        }
        if (h.second() >= 0) {
            second.row(line, reading.kelvin(), Reading.kelvin(cell(cells, h.second()), h.secondCelsius(), comma));
        }
        if (reading.kelvin() == null && !row.tells()) {
            return;
        }
        rows.add(row.reading(reading.kelvin()));
        clocks.add(clock);
        for (int i = 1; i < down.size(); i++) {
            rows.add(new LogRow(line, 0, null, null, null, null, down.get(i), ""));
            clocks.add(clock);
        }
    }

    private static boolean none(List<String> cells) {
        for (String s : cells) {
            if (!s.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private void skip(int line, String reason) {
        faults.add(new LogFault(line, true, reason));
    }

    private static String cell(List<String> cells, int i) {
        return i < 0 || i >= cells.size() ? "" : cells.get(i);
    }

    private DamperCell damper(Header h, int line, String text) {
        DamperCell d = DamperCell.read(text, h);
        if (d == null) {
            faults.add(
                    new LogFault(
                            line,
                            false,
                            "damper \"" + text
                                    + "\" is neither an open share of 0 to 100 % nor a travel of 0 to 500 mm; name the column damper % or damper mm"));
            return DamperCell.NONE;
        }
        return d;
    }

    private Double pressure(Header h, int line, String text) {
        if (text.isEmpty() || text.equals("-")) {
            return null;
        }
        if (text.equalsIgnoreCase("off")) {
            return 0.0;
        }
        double v = Cells.number(text, Cells.Comma.DECIMAL);
        String unit = Cells.unit(text);
        double pa = v == 0 ? 0 : v * (unit.isEmpty() ? h.pressurePa() : Header.unitPa(unit));
        if (!(pa >= 0 && pa < 1e7)) {
            faults.add(new LogFault(
                    line,
                    false,
                    LogFault.GAS + " \"" + text + "\" is not understood; name the column gas inH2O or gas mbar"));
            return null;
        }
        return pa;
    }
}
