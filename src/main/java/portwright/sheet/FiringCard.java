package portwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import portwright.check.Severity;
import portwright.drawing.Ink;
import portwright.drawing.LineStyle;
import portwright.drawing.Signs;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;

/** One page to stand at the kiln with: steps, plate at full size, lighting, shutting down, three emergencies, record; on its back more rows of the record. Where the steps are too many for that they get pages of their own. */
public final class FiringCard {
    private static final TextStyle CARE = new TextStyle(TextStyle.Face.SANS, 13, 3.0, Ink.INK, false);
    private static final TextStyle NEVER = new TextStyle(TextStyle.Face.SANS_BOLD, 13, 3.0, Ink.INK, false);

    /** Height of the heading over the design's own cautions, mm. */
    private static final double OWN_HEAD = 6;
    /** So much of a page is left to the record where cautions stand under it. */
    private static final double RECORD_SHARE = 0.4;

    /** Where the head ends, from the top, mm. */
    private static final double HEAD_END = 27.6;

    private static final String OVER = "Runs past the goal";

    private final CardData data;
    private final CardPaper c;

    private FiringCard(CardData data, CardPaper c) {
        this.data = data;
        this.c = c;
    }

    /**
     * The card as PDF; the same data give the same bytes.
     *
     * @throws SheetRefused when a stop forbids lighting or a rule against it was not checked, unless {@code despiteStops}
     */
    public static byte[] print(CardData data, Paper paper, ContentMark mark, boolean despiteStops) {
        boolean forbidden = data.stops() > 0 || !data.unproven().isEmpty();
        if (forbidden && !despiteStops) {
            String why = data.stops() > 0
                    ? data.stops() + (data.stops() == 1 ? " stop forbids" : " stops forbid") + " lighting."
                    : "not proven that the kiln may be lit: " + String.join(", ", data.unproven()) + " not checked.";
            throw new SheetRefused("No card: " + why
                    + " Mend or complete the design, or add --despite-stops for a struck-through card.");
        }
        try (PdfFile file = new PdfFile("Firing card: " + data.title(), mark)) {
            Fronts fronts = fronts(data, paper, file);
            for (CardPaper p : fronts.pages()) {
                strike(data, paper, p, forbidden);
                file.add(p.page);
            }
            for (Page page : back(data, paper, file, forbidden, fronts)) {
                file.add(page);
            }
            return file.bytes();
        }
    }

    /** The first page of the card for the screen; struck through where it would not print. */
    public static PagePicture picture(CardData data, Paper paper, ContentMark mark) {
        try (PdfFile file = new PdfFile(data.title(), mark)) {
            CardPaper front = fronts(data, paper, file).pages().get(0);
            strike(data, paper, front, data.stops() > 0 || !data.unproven().isEmpty());
            return front.page.picture();
        }
    }

    /**
     * The pages before the record.
     *
     * @param cautions whether they hold the cautions of the common list too; else those go to the back
     * @param own the same of the design's own
     */
    private record Fronts(List<CardPaper> pages, boolean cautions, boolean own) {}

    /** One page; where the steps are too many for it, they get pages of their own before the rest. */
    private static Fronts fronts(CardData data, Paper paper, PdfFile file) {
        FiringCard one = head(data, paper, file);
        CardSteps steps = new CardSteps(one.c, data.steps());
        steps.draw(HEAD_END, Double.POSITIVE_INFINITY, 0);
        double y = one.emergencies(one.middle(steps.end() + 0.5));
        if (y <= one.c.bottom()) {
            return new Fronts(List.of(one.c), one.rest(y, false), false);
        }
        List<CardPaper> pages = new ArrayList<>();
        boolean own = false;
        for (int from = 0; from < data.steps().size(); ) {
            FiringCard page = head(data, paper, file);
            CardSteps some = new CardSteps(page.c, data.steps());
            from = some.draw(HEAD_END, page.c.bottom(), from);
            own = from == data.steps().size() && some.end() + 1 + page.ownHeight() <= page.c.bottom();
            if (own) {
                page.own(some.end() + 1);
            }
            page.c.foot(
                    from < data.steps().size()
                            ? "More steps on the next page."
                            : "Lighting, damper plate and cautions on the next page.");
            pages.add(page.c);
        }
        FiringCard last = head(data, paper, file);
        boolean cautions = last.rest(last.emergencies(last.middle(HEAD_END + 0.5)), own);
        pages.add(last.c);
        return new Fronts(List.copyOf(pages), cautions, own);
    }

    private static FiringCard head(CardData data, Paper paper, PdfFile file) {
        CardPaper c = new CardPaper(paper, file.fonts());
        c.title("Firing card: " + data.title());
        c.words(
                Words.fit(c.pen, data.fire() + " · content " + data.mark(), c.width(), CardPaper.TEXT),
                c.left,
                25.4,
                CardPaper.TEXT);
        c.rule(HEAD_END, LineStyle.CHAMBER_WALL);
        return new FiringCard(data, c);
    }

    /** The record with the cautions under it; where they would leave it too little, the cautions get the page before it. */
    private static List<Page> back(CardData data, Paper paper, PdfFile file, boolean forbidden, Fronts fronts) {
        FiringCard card = new FiringCard(data, new CardPaper(paper, file.fonts()));
        double own = fronts.own() ? 0 : card.ownHeight();
        double room = own + (fronts.cautions() ? 0 : card.cautionsHeight());
        boolean apart = room > (1 - RECORD_SHARE) * (card.c.bottom() - HEAD_END);
        FiringCard holder = apart ? head(data, paper, file) : card;
        double top = apart ? HEAD_END + 1 : card.c.bottom() - room;
        new CardRecord(card.c, data).wholePage(apart ? 0 : room);
        if (!fronts.own()) {
            holder.own(top);
        }
        if (!fronts.cautions()) {
            holder.cautions(top + own);
        }
        List<Page> pages = new ArrayList<>();
        for (FiringCard f : apart ? List.of(holder, card) : List.of(card)) {
            strike(data, paper, f.c, forbidden);
            pages.add(f.c.page);
        }
        return pages;
    }

    private static void strike(CardData data, Paper paper, CardPaper c, boolean forbidden) {
        if (forbidden) {
            Strike.through(
                    c.pen,
                    new Frame(paper).inside(),
                    data.stops() > 0 ? Strike.stops(data.stops(), "DO NOT LIGHT") : "NOT CHECKED: DO NOT LIGHT");
        }
    }

    /** Cautions and record below the lists; answers whether the cautions found room. */
    private boolean rest(double top, boolean ownTold) {
        double y = top;
        boolean all = y + cautionsHeight() <= c.bottom() + 1e-6;
        y = all ? cautions(y) : y;
        new CardRecord(c, data).below(y, all);
        c.foot(
                all
                        ? "Local codes and licensed gas and electrical practice come before this card. Print at 100 %."
                                + (ownTold || data.own().isEmpty() ? "" : " More cautions on the back.")
                        : "Local codes and licensed practice come first. Cautions are on the back: read them before lighting. Print at 100 %.");
        return all;
    }

    /** What {@link #cautions} takes, mm. */
    private double cautionsHeight() {
        double third = (c.right - c.left) / 3;
        double sum = 0;
        for (int i = 0; i < data.cautions().size(); i += 3) {
            sum += data.cautions().subList(i, Math.min(i + 3, data.cautions().size())).stream()
                    .mapToDouble(k -> Words.height(c.pen, k.words(), third - 5.6, k.stop() ? NEVER : CARE))
                    .max()
                    .orElse(0);
        }
        return sum == 0 ? 0 : sum + 2;
    }

    /** What {@link #own} takes, mm. */
    private double ownHeight() {
        return data.own().isEmpty()
                ? 0
                : Math.max(height(0, half()), height(half(), data.own().size())) + OWN_HEAD + 2;
    }

    private double columnWidth() {
        return (c.right - c.left) / 2 - 3;
    }

    private double height(int from, int to) {
        return data.own().subList(from, to).stream()
                .mapToDouble(o -> Words.height(c.pen, o.words(), columnWidth() - 4.6, CARE) + 0.6)
                .sum();
    }

    /** How many of the own cautions stand in the first of two columns, so that the taller column is as low as can be. */
    private int half() {
        int all = data.own().size();
        return IntStream.rangeClosed(0, all)
                .boxed()
                .min(Comparator.comparingDouble(i -> Math.max(height(0, i), height(i, all))))
                .orElse(0);
    }

    /** The design's own cautions, with what to do, in two columns. */
    private void own(double top) {
        if (data.own().isEmpty()) {
            return;
        }
        c.words("Cautions of this kiln for the firing", c.left, top + 4.4, CardPaper.HEADING);
        int half = half();
        double y = top + OWN_HEAD;
        for (int i = 0; i < data.own().size(); i++) {
            double x = i < half ? c.left : c.left + columnWidth() + 6;
            y = i == half ? top + OWN_HEAD : y;
            Signs.severity(c.pen, Severity.CAUTION, c.at(x + 1.9, y + 1.9), 3.2);
            y = c.flow(data.own().get(i).words(), x + 4.6, y, columnWidth() - 4.6, CARE) + 0.6;
        }
    }

    private double middle(double top) {
        double w = c.right - c.left;
        CardPlate drawing = new CardPlate(c, data.plate());
        double split = c.left + Math.max(w * 0.463, drawing.needs());
        double x = split + 4;
        double y = list("Lighting", data.lighting(), x, c.right - x, top + 5.5);
        y = list(data.shutHeading(), data.shuttingDown(), x, c.right - x, y + 5.6);
        double p = drawing.draw(top + 5.5, split - 4);
        if (p <= y) {
            p = list(OVER, data.runsOver(), c.left, split - 4 - c.left, p + 5.6);
        } else {
            y = list(OVER, data.runsOver(), x, c.right - x, y + 5.6);
        }
        double end = Math.max(y, p) + 2;
        c.pen.line(c.at(split, top + 1), c.at(split, end - 1), LineStyle.BOX);
        c.rule(end, LineStyle.CHAMBER_WALL);
        return end;
    }

    private double list(String heading, List<String> items, double x, double w, double top) {
        c.words(heading, x, top, CardPaper.HEADING);
        return numbered(items, x, w, top + 1.6);
    }

    private double numbered(List<String> items, double x, double w, double top) {
        double y = top;
        for (int i = 0; i < items.size(); i++) {
            c.words(String.valueOf(i + 1), x, y + CardPaper.TEXT.mm(), CardPaper.NUMBER);
            y = c.flow(items.get(i), x + 4.6, y, w - 4.6, CardPaper.TEXT) + 0.2;
        }
        return y;
    }

    private double emergencies(double top) {
        double w = c.right - c.left;
        List<String> heads = List.of("Temperature falls", "Flame goes out", "The alarm sounds");
        List<List<String>> texts = List.of(data.temperatureFalls(), data.flameOut(), data.alarm());
        double third = w / 3;
        double end = top;
        for (int i = 0; i < 3; i++) {
            double x = c.left + i * third;
            Signs.severity(
                    c.pen, i == 0 ? Severity.CAUTION : Severity.STOP, c.at(x + 4.2 + (i == 0 ? 0 : 1), top + 5.2), 7);
            c.words(heads.get(i), x + 10.5, top + 6.6, CardPaper.HEADING);
            end = Math.max(end, numbered(texts.get(i), x + 1.5, third - 4, top + 9.4));
        }
        for (int i = 1; i < 3; i++) {
            c.pen.line(c.at(c.left + i * third - 1.5, top + 2), c.at(c.left + i * third - 1.5, end), LineStyle.BOX);
        }
        c.rule(end + 1, LineStyle.CHAMBER_WALL);
        return end + 1;
    }

    /** Short cautions in three columns, stops first. */
    private double cautions(double top) {
        if (data.cautions().isEmpty()) {
            return top;
        }
        double third = (c.right - c.left) / 3;
        double y = top + 1.4;
        for (int i = 0; i < data.cautions().size(); i += 3) {
            double end = y;
            for (int k = i; k < Math.min(i + 3, data.cautions().size()); k++) {
                CardData.Caution said = data.cautions().get(k);
                double x = c.left + (k - i) * third;
                Signs.severity(c.pen, said.stop() ? Severity.STOP : Severity.CAUTION, c.at(x + 1.9, y + 1.9), 3.2);
                end = Math.max(end, c.flow(said.words(), x + 4.6, y, third - 5.6, said.stop() ? NEVER : CARE));
            }
            y = end;
        }
        c.rule(y + 0.6, LineStyle.CHAMBER_WALL);
        return y + 0.6;
    }
}
