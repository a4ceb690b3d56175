package portwright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A design changed along its structure: half of the changes keep it a design, so that the calculation meets odd kilns too. */
final class DesignMutant {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonNodeFactory NEW = JsonNodeFactory.instance;
    private static final String TWICE = "\u0001twice";
    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
    private static final double[] FACTORS = {0, 1e-9, 0.01, 0.3, 0.7, 0.95, 1.05, 1.4, 3, 10, 100, 1e6, 1e15, -1};
    private static final List<String> QUANTITIES = List.of(
            "1/2 in",
            "1 1/2\"",
            "1-1/2 in",
            "3 5/8 in",
            "1 in",
            "0 in",
            "0 mm",
            "-1 mm",
            "100 mm",
            "2540 mm",
            "17\"",
            "1' 5\"",
            "½ in",
            "1½\"",
            "1⅜ in",
            "1/0 in",
            "0/1 in",
            "1/2/3 in",
            "１７ in",
            "17 ｉｎ",
            "−5 mm",
            "5 мм",
            "1e3 mm",
            "1e400 mm",
            "1,5 mm",
            "1.5.5 mm",
            "NaN mm",
            "NaN",
            "Infinity",
            "-Infinity mm",
            "inf",
            "nan °C",
            "1000 °C",
            "-300 °C",
            "0 °C",
            "3000 °C",
            "1832 °F",
            "0 %",
            "50 %",
            "100 %",
            "101 %",
            "90°",
            "360°",
            "-90°",
            "cone 10",
            "cone 022",
            "cone 99",
            "#60",
            "#80",
            "1 kW",
            "0 kW",
            "1e9 kW",
            "1 psi",
            "30 mbar",
            "0 mbar",
            "20 lb",
            "0 kg",
            "1 kg",
            "full",
            "100 °C/h",
            "0 °C/h",
            "1 h",
            "0 min",
            "",
            " ",
            "mm");
    private static final List<String> WORDS = List.of(
            "",
            " ",
            "a",
            "floor",
            "lid",
            "wall",
            "inlet",
            "flue",
            "electric",
            "gas",
            "both",
            "propane",
            "heavy",
            "open",
            "\u202Eevil\u202C",
            "\u200Bzero width",
            "🔥 窯 كيلن",
            "e\u0301\u0301\u0301",
            "\uD800",
            "\u0000",
            "\u001B[31mred",
            "../../x",
            "CON",
            "x/y\\z",
            "<script>&\"'",
            "=1+1",
            "| a | b |",
            "line\nbreak",
            "а latin-looking word",
            "x".repeat(70),
            "y".repeat(3000));

    private final Random random;

    private DesignMutant(Random random) {
        this.random = random;
    }

    /** The text of a changed design. */
    static String of(String design, Random random) {
        try {
            return new DesignMutant(random).change(MAPPER.readTree(design));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private String change(JsonNode root) throws JsonProcessingException {
        for (int k = 0; k <= random.nextInt(3); k++) {
            List<ContainerNode<?>> all = new ArrayList<>();
            collect(root, all);
            ContainerNode<?> at = all.get(random.nextInt(all.size()));
            if (at.isEmpty()) {
                continue;
            }
            if (at instanceof ObjectNode o) {
                field(o);
            } else {
                item((ArrayNode) at);
            }
        }
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root).replace("\\u0001twice", "");
    }

    private static void collect(JsonNode n, List<ContainerNode<?>> out) {
        if (n instanceof ContainerNode<?> c) {
            out.add(c);
            c.forEach(child -> collect(child, out));
        }
    }

    private void field(ObjectNode o) {
        List<String> names = new ArrayList<>();
        o.fieldNames().forEachRemaining(names::add);
        String name = names.get(random.nextInt(names.size()));
        switch (random.nextInt(12)) {
            case 0, 1 -> o.remove(name);
            case 2 -> o.set(name + TWICE, o.get(name).deepCopy());
            case 3 -> {
                Collections.shuffle(names, random);
                ObjectNode copy = o.deepCopy();
                o.removeAll();
                names.forEach(n -> o.set(n, copy.get(n)));
            }
            case 4 -> o.set(odd(name), o.get(name));
            case 5 -> o.set(names.get(random.nextInt(names.size())), o.get(name).deepCopy());
            default -> o.set(name, other(o.get(name)));
        }
    }

    private void item(ArrayNode a) {
        int i = random.nextInt(a.size());
        switch (random.nextInt(7)) {
            case 0 -> a.remove(i);
            case 1 -> a.insert(random.nextInt(a.size() + 1), a.get(i).deepCopy());
            case 2 -> {
                JsonNode x = a.get(i).deepCopy();
                for (int k = random.nextInt(60); k > 0; k--) {
                    JsonNode y = x.deepCopy();
                    if (y instanceof ObjectNode o && o.has("name")) {
                        o.put("name", o.get("name").asText() + " " + k);
                    }
                    a.add(y);
                }
            }
            case 3 -> {
                List<JsonNode> items = new ArrayList<>();
                a.forEach(items::add);
                Collections.shuffle(items, random);
                a.removeAll().addAll(items);
            }
            case 4 -> a.removeAll();
            default -> a.set(i, other(a.get(i)));
        }
    }

    private String odd(String name) {
        return switch (random.nextInt(5)) {
            case 0 -> name.replace('e', 'е').replace('o', 'о');
            case 1 -> name.toUpperCase(Locale.ROOT);
            case 2 -> name + " ";
            case 3 -> name.substring(0, name.length() / 2);
            default -> name + "\u202E";
        };
    }

    private JsonNode other(JsonNode n) {
        if (n instanceof ContainerNode<?>) {
            return random.nextBoolean() ? retyped(n) : nested(n);
        }
        if (random.nextInt(5) == 0) {
            return retyped(n);
        }
        if (!n.isTextual()) {
            double factor = FACTORS[random.nextInt(FACTORS.length)];
            return n.isNumber() ? NEW.numberNode(n.asDouble() * factor) : NEW.booleanNode(!n.asBoolean());
        }
        Matcher m = NUMBER.matcher(n.asText());
        if (m.find() && random.nextInt(3) > 0) {
            double v = Double.parseDouble(m.group()) * FACTORS[random.nextInt(FACTORS.length)];
            String written = random.nextInt(8) == 0
                    ? Double.toString(v)
                    : new java.math.BigDecimal(v)
                            .setScale(6, java.math.RoundingMode.HALF_EVEN)
                            .stripTrailingZeros()
                            .toPlainString();
            return NEW.textNode(new StringBuilder(n.asText())
                    .replace(m.start(), m.end(), written)
                    .toString());
        }
        List<String> from = m.reset().find() ? QUANTITIES : WORDS;
        return NEW.textNode(from.get(random.nextInt(from.size())));
    }

    private JsonNode retyped(JsonNode n) {
        return switch (random.nextInt(9)) {
            case 0 -> NEW.nullNode();
            case 1 -> NEW.booleanNode(true);
            case 2 -> NEW.numberNode(-1);
            case 3 -> NEW.numberNode(1e300);
            case 4 -> NEW.objectNode();
            case 5 -> NEW.arrayNode();
            case 6 -> NEW.arrayNode().add(n.deepCopy());
            case 7 -> NEW.numberNode(0);
            default -> NEW.textNode(WORDS.get(random.nextInt(WORDS.size())));
        };
    }

    private JsonNode nested(JsonNode n) {
        JsonNode out = n.deepCopy();
        for (int k = random.nextInt(60); k >= 0; k--) {
            out = random.nextBoolean()
                    ? NEW.arrayNode().add(out)
                    : NEW.objectNode().set("a", out);
        }
        return out;
    }
}
