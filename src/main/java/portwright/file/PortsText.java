package portwright.file;

import java.util.ArrayList;
import java.util.List;
import portwright.model.Place;
import portwright.model.Port;

/** Puts a new set of ports into a design's text. */
public final class PortsText {
    private PortsText() {}

    /** The document with these ports in place of all others; burners under a port that is gone are taken away, everything else keeps its characters. */
    public static DesignText put(DesignText document, List<Port> ports) {
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
        List<String> names = ports.stream().map(Port::name).toList();
        for (int i = out.size("burners") - 1; i >= 0; i--) {
            String port = out.get("burners[" + i + "].port").orElse(null);
            if (port != null && !names.contains(port)) {
                out = out.remove("burners[" + i + "]");
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
