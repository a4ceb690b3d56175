package portwright.calc.firing.log;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the notes of a log tell of cylinder and load. */
public final class Notes {
    private static final String VESSEL = "(?:cylinder|bottle|tank|propane|gas)s?";
    private static final Pattern REFILL = Pattern.compile("\\b(?:new|fresh|full|another)\\b[a-z ]{0,20}\\b"
            + "(?:cylinder|bottle|tank)s?\\b|\\b" + VESSEL + "\\b[a-z ]{0,12}"
            + "\\b(?:changed|swapped|exchanged|replaced|refilled|filled|full)\\b|\\b(?:changed|swapped|exchanged|replaced|refilled|filled)\\b"
            + "[a-z ]{0,12}\\b" + VESSEL + "\\b|^\\W*refill(?:ed)?\\b");
    private static final Pattern NOT_DONE = Pattern.compile(
            "\\b(?:no|not|need\\w*|order\\w*|buy\\w*|next|soon|before|should|must|will|almost|nearly|half|get|want\\w*|if)\\b|\\?");
    private static final Pattern LOAD = Pattern.compile("\\bload\\b\\W*(\\d+(?:[.,]\\d+)?)\\s*(kg|lbs?)\\b");
    private static final Pattern ELECTRIC = Pattern.compile(
            "\\b(?:bis(?:que|cuit)|oxidation|oxidi[sz]ing)\\W+firing\\b|\\b(?:all|purely)\\W+electric\\b|\\belectric\\W+(?:only|alone|firing)\\b");
    private static final Pattern NO_GAS = Pattern.compile(
            "\\b(?:no|without|zero)\\W+gas\\b(?!\\W+(?:yet|left|any|now|flow|pressure|smell|leak|lit|un|at|in|comes|came|on|from|out|after|to)|\\W*[a-z]*\\d)");

    /** Notes of the whole firing are written so early. */
    private static final double AT_START_S = 3600;

    private static final double LB_KG = 0.45359237;

    private Notes() {}

    /** Whether a note says that the gas cylinder was changed or filled. */
    public static boolean refill(String note) {
        String low = note.toLowerCase(Locale.ROOT);
        return REFILL.matcher(low).find() && !notDone(low);
    }

    /** Whether a note in small letters tells of something to be done, not of something done. */
    static boolean notDone(String low) {
        return NOT_DONE.matcher(low).find();
    }

    /** The row whose note tells the last refill of a log; null for none. */
    public static LogRow refill(FiringLog log) {
        LogRow last = null;
        for (LogRow r : log.rows()) {
            last = refill(r.note()) ? r : last;
        }
        return last;
    }

    /** Whether a note says that the whole firing was one by electricity alone ("bisque firing", "all electric"). */
    static boolean electric(FiringLog log) {
        double start = log.rows().get(0).timeS() + AT_START_S;
        return log.rows().stream().anyMatch(r -> electric(r.note().toLowerCase(Locale.ROOT), r.timeS() <= start));
    }

    /** "No gas" by itself tells it where the log begins; later it may be a cylinder that ran empty. */
    private static boolean electric(String note, boolean atStart) {
        String rest = NO_GAS.matcher(note).replaceAll(" ").strip();
        boolean noGas = rest.length() < note.strip().length();
        return !notDone(rest)
                && (ELECTRIC.matcher(rest).find()
                        || noGas && (atStart || rest.matches("(?s).*\\b(?:oxidation|oxidi[sz]ing|electric)\\b.*")));
    }

    /** Mass of the ware, kg, as a note tells it ("load 45 kg"); NaN without one. */
    public static double loadKg(FiringLog log) {
        for (LogRow r : log.rows()) {
            Matcher m = LOAD.matcher(r.note().toLowerCase(Locale.ROOT));
            if (m.find()) {
                return Double.parseDouble(m.group(1).replace(',', '.'))
                        * (m.group(2).equals("kg") ? 1 : LB_KG);
            }
        }
        return Double.NaN;
    }
}
