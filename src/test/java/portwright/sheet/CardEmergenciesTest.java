package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.rules.RuleBook;
import portwright.data.Emergency;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.review.Review;

/** What the card says when the flame goes out or the alarm sounds, and of an alarm that the design has not. */
class CardEmergenciesTest {
    private static CardData card(DesignText d) {
        Review review = Review.of(d.read().design());
        return CardBuilder.of(new RuleBook(LimitTable.load()).check(review), review.design(), CardForecast.of(review));
    }

    private static DesignText kiln() {
        return Starters.find("decagon-23").orElseThrow();
    }

    /** Nobody relights before the cause is known; common practice, no source. */
    @Test
    void theCauseOfALostFlameIsLookedForBeforeItIsLitAgain() {
        List<String> told = card(kiln()).flameOut();
        assertThat(told).hasSize(4);
        assertThat(told.get(2)).contains("wind", "gas used up", "frost", "hose");
        assertThat(told.get(3)).startsWith("Relight after");
    }

    /** Carbon monoxide is felt as illness before a house alarm sounds: see the effects in co_effects.csv. */
    @Test
    void whoFeelsIllGoesOutAndHelpIsCalled() {
        for (String place : List.of("open-shed", "studio")) {
            assertThat(card(kiln().setText("room.place", place)).alarm().get(0))
                    .as(place)
                    .contains("also at 100 ppm", "Ill:", "call for help");
        }
    }

    /** People first, then the gas where it is reached safely, in one order on page, card and window: fire-service practice (common practice, no source). */
    @Test
    void peopleLeaveBeforeTheGasIsShut() throws IOException {
        String page = Files.readString(Path.of("SAFETY.md"));
        List<Emergency> all = Emergency.all();
        int from = page.indexOf("## " + Emergency.HEADING + "\n");
        assertThat(from).isPositive();
        String part = page.substring(from, page.indexOf("\n## ", from + 3));
        assertThat(part.lines().filter(l -> l.matches("\\d+\\. .*")).map(l -> l.replaceFirst("\\d+\\. ", "")))
                .containsExactlyElementsOf(all.stream().map(Emergency::words).toList());
        for (boolean open : List.of(true, false)) {
            assertThat(String.join(" ", Emergency.alarm(open)))
                    .containsSubsequence("Everybody", "call for help", "If safe", "ylinder", "Back");
            List<String> told = card(kiln().setText("room.place", open ? "open-shed" : "studio"))
                    .alarm();
            assertThat(told).containsSubsequence(Emergency.alarm(open));
        }
        assertThat(String.join(
                        " ",
                        all.stream()
                                .filter(e -> e.what().equals("alarm"))
                                .map(Emergency::words)
                                .toList()))
                .containsSubsequence("everybody out", "call for help", "shut the cylinder", "reached safely", "20 ppm");
    }

    @Test
    void frontAndBackAgreeOnTheAlarm() {
        DesignText outdoors = kiln().setText("room.place", "outdoors").setText("room.ceiling", "none");
        CardData none = card(outdoors.remove("room.coAlarm"));
        assertThat(none.lighting().toString()).contains("CO alarm on (none: carry a meter)");
        assertThat(none.own())
                .anyMatch(o -> o.name().startsWith("No CO alarm") && o.cure().startsWith("Carry"));
        CardData shed = card(kiln().set("room.coAlarm", "false"));
        assertThat(shed.lighting().toString()).contains("CO alarm on (none yet: fit one)");
        assertThat(shed.stops()).isPositive();
        CardData has = card(kiln());
        assertThat(has.lighting().toString()).contains("CO alarm on,");
        assertThat(has.own()).noneMatch(o -> o.name().startsWith("No CO alarm"));
    }
}
