package portwright.app.step;

import java.util.List;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.scene.transform.Translate;
import javafx.stage.Window;
import portwright.app.paint.ShapePen;
import portwright.sheet.PagePicture;

/** Prints pages through the system's dialog at true size: lines as lines, one unit a point, nothing scaled. */
final class TruePrint {
    private static final double POINT_MM = 25.4 / 72;
    private static final double SAME_MM = 1;

    /** Why nothing, or not everything, was printed. */
    record Refusal(String head, String words) {}

    private TruePrint() {}

    /** Asks and prints; null when all pages went to the printer or the user called it off. */
    static Refusal print(Window owner, String title, portwright.sheet.Paper want, List<PagePicture> pages) {
        PrinterJob job = Printer.getDefaultPrinter() == null ? null : PrinterJob.createPrinterJob();
        if (job == null) {
            return new Refusal("No printer is set up here", "Save the PDF and print it at 100 % from another machine.");
        }
        Paper paper = job.getPrinter().getPrinterAttributes().getSupportedPapers().stream()
                .filter(x -> same(x, want))
                .findFirst()
                .orElse(null);
        if (paper == null) {
            job.cancelJob();
            return new Refusal("The printer has no " + want.words(), "Choose a paper of the printer, or save the PDF.");
        }
        job.getJobSettings()
                .setPageLayout(job.getPrinter()
                        .createPageLayout(paper, PageOrientation.PORTRAIT, Printer.MarginType.HARDWARE_MINIMUM));
        job.getJobSettings().setJobName(title);
        if (!job.showPrintDialog(owner)) {
            return null;
        }
        PageLayout used = job.getJobSettings().getPageLayout();
        if (!same(used.getPaper(), want) || used.getPageOrientation() != PageOrientation.PORTRAIT) {
            job.cancelJob();
            return new Refusal(
                    "Not printed: the printer was set to another paper",
                    "The sheets are laid out for " + want.words() + ", upright. Choose that, or another paper here.");
        }
        for (PagePicture page : pages) {
            Group g = ShapePen.of(page);
            g.getTransforms().add(new Translate(-used.getLeftMargin(), -used.getTopMargin()));
            if (!job.printPage(used, new Group(g))) {
                job.cancelJob();
                return new Refusal("The printer stopped", "Not every sheet was printed. Print again, or save the PDF.");
            }
        }
        job.endJob();
        return null;
    }

    private static boolean same(Paper p, portwright.sheet.Paper want) {
        return Math.abs(p.getWidth() * POINT_MM - want.widthMm()) < SAME_MM
                && Math.abs(p.getHeight() * POINT_MM - want.heightMm()) < SAME_MM;
    }
}
