package portwright.file;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.Kiln;
import portwright.model.PlanOutline;
import portwright.model.Port;
import portwright.model.Role;
import portwright.model.Room;
import portwright.model.RoomPlace;
import portwright.units.Format;

/** What spans several fields: names, references, and through {@link PlaceChecks} and {@link ShelfChecks} what must lie on what. */
final class CrossChecks {
    private CrossChecks() {}

    static void run(Design d, Faults faults) {
        names(d, faults);
        burners(d, faults);
        piped(d, faults);
        shed(d, faults);
        Kiln kiln = d.kiln();
        if (kiln == null || kiln.plan() == null || !OutlineChecks.plain(kiln.plan(), faults)) {
            return;
        }
        PlanOutline inner = PlanOutline.of(kiln.plan());
        PlaceChecks.run(d, inner, faults);
        ShelfChecks.run(d, inner, faults);
    }

    /** Names that two ports have. A burner's port of such a name, or of one much like it, cannot be told until that is mended. */
    private static Set<String> shared(Design d) {
        Set<String> once = new HashSet<>();
        return d.ports() == null
                ? Set.of()
                : d.ports().stream()
                        .map(Port::name)
                        .filter(n -> n != null && !once.add(n))
                        .collect(Collectors.toSet());
    }

    private static void names(Design d, Faults faults) {
        Map<String, String> seen = new HashMap<>();
        Kiln k = d.kiln();
        if (k != null) {
            names(k.elements(), e -> e.name(), "kiln.elements", seen, faults);
            names(k.fittings(), f -> f.name(), "kiln.fittings", seen, faults);
        }
        names(d.shelves(), s -> s.name(), "shelves", seen, faults);
        names(d.ports(), p -> p.name(), "ports", seen, faults);
        names(d.burners(), b -> b.name(), "burners", seen, faults);
    }

    private static <T> void names(
            List<T> parts, Function<T, String> name, String path, Map<String, String> seen, Faults faults) {
        for (int i = 0; i < size(parts, path, faults); i++) {
            String n = name.apply(parts.get(i));
            String at = FieldPath.item(path, i);
            String first = n == null ? null : seen.putIfAbsent(n, at);
            if (first != null) {
                faults.at(
                        at + ".name",
                        "the name \"" + JsonSyntax.shown(n) + "\" belongs to " + first
                                + " already. Findings name the parts: give each its own name.");
            }
        }
    }

    /** Length of a list that was read without gaps, else 0. */
    static int size(List<?> list, String path, Faults faults) {
        return list == null || faults.gaps(path) ? 0 : list.size();
    }

    private static void burners(Design d, Faults faults) {
        Set<String> shared = shared(d);
        for (int i = 0; i < size(d.burners(), "burners", faults); i++) {
            Burner b = d.burners().get(i);
            if (b.port() == null
                    || d.ports() == null
                    || faults.gaps("ports")
                    || Nearest.of(b.port(), shared).isPresent()) {
                continue;
            }
            String at = "burners[" + i + "].port";
            Port port = d.ports().stream()
                    .filter(p -> b.port().equals(p.name()))
                    .findFirst()
                    .orElse(null);
            List<String> inlets = d.ports().stream()
                    .filter(p -> p.role() != Role.FLUE && p.name() != null)
                    .map(Port::name)
                    .distinct()
                    .toList();
            if (port == null) {
                faults.at(
                        at,
                        "there is no port \"" + JsonSyntax.shown(b.port()) + "\"." + Nearest.hint(b.port(), inlets)
                                + (inlets.isEmpty()
                                        ? " The design has no inlet."
                                        : " Inlets: " + String.join(", ", inlets) + "."));
            } else if (port.role() == Role.FLUE) {
                faults.at(at, "\"" + port.name() + "\" is a flue. A burner stands at an inlet.");
            }
            setback(d, b, port, i, faults);
        }
    }

    /** An open shed that is stated to have no opening contradicts itself; left as it is nothing would be computed of its air. */
    private static void shed(Design d, Faults faults) {
        Room room = d.room();
        if (room != null
                && room.place() == RoomPlace.OPEN_SHED
                && room.openings() != null
                && room.openings().isEmpty()) {
            faults.at(
                    "room.openings",
                    "an open shed has whole sides open and lists no openings. Leave room.openings out; or, with walls all round, write room.place \"studio\" and room.building.");
        }
    }

    /** A cylinder beside burners that all burn piped gas. */
    private static void piped(Design d, Faults faults) {
        if (d.supply() == null
                || d.supply().cylinder() == null
                || size(d.burners(), "burners", faults) == 0
                || !d.piped()) {
            return;
        }
        faults.at(
                "supply.cylinder",
                "all burners burn " + d.burners().get(0).fuel().id()
                        + ", which comes from the mains. Remove \"cylinder\", or write the gas in it as each burner's \"fuel\": \"propane\", "
                        + "\"butane\" or \"propane-butane\". A jet for one gas is wrong for the other.");
    }

    private static void setback(Design d, Burner b, Port port, int i, Faults faults) {
        if (b.setback() == null || port == null || port.on() == null || d.kiln() == null) {
            return;
        }
        Double t = PlaceChecks.thickness(d.kiln(), port.on());
        if (t != null && b.setback().mm() < -t) {
            faults.at(
                    "burners[" + i + "].setback",
                    "\"" + b.setback().typed() + "\" puts the tip inside the chamber: the part is only "
                            + Format.plain(t, 1)
                            + " mm thick. Write a positive set-back, such as \"1/2 in\".");
        }
    }
}
