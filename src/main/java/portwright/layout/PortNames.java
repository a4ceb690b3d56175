package portwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Mouth;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.PlaceName;
import portwright.model.Port;
import portwright.model.Role;

/** Names of proposed ports: those of the design that a burner feeds or, where the number stays, all of them; then new ones that nothing else bears. */
final class PortNames {
    private static final double SAME_MM = 1e-6;

    private PortNames() {}

    static List<String> of(Design design, Role role, int n) {
        List<String> out = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        List<String> fed = design.burners() == null
                ? List.of()
                : design.burners().stream().map(Burner::port).toList();
        if (design.ports() != null) {
            List<String> own = design.ports().stream()
                    .filter(p -> p.role() == role)
                    .map(Port::name)
                    .toList();
            design.ports().stream()
                    .map(Port::name)
                    .filter(p -> !own.contains(p))
                    .forEach(taken::add);
            own.stream().filter(fed::contains).forEach(out::add);
            if (own.size() == n) {
                own.stream().filter(p -> !fed.contains(p)).forEach(out::add);
            }
        }
        if (design.kiln().elements() != null) {
            design.kiln().elements().forEach(e -> taken.add(e.name()));
        }
        if (design.kiln().fittings() != null) {
            design.kiln().fittings().forEach(f -> taken.add(f.name()));
        }
        taken.addAll(out);
        if (n == 1 && out.isEmpty() && taken.add(role.id())) {
            out.add(role.id());
        }
        for (int i = 0; out.size() < n; i++) {
            String name = role.id() + " " + (i < 26 ? String.valueOf((char) ('A' + i)) : String.valueOf(i + 1));
            if (taken.add(name)) {
                out.add(name);
            }
        }
        return List.copyOf(out.subList(0, n));
    }

    /** Which of the places each name takes: a port of the design the one nearest to where it was, the others what is left in order. */
    static int[] nearest(Design design, List<String> names, double[] x, double[] y) {
        int[] out = new int[names.size()];
        Arrays.fill(out, -1);
        Set<Integer> free = new TreeSet<>();
        for (int i = 0; i < x.length; i++) {
            free.add(i);
        }
        for (int pass = 0; pass < 2; pass++) {
            for (int k = 0; k < out.length; k++) {
                String name = names.get(k);
                Port was = pass == 1 || design.ports() == null
                        ? null
                        : design.ports().stream()
                                .filter(p -> p.name().equals(name) && p.on() != On.WALL)
                                .findFirst()
                                .orElse(null);
                if (out[k] < 0 && (pass == 1 || was != null)) {
                    out[k] = was == null
                            ? free.iterator().next()
                            : free.stream()
                                    .min(Comparator.comparingDouble(i -> Math.hypot(
                                            x[i] - was.at().xMm(),
                                            y[i] - was.at().yMm())))
                                    .orElseThrow();
                    free.remove(out[k]);
                }
            }
        }
        return out;
    }

    /**
     * Names that tell a place where their port does not stand, to the ones that do: a hole that lies elsewhere than the design's of that name is named
     * by the side that it is nearest to, one that stays keeps a name that is near enough.
     */
    static Map<String, String> truer(KilnGeometry kiln, Design design, List<Port> ports) {
        Map<String, String> out = new LinkedHashMap<>();
        List<Port> wrong = ports.stream()
                .filter(p -> {
                    boolean moved = design != null && moved(design, p);
                    return !PlaceName.tells(p.name(), p.role(), p.on(), bearing(kiln, p, moved), moved);
                })
                .toList();
        Set<String> taken = new HashSet<>(ports.stream().map(Port::name).toList());
        wrong.forEach(p -> taken.remove(p.name()));
        for (Port p : wrong) {
            String name = PlaceName.nearest(
                    p.role(), p.on(), bearing(kiln, p, design != null && moved(design, p)), taken::contains);
            taken.add(name == null ? p.name() : name);
            if (name != null && !name.equals(p.name())) {
                out.put(p.name(), name);
            }
        }
        return out;
    }

    /** Where a port lies from the middle; NaN, which no side tells, for a hole laid anew that reaches the middle itself. */
    private static double bearing(KilnGeometry kiln, Port p, boolean moved) {
        boolean middle = moved
                && p.on() != On.WALL
                && Typed.pt(p.at()).distance(kiln.centre()) < p.diameter().mm() / 2;
        return middle ? Double.NaN : Mouth.bearing(kiln, p.on(), p.on() == On.WALL ? p.panel() : 0, Typed.pt(p.at()));
    }

    /** Whether the design has no port of that name at that place. */
    private static boolean moved(Design design, Port p) {
        return design.ports() == null
                || design.ports().stream()
                        .noneMatch(o -> o.name().equals(p.name())
                                && o.on() == p.on()
                                && Objects.equals(o.panel(), p.panel())
                                && Typed.pt(o.at()).distance(Typed.pt(p.at())) < SAME_MM);
    }

    static List<Port> renamed(List<Port> ports, Map<String, String> names) {
        return ports.stream()
                .map(p -> new Port(
                        names.getOrDefault(p.name(), p.name()), p.role(), p.on(), p.panel(), p.at(), p.diameter()))
                .toList();
    }

    /** The design with burners that know their ports by the new names. */
    static Design renamed(Design d, Map<String, String> names) {
        if (names.isEmpty() || d.burners() == null) {
            return d;
        }
        List<Burner> burners = d.burners().stream()
                .map(b -> names.containsKey(b.port()) ? b.under(names.get(b.port())) : b)
                .toList();
        return new Design(
                d.title(),
                d.notes(),
                d.units(),
                d.kiln(),
                d.shelves(),
                d.ports(),
                d.drilling(),
                burners,
                d.damper(),
                d.supply(),
                d.room(),
                d.firing(),
                d.limits());
    }

    /** The design with other ports; burners whose port is gone are left out. */
    static Design with(Design d, List<Port> ports) {
        List<String> names = ports.stream().map(Port::name).toList();
        List<Burner> burners = d.burners() == null
                ? null
                : d.burners().stream()
                        .filter(b -> b.port() == null || names.contains(b.port()))
                        .toList();
        return new Design(
                d.title(),
                d.notes(),
                d.units(),
                d.kiln(),
                d.shelves(),
                ports,
                d.drilling(),
                burners,
                d.damper(),
                d.supply(),
                d.room(),
                d.firing(),
                d.limits());
    }
}
