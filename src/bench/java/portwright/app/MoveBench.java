package portwright.app;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.FutureTask;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.event.EventType;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.WritableImage;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import portwright.app.board.Board;
import portwright.app.doc.CheckDesk;
import portwright.app.doc.Document;
import portwright.app.doc.HomeFolder;
import portwright.app.frame.MainView;
import portwright.app.frame.Themes;
import portwright.app.paint.Fonts;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.geometry.Hole;
import portwright.geometry.Pt;

/**
 * From a pointer move to the new verdict and the new picture, on the largest starter, in a window of 1440 × 900. A move comes at the
 * start of every frame. Computing: to the answer of the rules on shapes. Window: from there to the end of the window thread's share of the frame
 * (drawing commands, slips, rail, foot, style, layout). Picture: from there until the renderer has drawn that frame. Drawing is both. The
 * same for a bare window with one canvas of the board's size in which one circle moves: what the renderer takes for any picture of that
 * size. Prints median, 99th percentile and worst, ms; first by the clock, then the processor's time, which other work on the machine does not
 * lengthen.
 */
public final class MoveBench {
    private static final int WARM = Integer.getInteger("warm", 400);
    private static final int MOVES = Integer.getInteger("moves", 600);

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private MoveBench() {}

    public static void main(String[] args) throws Exception {
        String name = args.length > 0 ? args[0] : largest();
        WindowLauncher.prepare();
        Platform.startup(Fonts::load);
        Platform.setImplicitExit(false);
        Whole whole = onWindow(() -> new Whole(name));
        while (onWindow(whole::checking)) {
            Thread.sleep(50);
        }
        Canvas size = onWindow(() -> new Canvas(whole.board.getWidth(), whole.board.getHeight()));
        run(name, whole);
        onWindow(() -> {
            whole.stage.close();
            return null;
        });
        Mover bare = onWindow(() -> new Bare(size));
        run("bare window, one canvas of " + (int) size.getWidth() + " × " + (int) size.getHeight(), bare);
        System.exit(0);
    }

    private static String largest() {
        return Starters.names().stream()
                .max(Comparator.comparingInt(
                        n -> Starters.find(n).orElseThrow().toText().length()))
                .orElseThrow();
    }

    private static <T> T onWindow(Callable<T> task) throws Exception {
        FutureTask<T> f = new FutureTask<>(task);
        Platform.runLater(f);
        return f.get();
    }

    private static void run(String name, Mover mover) throws Exception {
        CompletableFuture<Drag> done = new CompletableFuture<>();
        Platform.runLater(() -> new Drag(mover, done).start());
        Drag drag = done.get();
        System.out.println(name + ", " + MOVES + " moves");
        String[] words = {"computing", "window", "picture", "drawing", "all"};
        for (int k = 0; k < words.length; k++) {
            System.out.printf(
                    Locale.ROOT,
                    "%-10s clock: %s   processor: %s%n",
                    words[k],
                    figures(drag.clockMs[k]),
                    figures(drag.workMs[k]));
        }
    }

    /** Shares of one frame, ms, from four times, ns. */
    private static void share(double[][] ms, int i, long[] t) {
        for (int k = 0; k < 3; k++) {
            ms[k][i] = (t[k + 1] - t[k]) / 1e6;
        }
        ms[3][i] = ms[1][i] + ms[2][i];
        ms[4][i] = ms[0][i] + ms[3][i];
    }

    private static String figures(double[] ms) {
        Arrays.sort(ms);
        return String.format(
                Locale.ROOT,
                "median %5.1f, p99 %5.1f, worst %5.1f ms",
                ms[ms.length / 2],
                ms[(int) Math.ceil(ms.length * 0.99) - 1],
                ms[ms.length - 1]);
    }

    /** A move in every frame: the clock and the processor's time at the move, the answer, the end of the window's share and of the picture, ns. */
    private static final class Drag extends AnimationTimer {
        private final double[][] clockMs = new double[5][MOVES];
        private final double[][] workMs = new double[5][MOVES];
        private final Mover mover;
        private final CompletableFuture<Drag> done;
        private final long[] clock = new long[4];
        private final long[] work = new long[4];
        private long rendering;
        private int moves = -WARM;

        private Drag(Mover mover, CompletableFuture<Drag> done) {
            this.mover = mover;
            this.done = done;
            mover.scene().addPostLayoutPulseListener(() -> Platform.runLater(this::laidOut));
        }

        @Override
        public void handle(long now) {
            drawn();
            rendering = renderer();
            stamp(0);
            mover.move(moves * 0.11, () -> stamp(1));
        }

        private void laidOut() {
            if (moves == MOVES) {
                return;
            }
            stamp(2);
            drawn();
            clock[3] = System.nanoTime();
            work[3] = work[2] + renderer() - rendering;
            if (moves >= 0) {
                share(clockMs, moves, clock);
                share(workMs, moves, work);
            }
            moves++;
            if (moves == MOVES) {
                stop();
                done.complete(this);
            }
        }

        /** Returns when the renderer has nothing left to draw. */
        private static void drawn() {
            new Region().snapshot(null, new WritableImage(1, 1));
        }

        private void stamp(int k) {
            clock[k] = System.nanoTime();
            work[k] = THREADS.getCurrentThreadCpuTime();
        }

        /** The renderer's time so far, ns; its thread begins with the first picture. */
        private static long renderer() {
            for (long id : THREADS.getAllThreadIds()) {
                ThreadInfo t = THREADS.getThreadInfo(id);
                if (t != null && t.getThreadName().startsWith("QuantumRenderer")) {
                    return THREADS.getThreadCpuTime(id);
                }
            }
            return 0;
        }
    }

    /** Something that follows a pointer. */
    private interface Mover {
        Scene scene();

        /** Moves; says so as soon as the verdict is there. */
        void move(double a, Runnable answered);
    }

    /** The program's window. */
    private static final class Whole implements Mover {
        private final Stage stage = new Stage();
        private final Board board;
        private final Pt from;
        private final Document doc;
        private Runnable answered = () -> {};

        private Whole(String name) {
            CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), Platform::runLater);
            DesignText text = Starters.find(name).orElseThrow();
            doc = new Document(text, text.read().design(), desk);
            doc.listen(c -> {
                if (c == Document.Change.DESIGN) {
                    answered.run();
                }
            });
            HomeFolder home = new HomeFolder(Path.of("target", "window-home"));
            MainView view = new MainView(doc, s -> Steps.make(doc, home, s));
            stage.setScene(new Scene(view, 1440, 900));
            Themes.set(stage.getScene(), false, 1);
            stage.show();
            view.applyCss();
            view.layout();
            board = view.board();
            Hole hole = doc.shapes().geometry().holes().get(0);
            from = board.canvasPoint(hole.face(), hole.centre());
            mouse(MouseEvent.MOUSE_PRESSED, from.x(), from.y());
            doc.start();
        }

        private boolean checking() {
            return doc.checking();
        }

        @Override
        public Scene scene() {
            return stage.getScene();
        }

        @Override
        public void move(double a, Runnable then) {
            answered = then;
            mouse(MouseEvent.MOUSE_DRAGGED, from.x() + 5 + 60 * Math.sin(a), from.y() + 45 * Math.cos(a * 0.7));
        }

        private void mouse(EventType<MouseEvent> type, double x, double y) {
            Mouse.send(board, type, x, y, false);
        }
    }

    /** A window with nothing but a canvas. */
    private static final class Bare implements Mover {
        private final Stage stage = new Stage();
        private final Canvas canvas;

        private Bare(Canvas canvas) {
            this.canvas = canvas;
            stage.setScene(new Scene(new Pane(canvas), 1440, 900));
            stage.show();
        }

        @Override
        public Scene scene() {
            return stage.getScene();
        }

        @Override
        public void move(double a, Runnable then) {
            GraphicsContext g = canvas.getGraphicsContext2D();
            g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
            g.setStroke(Color.BLACK);
            g.strokeOval(300 + 60 * Math.sin(a), 300 + 45 * Math.cos(a * 0.7), 60, 60);
            then.run();
        }
    }
}
