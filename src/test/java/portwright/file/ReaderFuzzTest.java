package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever a file holds, the answer is a design or problems with a place. */
class ReaderFuzzTest {
    @Test
    void damagedTextsGiveProblemsNotFaults() throws IOException {
        damage(300);
    }

    @Test
    @Tag("slow")
    void manyDamagedTexts() throws IOException {
        damage(20_000);
    }

    private static void damage(int cases) throws IOException {
        String text = Files.readString(ContractExampleTest.EXAMPLE);
        long seed = 20260727L;
        Random random = new Random(seed);
        String signs = "{}[]\",:\\/'#0123456789.eE+-ntf \n\t\u0001é°½NaN";
        for (int i = 0; i < cases; i++) {
            StringBuilder b = new StringBuilder(text);
            for (int k = 0; k <= random.nextInt(3); k++) {
                int at = random.nextInt(b.length());
                switch (random.nextInt(3)) {
                    case 0 -> b.deleteCharAt(at);
                    case 1 -> b.insert(at, signs.charAt(random.nextInt(signs.length())));
                    default -> b.setCharAt(at, signs.charAt(random.nextInt(signs.length())));
                }
            }
            String damaged = b.toString();
            ReadResult r = DesignText.read(damaged);
            assertThat(r.ok())
                    .as("seed %d case %d", seed, i)
                    .isEqualTo(r.problems().isEmpty());
            assertThat(r.problems()).as("seed %d case %d", seed, i).allSatisfy(p -> {
                assertThat(p.line()).isBetween(1, (int) damaged.lines().count() + 1);
                assertThat(p.column()).isPositive();
                assertThat(p.message()).isNotBlank().doesNotContain("Exception", "null is", "com.fasterxml");
            });
            assertThat(r.document() != null)
                    .as("seed %d case %d: JSON or not", seed, i)
                    .isEqualTo(json(damaged));
        }
    }

    private static boolean json(String text) {
        try (JsonParser p = new JsonFactory().createParser(text)) {
            int depth = 0;
            int roots = 0;
            for (var t = p.nextToken(); t != null; t = p.nextToken()) {
                roots += depth == 0 && !t.isStructEnd() ? 1 : 0;
                depth += t.isStructStart() ? 1 : t.isStructEnd() ? -1 : 0;
                if (t.isNumeric() && !Double.isFinite(p.getDoubleValue())) {
                    return false;
                }
            }
            return roots == 1 && depth == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
