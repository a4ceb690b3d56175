package portwright.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.data.Caution;
import portwright.data.Emergency;
import portwright.data.SafetyNumber;
import portwright.review.LightingLimits;
import portwright.review.LiveElements;

/** The card's numbered lists, and which cautions of the common list still have to be said beside them. */
record CardLists(
        String lightHeading,
        List<String> lighting,
        String shutHeading,
        List<String> shuttingDown,
        List<String> heads,
        List<String> temperatureFalls,
        List<String> runsOver,
        List<String> flameOut,
        List<String> alarm) {

    static final String LIGHTING = "Lighting";
    static final List<String> HEADS = List.of("Temperature falls", "Flame goes out", "The alarm sounds");

    /** What this rule judges is moved about between firings: it is said always. */
    private static final String MOVED = "near-flame";
    /** The caution of wind is said always in the open. */
    private static final String WIND = "H26";
    /** The caution of live coils is said of a kiln that has any. */
    private static final String LIVE = "H97";

    /** What puts a flame out, in the order of looking: outside the kiln first. */
    static final String WHY = "wind, gas used up, frost, hose, jet";

    /**
     * @param limits what gas is lit by
     * @param inlets names, in the order of lighting
     * @param probe the lowest probe's name where there are several, else null
     * @param electricAfterGas whether the elements go on alone when the gas is off
     * @param openAir whether the kiln stands under the sky or an open roof
     * @param helped whether electricity helps while gas burns, so that its loss may let the temperature fall
     * @param elements what is done at the switch of the elements
     * @param noAlarm what to do in place of a CO alarm that the design has not; empty where it has one
     * @param nudgeMm by how much to move the plate, mm
     */
    static CardLists of(
            CheckResult result,
            LightingLimits limits,
            List<String> inlets,
            String probe,
            boolean electricAfterGas,
            boolean openAir,
            boolean helped,
            LiveElements elements,
            String noAlarm,
            int nudgeMm) {
        boolean one = inlets.size() < 2;
        String order = inlets.isEmpty() ? "the inlet" : inlets.get(0);
        String meter = limits.meterWords();
        String wait = limits.airMinutes() + " min";
        return new CardLists(
                LIGHTING,
                List.of(
                        "Cold, valves shut: gas on, soap every joint, off.",
                        (openAir ? "Way out free" : "Room doors open") + ", kiln shut, CO alarm on" + noAlarm
                                + ", extinguisher at the exit.",
                        "Before a grey row: over " + meter + " on the meter"
                                + (probe == null ? "" : ", lowest probe (" + probe + ")") + ", for "
                                + limits.floorWords()
                                + " at the coldest place.",
                        sentence(elements.opening()),
                        "Plate off, " + wait + " of air. Cylinder open slowly.",
                        "Meter still over that? Face away: taper (no metal) at " + order + ", open its valve"
                                + (one ? "." : "; then the next.") + " No flame: shut at once, wait "
                                + wait + "." + explosive(result),
                        LightingLimits.cleanMinutes() + " min of clean fire, then set the plate."),
                electricAfterGas ? "Gas off, back to electricity" : "Shutting down",
                List.of(
                        "Cylinder valve shut first: burners burn out, the flame dies. Then the burner "
                                + (one ? "valve." : "valves."),
                        (elements.there() && !electricAfterGas ? "Elements off; plate off " : "Plate off ")
                                + (int) SafetyNumber.value("kiln-open") + " min until clear"
                                + (elements.there() && electricAfterGas ? ", elements on." : "."),
                        sentence(elements.closing(electricAfterGas)),
                        "At the end: note gas used. Next firing in air."),
                HEADS,
                List.of(
                        helped
                                ? "If elements are dark, gas off. Else plate " + nudgeMm + " mm wider, 5 min."
                                : "Plate " + nudgeMm + " mm wider, wait 5 min.",
                        "Still falling: " + nudgeMm + " mm nearer shut than at first.",
                        "No help, or the meter falling to " + meter + ": gas off first."),
                List.of("Past the goal: shut down in order" + (elements.there() ? "; breaker too." : ".")),
                List.of(
                        (one ? "Burner valve" : "All burner valves") + " shut at once.",
                        "Plate off, ports open; stay clear.",
                        "Find out why: " + WHY + ".",
                        "Relight after " + wait + ", meter over " + meter + "."),
                Emergency.alarm(openAir));
    }

    /** The lists of a firing that is to cool while gas burns. */
    CardLists falling() {
        return new CardLists(
                lightHeading,
                lighting,
                shutHeading,
                shuttingDown,
                heads,
                Stream.concat(Stream.of("Not in a step meant to fall."), temperatureFalls.stream())
                        .toList(),
                runsOver,
                flameOut,
                alarm);
    }

    /** The lists of a kiln under a hood or beside a fan of the design's own. */
    CardLists exhausted(String what) {
        return new CardLists(
                lightHeading,
                lighting.stream()
                        .map(t -> t.replace(", kiln shut, CO", ", " + what + " on, kiln shut, CO"))
                        .toList(),
                shutHeading,
                shuttingDown,
                heads,
                temperatureFalls,
                runsOver,
                flameOut,
                Stream.concat(alarm.stream(), Stream.of("Exhaust stops: gas off first."))
                        .toList());
    }

    /** The lists of a firing in which no gas burns. */
    CardLists withoutGas() {
        return new CardLists(
                LIGHTING,
                List.of(
                        "No gas in this firing: cylinder shut, burners out of their ports.",
                        "Inlets plugged, plate shut, until the kiln is cold."),
                "Shutting down",
                List.of("Elements off at the breaker. Ports stay plugged and the plate shut until the kiln is cold."),
                HEADS,
                List.of("Breaker off; look for a failed element when the kiln is cold."),
                List.of("Cone down: breaker off. A relay may stick."),
                List.of("No flame in this firing. A flame or a smell of gas: cylinder shut, out."),
                alarm);
    }

    /** The lists of a kiln on piped gas. */
    CardLists piped() {
        return new CardLists(
                lightHeading,
                GasCock.words(lighting),
                shutHeading,
                GasCock.words(shuttingDown),
                heads,
                GasCock.words(temperatureFalls),
                GasCock.words(runsOver),
                GasCock.words(flameOut),
                GasCock.words(alarm));
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    private static String explosive(CheckResult result) {
        Double s = result.figures() == null ? null : result.figures().unlitGasSeconds();
        return s == null ? "" : " Unlit gas explodes: pockets at once, a cold chamber after " + Math.round(s) + " s.";
    }

    /** Those that the lists do not hold already; where a rule computes the hazard only when it found something. */
    List<CardData.Caution> cautions(CheckResult result, boolean openAir, CardData.Gas gas, boolean elements) {
        String all = Stream.of(lighting, shuttingDown, temperatureFalls, runsOver, flameOut, alarm)
                .flatMap(List::stream)
                .collect(Collectors.joining("\n"));
        List<String> found =
                result.findings().stream().map(Finding::rule).distinct().toList();
        return Caution.forCard().stream()
                .filter(c -> c.holds(gas != CardData.Gas.NONE, gas == CardData.Gas.CYLINDER))
                .filter(c -> elements || !c.id().equals(LIVE))
                .filter(c -> !all.contains(c.card()))
                .filter(c -> c.rules().isEmpty()
                        || c.rules().contains(MOVED)
                        || openAir && c.id().equals(WIND)
                        || c.rules().stream().anyMatch(found::contains))
                .map(c -> new CardData.Caution(c.card(), c.severity().equals("stop")))
                .toList();
    }
}
