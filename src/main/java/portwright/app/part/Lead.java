package portwright.app.part;

import javafx.event.Event;
import javafx.event.EventType;
import portwright.check.Finding;

/** Somebody followed a link: the window goes to a field or to a finding. */
public final class Lead extends Event {
    public static final EventType<Lead> LEAD = new EventType<>(Event.ANY, "LEAD");
    private static final long serialVersionUID = 1;

    private final transient Finding finding;
    private final String path;
    private final String rule;

    private Lead(Finding finding, String path, String rule) {
        super(LEAD);
        this.finding = finding;
        this.path = path;
        this.rule = rule;
    }

    /** To a field; without a path to the step of the rule. */
    public static Lead toField(String path, String rule) {
        return new Lead(null, path, rule);
    }

    /** To the list of all that is missing. */
    public static Lead toMissing() {
        return new Lead(null, "", "");
    }

    /** To the parts and the slip of a finding. */
    public static Lead to(Finding finding) {
        return new Lead(finding, "", finding.rule());
    }

    /** The finding; null where it leads to a field. */
    public Finding finding() {
        return finding;
    }

    public String path() {
        return path;
    }

    public String rule() {
        return rule;
    }
}
