package portwright.app;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * Start-up of the window as a multiple of a bare JavaFX window with one label: whole processes, from their start until the window is on the
 * screen, its first picture is drawn and its thread is free. The two take turns. Prints the medians, s, and their ratio.
 */
public final class StartBench {
    private static final int RUNS = 7;

    private StartBench() {}

    public static void main(String[] args) throws Exception {
        Path home = Files.createTempDirectory("portwright");
        double[] bare = new double[RUNS];
        double[] full = new double[RUNS];
        for (int i = -1; i < RUNS; i++) {
            double b = run(home, Hello.class);
            double f = run(home, Full.class);
            if (i >= 0) {
                bare[i] = b;
                full[i] = f;
            }
        }
        double[] ratio = new double[RUNS];
        Arrays.setAll(ratio, i -> full[i] / bare[i]);
        Arrays.sort(ratio);
        System.out.printf(
                Locale.ROOT,
                "bare window %.2f s, Portwright with a starter %.2f s, ratio %.2f (%.2f to %.2f in %d runs)%n",
                median(bare),
                median(full),
                ratio[RUNS / 2],
                ratio[0],
                ratio[RUNS - 1],
                RUNS);
    }

    private static double median(double[] v) {
        double[] s = v.clone();
        Arrays.sort(s);
        return s[s.length / 2];
    }

    private static double run(Path home, Class<?> main) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                "-Dportwright.home=" + home,
                "-cp",
                System.getProperty("java.class.path")));
        for (String key : List.of("glass.platform", "monocle.platform", "prism.order", "headless.geometry")) {
            if (System.getProperty(key) != null) {
                command.add(1, "-D" + key + "=" + System.getProperty(key));
            }
        }
        command.add(main.getName());
        long start = System.nanoTime();
        int status = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        if (status != 0) {
            throw new IllegalStateException(main.getName() + " ended with " + status);
        }
        return (System.nanoTime() - start) / 1e9;
    }

    private static void endWhenDrawn(Window w) {
        Runnable[] first = new Runnable[1];
        first[0] = () -> {
            w.getScene().removePostLayoutPulseListener(first[0]);
            Platform.runLater(() -> Runtime.getRuntime().halt(0));
        };
        w.getScene().addPostLayoutPulseListener(first[0]);
        Platform.requestNextPulse();
    }

    /** Starts the bare window. */
    public static final class Hello {
        private Hello() {}

        public static void main(String[] args) {
            Application.launch(Bare.class);
        }
    }

    /** The bare window. */
    public static final class Bare extends Application {
        @Override
        public void start(Stage stage) {
            stage.setScene(new Scene(new StackPane(new Label("hello")), 1440, 900));
            stage.show();
            endWhenDrawn(stage);
        }
    }

    /** The program as a user starts it. */
    public static final class Full {
        private Full() {}

        public static void main(String[] args) {
            Thread watch = new Thread(
                    () -> {
                        while (true) {
                            try {
                                Thread.sleep(5);
                                Platform.runLater(() -> Window.getWindows().stream()
                                        .filter(Window::isShowing)
                                        .findFirst()
                                        .ifPresent(StartBench::endWhenDrawn));
                            } catch (InterruptedException e) {
                                return;
                            } catch (IllegalStateException toolkitNotUp) {
                                Thread.onSpinWait();
                            }
                        }
                    },
                    "watch");
            watch.setDaemon(true);
            watch.start();
            Application.launch(WindowApp.class);
        }
    }
}
