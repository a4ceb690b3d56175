package portwright.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import portwright.file.Json.Member;
import portwright.file.Json.Spot;

/** Reads a JSON text into a tree with the place of every node. Strict: nothing that the JSON standard does not have. */
final class JsonTree {
    /** Deepest nesting; a design needs eight. */
    static final int MAX_DEPTH = 40;
    /** Most values in one file; a large design has some thousands. */
    static final int MAX_VALUES = 200_000;
    /** Most characters of a number. */
    static final int MAX_NUMBER = 40;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MAX_DEPTH * 4)
                    .maxNumberLength(DesignFile.MAX_BYTES + 1)
                    .maxStringLength(DesignFile.MAX_BYTES + 1)
                    .maxNameLength(DesignFile.MAX_BYTES + 1)
                    .build())
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .build();

    private final String text;
    private final List<Problem> problems;
    private int values;

    private JsonTree(String text, List<Problem> problems) {
        this.text = text;
        this.problems = problems;
    }

    /** The tree, or null when the text is no JSON; what is wrong is added to {@code problems}. */
    static Json parse(String text, List<Problem> problems) {
        JsonTree tree = new JsonTree(text, problems);
        try (JsonParser p = FACTORY.createParser(text)) {
            if (p.nextToken() == null) {
                problems.add(new Problem(1, 1, "", "The file is empty. A design begins with { and \"portwright\": 1."));
                return null;
            }
            Json root = tree.value(p, 0, "");
            if (p.nextToken() != null) {
                throw stop(p, "Something follows after the end of the design. Remove it; a file holds one design.");
            }
            return root;
        } catch (Halt e) {
            problems.add(e.problem);
            return null;
        } catch (JsonProcessingException e) {
            problems.add(JsonSyntax.explain(text, e));
            return null;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Json value(JsonParser p, int depth, String path) throws IOException {
        Spot spot = spot(p);
        if (depth > MAX_DEPTH) {
            throw stop(p, "Brackets are nested deeper than " + MAX_DEPTH + ". A design needs fewer than ten levels.");
        }
        if (++values > MAX_VALUES) {
            throw stop(p, "The file holds more than " + MAX_VALUES + " values. That is no design.");
        }
        return switch (p.currentToken()) {
            case START_OBJECT -> object(p, depth, path, spot);
            case START_ARRAY -> {
                List<Json> items = new ArrayList<>();
                while (p.nextToken() != JsonToken.END_ARRAY) {
                    items.add(value(p, depth + 1, FieldPath.item(path, items.size())));
                }
                yield new Json.Arr(items, spot);
            }
            case VALUE_STRING -> {
                int start = (int) p.currentTokenLocation().getCharOffset();
                String value = p.getText();
                int end = (int) p.currentLocation().getCharOffset();
                yield new Json.Text(value, text.substring(start, end), spot);
            }
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(p, spot);
            case VALUE_TRUE -> new Json.Bool(true, spot);
            case VALUE_FALSE -> new Json.Bool(false, spot);
            default -> new Json.Null(spot);
        };
    }

    private Json object(JsonParser p, int depth, String path, Spot spot) throws IOException {
        List<Member> members = new ArrayList<>();
        Map<String, Spot> seen = new HashMap<>();
        while (p.nextToken() != JsonToken.END_OBJECT) {
            Spot at = spot(p);
            String name = p.currentName();
            Spot first = seen.putIfAbsent(name, at);
            p.nextToken();
            String field = FieldPath.field(path, JsonSyntax.shown(name));
            Json value = value(p, depth + 1, field);
            if (first != null) {
                problems.add(new Problem(
                        at.line(),
                        at.column(),
                        field,
                        "\"" + JsonSyntax.shown(name) + "\" is written twice; the first stands in line " + first.line()
                                + ". Keep one."));
            } else {
                members.add(new Member(name, at, value));
            }
        }
        return new Json.Obj(members, spot);
    }

    private Json number(JsonParser p, Spot spot) throws IOException {
        String raw = p.getText();
        if (raw.length() > MAX_NUMBER) {
            throw stop(p, "A number of " + raw.length() + " digits. Write at most " + MAX_NUMBER + ".");
        }
        if (!Double.isFinite(Double.parseDouble(raw))) {
            throw stop(p, "The number " + raw + " is too large to be meant.");
        }
        return new Json.Num(raw, spot);
    }

    private static Spot spot(JsonParser p) {
        JsonLocation at = p.currentTokenLocation();
        return new Spot(at.getLineNr(), at.getColumnNr());
    }

    private static Halt stop(JsonParser p, String message) {
        Spot s = spot(p);
        return new Halt(new Problem(s.line(), s.column(), "", message));
    }

    /** Ends the reading with one problem. */
    private static final class Halt extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Problem problem;

        Halt(Problem problem) {
            super(problem.message(), null, false, false);
            this.problem = problem;
        }
    }
}
