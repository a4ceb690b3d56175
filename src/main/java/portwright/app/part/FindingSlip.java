package portwright.app.part;

import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import portwright.check.Finding;
import portwright.form.FieldNames;
import portwright.form.RuleWords;
import portwright.source.Standing;
import portwright.units.BothSystems;
import portwright.units.Unbroken;

/** The slip of a finding. Stays the same slip while the numbers of its finding change, as they do at every move of a part. */
public final class FindingSlip {
    private final SlipView view;
    private final Gauge gauge;
    private final Label message = SlipView.text("", "slip-text");
    private final Label remedy = SlipView.text("", "slip-text");
    private final Label source = SlipView.text("", "source-line");
    private boolean inInches;
    private Finding finding;

    public FindingSlip(Finding f, boolean inch, Consumer<Finding> act) {
        VBox body = new VBox(2);
        gauge = gauged(f)
                ? new Gauge(
                        f.measured().value(), f.limit().value(), f.measured().unit(), f.severity(), f.limitSetByUser())
                : null;
        if (gauge != null) {
            body.getChildren().add(gauge);
        }
        body.getChildren().addAll(message, remedy, source);
        String style = switch (f.severity()) {
            case STOP -> "slip-stop";
            case CAUTION -> "slip-caution";
            case NOTE -> "slip-note";
        };
        view = new SlipView(Sign.of(f.severity()), style, RuleWords.head(f.rule()), body);
        view.act(() -> act.accept(finding));
        show(f, inch);
    }

    private static boolean gauged(Finding f) {
        return f.measured() != null
                && f.limit() != null
                && f.measured().unit().equals(f.limit().unit())
                && Gauge.fits(f.measured().value(), f.limit().value());
    }

    /** Whether this slip may show the finding: the same rule says the same of the same parts, with other numbers at most. */
    public boolean fits(Finding f) {
        return f.rule().equals(finding.rule())
                && f.severity() == finding.severity()
                && f.parts().equals(finding.parts())
                && f.limitSetByUser() == finding.limitSetByUser()
                && (gauge == null
                        ? !gauged(f)
                        : gauged(f)
                                && f.measured().unit().equals(finding.measured().unit()));
    }

    /** Shows a finding that fits, in inches first or in millimetres. */
    public void show(Finding f, boolean inch) {
        if (f.equals(finding) && inch == inInches) {
            return;
        }
        finding = f;
        inInches = inch;
        if (gauge != null) {
            gauge.show(f.measured().value(), f.limit().value(), inch);
        }
        message.setText(first(f.message(), inch));
        say(remedy, first(f.remedy(), inch));
        say(source, f.source() == null ? null : source(f));
        view.setAccessibleText(f.severity().id() + ": " + message.getText() + " " + remedy.getText());
    }

    private static String first(String words, boolean inch) {
        return words == null ? null : Unbroken.words(FieldNames.inWords(inch ? BothSystems.inchFirst(words) : words));
    }

    private static void say(Label label, String words) {
        boolean any = words != null && !words.isBlank();
        label.setText(any ? words : "");
        label.setVisible(any);
        label.setManaged(any);
    }

    /** Source and standing in one line. */
    private static String source(Finding f) {
        Standing st = f.source().standing();
        String standing = switch (st) {
            case PUBLISHED -> "Published: " + f.source().title() + ".";
            case PRACTICE -> "Trade practice, no source.";
            case MEMORY -> f.source().title() + ", from memory.";
            case JUDGEMENT -> "Our own judgement.";
        };
        return f.limitSetByUser() ? "Your limit. " + standing : standing;
    }

    public Finding finding() {
        return finding;
    }

    /** What is laid on the side. */
    public SlipView view() {
        return view;
    }
}
