package portwright.app.doc;

import java.util.List;
import portwright.file.DesignText;
import portwright.form.FieldSpec;
import portwright.form.FormSpec;
import portwright.form.KilnCatalog;

/** Fields that the design's own choices rule out: a form does not show them. */
public final class HiddenFields {
    /** What only a room has. */
    private static final List<String> IN_A_ROOM = List.of("volume", "ventilator", "infiltration", "joinedVolume");

    private HiddenFields() {}

    /** Whether a field of a form at a path is ruled out. */
    public static boolean hidden(DesignText t, FormSpec s, String at, FieldSpec f) {
        if (s.path().equals("kiln.plan")) {
            return !KilnCatalog.planFields(t.get(at + ".shape").orElse("polygon"))
                    .contains(f.key());
        }
        if (s.path().equals("room")) {
            return t.get(at + ".place").orElse("").equals("outdoors")
                    && IN_A_ROOM.contains(f.key())
                    && !t.has(at + "." + f.key());
        }
        String on = t.get(at + ".on").orElse("");
        if (f.key().equals("panel") && !on.isEmpty()) {
            return !on.equals("wall");
        }
        if (s.path().equals("kiln.fittings") && List.of("type", "class").contains(f.key())) {
            return !t.get(at + ".kind").orElse("").equals("thermocouple") && !t.has(at + "." + f.key());
        }
        if (s.path().equals("kiln.elements")) {
            return on.equals("wall")
                    ? f.key().equals("path")
                    : f.key().equals("height") || f.key().equals("panels");
        }
        if (s.path().equals("groove")) {
            boolean wall = t.get(Parts.listOf(at).isEmpty() ? at : at.substring(0, at.lastIndexOf('.')) + ".on")
                    .orElse("wall")
                    .equals("wall");
            return wall
                    ? f.key().equals("width")
                    : f.key().equals("height") || f.key().equals("slope");
        }
        if (s.path().equals("shelves")) {
            String shape = t.get(at + ".shape").orElse("round");
            return switch (f.key()) {
                case "diameter" -> !shape.equals("round") && !shape.equals("half");
                case "sides", "acrossFlats" -> !shape.equals("polygon");
                case "width", "depth" -> !shape.equals("rectangle");
                default -> false;
            };
        }
        return false;
    }
}
