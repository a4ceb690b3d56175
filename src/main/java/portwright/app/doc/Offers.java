package portwright.app.doc;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import portwright.data.Bricks;
import portwright.sheet.Paper;
import portwright.units.BothSystems;
import portwright.units.Format;

/** Values that a field of free text offers, and what it means to write another one. */
public final class Offers {
    private static final String OTHER_BRICK =
            "Not in the list of bricks: its strength and heat are not known here. Drilling limits do not hold for it, which is cautioned,"
                    + " and no forecast is made. Choose from the list where one fits.";
    private static final Map<String, Offers> BY_KEY = Map.of(
            "brick",
            new Offers(
                    Bricks.load().all().stream()
                            .map(b -> new Offer(
                                    b.id(),
                                    b.name() + ", class " + BothSystems.words(Math.round(b.classificationC()) + " °C")))
                            .toList(),
                    OTHER_BRICK));

    /** A value as the file takes it, and what it stands for. */
    public record Offer(String value, String words) {}

    private final List<Offer> all;
    private final String otherwise;

    private Offers(List<Offer> all, String otherwise) {
        this.all = all;
        this.otherwise = otherwise;
    }

    /** The paper sizes with a name. */
    public static List<Offer> papers() {
        return Paper.named().stream()
                .map(p -> new Offer(
                        p.words(), Format.plain(p.widthMm(), 1) + " × " + Format.plain(p.heightMm(), 1) + " mm"))
                .toList();
    }

    /** What the field of a key offers; empty for one that offers nothing. */
    public static Optional<Offers> of(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    public List<Offer> all() {
        return all;
    }

    /** What to say of a value: what it stands for, or what it means that none is known by it; empty for no value. */
    public String remark(String value) {
        return value.isBlank()
                ? ""
                : all.stream()
                        .filter(o -> o.value().equals(value))
                        .map(Offer::words)
                        .findFirst()
                        .orElse(otherwise);
    }
}
