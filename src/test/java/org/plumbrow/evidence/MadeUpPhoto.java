package org.plumbrow.evidence;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** A JPEG as a camera writes it: lying on its side, with time and place in its notes (Exif 2.3, section 4.6). */
public final class MadeUpPhoto {

    private MadeUpPhoto() {}

    /** 400 x 300 with a red bar along its left edge. */
    public static byte[] plain() {
        return jpeg(400, 300);
    }

    public static byte[] jpeg(int width, int height) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, width / 10, height);
        pen.dispose();
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(picture, "jpg", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same with orientation 6 (turn a quarter to the right), taken 2027-03-01 10:31:00 at 41.5 N, 77.25 W. */
    public static byte[] lyingOnItsSide() {
        byte[] jpeg = plain();
        byte[] notes = exif();
        ByteBuffer out = ByteBuffer.allocate(jpeg.length + notes.length + 4);
        out.put(jpeg, 0, 2)
                .put((byte) 0xFF)
                .put((byte) 0xE1)
                .putShort((short) (notes.length + 2))
                .put(notes);
        out.put(jpeg, 2, jpeg.length - 2);
        return out.array();
    }

    private static byte[] exif() {
        ByteBuffer b = ByteBuffer.allocate(400).order(ByteOrder.BIG_ENDIAN);
        b.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        int tiff = b.position();
        b.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        b.putShort((short) 3);
        entry(b, 0x0112, 3, 1, 6 << 16);
        entry(b, 0x8769, 4, 1, 60);
        entry(b, 0x8825, 4, 1, 110);
        b.putInt(0);
        b.position(tiff + 60);
        b.putShort((short) 1);
        entry(b, 0x9003, 2, 20, 84);
        b.putInt(0);
        b.position(tiff + 84);
        b.put("2027:03:01 10:31:00\0".getBytes(StandardCharsets.US_ASCII));
        b.position(tiff + 110);
        b.putShort((short) 4);
        entry(b, 1, 2, 2, 'N' << 24);
        entry(b, 2, 5, 3, 180);
        entry(b, 3, 2, 2, 'W' << 24);
        entry(b, 4, 5, 3, 204);
        b.putInt(0);
        b.position(tiff + 180);
        for (int each : new int[] {41, 1, 30, 1, 0, 1, 77, 1, 15, 1, 0, 1}) {
            b.putInt(each);
        }
        byte[] notes = new byte[b.position()];
        b.rewind().get(notes);
        return notes;
    }

    private static void entry(ByteBuffer b, int tag, int type, int count, int value) {
        b.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }
}
