package portwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import portwright.model.Place;
import portwright.model.PlaceName;
import portwright.model.Port;

/** Puts a new set of ports into a design's text. */
public final class PortsText {
    private PortsText() {}

    /**
     * The document with these ports in place of all others; burners under a port that is gone are taken away, everything else keeps its characters.
     *
     * @param renamed old name to new, of ports whose burners follow them
     */
    public static DesignText put(DesignText document, List<Port> ports, Map<String, String> renamed) {
        List<String> items = new ArrayList<>();
        for (Port p : ports) {
            StringBuilder s = new StringBuilder("{\"name\": ")
                    .append(DesignText.text(p.name()))
                    .append(", \"role\": ")
                    .append(DesignText.text(p.role().id()))
                    .append(", \"on\": ")
                    .append(DesignText.text(p.on().id()));
            if (p.panel() != null) {
                s.append(", \"panel\": ").append(p.panel());
            }
            s.append(", \"at\": ")
                    .append(place(p.at()))
                    .append(", \"diameter\": ")
                    .append(DesignText.text(p.diameter().typed()))
                    .append('}');
            items.add(s.toString());
        }
        DesignText out = document.set("ports", "[" + String.join(", ", items) + "]");
        for (Map.Entry<String, String> e : renamed.entrySet()) {
            out = follow(out, document, e.getKey(), e.getValue());
        }
        List<String> names = ports.stream().map(Port::name).toList();
        for (int i = out.size("burners") - 1; i >= 0; i--) {
            String port = out.get("burners[" + i + "].port").orElse(null);
            if (port != null && !names.contains(port)) {
                out = out.remove("burners[" + i + "]");
            }
        }
        return out;
    }

    /** Burners that stood under a port by its old name stand under it by the new one. */
    public static DesignText follow(DesignText now, DesignText before, String oldPort, String newPort) {
        DesignText out = now;
        for (int i = 0; i < before.size("burners"); i++) {
            String burner = "burners[" + i + "]";
            if (before.get(burner + ".port").orElse("").equals(oldPort)) {
                String name = before.get(burner + ".name").orElse("");
                String follows = PlaceName.following(name, oldPort, newPort);
                out = out.setText(burner + ".port", newPort);
                out = follows.equals(name) ? out : out.setText(burner + ".name", follows);
            }
        }
        return out;
    }

    private static String place(Place at) {
        if (at instanceof Place.Polar p) {
            return "{\"radius\": " + DesignText.text(p.radius().typed()) + ", \"bearing\": "
                    + DesignText.text(p.bearing().typed()) + "}";
        }
        Place.Cartesian c = (Place.Cartesian) at;
        return "[" + DesignText.text(c.x().typed()) + ", " + DesignText.text(c.y().typed()) + "]";
    }
}
