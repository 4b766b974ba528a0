package org.plumbrow.evidence.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A font that goes into a PDF with the letters that are used; what it has no letter for is written as a visible sign. */
public final class Typeface {

    /** Stands for a letter that the font does not have. */
    public static final int REPLACEMENT = 0xFFFD;

    private static final double THOUSANDTHS = 1000;

    private final PDFont font;
    private final CmapLookup letters;

    private Typeface(PDFont font, CmapLookup letters) {
        this.font = font;
        this.letters = letters;
    }

    /** @param file below {@code fonts/} */
    public static Typeface of(PDDocument document, String file) {
        String path = "/fonts/" + file;
        try (InputStream in = Objects.requireNonNull(Typeface.class.getResourceAsStream(path), path)) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            return new Typeface(PDType0Font.load(document, font, true), font.getUnicodeCmapLookup());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    public PDFont font() {
        return font;
    }

    /** The same words with a sign for each letter that cannot be written, and a space for what is none. */
    public String writable(String words) {
        StringBuilder writable = new StringBuilder();
        words.codePoints().map(this::writable).forEach(writable::appendCodePoint);
        return writable.toString();
    }

    private int writable(int letter) {
        if (Character.isWhitespace(letter) || Character.isISOControl(letter)) {
            return ' ';
        }
        return letters.getGlyphId(letter) == 0 ? REPLACEMENT : letter;
    }

    /** Of words that can be written, in points. */
    public double width(String writable, double size) throws IOException {
        return font.getStringWidth(writable) / THOUSANDTHS * size;
    }
}
