package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.check.Severity;
import portwright.drawing.LineStyle;
import portwright.drawing.Signs;
import portwright.drawing.TextStyle;
import portwright.drawing.Words;

/** One page to stand at the kiln with: steps, plate at full size, lighting, shutting down, three emergencies, record; on its back more rows of the record. Where the steps are too many for that they get pages of their own. */
public final class FiringCard {
    /** So much of a page is left to the record where cautions stand under it. */
    private static final double RECORD_SHARE = 0.4;

    /** Where the head ends, from the top, mm. */
    private static final double HEAD_END = 27.6;

    private static final String OVER = "Runs past the goal";

    /** Largest type of the emergencies, mm: 12 pt, read at arm's length. */
    private static final double URGENT_MM = 4.2;

    private static final double URGENT_STEP_MM = 0.1;
    /** Where the lists of the emergencies begin under the top, and what lies under them, mm. */
    private static final double URGENT_HEAD = 9.4;

    private static final double URGENT_FOOT = 1;
    private static final double ITEM_GAP = 0.2;

    /** How dense a card may be set: 0 as usual, at the most 2. */
    private static final int TIGHTEST = 2;

    private final CardData data;
    private final CardPaper c;
    private final int tight;

    private FiringCard(CardData data, CardPaper c, int tight) {
        this.data = data;
        this.c = c;
        this.tight = tight;
    }

    private TextStyle text() {
        return tight < TIGHTEST ? CardPaper.TEXT : CardPaper.TEXT.size(13, 2.9);
    }

    /**
     * A finished card.
     *
     * @param remarks what whoever prints it should know: signs substituted
     */
    public record Print(byte[] pdf, List<String> remarks) {}

    /**
     * The card as PDF; the same data give the same bytes.
     *
     * @throws SheetRefused when a stop forbids lighting or a rule against it was not checked, unless {@code despiteStops}
     */
    public static Print print(CardData data, Paper paper, ContentMark mark, boolean despiteStops) {
        boolean forbidden = data.stops() > 0 || !data.unproven().isEmpty();
        if (forbidden && !despiteStops) {
            String why = data.stops() > 0
                    ? data.stops() + (data.stops() == 1 ? " stop forbids" : " stops forbid") + " lighting."
                    : "not proven that the kiln may be lit. Not checked: " + String.join("; ", data.unproven()) + ".";
            throw new SheetRefused(
                    "No card: " + why + " Mend or complete the design",
                    ", or add --despite-stops for a struck-through card",
                    ".");
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
            return new Print(file.bytes(), file.fonts().remarks());
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
     * @param remarks the same of the remarks on the steps
     */
    private record Fronts(List<CardPaper> pages, boolean cautions, boolean own, boolean remarks) {}

    /** One page, set denser or without its remarks if need be; where the steps are too many even so, they get pages of their own before the rest. */
    private static Fronts fronts(CardData data, Paper paper, PdfFile file) {
        for (int tight = 0; tight <= TIGHTEST; tight++) {
            for (boolean remarks : tight == 0 ? List.of(true) : List.of(true, false)) {
                FiringCard one = head(data, paper, file, tight);
                CardSteps steps = one.steps(remarks);
                steps.draw(HEAD_END, Double.POSITIVE_INFINITY, 0);
                double y = one.emergencies(one.middle(steps.end() + 0.5));
                if (y <= one.c.bottom()) {
                    return new Fronts(List.of(one.c), one.rest(y, false), false, remarks);
                }
            }
        }
        List<CardPaper> pages = new ArrayList<>();
        boolean own = false;
        for (int from = 0; from < data.steps().size(); ) {
            FiringCard page = head(data, paper, file, 0);
            CardSteps some = page.steps(true);
            from = some.draw(HEAD_END, page.c.bottom(), from);
            CardCautions told = new CardCautions(page.c, data, false);
            own = from == data.steps().size() && some.end() + 1 + told.ownHeight() <= page.c.bottom();
            if (own) {
                told.own(some.end() + 1);
            }
            page.c.foot(
                    from < data.steps().size()
                            ? "More steps on the next page."
                            : data.gas() == CardData.Gas.NONE
                                    ? "Switching on and cautions on the next page."
                                    : "Lighting, damper plate and cautions on the next page.");
            pages.add(page.c);
        }
        FiringCard last = head(data, paper, file, 0);
        boolean cautions = last.rest(last.emergencies(last.middle(HEAD_END + 0.5)), own);
        pages.add(last.c);
        return new Fronts(List.copyOf(pages), cautions, own, true);
    }

    private CardSteps steps(boolean remarks) {
        List<CardData.Step> told =
                data.steps().stream().filter(s -> remarks || !s.remark()).toList();
        return new CardSteps(c, told, data.gas() != CardData.Gas.NONE, tight);
    }

    private static FiringCard head(CardData data, Paper paper, PdfFile file, int tight) {
        CardPaper c = new CardPaper(paper, file.fonts());
        c.title("Firing card: " + data.title());
        c.line(data.fire() + " · content " + data.mark(), 25.4, CardPaper.TEXT);
        c.rule(HEAD_END, LineStyle.CHAMBER_WALL);
        return new FiringCard(data, c, tight);
    }

    /** The record with the cautions under it; where they would leave it too little, the cautions get the page before it. */
    private static List<Page> back(CardData data, Paper paper, PdfFile file, boolean forbidden, Fronts fronts) {
        FiringCard card = new FiringCard(data, new CardPaper(paper, file.fonts()), 0);
        CardCautions told = new CardCautions(card.c, data, !fronts.remarks());
        double own = fronts.own() ? 0 : told.ownHeight();
        double room = own + (fronts.cautions() ? 0 : told.commonHeight());
        boolean apart = room > (1 - RECORD_SHARE) * (card.c.bottom() - HEAD_END);
        FiringCard holder = apart ? head(data, paper, file, 0) : card;
        CardCautions held = new CardCautions(holder.c, data, !fronts.remarks());
        double top = apart ? HEAD_END + 1 : card.c.bottom() - room;
        new CardRecord(card.c, data).wholePage(apart ? 0 : room);
        if (!fronts.own()) {
            held.own(top);
        }
        if (!fronts.cautions()) {
            held.common(top + own);
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
        CardCautions told = new CardCautions(c, data, false);
        boolean all = y + told.commonHeight() <= c.bottom() + 1e-6;
        y = all ? told.common(y) : y;
        new CardRecord(c, data).below(y, all);
        c.foot(
                all
                        ? "Local codes and licensed "
                                + (data.gas() == CardData.Gas.NONE ? "" : "gas and ")
                                + "electrical practice come before this card. Print at 100 %."
                                + (ownTold ? "" : CardCautions.onBack(data))
                        : data.notChecked().isEmpty()
                                ? "Local codes and licensed practice come first. Cautions are on the back: read them before lighting. Print at 100 %."
                                : "Local codes and licensed practice come first. Cautions on the back: read before lighting. Not all was checked: see the back.");
        return all;
    }

    private double middle(double top) {
        double w = c.right - c.left;
        boolean gas = data.gas() != CardData.Gas.NONE;
        CardPlate drawing = new CardPlate(c, data.plate());
        double split = c.left + (gas ? Math.max(w * 0.463, drawing.needs()) : w / 2);
        double x = split + 4;
        if (!gas) {
            double on = list(data.lightHeading(), data.lighting(), c.left, split - 4 - c.left, top + 5.5);
            double off = list(data.shutHeading(), data.shuttingDown(), x, c.right - x, top + 5.5);
            return closeMiddle(split, top, Math.max(on, list(OVER, data.runsOver(), x, c.right - x, off + 5.6)) + 2);
        }
        double y = list(data.lightHeading(), data.lighting(), x, c.right - x, top + 5.5);
        y = list(data.shutHeading(), data.shuttingDown(), x, c.right - x, y + 5.6);
        double p = drawing.draw(top + 5.5, split - 4);
        if (p <= y) {
            p = list(OVER, data.runsOver(), c.left, split - 4 - c.left, p + 5.6);
        } else {
            y = list(OVER, data.runsOver(), x, c.right - x, y + 5.6);
        }
        return closeMiddle(split, top, Math.max(y, p) + 2);
    }

    private double closeMiddle(double split, double top, double end) {
        c.pen.line(c.at(split, top + 1), c.at(split, end - 1), LineStyle.BOX);
        c.rule(end, LineStyle.CHAMBER_WALL);
        return end;
    }

    private double list(String heading, List<String> items, double x, double w, double top) {
        c.words(heading, x, top, CardPaper.HEADING);
        return numbered(items, x, w, top + 1.6);
    }

    private double numbered(List<String> items, double x, double w, double top) {
        return numbered(items, x, w, top, text());
    }

    private double numbered(List<String> items, double x, double w, double top, TextStyle style) {
        double y = top;
        for (int i = 0; i < items.size(); i++) {
            c.words(
                    String.valueOf(i + 1),
                    x,
                    y + style.mm(),
                    CardPaper.NUMBER.size(style.px(), Math.max(style.mm(), CardPaper.NUMBER.mm())));
            y = c.flow(items.get(i), x + 4.6, y, w - 4.6, style) + ITEM_GAP;
        }
        return y;
    }

    /** The largest type in which a list keeps to a height, no smaller than the card's text, mm. */
    private TextStyle urgent(List<String> items, double w, double height) {
        double mm = URGENT_MM;
        while (mm > text().mm() && height(items, w - 4.6, text().size(text().px(), mm)) > height) {
            mm = Math.max(text().mm(), mm - URGENT_STEP_MM);
        }
        return text().size(text().px(), mm);
    }

    private double height(List<String> items, double w, TextStyle style) {
        return items.stream()
                .mapToDouble(t -> Words.height(c.pen, t, w, style) + ITEM_GAP)
                .sum();
    }

    private double emergencies(double top) {
        double w = c.right - c.left;
        List<String> heads = data.heads();
        List<List<String>> texts = List.of(data.temperatureFalls(), data.flameOut(), data.alarm());
        double third = w / 3;
        double least = texts.stream()
                .mapToDouble(t -> height(t, third - 8.6, text()))
                .max()
                .orElse(0);
        double common = new CardCautions(c, data, false).commonHeight();
        double spare = c.bottom() - top - URGENT_HEAD - URGENT_FOOT - least;
        double height = least + CardRecord.leaves(Math.max(0, spare - (spare >= common ? common : 0)));
        double end = top;
        for (int i = 0; i < 3; i++) {
            double x = c.left + i * third;
            Signs.severity(
                    c.pen, i == 0 ? Severity.CAUTION : Severity.STOP, c.at(x + 4.2 + (i == 0 ? 0 : 1), top + 5.2), 7);
            c.words(heads.get(i), x + 10.5, top + 6.6, c.fitted(heads.get(i), third - 13, CardPaper.HEADING));
            TextStyle style = urgent(texts.get(i), third - 4, height);
            end = Math.max(end, numbered(texts.get(i), x + 1.5, third - 4, top + URGENT_HEAD, style));
        }
        for (int i = 1; i < 3; i++) {
            c.pen.line(c.at(c.left + i * third - 1.5, top + 2), c.at(c.left + i * third - 1.5, end), LineStyle.BOX);
        }
        c.rule(end + URGENT_FOOT, LineStyle.CHAMBER_WALL);
        return end + URGENT_FOOT;
    }
}
