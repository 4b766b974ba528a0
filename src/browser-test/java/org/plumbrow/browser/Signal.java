package org.plumbrow.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;

/** Signal that comes and goes. */
final class Signal {

    private Signal() {}

    /** The page hears that there is signal again. By what it sends then it may come anew while it is told. */
    static void isBack(Page page) {
        try {
            page.evaluate("() => dispatchEvent(new Event('online'))");
        } catch (PlaywrightException onItsWay) {
            // It had heard of it by itself, and has sent what waited.
        }
    }
}
