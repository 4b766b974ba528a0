package org.plumbrow.evidence;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

/** What a file is by its bytes; what its name or the browser says counts only among text files. */
enum FileType {
    JPEG("image/jpeg", EvidenceKind.PHOTO),
    PNG("image/png", EvidenceKind.PHOTO),
    PDF("application/pdf", EvidenceKind.DOCUMENT),
    CSV("text/csv", EvidenceKind.DATA),
    XML("application/xml", EvidenceKind.DATA),
    TEXT("text/plain", EvidenceKind.DATA);

    static final int PICTURE_BYTES = 20 * 1024 * 1024;
    static final int DATA_BYTES = 50 * 1024 * 1024;
    private static final Set<String> WEATHER = Set.of("epw", "tm2", "tmy", "txt");
    private static final Set<String> PHONE_FORMATS = Set.of("heic", "heix", "hevc", "mif1", "msf1", "avif");

    private final String mediaType;
    private final EvidenceKind kind;

    FileType(String mediaType, EvidenceKind kind) {
        this.mediaType = mediaType;
        this.kind = kind;
    }

    String mediaType() {
        return mediaType;
    }

    EvidenceKind kind() {
        return kind;
    }

    int mostBytes() {
        return kind == EvidenceKind.DATA ? DATA_BYTES : PICTURE_BYTES;
    }

    /** The type, or the sentence that says why it cannot be kept. */
    record Verdict(FileType type, String refusal) {
        boolean isRefused() {
            return !refusal.isEmpty();
        }
    }

    static Verdict of(Upload upload) {
        byte[] bytes = upload.bytes();
        if (bytes.length == 0) {
            return refused("The file is empty. Choose it again.");
        }
        if (startsWith(bytes, 0xFF, 0xD8, 0xFF)) {
            return within(JPEG, upload);
        }
        if (startsWith(bytes, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
            return within(PNG, upload);
        }
        if (startsWith(bytes, '%', 'P', 'D', 'F', '-')) {
            return within(PDF, upload);
        }
        if (isPhonePicture(bytes)) {
            return refused("This picture is in a format of the phone (HEIC). In the phone's settings set the camera to "
                    + "“most compatible”, then take it again.");
        }
        return text(upload);
    }

    private static Verdict text(Upload upload) {
        String ending = ending(upload.name());
        if (!isText(upload.bytes())) {
            return refused("“" + upload.name() + "” is neither a JPEG or PNG picture, a PDF nor a data file (CSV, XML, "
                    + "weather). Save it as one of these and bring it again.");
        }
        return switch (ending) {
            case "csv" -> within(CSV, upload);
            case "xml" -> within(XML, upload);
            default ->
                WEATHER.contains(ending)
                        ? within(TEXT, upload)
                        : refused("A text file has to end in .csv, .xml, .epw, .tm2 or .txt. Rename “" + upload.name()
                                + "” if it is one of these.");
        };
    }

    private static Verdict within(FileType type, Upload upload) {
        if (upload.bytes().length <= type.mostBytes()) {
            return new Verdict(type, "");
        }
        long megabytes = Math.round(upload.bytes().length / 1048576.0);
        int most = type.mostBytes() / 1048576;
        return refused(
                type.kind == EvidenceKind.PHOTO
                        ? "The photo is " + megabytes + " MB; up to " + most + " MB fit. Take it again at normal size."
                        : "The file is " + megabytes + " MB; up to " + most + " MB fit. Split it or save it smaller.");
    }

    private static Verdict refused(String sentence) {
        return new Verdict(TEXT, sentence);
    }

    private static boolean startsWith(byte[] bytes, int... magic) {
        if (bytes.length < magic.length) {
            return false;
        }
        for (int i = 0; i < magic.length; i++) {
            if ((bytes[i] & 0xFF) != magic[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean isPhonePicture(byte[] bytes) {
        return bytes.length >= 12
                && new String(bytes, 4, 4, StandardCharsets.ISO_8859_1).equals("ftyp")
                && PHONE_FORMATS.contains(
                        new String(bytes, 8, 4, StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT));
    }

    /** No zero byte (but in UTF-16 behind its mark), and mostly what a text has. */
    private static boolean isText(byte[] bytes) {
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            return true;
        }
        byte[] head = Arrays.copyOf(bytes, Math.min(bytes.length, 65536));
        for (byte each : head) {
            if (each == 0 || (each > 0 && each < 0x09)) {
                return false;
            }
        }
        return isUtf8(head) || isWesternText(head);
    }

    private static boolean isUtf8(byte[] head) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(head, 0, Math.max(0, head.length - 4)));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private static boolean isWesternText(byte[] head) {
        int strange = 0;
        for (byte each : head) {
            strange += (each < 0) ? 1 : 0;
        }
        return strange * 5 < head.length;
    }

    private static String ending(String name) {
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
    }
}
