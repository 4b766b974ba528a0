package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How wide words are in DejaVu Sans, in thousandths of the size (measured from the font, rounded up). What is not in the
 * list counts as the widest, so that a label is never wider than thought.
 */
final class Letters {

    /** No letter on a sheet is smaller, points. */
    static final double LEAST = 8;

    /** From one line to the next, as a share of the size. */
    static final double LEADING = 1.28;

    private static final int[] PLAIN =
            widths("318 401 460 838 637 951 780 275 391 391 500 838 318 361 318 337 637 637 637 "
                    + "637 637 637 637 637 637 637 337 337 838 838 838 531 1000 685 687 699 771 632 576 775 752 295 295 656 558 863 749 "
                    + "788 604 788 695 635 611 732 685 989 686 611 686 391 337 391 838 500 500 613 635 550 635 616 353 635 634 278 278 "
                    + "580 278 975 634 612 635 635 412 521 393 634 592 818 592 592 525 637 337 637 838");
    private static final int[] BOLD =
            widths("349 457 521 838 696 1002 873 307 458 458 523 838 380 416 380 366 696 696 696 "
                    + "696 696 696 696 696 696 696 400 400 838 838 838 581 1000 774 763 734 831 684 684 821 837 373 373 775 638 996 837 "
                    + "851 733 851 771 721 683 813 774 1104 771 725 726 458 366 458 838 500 500 675 716 593 716 679 436 716 712 343 343 "
                    + "666 343 1042 712 688 716 716 494 596 479 712 652 924 646 652 583 712 366 712 838");
    private static final String OTHERS = "°×·−–²";
    private static final int[] PLAIN_OTHERS = {500, 838, 318, 838, 500, 401};
    private static final int[] BOLD_OTHERS = {500, 838, 380, 838, 500, 438};
    private static final int WIDEST = 1170;

    private Letters() {}

    private static int[] widths(String list) {
        return Arrays.stream(list.split(" ")).mapToInt(Integer::parseInt).toArray();
    }

    static double width(String words, double size, boolean bold) {
        return words.codePoints().map(letter -> width(letter, bold)).sum() * size / 1000;
    }

    private static int width(int letter, boolean bold) {
        if (letter >= ' ' && letter <= '~') {
            return (bold ? BOLD : PLAIN)[letter - ' '];
        }
        int other = OTHERS.indexOf(letter);
        return other < 0 ? WIDEST : (bold ? BOLD_OTHERS : PLAIN_OTHERS)[other];
    }

    /** Lines no wider than a width; a word that is wider by itself is broken. */
    static List<String> wrap(String words, double width, double size, boolean bold) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size, bold) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = broken(word, width, size, bold, lines);
        }
        lines.add(line);
        return lines;
    }

    /** Adds the full pieces of a word and returns what is left of it. */
    private static String broken(String word, double width, double size, boolean bold, List<String> lines) {
        StringBuilder piece = new StringBuilder();
        for (int letter : word.codePoints().toArray()) {
            String longer = piece + Character.toString(letter);
            if (!piece.isEmpty() && width(longer, size, bold) > width) {
                lines.add(piece.toString());
                piece.setLength(0);
            }
            piece.appendCodePoint(letter);
        }
        return piece.toString();
    }

    /** Its beginning, with dots where it is too wide. */
    static String cut(String words, double width, double size, boolean bold) {
        String left = words.strip();
        if (width(left, size, bold) <= width) {
            return left;
        }
        while (!left.isEmpty() && width(left + "...", size, bold) > width) {
            left = left.substring(0, left.offsetByCodePoints(left.length(), -1));
        }
        return left.strip() + "...";
    }
}
