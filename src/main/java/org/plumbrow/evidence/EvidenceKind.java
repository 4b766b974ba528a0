package org.plumbrow.evidence;

/** What a piece of evidence is. */
public enum EvidenceKind {
    PHOTO("photo"),
    DOCUMENT("document"),
    DATA("data file"),
    SIGNATURE("signature");

    private final String words;

    EvidenceKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
