package portwright.app.doc;

import java.util.List;
import portwright.file.Problem;
import portwright.form.FieldSpec;
import portwright.units.Kind;

/** One field of a form: what it shows, what was typed wrongly, and the last good value that stays in use. */
public final class FieldModel {
    private final Document doc;
    private final FieldSpec spec;
    private final String base;

    public FieldModel(Document doc, String base, FieldSpec spec) {
        this.doc = doc;
        this.base = base;
        this.spec = spec;
    }

    public FieldSpec spec() {
        return spec;
    }

    /** Path of the field in the design. */
    public String path() {
        return base.isEmpty() ? spec.key() : base + "." + spec.key();
    }

    /** The good value, as the file holds it. */
    public String good() {
        return FieldCodec.show(doc.text(), spec, path());
    }

    /** What the field shows: the wrong text while there is one, else the good value. */
    public String shown() {
        return doc.unread().at(path()).map(Unread.Entry::typed).orElseGet(this::good);
    }

    /** Why the text is wrong and what to write; null when it is right. */
    public String error() {
        return doc.unread().at(path()).map(Unread.Entry::error).orElse(null);
    }

    /** The quantity in the other system while it is right. */
    public String aside() {
        return aside(shown());
    }

    /** What is typed so far in the other system, while it can be read. */
    public String aside(String typed) {
        return FieldCodec.aside(spec, full(typed));
    }

    /** What was typed as the file takes it: a number alone has got the unit of the window. */
    private String full(String typed) {
        return ShortForms.full(doc.text(), spec, path(), typed);
    }

    /** What the good value stands for, where the field offers a list; which posts bear nothing; empty for others. */
    public String remark() {
        return spec.key().equals("posts")
                ? PostWords.of(
                        doc.shapes().geometry(), doc.text().get(base + ".name").orElse(""))
                : Offers.of(spec.key()).map(o -> o.remark(good())).orElse("");
    }

    /** The wanted form in the user's system, for an empty field. */
    public String hint() {
        String wanted = Templates.inSystem(doc.text(), spec.hint());
        return wanted.matches("\\d.*|#\\d.*") ? "e.g. " + wanted : wanted;
    }

    /** Takes what was typed, also the same again, when the design stays readable; else keeps it as wrong text and leaves the design alone. */
    public boolean commit(String written) {
        String typed = full(written);
        if (typed.equals(good())) {
            revert();
            confirm();
            return true;
        }
        String part = spec.key().equals("name")
                ? good()
                : doc.text().get(base + ".name").orElse("");
        String label = part.isBlank() ? spec.label() : part + " " + spec.label();
        String name = label + (typed.isBlank() ? " taken away" : " " + short20(typed));
        List<Problem> problems;
        String refused = spec.kind() == null ? null : Products.wrong(spec.kind(), typed);
        try {
            problems = refused != null && spec.kind() == Kind.ANGLE
                    ? List.of(new Problem(0, 0, path(), refused))
                    : doc.edit(name.strip(), t -> Switches.put(t, base, spec, typed));
        } catch (IllegalArgumentException e) {
            problems = List.of(new Problem(
                    0,
                    0,
                    path(),
                    "\"" + typed + "\" cannot stand here. "
                            + (spec.kind() == null ? "" : "Write " + spec.kind().example() + ".")));
        }
        if (problems.isEmpty()) {
            revert();
            confirm();
            return true;
        }
        String error = refused != null
                ? refused
                : noNumber(typed) != null
                        ? noNumber(typed)
                        : spec.key().equals(FieldCodec.ELECTRIC)
                                        && typed.strip().matches("\\d+(\\.\\d+)?")
                                ? "\"" + typed.strip() + "\" has no unit. Write \"" + typed.strip() + " kW\"."
                                : problems.stream()
                                        .filter(p -> p.path().startsWith(path()))
                                        .findFirst()
                                        .orElse(problems.get(0))
                                        .message();
        doc.unread().put(new Unread.Entry(path(), Unread.name(doc.text(), base, spec.label()), typed, error, good()));
        return false;
    }

    /** What is wrong with words where a number without a unit is asked; null where a number stands or none is asked. */
    private String noNumber(String typed) {
        boolean whole = spec.type() == FieldSpec.Type.WHOLE;
        if (!whole && spec.type() != FieldSpec.Type.NUMBER
                || typed.strip().matches(whole ? "-?\\d+" : "-?\\d+(\\.\\d+)?")) {
            return null;
        }
        String example = hint().isEmpty() ? "1" : hint().replace("e.g. ", "");
        return "\"" + typed.strip() + "\" is no " + (whole ? "whole number" : "number")
                + ". Write figures alone, such as " + example + ".";
    }

    /** Whether the value is still that of the starter the design was made from. */
    public boolean borrowed() {
        return doc.borrowed().is(path());
    }

    /** The value is right for the own kiln. */
    public void confirm() {
        doc.borrowed().confirm(path());
    }

    /** Forgets the wrong text. */
    public void revert() {
        doc.unread().settle(path());
    }

    private static String short20(String s) {
        String one = s.replace('\n', ' ');
        return one.length() > 24 ? one.substring(0, 23) + "…" : one;
    }
}
