package portwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text reads at 4.5 : 1, lines that mean something at 3 : 1, after the contrast formula of WCAG 2 (from memory). */
class StyleContrastTest {
    private static final Pattern COLOUR = Pattern.compile("(-[a-z-]+): (#[0-9A-Fa-f]{6});");

    @ParameterizedTest
    @ValueSource(strings = {"light.css", "dark.css"})
    @Tag("regression")
    void everyPairReads(String sheet) throws IOException {
        Map<String, Double> lum = new HashMap<>();
        String css = new String(
                getClass().getResourceAsStream("/portwright/app/" + sheet).readAllBytes(), StandardCharsets.UTF_8);
        Matcher m = COLOUR.matcher(css);
        while (m.find()) {
            lum.put(m.group(1), luminance(m.group(2)));
        }
        String slip = "-color-bg-default";
        String bench = "-color-bg-inset";
        for (String text : new String[] {
            "-color-fg-default",
            "-color-fg-muted",
            "-color-danger-emphasis",
            "-color-warning-emphasis",
            "-color-success-emphasis"
        }) {
            assertThat(contrast(lum, text, slip)).as(text + " on slip").isGreaterThan(4.5);
            assertThat(contrast(lum, text, bench)).as(text + " on bench").isGreaterThan(4.5);
        }
        for (String text : new String[] {"-color-accent-emphasis", "-pw-umber", "-pw-ember"}) {
            assertThat(contrast(lum, text, slip)).as(text + " on slip").isGreaterThan(4.5);
        }
        assertThat(contrast(lum, "-pw-boxink", "-pw-boxwood")).isGreaterThan(4.5);
        assertThat(contrast(lum, "-color-border-default", slip)).isGreaterThan(3);
        assertThat(contrast(lum, "-color-border-default", bench)).isGreaterThan(3);
        assertThat(contrast(lum, "-color-danger-emphasis", "-color-danger-muted"))
                .isGreaterThan(4.5);
    }

    private static double contrast(Map<String, Double> lum, String a, String b) {
        double x = lum.get(a);
        double y = lum.get(b);
        return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
    }

    private static double luminance(String hex) {
        int v = Integer.parseInt(hex.substring(1), 16);
        return 0.2126 * channel(v >> 16 & 255) + 0.7152 * channel(v >> 8 & 255) + 0.0722 * channel(v & 255);
    }

    private static double channel(int c) {
        double s = c / 255.0;
        return s <= 0.03928 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }
}
