package portwright.report;

import portwright.calc.firing.FiringRun;
import portwright.review.StepRow;
import portwright.units.Format;

/** What is said under a step of the forecast, in the table and on the card. */
public final class StepRemarks {
    private StepRemarks() {}

    /** For the table: a cone that is down before its step, and since when. */
    static String coneDown(StepRow r, FiringRun run) {
        String since = run.cones().stream()
                .filter(c -> r.goal().equals("cone " + c.cone()))
                .findFirst()
                .map(c -> " since " + Format.plain(c.timeS() / 3600, 1) + " h")
                .orElse("");
        return r.goal() + " is down already" + since + ": no time, no heat. Name a harder cone or a temperature";
    }

    /** For the card. */
    public static String coneDown(StepRow r) {
        return "Forecast: " + r.goal() + " is down already.";
    }

    /** For the table: how fast a step falls that is asked to fall otherwise; its rate in °C/h. */
    static String falls(StepRow r) {
        return "falls " + n(r.fallKPerH()) + " °C/h, " + (faster(r) ? "faster" : "slower") + " than the "
                + n(r.askedFallKPerH()) + " °C/h asked: "
                + (faster(r) ? "only more heat would hold it" : "walls and ware let go no faster");
    }

    /** For the card, in the scale that the rate is typed in; beside the rate asked for only where it is another. */
    public static String falls(StepRow r, boolean fahrenheit) {
        double per = fahrenheit ? 1.8 : 1;
        return "Falls about " + n(r.fallKPerH() * per) + (fahrenheit ? " °F/h" : " °C/h")
                + (r.fallsOtherwise() ? ", " + (faster(r) ? "faster" : "slower") + " than asked." : ".");
    }

    /** For the card, in the scale that the rate is typed in: a rate that the step does not keep to its end. */
    public static String slows(StepRow r, boolean fahrenheit) {
        double per = fahrenheit ? 1.8 : 1;
        return "The forecast: it does not keep this rate; about " + n(r.climbKPerH() * per)
                + (fahrenheit ? " °F/h" : " °C/h") + " at its end.";
    }

    private static boolean faster(StepRow r) {
        return r.fallKPerH() > r.askedFallKPerH();
    }

    private static String n(double v) {
        return Format.plain(v, 0);
    }
}
