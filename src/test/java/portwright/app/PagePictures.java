package portwright.app;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import portwright.app.doc.Picture;
import portwright.app.doc.Step;
import portwright.cli.Cli;
import portwright.file.Starters;

/**
 * Makes the pictures of README, guide and the page of proposals, of window and paper, and beside them a line for each of what it shows: a hash of the
 * starter as saved, the style sheets and the words on it. No pixel counts, so that the lines are the same on every machine.
 */
final class PagePictures {
    static final Path FOLDER = Path.of("src/docs/pictures");
    static final Path SHOWN = FOLDER.resolve("shown.txt");

    private static final String ON_SCREEN = "decagon-23";
    private static final String ON_PAPER = "octagon-17";
    private static final int WIDE = 1440;
    private static final int HIGH = 900;
    /** The words are read in the smallest window, which has room on any screen. */
    private static final int LEAST_WIDE = 1180;

    private static final int LEAST_HIGH = 720;
    private static final float DPI = 72;
    /** A tile with a hole whole on it. */
    private static final int TILE = 8;

    private PagePictures() {}

    public static void main(String[] args) throws IOException {
        Toolkit.start();
        Path work = Files.createTempDirectory("pictures");
        window(work, true);
        Files.writeString(SHOWN, lines(window(work, false), paper(work, true)));
        System.exit(0);
    }

    static String lines(Map<String, String> window, Map<String, String> paper) {
        Map<String, String> all = new LinkedHashMap<>(window);
        all.putAll(paper);
        return all.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue() + "\n")
                .collect(Collectors.joining());
    }

    /** What the pictures of the window show; the words of found places are left out, since a search takes long: the step that they stand in counts. */
    static Map<String, String> window(Path work, boolean write) {
        Map<String, String> out = new LinkedHashMap<>();
        Pictures.Holder holder = Toolkit.call(
                () -> Pictures.open(ON_SCREEN, work, false, 1, write ? WIDE : LEAST_WIDE, write ? HIGH : LEAST_HIGH));
        Toolkit.until(() -> !holder.doc().checking()
                && !holder.doc().waiting()
                && holder.doc().extras().gas() != null);
        Pictures.go(holder, Step.PORTS, Picture.FLOOR_HOT);
        out.put("ports-light.png", shown(holder));
        write(holder, "ports-light.png", write);
        Pictures.go(holder, Step.GAS, null);
        out.put("gas-light.png", shown(holder));
        write(holder, "gas-light.png", write);
        Toolkit.run(() -> {
            holder.view().go(Step.PORTS);
            holder.doc().select(null);
        });
        Pictures.settle(holder);
        out.put("proposals-light.png", shown(holder));
        if (write) {
            Pictures.proposals(holder, FOLDER.resolve("proposals-light.png").toFile());
        }
        Toolkit.run(() -> {
            holder.desk().close();
            holder.stage().close();
        });
        return out;
    }

    private static void write(Pictures.Holder holder, String name, boolean write) {
        if (write) {
            Pictures.write(
                    Toolkit.call(() -> holder.scene().snapshot(null)),
                    FOLDER.resolve(name).toFile());
        }
    }

    /** What the pictures of paper show. */
    static Map<String, String> paper(Path work, boolean write) throws IOException {
        Map<String, String> out = new LinkedHashMap<>();
        Path design = Path.of("templates", ON_PAPER + ".json");
        Path sheets = work.resolve("sheets.pdf");
        Path card = work.resolve("card.pdf");
        run("sheet", design.toString(), "-o", sheets.toString(), "--face", "drilled");
        run("card", design.toString(), "-o", card.toString());
        try (PDDocument s = Loader.loadPDF(sheets.toFile());
                PDDocument c = Loader.loadPDF(card.toFile())) {
            out.put("first-sheet.png", page(s, 1, "first-sheet.png", write));
            out.put("tile.png", page(s, TILE, "tile.png", write));
            out.put("card.png", page(c, 1, "card.png", write));
        }
        return out;
    }

    private static void run(String... args) {
        StringWriter said = new StringWriter();
        int status = Cli.run(new PrintWriter(said), new PrintWriter(said), args);
        if (status != 0) {
            throw new IllegalStateException(said.toString());
        }
    }

    private static String page(PDDocument d, int number, String name, boolean write) throws IOException {
        if (write) {
            BufferedImage image = new PDFRenderer(d).renderImageWithDPI(number - 1, DPI, ImageType.GRAY);
            javax.imageio.ImageIO.write(image, "png", new File(FOLDER.toFile(), name));
        }
        PDFTextStripper words = new PDFTextStripper();
        words.setStartPage(number);
        words.setEndPage(number);
        return hash(Starters.find(ON_PAPER).orElseThrow().toText() + words.getText(d));
    }

    /** The words of the window as it stands, in no order: what a node says counts, not where it lies. */
    private static String shown(Pictures.Holder holder) {
        return Toolkit.call(() -> {
            TreeSet<String> words = new TreeSet<>();
            collect(holder.view(), words);
            words.add(holder.doc().text().toText());
            for (String sheet : new String[] {"light.css", "window.css"}) {
                words.add(new String(
                        PagePictures.class
                                .getResourceAsStream("/portwright/app/" + sheet)
                                .readAllBytes(),
                        java.nio.charset.StandardCharsets.UTF_8));
            }
            return hash(String.join("\n", words));
        });
    }

    private static void collect(Node n, Set<String> words) {
        String said = n instanceof Labeled l
                ? l.getText()
                : n instanceof Text t ? t.getText() : n instanceof TextInputControl i ? i.getText() : null;
        if (said != null) {
            words.add(said);
        }
        if (n instanceof Parent p && !(n instanceof TextInputControl)) {
            p.getChildrenUnmodifiable().stream()
                    // what a label shows where it lacks room hangs on the machine's letters
                    .filter(c -> !(n instanceof Labeled && c instanceof Text))
                    .forEach(c -> collect(c, words));
        }
    }

    private static String hash(String words) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256")
                    .digest(words.replaceAll("\\s+", " ").getBytes(java.nio.charset.StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sum, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
