package portwright.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import portwright.check.CheckResult;
import portwright.check.Verdict;
import portwright.file.DesignFile;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.review.Review;

/** Designs and results for the tests of paper. */
final class Prints {
    private Prints() {}

    static Path club() {
        return resource("club.json");
    }

    private static Path resource(String name) {
        try {
            return Path.of(Prints.class.getResource("/portwright/sheet/" + name).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** All starter designs and the club kiln. */
    static List<Path> all() {
        List<Path> out = new ArrayList<>(List.of(club(), resource("wall.json")));
        Path templates = Path.of("templates");
        if (Files.isDirectory(templates)) {
            try (Stream<Path> s = Files.list(templates)) {
                s.filter(p -> p.toString().endsWith(".json")).sorted().forEach(out::add);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return out;
    }

    static Design read(Path p) {
        try {
            return DesignFile.read(p).design();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A result without findings, for geometry alone. */
    static CheckResult nothingFound(Design d) {
        return new CheckResult(d.title(), Verdict.CLEAR, Verdict.CLEAR, List.of(), List.of(), List.of(), null);
    }

    static SheetBook.Print print(Design d, SheetOptions o) {
        return SheetBook.print(nothingFound(d), KilnGeometry.of(d), "kiln.json", o);
    }

    static Review review(Design d) {
        return Review.of(d);
    }
}
