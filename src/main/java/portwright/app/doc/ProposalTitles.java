package portwright.app.doc;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import portwright.geometry.Pt;
import portwright.layout.Proposal;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;
import portwright.model.UnitSystem;
import portwright.units.Format;

/** What a proposal is called among the others found with it: numbers, sizes and places by which it differs; all of them where it stands alone. */
public final class ProposalTitles {
    private static final double ALIKE_MM = 2;
    private static final double MIDDLE_MM = 3;

    private ProposalTitles() {}

    /** One a proposal, in their order. */
    public static List<String> of(List<Proposal> all, UnitSystem units) {
        List<List<String>> told = all.stream().map(p -> traits(p, units)).toList();
        List<String> out = new ArrayList<>();
        for (List<String> mine : told) {
            String differs = IntStream.range(0, mine.size())
                    .filter(i -> told.size() == 1
                            || told.stream().map(t -> t.get(i)).distinct().count() > 1)
                    .mapToObj(mine::get)
                    .collect(Collectors.joining("; "));
            String title = differs.isEmpty() ? String.join("; ", mine) : differs;
            out.add(title.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + title.substring(1));
        }
        return out;
    }

    /** Number and size of the inlets, where they lie, and the same of the flues. */
    private static List<String> traits(Proposal p, UnitSystem units) {
        List<String> out = new ArrayList<>();
        for (Role role : List.of(Role.INLET, Role.FLUE)) {
            List<Port> mine = p.ports().stream().filter(x -> x.role() == role).toList();
            String name = role == Role.INLET ? "inlet" : "flue";
            String sizes = mine.stream()
                    .map(x -> Lengths.shown(x.diameter().mm(), units))
                    .distinct()
                    .collect(Collectors.joining(" and "));
            out.add(mine.size() + " " + name + (mine.size() == 1 ? "" : "s") + (mine.isEmpty() ? "" : " of " + sizes));
            out.add(mine.isEmpty() ? "" : name + (mine.size() == 1 ? " " : "s ") + where(mine, units));
        }
        return out;
    }

    private static String where(List<Port> ports, UnitSystem units) {
        if (ports.get(0).on() == On.WALL) {
            return "in wall "
                    + ports.stream()
                            .map(p -> String.valueOf(p.panel()))
                            .distinct()
                            .collect(Collectors.joining(", "))
                    + ", " + span(ports.stream().map(p -> p.at().yMm()).toList(), units) + " up";
        }
        List<Pt> at =
                ports.stream().map(p -> new Pt(p.at().xMm(), p.at().yMm())).toList();
        if (at.size() == 1) {
            return place(at.get(0), units);
        }
        List<Double> radii = at.stream().map(c -> Math.hypot(c.x(), c.y())).toList();
        String bearings = at.stream()
                .filter(c -> Math.hypot(c.x(), c.y()) > MIDDLE_MM)
                .map(c -> (Math.toDegrees(Math.atan2(c.x(), c.y())) + 360) % 360)
                .map(b -> Math.rint(b) % 360)
                .sorted(Comparator.naturalOrder())
                .map(b -> Format.plain(b, 0) + "°")
                .collect(Collectors.joining(", "));
        return span(radii, units) + " from the middle at " + bearings;
    }

    private static String place(Pt p, UnitSystem units) {
        if (Math.hypot(p.x(), p.y()) < MIDDLE_MM) {
            return "in the middle";
        }
        List<String> words = new ArrayList<>();
        if (Math.abs(p.x()) >= ALIKE_MM) {
            words.add(Lengths.shown(Math.abs(p.x()), units) + (p.x() > 0 ? " right" : " left"));
        }
        if (Math.abs(p.y()) >= ALIKE_MM) {
            words.add(Lengths.shown(Math.abs(p.y()), units) + (p.y() > 0 ? " back" : " front"));
        }
        return String.join(", ", words) + " of the middle";
    }

    /** One length where all are alike, else from the least to the most. */
    private static String span(List<Double> mm, UnitSystem units) {
        double low = mm.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double high = mm.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return high - low < ALIKE_MM
                ? Lengths.shown((low + high) / 2, units)
                : Lengths.shown(low, units) + " to " + Lengths.shown(high, units);
    }
}
