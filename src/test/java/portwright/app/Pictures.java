package portwright.app;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import portwright.app.doc.CheckDesk;
import portwright.app.doc.Document;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.Picture;
import portwright.app.doc.Step;
import portwright.app.frame.MainView;
import portwright.app.frame.ScaledPane;
import portwright.app.frame.Themes;
import portwright.app.step.PaperStep;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;

/** Writes pictures of every step and view, light and dark, at 100, 150 and 200 % and in the smallest window, into {@code target/pictures}. */
public final class Pictures {
    /** Stands for the smallest window, at 100 %. */
    private static final int SMALL = 101;

    private Pictures() {}

    public static void main(String[] args) {
        File out = new File(args.length > 0 ? args[0] : "target/pictures");
        out.mkdirs();
        String only = args.length > 1 ? args[1] : "";
        String design = args.length > 2 ? args[2] : "decagon-23";
        Toolkit.start();
        for (boolean dark : new boolean[] {false, true}) {
            for (int percent : new int[] {100, 150, 200}) {
                shoot(out, design, dark, percent, 1440, 900, only);
            }
            shoot(out, design, dark, SMALL, 1180, 720, only);
        }
        System.exit(0);
    }

    private static void shoot(File out, String design, boolean dark, int percent, int w, int h, String only) {
        String tail = (dark ? "-dark" : "-light") + (percent == SMALL ? "-1180" : "-" + percent) + ".png";
        Path folder = Path.of("target", "window-home");
        Holder holder = Toolkit.call(() -> open(design, folder, dark, percent == SMALL ? 1 : percent / 100.0, w, h));
        Toolkit.until(() -> !holder.doc.checking() && holder.doc.extras().gas() != null);
        for (Step step : Step.values()) {
            if (step == Step.PORTS) {
                for (Picture p : Picture.values()) {
                    save(
                            holder,
                            step,
                            p,
                            new File(
                                    out,
                                    "ports-" + p.name().toLowerCase(Locale.ROOT).replace('_', '-') + tail),
                            only);
                }
            } else {
                save(holder, step, null, new File(out, step.word().toLowerCase(Locale.ROOT) + tail), only);
            }
        }
        if (percent == 100 || percent == SMALL) {
            File file = new File(out, "proposals" + tail);
            if (file.getName().contains(only)) {
                proposals(holder, file);
            }
        }
        Toolkit.run(() -> {
            holder.desk.close();
            holder.stage.close();
        });
    }

    record Holder(Document doc, MainView view, Stage stage, Scene scene, CheckDesk desk) {}

    /** Opens a starter; call on the toolkit's thread. */
    static Holder open(String design, Path folder, boolean dark, double scale, int w, int h) {
        DesignText text = Starters.find(design).orElseThrow();
        CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), javafx.application.Platform::runLater);
        Document doc = new Document(text, text.read().design(), desk);
        HomeFolder home = new HomeFolder(folder);
        MainView view = new MainView(doc, s -> Steps.make(doc, home, s));
        view.fileState(text.get("title").orElse(""), design + ".json · saved 14:32");
        ScaledPane pane = new ScaledPane(view);
        pane.factor(scale);
        Scene scene = new Scene(pane, w, h);
        Themes.set(scene, dark, 1);
        Stage stage = new Stage(StageStyle.UNDECORATED);
        stage.setScene(scene);
        stage.show();
        doc.start();
        return new Holder(doc, view, stage, scene, desk);
    }

    /** The Ports step with the proposals that its button brings. */
    static void proposals(Holder holder, File file) {
        Toolkit.run(() -> {
            holder.view.go(Step.PORTS);
            holder.view.board().show(Picture.FLOOR_HOT);
            holder.doc.select(null);
        });
        settle(holder);
        Toolkit.run(() -> {
            Button start = button(holder, "Propose places");
            start.requestFocus();
            start.fire();
        });
        while (Toolkit.call(() -> button(holder, "Take proposal 1") == null)) {
            pause(100);
        }
        settle(holder);
        Toolkit.run(() -> first(button(holder, "Take proposal 1")));
        settle(holder);
        write(Toolkit.call(() -> holder.scene.snapshot(null)), file);
    }

    /** Scrolls on until the line over the first proposal lies at the upper edge, with no half of a text above it. */
    private static void first(Node in) {
        Node proposal = in.getParent();
        Node n = proposal;
        while (!(n instanceof ScrollPane)) {
            n = n.getParent();
        }
        ScrollPane pane = (ScrollPane) n;
        double over =
                proposal.localToScene(0, 0).getY() - pane.localToScene(0, 0).getY();
        double range = pane.getContent().getLayoutBounds().getHeight()
                - pane.getViewportBounds().getHeight();
        pane.setVvalue(pane.getVvalue() + over / range);
    }

    private static Button button(Holder holder, String words) {
        return holder.scene.getRoot().lookupAll(".plain-button").stream()
                .filter(n -> n instanceof Button b && words.equals(b.getText()))
                .map(Button.class::cast)
                .findFirst()
                .orElse(null);
    }

    static void settle(Holder holder) {
        for (int i = 0; i < 3; i++) {
            Toolkit.run(() -> holder.scene.getRoot().layout());
            pause(60);
        }
    }

    private static void save(Holder holder, Step step, Picture p, File file, String only) {
        if (!file.getName().contains(only)) {
            return;
        }
        go(holder, step, p);
        write(Toolkit.call(() -> holder.scene.snapshot(null)), file);
    }

    /** Goes to a step and view, and waits until all of it is shown. */
    static void go(Holder holder, Step step, Picture p) {
        Toolkit.run(() -> {
            holder.view.go(step);
            holder.view.board().requestFocus();
            if (p != null) {
                holder.view.board().show(p);
                holder.doc.select(
                        p == Picture.FLOOR_HOT
                                ? holder.doc.design().ports().get(0).name()
                                : null);
            }
        });
        if (holder.view.stepView(step) instanceof PaperStep paper) {
            Toolkit.until(paper::ready);
        }
        if (p == Picture.FLOOR_HOT) {
            Toolkit.until(() -> holder.view.board().region() != null);
        }
        settle(holder);
    }

    private static void pause(int ms) {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    static void write(WritableImage image, File file) {
        PixelReader in = image.getPixelReader();
        BufferedImage out =
                new BufferedImage((int) image.getWidth(), (int) image.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < out.getHeight(); y++) {
            for (int x = 0; x < out.getWidth(); x++) {
                out.setRGB(x, y, in.getArgb(x, y));
            }
        }
        try {
            javax.imageio.ImageIO.write(out, "png", file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
