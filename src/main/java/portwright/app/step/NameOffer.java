package portwright.app.step;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import portwright.app.doc.Document;
import portwright.app.doc.Moves;
import portwright.file.PortsText;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Mouth;
import portwright.model.On;
import portwright.model.PlaceName;

/** Offers another name for a port whose name tells a place where it no longer stands; shows nothing for any other. */
final class NameOffer extends VBox {
    private final Document doc;
    private final String path;
    private final Label words = new Label();
    private final Button take = new Button();

    NameOffer(Document doc, String path) {
        super(6);
        this.doc = doc;
        this.path = path;
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.getStyleClass().addAll("muted", "slip-text");
        take.getStyleClass().setAll("plain-button");
        getChildren().addAll(words, take);
        refresh();
    }

    void refresh() {
        if (doc.dragging()) {
            return;
        }
        String old = doc.text().get(path + ".name").orElse("");
        String truer = truer(old);
        setVisible(truer != null);
        setManaged(truer != null);
        if (truer != null) {
            words.setText("The name tells another place than the hole now has.");
            take.setText("Call it " + truer);
            take.setOnAction(e ->
                    doc.edit("rename " + old, t -> PortsText.follow(Moves.rename(t, path, truer), t, old, truer)));
        }
    }

    private String truer(String name) {
        KilnGeometry kiln = doc.shapes().geometry();
        Hole hole = kiln.holes().stream()
                .filter(h -> h.name().equals(name))
                .findFirst()
                .orElse(null);
        if (hole == null) {
            return null;
        }
        On on = hole.face().on();
        return PlaceName.truer(
                name,
                hole.port().role(),
                on,
                Mouth.bearing(kiln, on, hole.face().panel(), hole.centre()),
                n -> kiln.holes().stream().anyMatch(h -> h.name().equals(n)));
    }
}
