package org.plumbrow.calc.energy.weather;

import java.util.ArrayList;
import java.util.List;

/**
 * A file's text as lines, whatever ends them (LF, CRLF, a lone CR), without a byte-order mark and without blank lines
 * at the end.
 */
record TextLines(List<String> lines) {

    private static final int MOST_CHARACTERS = 10_000_000;
    private static final int MOST_IN_A_LINE = 16_384;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    static TextLines of(String text) {
        if (text.length() > MOST_CHARACTERS) {
            throw new Unreadable(0, "The file is larger than 10 MB.", "Bring one year of hours, about 2 MB.");
        }
        if (text.indexOf('\0') >= 0) {
            throw new Unreadable(0, "The file holds bytes that are not text.", "Bring the unpacked weather file.");
        }
        String plain = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        List<String> lines = new ArrayList<>(plain.lines().toList());
        while (!lines.isEmpty() && lines.get(lines.size() - 1).isBlank()) {
            lines.remove(lines.size() - 1);
        }
        for (int at = 0; at < lines.size(); at++) {
            if (lines.get(at).length() > MOST_IN_A_LINE) {
                throw new Unreadable(at + 1, "The line is longer than 16,384 characters.", "Bring a weather file.");
            }
        }
        return new TextLines(lines);
    }

    int count() {
        return lines.size();
    }

    /** @param number from 1; empty beyond the end */
    String line(int number) {
        return number <= lines.size() ? lines.get(number - 1) : "";
    }
}
