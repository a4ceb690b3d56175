package portwright.app.step;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import portwright.app.doc.RecordDesk;
import portwright.app.part.FormView;
import portwright.app.part.Plain;
import portwright.app.part.SlipView;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.LogFinding;
import portwright.file.Problem;
import portwright.form.FieldNames;
import portwright.report.FaultLines;
import portwright.report.PlanNotes;
import portwright.report.RecordText;
import portwright.report.ReportLine;
import portwright.review.AgainstPlan;
import portwright.units.Format;

/** Records of firings: load, what each says, rows left out by line, the ledger, the fit to take. */
final class RecordTicket extends VBox {
    private static final String READ = "read";
    private static final String LEDGER = "ledger";
    private static final int MOST_FAULTS = 200;

    private final RecordDesk desk;
    private final Set<String> open = new HashSet<>();
    private boolean allFaults;
    private String wrong;

    RecordTicket(RecordDesk desk) {
        this.desk = desk;
        build();
    }

    /** Shows the desk as it stands. */
    void build() {
        List<Node> rows = new ArrayList<>();
        rows.add(new FlowPane(8, 8, Plain.button("Load a firing log…", this::choose)));
        if (desk.entries().isEmpty()) {
            rows.add(Plain.words(
                    "CSV with time and temperature, as the controller saves it. Or drag the file onto the window."));
        }
        if (desk.running()) {
            ProgressBar bar = new ProgressBar();
            bar.setMaxWidth(Double.MAX_VALUE);
            bar.setAccessibleText("the log is being read");
            rows.add(bar);
            rows.add(Plain.button("Cancel", desk::cancel));
        } else if (desk.stopped() && !desk.entries().isEmpty()) {
            rows.add(Plain.words("Reading and fitting were stopped."));
            rows.add(Plain.button("Read again", desk::again));
        }
        desk.faults().forEach(f -> rows.add(SlipView.caution("Not used", f)));
        for (int i = 0; i < desk.entries().size(); i++) {
            rows.add(entry(i));
        }
        if (!desk.needs().isEmpty()) {
            rows.add(SlipView.caution("No forecast to lay it over", "Fill in " + FieldNames.of(desk.needs()) + "."));
        }
        if (desk.record() != null) {
            record(rows);
        }
        getChildren().setAll(FormView.ticket("Record", desk.running() ? "reading" : "", rows.toArray(Node[]::new)));
    }

    private void choose() {
        FileChooser c = new FileChooser();
        c.setTitle("Load a firing log");
        c.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("Firing logs", "*.csv", "*.tsv", "*.txt", "*.log"),
                        new FileChooser.ExtensionFilter("All files", "*"));
        List<File> files = c.showOpenMultipleDialog(getScene().getWindow());
        if (files != null) {
            desk.load(files.stream().map(File::toPath).map(Path::toAbsolutePath).toList());
        }
    }

    private Node entry(int i) {
        ToggleButton name = new ToggleButton(desk.entries().get(i).name());
        name.getStyleClass().setAll("part-row");
        name.setSelected(i == desk.chosen());
        name.setMaxWidth(Double.MAX_VALUE);
        name.setOnAction(e -> {
            allFaults = false;
            desk.choose(i);
        });
        HBox.setHgrow(name, Priority.ALWAYS);
        Button away = Plain.button("Put away", () -> desk.remove(i));
        away.setMinWidth(USE_PREF_SIZE);
        HBox row = new HBox(6, name, away);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private void record(List<Node> rows) {
        FiringLog log = desk.record().logs().get(desk.chosen());
        List<LogFinding> findings = desk.result().findings();
        int n = 1;
        for (LogFinding f : findings) {
            String head = n + ". " + head(f);
            String words = told(RecordText.words(f, desk.result().elements()));
            rows.add(RecordText.note(f) ? SlipView.note(head, words) : SlipView.caution(head, words));
            n++;
        }
        AgainstPlan against = AgainstPlan.of(desk.record(), desk.chosen());
        for (String caution : PlanNotes.cautions(against)) {
            rows.add(SlipView.caution(n + ". Faster than forecast", told(sentence(caution))));
            n++;
        }
        for (String note : PlanNotes.words(against)) {
            rows.add(SlipView.note("Against the plan", told(sentence(note))));
        }
        if (findings.isEmpty()) {
            rows.add(SlipView.clear("No finding", sentence(RecordText.nothing(desk.result(), against)), null));
        }
        rows.add(lines(told(RecordText.result(desk.result()))));
        fit(rows);
        int skipped = log.faults().size();
        group(
                rows,
                READ,
                "How the log was read" + (skipped == 0 ? "" : ", " + skipped + (skipped == 1 ? " fault" : " faults")),
                () -> {
                    rows.add(lines(RecordText.log(log)));
                    faults(rows, log);
                });
        int count = desk.entries().size();
        group(
                rows,
                LEDGER,
                count == 1 ? "Ledger of this record" : "Ledger of " + count + " records",
                () -> rows.add(lines(told(RecordText.ledger(desk.record().ledger())))));
        rows.add(Plain.words(RecordText.LAST_WORD));
    }

    /** A part that opens and shuts. */
    private void group(List<Node> rows, String key, String head, Runnable content) {
        boolean isOpen = open.contains(key);
        Button b = new Button((isOpen ? "▾ " : "▸ ") + head);
        b.getStyleClass().setAll("group-toggle");
        b.setMaxWidth(Double.MAX_VALUE);
        b.setAccessibleText(head + (isOpen ? ", open" : ", shut"));
        b.setOnAction(e -> {
            if (!open.remove(key)) {
                open.add(key);
            }
            build();
        });
        rows.add(b);
        if (isOpen) {
            content.run();
        }
    }

    private static String head(LogFinding f) {
        String probe = f.orProbe() ? ", or thermocouple off" : "";
        return switch (f.kind()) {
            case SCALE -> "Celsius or Fahrenheit?";
            case DEAD_PROBE -> "Thermocouple dead";
            case FROZEN -> "Reading frozen";
            case RELAY -> "Element power gone";
            case STUCK -> "Elements stay on" + probe;
            case MORE_POWER -> "More power than asked" + probe;
            case OVER, OVER_WITH_LESS_WARE -> "Hotter than planned";
            case ELEMENT -> (f.orAir() ? "An element lost, or air" : "An element lost") + probe;
            case TOO_MUCH_AIR -> "Too much air";
            case ELEMENT_OR_AIR, AIR_OR_ELEMENT -> "Heat lost" + probe;
            case WEAK -> "Less power than forecast";
            case THERMOCOUPLE -> "Thermocouple off the cones";
            case CONE -> "A cone that cannot be";
        };
    }

    /** In the units of the design. */
    private String told(String words) {
        return RecordText.inUnits(words, desk.record().review().design().units());
    }

    private List<ReportLine> told(List<ReportLine> lines) {
        return lines.stream()
                .map(l -> new ReportLine(l.name(), told(l.value())))
                .toList();
    }

    private static String sentence(String s) {
        return Character.toUpperCase(s.charAt(0)) + s.substring(1) + ".";
    }

    private void fit(List<Node> rows) {
        rows.add(head("What it teaches of this kiln"));
        rows.add(lines(RecordText.fit(desk.fit())));
        if (desk.taken()) {
            rows.add(Plain.words("In the design. Undo takes it back."));
        } else if (desk.fits()) {
            rows.add(new FlowPane(8, 8, Plain.button("Take into the design", () -> {
                List<Problem> problems = desk.takeFit();
                wrong = problems.isEmpty() ? null : problems.get(0).message();
                build();
            })));
        }
        if (wrong != null) {
            rows.add(SlipView.caution("Not taken", wrong));
        }
    }

    private void faults(List<Node> rows, FiringLog log) {
        List<String> told = FaultLines.of(log.faults(), "");
        if (!allFaults) {
            told.forEach(w -> rows.add(Plain.words(w)));
            if (told.size() < log.faults().size()) {
                int shown = Math.min(MOST_FAULTS, log.faults().size());
                rows.add(Plain.button("Show " + shown + " of " + log.faults().size() + " line by line", () -> {
                    allFaults = true;
                    build();
                }));
            }
            return;
        }
        log.faults().stream().limit(MOST_FAULTS).forEach(f -> rows.add(Plain.words(RecordText.fault(f))));
        int rest = log.faults().size() - MOST_FAULTS;
        if (rest > 0) {
            rows.add(Plain.words(Format.plain(rest, 0) + " more; the command record lists all."));
        }
    }

    private static Node head(String text) {
        Label l = new Label(text);
        l.getStyleClass().add("section-head");
        l.setStyle("-fx-padding: 6 0 0 0;");
        return l;
    }

    private static Node lines(List<ReportLine> lines) {
        VBox box = new VBox(3);
        for (ReportLine l : lines) {
            Label name = new Label(l.name());
            name.getStyleClass().addAll("muted", "slip-text");
            name.setMinWidth(84);
            Label value = new Label(l.value());
            value.getStyleClass().add("slip-text");
            value.setWrapText(true);
            value.setMinHeight(USE_PREF_SIZE);
            HBox.setHgrow(value, Priority.ALWAYS);
            HBox row = new HBox(6, name, value);
            row.setAlignment(Pos.TOP_LEFT);
            box.getChildren().add(row);
        }
        return box;
    }
}
