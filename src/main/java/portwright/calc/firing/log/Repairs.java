package portwright.calc.firing.log;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * When a log notes that something was repaired ("new relay", "element replaced", "thermocouple renewed").
 *
 * @param powerS row with the last note on element, relay, switch or breaker, s; NaN for none
 * @param probeS the same on thermocouple, instrument or logger
 */
public record Repairs(double powerS, double probeS) {
    /** Nothing noted. */
    public static final Repairs NONE = new Repairs(Double.NaN, Double.NaN);

    private static final String DONE =
            "(?:replaced|renewed|repaired|mended|fixed|changed|swapped|exchanged|rewired|reset)";
    private static final Pattern POWER = about("elements?|coils?|relays?|contactors?|switch(?:es)?|breakers?");
    private static final Pattern PROBE = about("thermocouples?|probes?|sensors?|pyrometer|logger|instrument");

    private static Pattern about(String part) {
        String thing = "\\b(?:" + part + ")\\b";
        return Pattern.compile("\\bnew\\b[a-z0-9 ]{0,16}" + thing + "|" + thing + "[a-z0-9 ,]{0,16}\\b" + DONE
                + "\\b|\\b" + DONE + "\\b[a-z0-9 ,]{0,16}" + thing);
    }

    static Repairs of(FiringLog log) {
        double power = Double.NaN;
        double probe = Double.NaN;
        for (LogRow r : log.rows()) {
            String note = r.note().toLowerCase(Locale.ROOT);
            if (!Notes.notDone(note)) {
                power = POWER.matcher(note).find() ? r.timeS() : power;
                probe = PROBE.matcher(note).find() ? r.timeS() : probe;
            }
        }
        return new Repairs(power, probe);
    }
}
