package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.data.Cones;

/** Fallen cones as noted in a row: one or several, in a cell of their own or in a note. */
final class ConeCell {
    private static final String SIGN = "(?:cones?|\\^|Δ|∆|△)";
    private static final String ONE = "(?:" + SIGN + "\\s*)?0?\\d{1,2}";
    private static final String AND = "\\s*(?:,|;|/|&|\\+|and)\\s*(?:and\\s+)?";
    private static final Pattern FIRST =
            Pattern.compile("(?:(?:large|small|big|witness|guide|guard|firing|self[- ]?supporting)\\s+)?(?:" + SIGN
                    + "\\s*#?\\s*)?(0?\\d{1,2})[.!)]?(?:\\s*°)?(?:[\\s,;(]+\\p{L}[^?]*)?");
    private static final Pattern SEVERAL = Pattern.compile("(" + ONE + "(?:" + AND + ONE
            + ")+)\\s*(?:are|have|all|both)?\\s*(?:down|fell|fallen|flat|over|dropped)?\\W*");
    private static final Pattern FALLEN = Pattern.compile("(" + SIGN + "\\s*0?\\d{1,2}(?:" + AND + ONE + ")*)"
            + "\\s*(?:is|are|has|have|went|just|both|all)?\\s*(?:down|fell|fallen|flat|over|dropped|drops)\\b");
    private static final Pattern NUMBER = Pattern.compile("0?\\d{1,2}");
    private static final Pattern NOT_YET = Pattern.compile("start|soft|half|bend|moving|stand|not ");

    private final Cones cones = Cones.load();
    private final List<LogFault> faults;

    ConeCell(List<LogFault> faults) {
        this.faults = faults;
    }

    /** The cones that a row says are down, each once; what is not understood is told in the faults. */
    List<String> read(int line, String cell, String note) {
        if (cell.isEmpty() && note.isEmpty()) {
            return List.of();
        }
        String low = (cell.isEmpty() ? note : cell).toLowerCase(Locale.ROOT);
        Set<String> named = new LinkedHashSet<>();
        if (cell.isEmpty()) {
            Matcher m = FALLEN.matcher(low);
            while (m.find()) {
                numbers(m.group(1), named);
            }
        } else if (!NOT_YET.matcher(low).find()) {
            Matcher several = SEVERAL.matcher(low);
            Matcher first = FIRST.matcher(low);
            if (several.matches()) {
                numbers(several.group(1), named);
            } else if (first.matches()) {
                named.add(first.group(1));
            } else if (!cell.equals("-")) {
                faults.add(new LogFault(line, false, "cone \"" + cell + "\" is not understood; write 6 or cone 06"));
            }
        }
        List<String> out = new ArrayList<>();
        for (String n : named) {
            if (cones.find(n).isPresent()) {
                out.add(n);
            } else {
                faults.add(new LogFault(line, false, "cone " + n + " is not in the table (022 to 14)"));
            }
        }
        return out;
    }

    private static void numbers(String list, Set<String> out) {
        Matcher m = NUMBER.matcher(list);
        while (m.find()) {
            out.add(m.group());
        }
    }
}
