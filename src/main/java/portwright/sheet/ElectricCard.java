package portwright.sheet;

import java.util.List;

/** The card's words for a kiln without gas: its lists, and the rows of its steps. */
final class ElectricCard {
    private ElectricCard() {}

    /**
     * The lists (common practice, no source).
     *
     * @param ports whether the kiln has holes, which stay plugged
     */
    static CardLists lists(boolean ports) {
        return new CardLists(
                "Switching on",
                List.of(
                        "Cones in sight of a spyhole. Kiln shut" + (ports ? ", ports plugged, plate shut." : "."),
                        "Nothing that burns near the kiln. Room exhaust on, extinguisher at the exit.",
                        "Breaker on, program checked. Damp ware: hold near 100 °C (212 °F) first.",
                        "Look after ten minutes: every element glows, the meter climbs.",
                        "A switch that trips stays off: ask an electrician."),
                "Shutting down",
                List.of(
                        "Cones down: program off, then the breaker. A controller that is off is no switch.",
                        "Kiln stays shut until the meter shows 100 °C (212 °F)."),
                List.of("Temperature falls", "Power fails or trips", "Smoke or sparks"),
                List.of(
                        "Elements dark, or the climb slower than asked: breaker off.",
                        "When cold: plug out, then look for a broken element or a burnt relay."),
                List.of("Cone down: breaker off. A relay may stick."),
                List.of(
                        "Breaker off: it must not come on by itself.",
                        "Kiln stays shut. Begin again from the temperature that it shows.",
                        "It trips again: leave it off, ask an electrician."),
                List.of(
                        "Breaker off; everybody out.",
                        "No water on kiln or box: powder or carbon dioxide.",
                        "It burns on: call the fire brigade from outside."));
    }

    /** The rows with what is done at the end; nothing is said of gas. */
    static List<CardData.Step> rows(List<CardData.Step> steps) {
        return steps.stream()
                .map(s -> s.across().startsWith("Shut down")
                        ? CardData.Step.across("Shut down: breaker off, kiln shut until it is cold.")
                        : s)
                .toList();
    }
}
