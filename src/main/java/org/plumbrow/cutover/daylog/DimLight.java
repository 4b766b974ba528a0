package org.plumbrow.cutover.daylog;

import jakarta.servlet.http.HttpSession;

/** The day log is always light, for the sun; somebody who works at night dims it for their own session. */
final class DimLight {

    private static final String NIGHT = "dayLogNight";

    private DimLight() {}

    static boolean isOn(HttpSession session) {
        return Boolean.TRUE.equals(session.getAttribute(NIGHT));
    }

    static void turn(HttpSession session, boolean night) {
        session.setAttribute(NIGHT, night);
    }
}
