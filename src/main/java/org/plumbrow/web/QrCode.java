package org.plumbrow.web;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.util.Map;

/**
 * A square code that a phone's camera reads, as one SVG path; shown by the fragment {@code web/fragments :: qr}.
 *
 * @param side modules a side, the four quiet ones all round included
 * @param path dark modules, for a view box of {@code 0 0 side side}
 */
public record QrCode(int side, String path) {

    private static final int QUIET = 4;

    public static QrCode of(String text) {
        BitMatrix modules = encode(text);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                if (modules.get(x, y)) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        return new QrCode(modules.getWidth(), path.toString());
    }

    private static BitMatrix encode(String text) {
        try {
            return new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, Map.of(EncodeHintType.MARGIN, QUIET));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("too long for a square code: " + text.length() + " characters", tooLong);
        }
    }
}
