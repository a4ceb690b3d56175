package portwright.sheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import portwright.drawing.TextStyle;

/** A PDF in the making. The same pages and mark give the same bytes: id, dates and producer are fixed. */
final class PdfFile implements AutoCloseable {
    private final PDDocument document = new PDDocument();
    private final Fonts fonts = new Fonts(document);
    private final PDResources resources = new PDResources();

    PdfFile(String title, ContentMark mark) {
        document.setVersion(1.6f);
        document.setDocumentId(mark.number());
        PDDocumentInformation info = document.getDocumentInformation();
        info.setTitle(title);
        info.setSubject("content " + mark.words());
        info.setProducer("Portwright");
        info.setCreator("Portwright");
        Calendar fixed = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        fixed.clear();
        fixed.set(2026, Calendar.JANUARY, 1);
        info.setCreationDate(fixed);
        info.setModificationDate(fixed);
        PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
        viewer.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        document.getDocumentCatalog().setViewerPreferences(viewer);
        for (TextStyle.Face face : TextStyle.Face.values()) {
            resources.put(COSName.getPDFName(face.name()), fonts.font(face));
        }
    }

    Fonts fonts() {
        return fonts;
    }

    void add(Page page) {
        PDPage p = new PDPage(new PDRectangle(
                (float) (page.widthMm() * Page.POINTS_PER_MM), (float) (page.heightMm() * Page.POINTS_PER_MM)));
        p.setResources(resources);
        try {
            p.setContents(new PDStream(
                    document,
                    new ByteArrayInputStream(page.content().getBytes(StandardCharsets.ISO_8859_1)),
                    COSName.FLATE_DECODE));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        document.addPage(p);
    }

    byte[] bytes() {
        try {
            for (TextStyle.Face face : TextStyle.Face.values()) {
                fonts.font(face).subset();
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
