package portwright.app;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.PickResult;
import javafx.stage.Stage;
import portwright.app.board.Board;
import portwright.app.doc.CheckDesk;
import portwright.app.doc.Document;
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
 * From a pointer move to the new verdict and the new picture, on the largest starter, in a window of 1440 × 900. Computing: from
 * the event to the answer of the rules on shapes. Drawing: everything after that on the window's thread (canvas, slips, rail, foot, style,
 * layout) and the board drawn by the software renderer. Prints median, 99th percentile and worst, ms.
 */
public final class MoveBench {
    private static final int WARM = Integer.getInteger("warm", 400);
    private static final int MOVES = Integer.getInteger("moves", 600);

    private static final int REST_MS = 15;

    public static void main(String[] args) throws Exception {
        String name = args.length > 0 ? args[0] : largest();
        Platform.startup(Fonts::load);
        MoveBench bench = onWindow(() -> new MoveBench(name));
        double[] compute = new double[MOVES];
        double[] draw = new double[MOVES];
        for (int i = -WARM; i < MOVES; i++) {
            int at = i;
            double[] ms = onWindow(() -> bench.move(at * 0.11));
            if (i >= 0) {
                compute[i] = ms[0];
                draw[i] = ms[1];
            }
            Thread.sleep(REST_MS);
        }
        System.out.println(name + ", " + MOVES + " moves of a port");
        say("computing", compute);
        say("drawing", draw);
        Runtime.getRuntime().halt(0);
    }

    private static <T> T onWindow(Callable<T> task) throws Exception {
        FutureTask<T> f = new FutureTask<>(task);
        Platform.runLater(f);
        return f.get();
    }

    private static String largest() {
        return Starters.names().stream()
                .max(Comparator.comparingInt(
                        n -> Starters.find(n).orElseThrow().toText().length()))
                .orElseThrow();
    }

    private final MainView view;
    private final Board board;
    private final Pt from;
    private final WritableImage image;
    private long computed;

    private MoveBench(String name) {
        CheckDesk desk = new CheckDesk(new RuleBook(LimitTable.load()), Platform::runLater);
        DesignText text = Starters.find(name).orElseThrow();
        Document doc = new Document(text, text.read().design(), desk);
        doc.listen(c -> {
            if (c == Document.Change.DESIGN) {
                computed = System.nanoTime();
            }
        });
        view = new MainView(doc, s -> Steps.make(doc, s));
        Stage stage = new Stage();
        stage.setScene(new Scene(view, 1440, 900));
        Themes.set(stage.getScene(), false);
        stage.show();
        view.applyCss();
        view.layout();
        board = view.board();
        Hole hole = doc.shapes().geometry().holes().get(0);
        from = board.canvasPoint(hole.face(), hole.centre());
        image = new WritableImage((int) board.getWidth(), (int) board.getHeight());
        mouse(MouseEvent.MOUSE_PRESSED, from.x(), from.y());
    }

    /** One move of the pointer; ms of computing and of drawing. */
    private double[] move(double a) {
        long start = System.nanoTime();
        mouse(MouseEvent.MOUSE_DRAGGED, from.x() + 5 + 60 * Math.sin(a), from.y() + 45 * Math.cos(a * 0.7));
        view.applyCss();
        view.layout();
        board.snapshot(null, image);
        return new double[] {(computed - start) / 1e6, (System.nanoTime() - computed) / 1e6};
    }

    private static void say(String what, double[] ms) {
        Arrays.sort(ms);
        System.out.printf(
                Locale.ROOT,
                "%-10s median %5.1f ms   p99 %5.1f ms   worst %5.1f ms%n",
                what,
                ms[ms.length / 2],
                ms[(int) Math.ceil(ms.length * 0.99) - 1],
                ms[ms.length - 1]);
    }

    private void mouse(EventType<MouseEvent> type, double x, double y) {
        Point2D p = board.localToScene(x, y);
        board.fireEvent(new MouseEvent(
                type,
                p.getX(),
                p.getY(),
                p.getX(),
                p.getY(),
                MouseButton.PRIMARY,
                1,
                false,
                false,
                false,
                false,
                true,
                false,
                false,
                true,
                false,
                true,
                new PickResult(board, p.getX(), p.getY())));
    }
}
