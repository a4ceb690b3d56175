package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import portwright.units.Celsius;

/**
 * Readings of a thermocouple that is broken, loose or shorted: open in words, blank, at the end of the instrument's range, or fallen to the
 * room while the kiln is hot. Limits are this project's judgement: no brick kiln falls to 80 °C within the hour, none stands still to the
 * degree right after a jump, none holds the very same figure above 1330 °C for ten minutes, none of brick stands about one figure above 1430 °C: an instrument that sees no
 * thermocouple goes to the top of its scale and wanders there. The way up to such a figure goes with it as far as no kiln climbs so fast.
 */
final class DeadProbe {
    private static final Pattern WORDS = Pattern.compile(
            "open|o/?l|-{2,}|over(range|load|flow)?|fail\\w*|fault|err(or)?\\w*|burn\\s?-?out|no ?(tc|probe|sensor)|n/?a|nan|inf|null|\\?+|tc ?open",
            Pattern.CASE_INSENSITIVE);
    private static final double ROOM_K = 353.15;
    private static final double HOT_K = 473.15;
    private static final double END_OF_RANGE_K = 1603.15;
    /** Over this a reading that stands is no kiln's. */
    static final double NO_KILN_K = 1703.15;
    /** How far a reading wanders that stands there. */
    private static final double WANDERS_K = 30;

    /** The halves of a climb lie half its height apart; those of a wandering figure less. */
    private static final double CLIMBS = 0.35;

    private static final double SAME_K = 2;
    private static final int SAME_FOR = 3;
    private static final int PINNED_FOR = 4;
    private static final double BLANK_S = 600;
    private static final double ROOM_FASTER = 2;
    private static final double PINNED_FASTER = 1.5;

    private final List<LogRow> rows;
    private final List<LogFault> faults;
    private final List<DeadSpell> spells = new ArrayList<>();
    private final boolean[] dead;

    private DeadProbe(List<LogRow> rows, List<LogFault> faults) {
        this.rows = rows;
        this.faults = faults;
        dead = new boolean[rows.size()];
    }

    /** What is left of a log, and when the probe was dead. */
    record Left(List<LogRow> rows, List<DeadSpell> spells) {}

    /** Whether a cell that is not empty says that the instrument sees no thermocouple. */
    static boolean says(String cell) {
        return !Character.isDigit(cell.charAt(0)) && WORDS.matcher(cell).matches();
    }

    /**
     * Takes the dead readings out, each with its line among the faults; NaN or infinite is a cell without a usable number, whose fault is already told. Short
     * runs that come back are left to {@link Spikes}, between.
     */
    static Left leftOut(List<LogRow> rows, List<LogFault> faults) {
        DeadProbe silent = new DeadProbe(rows, faults);
        silent.run(true);
        DeadProbe still = new DeadProbe(Spikes.leftOut(silent.left(), faults), faults);
        still.run(false);
        List<DeadSpell> all = new ArrayList<>(silent.spells);
        all.addAll(still.spells);
        all.sort(Comparator.comparingDouble(DeadSpell::fromS));
        return new Left(still.left(), all);
    }

    private void run(boolean silent) {
        List<Integer> at = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).kelvin() != null) {
                at.add(i);
            }
        }
        int good = -1;
        int i = 0;
        while (i < at.size()) {
            int n = silent ? silent(at, i, good) : good < 0 ? 0 : still(at, i, good);
            n = n > 0 || silent || good < 0 ? n : high(at, i, good);
            good = n == 0 ? at.get(i) : good;
            i += Math.max(1, n);
        }
    }

    private List<LogRow> left() {
        List<LogRow> out = new ArrayList<>(rows.size());
        for (int j = 0; j < rows.size(); j++) {
            LogRow r = rows.get(j);
            if (!dead[j]) {
                out.add(r);
            } else if (r.tells()) {
                out.add(r.withoutReading());
            }
        }
        return out;
    }

    private double k(int row) {
        return rows.get(row).kelvin();
    }

    /**
     * Cells without a usable number from one on; said as a spell where it lasts. A kiln that climbed to the highest reading taken may as well
     * be hotter than that: nothing says then that the probe is dead.
     */
    private int silent(List<Integer> at, int i, int good) {
        int n = 0;
        while (i + n < at.size() && !Double.isFinite(k(at.get(i + n)))) {
            dead[at.get(i + n)] = true;
            n++;
        }
        if (n == 0) {
            return 0;
        }
        LogRow a = rows.get(at.get(i));
        LogRow b = rows.get(at.get(i + n - 1));
        boolean hot = k(at.get(i)) > 0
                && good >= 0
                && k(good) > END_OF_RANGE_K
                && a.timeS() - rows.get(good).timeS() < Gap.LONG_S;
        if (!hot && n >= SAME_FOR && b.timeS() - a.timeS() >= BLANK_S) {
            spells.add(new DeadSpell(a.line(), b.line(), a.timeS(), b.timeS(), Double.NaN));
        }
        return n;
    }

    /** How many readings from one on are those of a dead probe; 0 for a living one. */
    private int still(List<Integer> at, int i, int good) {
        LogRow before = rows.get(good);
        LogRow first = rows.get(at.get(i));
        double x = first.kelvin();
        boolean room = before.kelvin() > HOT_K && x < ROOM_K && Spikes.steep(before, first, ROOM_FASTER);
        boolean end = x >= END_OF_RANGE_K && pinned(at, i);
        boolean jump = before.kelvin() > ROOM_K
                && Math.abs(x - before.kelvin()) > Spikes.RUN_LEAST_K
                && Spikes.steep(before, first, x > before.kelvin() ? PINNED_FASTER : Spikes.RUN_FASTER);
        if (!room && !end && !jump) {
            return 0;
        }
        int n = 0;
        int same = 0;
        while (i + n < at.size() && belongs(k(at.get(i + n)), x, room, end)) {
            same = Math.abs(k(at.get(i + n)) - x) <= SAME_K ? n + 1 : same;
            n++;
        }
        boolean toEnd = i + n == at.size();
        if (!(room && (n >= SAME_FOR || toEnd) || same >= SAME_FOR)) {
            return 0;
        }
        return taken(at, i, room ? n : same, before);
    }

    /** How many readings from one on stand where no kiln of brick stays: over 1430 °C for twenty minutes, wandering but not climbing. */
    private int high(List<Integer> at, int i, int good) {
        if (!(k(at.get(i)) >= NO_KILN_K)) {
            return 0;
        }
        int n = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        while (i + n < at.size() && Math.abs(k(at.get(i + n)) - k(at.get(i))) <= WANDERS_K) {
            least = Math.min(least, k(at.get(i + n)));
            most = Math.max(most, k(at.get(i + n)));
            n++;
        }
        double climbs = Math.abs(mean(at, i + n / 2, i + n) - mean(at, i, i + n / 2));
        boolean stands = n >= PINNED_FOR
                && rows.get(at.get(i + n - 1)).timeS() - rows.get(at.get(i)).timeS() >= 2 * BLANK_S
                && climbs <= Math.max(SAME_K, CLIMBS * (most - least));
        return stands ? taken(at, i, n, rows.get(good)) : 0;
    }

    private double mean(List<Integer> at, int from, int to) {
        double sum = 0;
        for (int j = from; j < to; j++) {
            sum += k(at.get(j));
        }
        return sum / Math.max(1, to - from);
    }

    /** Takes so many readings out, and before a high figure the way up to it that no kiln climbs. */
    private int taken(List<Integer> at, int i, int n, LogRow before) {
        int from = i;
        while (k(at.get(i)) >= END_OF_RANGE_K
                && from > 1
                && k(at.get(from)) > k(at.get(from - 1))
                && !dead[at.get(from - 1)]
                && Spikes.steep(rows.get(at.get(from - 1)), rows.get(at.get(from)), 1)
                && k(at.get(from - 1)) > k(at.get(from - 2))
                && Spikes.steep(rows.get(at.get(from - 2)), rows.get(at.get(from - 1)), 1)) {
            from--;
        }
        for (int j = from; j < i + n; j++) {
            LogRow r = rows.get(at.get(j));
            dead[at.get(j)] = true;
            faults.add(new LogFault(
                    r.line(),
                    !r.tells(),
                    Math.round(r.kelvin() - Celsius.ZERO_C)
                            + " °C is the reading of a broken or loose thermocouple: before it "
                            + Math.round(before.kelvin() - Celsius.ZERO_C) + " °C; left out of the reckoning"));
        }
        LogRow first = rows.get(at.get(from));
        LogRow last = rows.get(at.get(i + n - 1));
        spells.add(new DeadSpell(first.line(), last.line(), first.timeS(), last.timeS(), k(at.get(i))));
        return n;
    }

    /** Whether the very same figure stands from one reading on for ten minutes. */
    private boolean pinned(List<Integer> at, int i) {
        int n = 0;
        while (i + n < at.size() && k(at.get(i + n)) == k(at.get(i))) {
            n++;
        }
        return n >= PINNED_FOR
                && rows.get(at.get(i + n - 1)).timeS() - rows.get(at.get(i)).timeS() >= BLANK_S;
    }

    private static boolean belongs(double k, double first, boolean room, boolean end) {
        return !Double.isNaN(k) && (room ? k < ROOM_K : end ? k == first : Math.abs(k - first) <= SAME_K);
    }
}
