package portwright.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.Port;
import portwright.model.Role;

/** Names of proposed ports: those of the design first (ports with a burner before the others), then new ones that nothing else bears. */
final class PortNames {
    private PortNames() {}

    static List<String> of(Design design, Role role, int n) {
        List<String> out = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        List<String> fed = design.burners() == null
                ? List.of()
                : design.burners().stream().map(Burner::port).toList();
        if (design.ports() != null) {
            design.ports().forEach(p -> taken.add(p.name()));
            design.ports().stream()
                    .filter(p -> p.role() == role && fed.contains(p.name()))
                    .map(Port::name)
                    .forEach(out::add);
            design.ports().stream()
                    .filter(p -> p.role() == role && !fed.contains(p.name()))
                    .map(Port::name)
                    .forEach(out::add);
        }
        if (design.kiln().elements() != null) {
            design.kiln().elements().forEach(e -> taken.add(e.name()));
        }
        if (design.kiln().fittings() != null) {
            design.kiln().fittings().forEach(f -> taken.add(f.name()));
        }
        for (int i = 0; out.size() < n; i++) {
            String name = role.id() + " " + (i < 26 ? String.valueOf((char) ('A' + i)) : String.valueOf(i + 1));
            if (taken.add(name)) {
                out.add(name);
            }
        }
        return List.copyOf(out.subList(0, n));
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
