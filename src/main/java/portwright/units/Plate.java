package portwright.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A power as a kiln's plate states it: volts and amperes. */
final class Plate {
    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final String BETWEEN = "[\\s,;×x*@·/]*(?:at |and )?";
    private static final String V = " ?(?:V|volts?)(?: ?AC)?";
    private static final String A = " ?(?:A|amps?|amperes?)";
    private static final Pattern VOLTS_FIRST =
            Pattern.compile(NUMBER + V + BETWEEN + NUMBER + A, Pattern.CASE_INSENSITIVE);
    private static final Pattern AMPERES_FIRST =
            Pattern.compile(NUMBER + A + BETWEEN + NUMBER + V, Pattern.CASE_INSENSITIVE);

    private Plate() {}

    /** What to write for volts and amperes: their product, which is the power of a single-phase kiln. */
    static String words(String typed) {
        for (Pattern p : new Pattern[] {VOLTS_FIRST, AMPERES_FIRST}) {
            Matcher m = p.matcher(typed.strip());
            if (m.matches()) {
                double watts = Double.parseDouble(m.group(1)) * Double.parseDouble(m.group(2));
                return "a power is wanted. Volts times amperes, on a single phase: write "
                        + Format.plain(watts / 1000, 2) + " kW.";
            }
        }
        return "a power is wanted. Multiply volts by amperes, on a single phase: 240 V at 20 A are 4.8 kW.";
    }
}
