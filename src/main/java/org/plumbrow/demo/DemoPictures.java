package org.plumbrow.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * Photos and papers of the demo: drawn here, each marked as made up. Letters are drawn from dots, as a machine without
 * fonts has none.
 */
final class DemoPictures {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 480;
    /** Rows of five dots, top to bottom; only the letters that are needed. */
    private static final Map<Character, String> DOTS = Map.ofEntries(
            Map.entry('A', "01110 10001 10001 11111 10001 10001 10001"),
                    Map.entry('B', "11110 10001 11110 10001 10001 10001 11110"),
            Map.entry('C', "01111 10000 10000 10000 10000 10000 01111"),
                    Map.entry('D', "11110 10001 10001 10001 10001 10001 11110"),
            Map.entry('E', "11111 10000 11110 10000 10000 10000 11111"),
                    Map.entry('F', "11111 10000 11110 10000 10000 10000 10000"),
            Map.entry('G', "01111 10000 10000 10011 10001 10001 01111"),
                    Map.entry('H', "10001 10001 11111 10001 10001 10001 10001"),
            Map.entry('I', "01110 00100 00100 00100 00100 00100 01110"),
                    Map.entry('J', "00111 00010 00010 00010 10010 10010 01100"),
            Map.entry('K', "10001 10010 11100 10010 10001 10001 10001"),
                    Map.entry('L', "10000 10000 10000 10000 10000 10000 11111"),
            Map.entry('M', "10001 11011 10101 10101 10001 10001 10001"),
                    Map.entry('N', "10001 11001 10101 10011 10001 10001 10001"),
            Map.entry('O', "01110 10001 10001 10001 10001 10001 01110"),
                    Map.entry('P', "11110 10001 10001 11110 10000 10000 10000"),
            Map.entry('Q', "01110 10001 10001 10001 10101 10010 01101"),
                    Map.entry('R', "11110 10001 10001 11110 10100 10010 10001"),
            Map.entry('S', "01111 10000 01110 00001 00001 00001 11110"),
                    Map.entry('T', "11111 00100 00100 00100 00100 00100 00100"),
            Map.entry('U', "10001 10001 10001 10001 10001 10001 01110"),
                    Map.entry('V', "10001 10001 10001 10001 10001 01010 00100"),
            Map.entry('W', "10001 10001 10001 10101 10101 11011 10001"),
                    Map.entry('X', "10001 01010 00100 00100 01010 10001 10001"),
            Map.entry('Y', "10001 10001 01010 00100 00100 00100 00100"),
                    Map.entry('Z', "11111 00001 00010 00100 01000 10000 11111"));

    /** A few dozen subjects; each is drawn once. */
    private static final Map<String, byte[]> DRAWN = new java.util.concurrent.ConcurrentHashMap<>();

    private DemoPictures() {}

    /** A hill, a field and posts under a sky, differing by the subject, with the subject and "MADE UP" written on it. */
    static byte[] photo(String subject) {
        return DRAWN.computeIfAbsent(subject, DemoPictures::draw);
    }

    private static byte[] draw(String subject) {
        BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        landscape(pen, new Random(subject.hashCode()));
        pen.setColor(new Color(26, 32, 40));
        pen.fillRect(0, HEIGHT - 92, WIDTH, 92);
        pen.setColor(Color.WHITE);
        write(pen, subject, 16, HEIGHT - 80, 4);
        write(pen, "MADE UP", 16, HEIGHT - 38, 4);
        pen.dispose();
        return jpeg(picture);
    }

    private static void landscape(Graphics2D pen, Random random) {
        pen.setColor(new Color(205, 220, 228));
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        Path2D hill = new Path2D.Double();
        hill.moveTo(0, 260);
        hill.curveTo(160, 120 + random.nextInt(120), 420, 140 + random.nextInt(140), WIDTH, 240);
        hill.lineTo(WIDTH, HEIGHT);
        hill.lineTo(0, HEIGHT);
        hill.closePath();
        pen.setColor(new Color(150, 165, 120 + random.nextInt(40)));
        pen.fill(hill);
        pen.setColor(new Color(120, 70 + random.nextInt(40), 60));
        int barn = 60 + random.nextInt(300);
        pen.fillRect(barn, 210, 150, 90);
        pen.fillPolygon(new int[] {barn - 10, barn + 75, barn + 160}, new int[] {212, 160, 212}, 3);
        pen.setColor(new Color(60, 64, 70));
        pen.setStroke(new BasicStroke(6));
        for (int post = 0; post < 8; post++) {
            int x = 40 + post * 75 + random.nextInt(8);
            pen.drawLine(x, 330, x, 380);
        }
        pen.setColor(new Color(40, 70, 95));
        pen.fillPolygon(new int[] {30, 590, 610, 10}, new int[] {312, 312, 336, 336}, 4);
    }

    private static void write(Graphics2D pen, String words, int left, int top, int dot) {
        int x = left;
        for (char letter : words.toUpperCase(Locale.ROOT).toCharArray()) {
            String dots = DOTS.get(letter);
            if (dots != null) {
                String[] rows = dots.split(" ");
                for (int row = 0; row < rows.length; row++) {
                    for (int column = 0; column < 5; column++) {
                        if (rows[row].charAt(column) == '1') {
                            pen.fillRect(x + column * dot, top + row * dot, dot, dot);
                        }
                    }
                }
            }
            x += 6 * dot;
        }
    }

    private static byte[] jpeg(BufferedImage picture) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(picture, "jpg", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A PDF of one page with a line of text (ISO 32000-1, Helvetica as one of the fonts every reader has). */
    static byte[] paper(String title) {
        String text = "BT /F1 20 Tf 60 740 Td (" + title.replaceAll("[()\\\\]", "")
                + ") Tj 0 -36 Td (Made up for the demo branch.) Tj ET";
        StringBuilder pdf = new StringBuilder("%PDF-1.4\n");
        int[] offsets = new int[6];
        String[] objects = {
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
            "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 612 792] /Contents 4 0 R /Resources << /Font << /F1 5 0 R >> >> >>",
            "<< /Length " + text.length() + " >>\nstream\n" + text + "\nendstream",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>"
        };
        for (int i = 0; i < objects.length; i++) {
            offsets[i + 1] = pdf.length();
            pdf.append(i + 1).append(" 0 obj\n").append(objects[i]).append("\nendobj\n");
        }
        int table = pdf.length();
        pdf.append("xref\n0 6\n0000000000 65535 f \n");
        for (int i = 1; i <= 5; i++) {
            pdf.append("%010d 00000 n \n".formatted(offsets[i]));
        }
        pdf.append("trailer\n<< /Size 6 /Root 1 0 R >>\nstartxref\n")
                .append(table)
                .append("\n%%EOF\n");
        return pdf.toString().getBytes(StandardCharsets.US_ASCII);
    }
}
