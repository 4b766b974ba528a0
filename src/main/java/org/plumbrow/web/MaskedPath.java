package org.plumbrow.web;

import java.util.regex.Pattern;

/** An address as a log may hold it: whoever reads the log must not be able to open a private link with it. */
public final class MaskedPath {

    private static final Pattern SECRET = Pattern.compile("^/([csf])/[^/]+");

    private MaskedPath() {}

    public static String of(String path) {
        return SECRET.matcher(path).replaceFirst("/$1/…");
    }
}
