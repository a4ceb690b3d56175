package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.CheckDesk;
import portwright.app.doc.Document;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.Recovery;
import portwright.app.frame.MainView;
import portwright.app.frame.Shell;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.file.Starters;

/** The whole window killed while it holds unsaved work, as a process of its own, and started again. */
class CrashTest {
    @TempDir
    Path folder;

    /** The window that gets killed: opens a file, moves a port, says so once the copy is kept, and waits. */
    public static final class Victim {
        private Victim() {}

        public static void main(String[] args) throws Exception {
            HomeFolder home = new HomeFolder(Path.of(args[0]));
            Seat seat = Toolkit.call(() -> new Seat(home));
            Toolkit.run(() -> {
                seat.shell.files().open(Path.of(args[1]));
                seat.doc.edit("title", t -> t.setText("title", "edited before the fall"));
            });
            while (!kept(home)) {
                Thread.sleep(20);
            }
            System.out.println("kept");
            Thread.sleep(60_000);
        }

        private static boolean kept(HomeFolder home) {
            File[] copies = home.root().resolve("recovery").toFile().listFiles((d, n) -> n.endsWith(".design"));
            return copies != null && copies.length > 0;
        }
    }

    /** A window with its document. */
    private static final class Seat {
        private final CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), Platform::runLater);
        private final Document doc;
        private final MainView view;
        private final Shell shell;
        private final Stage stage = new Stage();

        Seat(HomeFolder home) {
            DesignText text = Starters.find("octagon-17").orElseThrow();
            doc = new Document(text, text.read().design(), desk);
            view = new MainView(doc, s -> Steps.make(doc, home, s));
            shell = new Shell(stage, doc, view, home);
            shell.show(1180, 720);
        }

        void close() {
            desk.close();
            stage.close();
        }
    }

    @Test
    void theNextStartOffersWhatTheKilledWindowHeld() throws Exception {
        Path home = folder.resolve("home");
        Path file = folder.resolve("kiln.json");
        DesignText before = Starters.find("hexagon-27cm").orElseThrow();
        DesignFile.save(file, before);
        Process p = start(home, file);
        try (BufferedReader out = p.inputReader()) {
            String line = out.readLine();
            while (line != null && !line.equals("kept")) {
                line = out.readLine();
            }
            assertThat(line).isEqualTo("kept");
        } finally {
            p.destroyForcibly().waitFor(20, TimeUnit.SECONDS);
        }
        assertThat(DesignFile.read(file).document().toText())
                .as("the file itself is as it was saved")
                .isEqualTo(before.toText());
        Seat next = Toolkit.call(() -> new Seat(new HomeFolder(home)));
        try {
            Toolkit.run(() -> {
                next.shell.files().offerLeftWork();
                button(next.view, "Open it").fire();
            });
            assertThat(next.doc.text().toText())
                    .isEqualTo(before.setText("title", "edited before the fall").toText());
            assertThat(next.doc.unsaved()).isTrue();
            assertThat(next.shell.files().words()).startsWith("kiln.json").contains("changed");
            Toolkit.run(() -> assertThat(next.shell.files().save()).isTrue());
            assertThat(DesignFile.read(file).document().get("title")).contains("edited before the fall");
            assertThat(new Recovery(new HomeFolder(home), "later").left()).isEmpty();
        } finally {
            Toolkit.run(next::close);
        }
    }

    private static Button button(MainView view, String words) {
        view.applyCss();
        view.layout();
        return view.messages().lookupAll(".plain-button").stream()
                .filter(n -> n instanceof Button b && words.equals(b.getText()))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static Process start(Path home, Path file) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
        for (String key : List.of("glass.platform", "monocle.platform", "prism.order", "java.awt.headless")) {
            command.add("-D" + key + "=" + System.getProperty(key));
        }
        command.addAll(List.of(
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Victim.class.getName(),
                home.toString(),
                file.toString()));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
