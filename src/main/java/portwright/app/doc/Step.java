package portwright.app.doc;

import java.util.Set;

/** The six steps of the job, and which rules belong to which. */
public enum Step {
    KILN("Kiln", Set.of("facet-rule", "brick-kind", "groove-room", "jacket", "vent-fan")),
    PORTS(
            "Ports",
            Set.of(
                    "alike-names",
                    "inside-chamber",
                    "edge-distance",
                    "port-spacing",
                    "weakest-section",
                    "element-clearance",
                    "fitting-clearance",
                    "joint-sliver",
                    "one-brick",
                    "post-in-flame",
                    "shelf-over-inlet",
                    "flame-path",
                    "flame-on-element",
                    "flame-at-wall",
                    "flame-on-fitting",
                    "flue-over-inlet",
                    "port-balance",
                    "burner-room",
                    "port-size",
                    "saw-size",
                    "saw-depth",
                    "near-flame")),
    GAS(
            "Gas",
            Set.of(
                    "burner-fit",
                    "jet-in-hole",
                    "flue-inlet-ratio",
                    "clean-burn",
                    "inlet-draw",
                    "chamber-pressure",
                    "damper-range",
                    "damper-cover",
                    "gas-load",
                    "flue-load",
                    "soot",
                    "oxidised-zone",
                    "flame-supervision",
                    "supply-pressure",
                    "cylinder-place",
                    "cylinder-boil-off",
                    "cylinder-lasts")),
    ROOM(
            "Room",
            Set.of(
                    "room-place",
                    "room-co",
                    "room-oxygen",
                    "combustion-air",
                    "hood-capture",
                    "make-up-air",
                    "co-alarm",
                    "gas-alarm",
                    "room-heat",
                    "floor-fire",
                    "above-flue")),
    FIRING(
            "Firing",
            Set.of(
                    "gas-on-temperature",
                    "gas-off-temperature",
                    "element-atmosphere",
                    "thermocouple-range",
                    "brick-heat",
                    "firing-reach")),
    PAPER("Paper", Set.of());

    private final String word;
    private final Set<String> rules;

    Step(String word, Set<String> rules) {
        this.word = word;
        this.rules = rules;
    }

    /** What stands over its findings. */
    public String findings() {
        return switch (this) {
            case KILN -> "The kiln";
            case PORTS -> "Holes and brick";
            case GAS -> "Gas and fire";
            case ROOM -> "Air and people";
            case FIRING -> "The firing";
            case PAPER -> "All findings";
        };
    }

    public String word() {
        return word;
    }

    boolean holds(String rule) {
        return rules.contains(rule);
    }

    /** The step at which a rule's finding is mended. */
    public static Step of(String rule) {
        for (Step s : values()) {
            if (s.holds(rule)) {
                return s;
            }
        }
        return PORTS;
    }

    /** The step at which a field of the design is typed; empty stands for none, then that of the rule. */
    public static Step ofField(String path, String rule) {
        if (path.matches("(kiln|shelves|drilling|limits|title|notes|units)\\b.*")) {
            return KILN;
        }
        if (path.startsWith("room")) {
            return ROOM;
        }
        if (path.startsWith("burners") || path.startsWith("damper") || path.startsWith("supply")) {
            return GAS;
        }
        return path.startsWith("firing") ? FIRING : of(rule);
    }
}
