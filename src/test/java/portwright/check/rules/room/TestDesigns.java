package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.ReadResult;
import portwright.model.Design;
import portwright.review.Review;

/** Base designs of the hazard sweep, made by edits of the documented example. */
final class TestDesigns {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path EXAMPLE = Path.of("src/test/resources/designs/contract-example.json");
    private static final RuleBook BOOK = new RuleBook(LimitTable.load());
    private static final Pattern STEP = Pattern.compile("([A-Za-z-]+)|\\[(\\d+)]");

    private TestDesigns() {}

    /** Two small supervised burners outdoors: nothing of this section stops it, nothing lacks. */
    static ObjectNode outdoors() {
        return edit(
                example(),
                "burners[0]={\"name\":\"burner A\",\"port\":\"inlet A\",\"fuel\":\"propane\",\"heat\":\"1.6 kW\",\"pressure\":\"11 inH2O\","
                        + "\"head\":\"venturi\",\"tip\":\"1/2 in\",\"body\":\"1 in\",\"setback\":\"1/2 in\",\"length\":\"6 in\",\"flameAt\":\"hole\","
                        + "\"flameSafety\":{\"closes\":\"20 s\"}} ; burners[1].pressure=\"11 inH2O\" ; burners[1].head=\"venturi\" ; "
                        + "burners[1].flameSafety={\"closes\":\"20 s\"} ; "
                        + "room.place=\"outdoors\" ; room.ceiling=\"none\" ; kiln.fittings[0].at=[\"0 in\",\"2 in\"] ; "
                        + "kiln.fittings[2].at=[\"0 in\",\"15 in\"] ; "
                        + "firing.steps[0].elements=\"controller\" ; firing.steps[0].ports=\"plugged\" ; "
                        + "firing.steps[2].elements=\"controller\" ; firing.steps[3].elements=\"controller\"");
    }

    /** The same in a studio with flue gas led outdoors and a hood that is large enough. */
    static ObjectNode studio() {
        return edit(
                outdoors(),
                "room.place=\"studio\" ; room.building=\"detached\" ; room.ceiling=\"3 m\" ; room.ledOutdoors=\"99.9 %\" ; "
                        + "room.hood={\"flow\":\"1300 m3/h\",\"diameter\":\"1.2 m\",\"height\":\"0.4 m\"} ; room.openings[1].free=\"100 %\"");
    }

    static ObjectNode base(String name) {
        return name.equals("studio") ? studio() : outdoors();
    }

    private static ObjectNode example() {
        try {
            return (ObjectNode) JSON.readTree(Files.readString(EXAMPLE));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ObjectNode edit(ObjectNode design, String edits) {
        ObjectNode out = design.deepCopy();
        for (String e : edits.isEmpty() ? new String[0] : edits.split(" ; ")) {
            int at = e.indexOf('=');
            set(out, e.substring(0, at), e.substring(at + 1));
        }
        return out;
    }

    private static void set(ObjectNode root, String path, String value) {
        JsonNode node = root;
        Matcher m = STEP.matcher(path);
        assertThat(m.find()).isTrue();
        while (true) {
            String field = m.group(1);
            int index = field == null ? Integer.parseInt(m.group(2)) : -1;
            if (m.find()) {
                node = field != null ? node.get(field) : node.get(index);
                continue;
            }
            if (value.equals("-")) {
                ((ObjectNode) node).remove(field);
            } else if (field != null) {
                ((ObjectNode) node).set(field, json(value));
            } else if (index < node.size()) {
                ((ArrayNode) node).set(index, json(value));
            } else {
                ((ArrayNode) node).add(json(value));
            }
            return;
        }
    }

    private static JsonNode json(String value) {
        try {
            return JSON.readTree(value);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(value, e);
        }
    }

    static ReadResult read(JsonNode design) {
        return DesignText.read(design.toString());
    }

    static Design design(JsonNode design) {
        ReadResult r = read(design);
        assertThat(r.problems()).isEmpty();
        return r.design();
    }

    /** The rules of this section over a design. */
    static CheckResult check(Design design) {
        return BOOK.check(Review.of(design), Set.of(RuleBook.Section.ROOM));
    }

    static CheckResult check(JsonNode design) {
        return check(design(design));
    }

    /** The whole rule book. */
    static CheckResult whole(Design design) {
        return BOOK.check(Review.of(design));
    }

    /**
     * The rule book over a design, or so much of it that both verdicts are already no better than {@code before}: more rules only make a verdict worse.
     * The quick sections run first.
     */
    static CheckResult noMoreThan(CheckResult before, Design design) {
        Review review = Review.of(design);
        CheckResult r = BOOK.check(review, Set.of(RuleBook.Section.GEOMETRY, RuleBook.Section.ROOM));
        return NeverReassuringTest.improves(before.drilling(), r.drilling())
                        || NeverReassuringTest.improves(before.lighting(), r.lighting())
                ? BOOK.check(review)
                : r;
    }

    /** What is not checked and could forbid something. */
    static List<NotChecked> lacking(CheckResult r) {
        return r.notChecked().stream()
                .filter(n -> n.forbids() != Forbids.NOTHING)
                .toList();
    }

    static List<String> stops(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .map(f -> f.rule())
                .distinct()
                .toList();
    }
}
