package org.plumbrow.design.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.evidence.pdf.Typeface;

/** All sheets of a design as a PDF: one a page, 17 by 11 inches, with bookmarks. The same data give the same bytes. */
public final class Packet {

    private static final String PROGRAM = "Plumbrow";

    private Packet() {}

    /** @param sheets of these facts, in their order */
    public static byte[] of(DesignFacts facts, List<Sheet> sheets) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            describe(document, facts);
            Typeface plain = Typeface.of(document, "DejaVuSans.ttf");
            Typeface bold = Typeface.of(document, "DejaVuSans-Bold.ttf");
            PDDocumentOutline bookmarks = new PDDocumentOutline();
            for (Sheet sheet : sheets) {
                bookmarks.addLast(bookmark(sheet, page(document, sheet, plain, bold)));
            }
            document.getDocumentCatalog().setDocumentOutline(bookmarks);
            document.save(out);
            return out.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static PDPage page(PDDocument document, Sheet sheet, Typeface plain, Typeface bold) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) Frame.WIDTH, (float) Frame.HEIGHT));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            sheet.canvas().on(new Pdf(content, plain, bold));
        }
        return page;
    }

    private static PDOutlineItem bookmark(Sheet sheet, PDPage page) {
        PDPageFitDestination there = new PDPageFitDestination();
        there.setPage(page);
        PDOutlineItem bookmark = new PDOutlineItem();
        bookmark.setTitle(sheet.number() + " " + sheet.title());
        bookmark.setDestination(there);
        return bookmark;
    }

    private static void describe(PDDocument document, DesignFacts facts) {
        PDDocumentInformation about = document.getDocumentInformation();
        about.setTitle(title(facts));
        about.setSubject("Design packet, a planning aid: a licensed person must confirm it");
        about.setAuthor(facts.sheet().drawnBy());
        about.setCreator(PROGRAM);
        about.setCreationDate(GregorianCalendar.from(facts.sheet().date().atStartOfDay(ZoneOffset.UTC)));
        document.setDocumentId(number(facts));
        var catalog = document.getDocumentCatalog();
        catalog.setLanguage("en-US");
        catalog.setPageMode(PageMode.USE_OUTLINES);
        var viewer = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        viewer.setDisplayDocTitle(true);
        catalog.setViewerPreferences(viewer);
    }

    /** The same for the same design. */
    private static long number(DesignFacts facts) {
        String letter = facts.revision() == null ? "" : facts.revision();
        return facts.projectId().getLeastSignificantBits() ^ facts.version() ^ letter.hashCode();
    }

    private static String title(DesignFacts facts) {
        String state = facts.revision() == null ? "draft" : "revision " + facts.revision();
        return "%s %s, design packet, %s"
                .formatted(facts.sheet().projectNumber(), facts.sheet().projectName(), state);
    }
}
