package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import portwright.file.DesignText;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.Kind;
import portwright.units.Quantity;

/** What the hand does to parts, as changes of the text: move, duplicate, mirror, spread, delete, add. */
public final class Moves {
    private Moves() {}

    /** The user's unit. */
    public static UnitSystem units(DesignText text) {
        return "inch".equals(text.get("units").orElse("metric")) ? UnitSystem.INCH : UnitSystem.METRIC;
    }

    /** Puts a part's {@code at} to a point; a place typed as radius and bearing stays one. */
    public static DesignText to(DesignText text, String path, Pt p) {
        String at = path + ".at";
        if (text.has(at + ".radius")) {
            double bearing = Math.toDegrees(Math.atan2(p.x(), p.y()));
            return text.setText(at + ".radius", Lengths.typed(Math.hypot(p.x(), p.y()), units(text)))
                    .setText(at + ".bearing", Format.plain((bearing + 360) % 360, 3) + " deg");
        }
        return text.set(
                at,
                "[" + DesignText.text(Lengths.typed(p.x(), units(text))) + ", "
                        + DesignText.text(Lengths.typed(p.y(), units(text))) + "]");
    }

    /** Puts a part of the wall into a panel. */
    public static DesignText toPanel(DesignText text, String path, int panel) {
        String is = path + ".panel";
        return text.get(is).orElse("").equals(String.valueOf(panel)) ? text : text.set(is, String.valueOf(panel));
    }

    /** Puts only the coordinates that changed, so that the other keeps what was typed. */
    public static DesignText by(DesignText text, String path, Pt from, double dx, double dy) {
        String at = path + ".at";
        if (text.has(at + ".radius")) {
            return to(text, path, from.plus(dx, dy));
        }
        DesignText t = text;
        if (dx != 0) {
            t = t.setText(at + "[0]", Lengths.typed(from.x() + dx, units(text)));
        }
        if (dy != 0) {
            t = t.setText(at + "[1]", Lengths.typed(from.y() + dy, units(text)));
        }
        return t;
    }

    /** A copy of the part at a point; answers the text, the copy is the last of its list. */
    public static DesignText copy(DesignText text, String path, String name, Pt at) {
        String list = Parts.listOf(path);
        DesignText t = text.append(list, text.getJson(path).orElseThrow());
        String copy = list + "[" + (t.size(list) - 1) + "]";
        t = t.setText(copy + ".name", name);
        return to(t, copy, at);
    }

    /** Spreads ports evenly on the circle of the first one, which keeps its place. */
    public static DesignText spread(DesignText text, List<String> paths, Pt first) {
        double r = Math.hypot(first.x(), first.y());
        double start = Math.toDegrees(Math.atan2(first.x(), first.y()));
        DesignText t = text;
        for (int i = 1; i < paths.size(); i++) {
            double b = (start + 360.0 * i / paths.size() + 720) % 360;
            t = t.set(
                    paths.get(i) + ".at",
                    "{\"radius\": " + DesignText.text(Lengths.typed(r, units(text))) + ", \"bearing\": "
                            + DesignText.text(Format.plain(b, 3) + " deg") + "}");
        }
        return t;
    }

    /** Takes a part away, with the burners under it when it is a port. */
    public static DesignText delete(DesignText text, String path) {
        String name = text.get(path + ".name").orElse("");
        DesignText t = text.remove(path);
        if (path.startsWith("ports[")) {
            List<Integer> gone = new ArrayList<>();
            for (int i = 0; i < t.size("burners"); i++) {
                if (t.get("burners[" + i + "].port").orElse("").equals(name)) {
                    gone.add(0, i);
                }
            }
            for (int i : gone) {
                t = t.remove("burners[" + i + "]");
            }
        }
        return t;
    }

    /** Gives a part another name, also where burners name it. */
    public static DesignText rename(DesignText text, String path, String name) {
        String old = text.get(path + ".name").orElse("");
        DesignText t = text.setText(path + ".name", name);
        if (path.startsWith("ports[")) {
            for (int i = 0; i < t.size("burners"); i++) {
                if (t.get("burners[" + i + "].port").orElse("").equals(old)) {
                    t = t.setText("burners[" + i + "].port", name);
                }
            }
        }
        return t;
    }

    private static String newDiameter(DesignText text, String role) {
        return units(text) == UnitSystem.INCH
                ? (role.equals("inlet") ? "1 3/8 in" : "1 1/2 in")
                : role.equals("inlet") ? "35 mm" : "38 mm";
    }

    /** Hole of a new port, mm. */
    static double newDiameterMm(DesignText text, String role) {
        return Quantity.parse(newDiameter(text, role), Kind.LENGTH).mm();
    }

    /** A new port on a part. */
    public static DesignText addPort(DesignText text, String role, String on, int panel, Pt at, String name) {
        String d = newDiameter(text, role);
        String json = "{\"name\": " + DesignText.text(name) + ", \"role\": \"" + role + "\", \"on\": \"" + on + "\", "
                + (panel > 0 ? "\"panel\": " + panel + ", " : "")
                + "\"at\": [" + DesignText.text(Lengths.typed(at.x(), units(text))) + ", "
                + DesignText.text(Lengths.typed(at.y(), units(text))) + "], \"diameter\": "
                + DesignText.text(d) + "}";
        return text.append("ports", json);
    }
}
