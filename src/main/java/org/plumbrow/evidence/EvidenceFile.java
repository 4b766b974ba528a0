package org.plumbrow.evidence;

/**
 * The bytes of a piece of evidence, to be sent as this type and never run: no name, no note of the people who brought it.
 */
public record EvidenceFile(byte[] bytes, String mediaType) {

    /** For the header of the answer: whatever a file says, a browser runs nothing of it. */
    public static final String NOTHING_RUNS = "default-src 'none'; style-src 'none'; sandbox";

    public boolean isPicture() {
        return mediaType.startsWith("image/");
    }

    /** How a file of this type is called at its end: ".pdf". */
    public String ending() {
        return switch (mediaType) {
            case "image/jpeg" -> ".jpg";
            case "image/png" -> ".png";
            case "application/pdf" -> ".pdf";
            case "text/csv" -> ".csv";
            default -> "";
        };
    }
}
