package org.plumbrow.evidence.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.GregorianCalendar;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** A paper of words, tables and photos on letter pages, written from top to bottom. Lengths in points. */
public final class PrintedPaper {

    private static final float MARGIN = 54;
    private static final float WIDTH = PDRectangle.LETTER.getWidth() - 2 * MARGIN;
    private static final float FOOT = 36;
    private static final double LEADING = 1.3;
    private static final float PLAIN_SIZE = 10;
    private static final float CELL_SIZE = 8.5f;
    private static final float TITLE_SIZE = 17;
    private static final float HEADING_SIZE = 12;
    private static final float GAP = 6;
    private static final float PHOTO_HEIGHT = 220;

    private final PDDocument document = new PDDocument();
    private final About about;
    private final Typeface plain = Typeface.of(document, "DejaVuSans.ttf");
    private final Typeface bold = Typeface.of(document, "DejaVuSans-Bold.ttf");
    private PDPageContentStream content;
    private float y;

    /**
     * What stands in the file about itself.
     *
     * @param number the same for the same paper
     */
    public record About(String title, String subject, String author, Instant date, long number) {}

    public PrintedPaper(About about) {
        this.about = about;
        var said = document.getDocumentInformation();
        said.setTitle(about.title);
        said.setSubject(about.subject);
        said.setAuthor(about.author);
        said.setCreator("Plumbrow");
        said.setCreationDate(GregorianCalendar.from(about.date.atZone(ZoneOffset.UTC)));
        document.setDocumentId(about.number);
        document.getDocumentCatalog().setLanguage("en-US");
        PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
        viewer.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(viewer);
        content = newPage();
        words(about.title, bold, TITLE_SIZE);
        y -= GAP;
    }

    private PDPageContentStream newPage() {
        try {
            PDPage page = new PDPage(PDRectangle.LETTER);
            document.addPage(page);
            y = PDRectangle.LETTER.getHeight() - MARGIN;
            return new PDPageContentStream(document, page);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    public PrintedPaper heading(String words) {
        y -= GAP;
        room(4 * PLAIN_SIZE + HEADING_SIZE);
        words(words, bold, HEADING_SIZE);
        return this;
    }

    public PrintedPaper line(String words) {
        words(words, plain, PLAIN_SIZE);
        y -= 2;
        return this;
    }

    public PrintedPaper strong(String words) {
        words(words, bold, PLAIN_SIZE);
        y -= 2;
        return this;
    }

    private void words(String words, Typeface face, float size) {
        for (String line : wrapped(face.writable(words), face, size, WIDTH)) {
            room((float) (size * LEADING));
            y -= (float) (size * LEADING);
            write(line, face, size, MARGIN, y);
        }
    }

    /**
     * @param shares of the width, one a column
     * @param rows cells in words, one a column
     */
    public PrintedPaper table(List<String> heads, double[] shares, List<List<String>> rows) {
        row(heads, shares, bold);
        rows.forEach(row -> row(row, shares, plain));
        y -= GAP;
        return this;
    }

    private void row(List<String> cells, double[] shares, Typeface face) {
        double sum = Arrays.stream(shares).sum();
        List<List<String>> lines = new ArrayList<>();
        int most = 1;
        for (int i = 0; i < cells.size(); i++) {
            double width = WIDTH * shares[i] / sum - GAP;
            lines.add(wrapped(face.writable(cells.get(i)), face, CELL_SIZE, width));
            most = Math.max(most, lines.get(i).size());
        }
        float leading = (float) (CELL_SIZE * LEADING);
        room(most * leading + 2);
        float x = MARGIN;
        for (int i = 0; i < cells.size(); i++) {
            for (int n = 0; n < lines.get(i).size(); n++) {
                write(lines.get(i).get(n), face, CELL_SIZE, x, y - (n + 1) * leading);
            }
            x += (float) (WIDTH * shares[i] / sum);
        }
        y -= most * leading + 2;
    }

    /** A photo that cannot be read is left out, with a line that says so. */
    public PrintedPaper photo(byte[] bytes, String words) {
        try {
            PDImageXObject image = PDImageXObject.createFromByteArray(document, bytes, "photo");
            float scale = Math.min(PHOTO_HEIGHT / image.getHeight(), WIDTH / image.getWidth());
            float height = image.getHeight() * scale;
            room(height + 2 * PLAIN_SIZE);
            y -= height;
            content.drawImage(image, MARGIN, y, image.getWidth() * scale, height);
            return line(words);
        } catch (IOException | IllegalArgumentException unreadable) {
            return line(words + " (this photo cannot be shown here)");
        }
    }

    private void room(float needed) {
        if (y - needed < MARGIN) {
            close(content);
            content = newPage();
        }
    }

    private static void close(PDPageContentStream content) {
        try {
            content.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void write(String words, Typeface face, float size, float x, float at) {
        write(content, words, face, size, x, at);
    }

    private static void write(PDPageContentStream content, String words, Typeface face, float size, float x, float at) {
        try {
            content.beginText();
            content.setFont(face.font(), size);
            content.newLineAtOffset(x, at);
            content.showText(words);
            content.endText();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A word that is wider than the line is broken where it ends. */
    private static List<String> wrapped(String words, Typeface face, float size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.strip().split(" +")) {
            String rest = word;
            while (!rest.isEmpty()) {
                String tried = line.isEmpty() ? rest : line + " " + rest;
                if (fits(tried, face, size, width)) {
                    line = new StringBuilder(tried);
                    rest = "";
                } else if (line.isEmpty()) {
                    int letters = letters(rest, face, size, width);
                    lines.add(rest.substring(0, letters));
                    rest = rest.substring(letters);
                } else {
                    lines.add(line.toString());
                    line = new StringBuilder();
                }
            }
        }
        if (!line.isEmpty() || lines.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    private static int letters(String word, Typeface face, float size, double width) {
        int letters = word.length();
        while (letters > 1 && !fits(word.substring(0, letters), face, size, width)) {
            letters = word.offsetByCodePoints(letters, -1);
        }
        return Math.max(letters, word.offsetByCodePoints(0, 1));
    }

    private static boolean fits(String words, Typeface face, float size, double width) {
        try {
            return face.width(words, size) <= width;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The paper, with its title and page on each page; nothing is written afterwards. */
    public byte[] bytes() {
        close(content);
        try (document;
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            int pages = document.getNumberOfPages();
            for (int i = 0; i < pages; i++) {
                foot(i, pages);
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void foot(int page, int pages) throws IOException {
        try (PDPageContentStream foot =
                new PDPageContentStream(document, document.getPage(page), AppendMode.APPEND, true, true)) {
            String words = "%s · page %d of %d".formatted(about.title, page + 1, pages);
            write(foot, plain.writable(words), plain, CELL_SIZE, MARGIN, FOOT);
        }
    }
}
