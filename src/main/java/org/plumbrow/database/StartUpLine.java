package org.plumbrow.database;

import java.util.List;

/**
 * What a room says on the console once the application is up: where something is, how to sign in. Supply it as a bean;
 * {@code @Order} says where it stands, the address comes first and the data last.
 */
public interface StartUpLine {

    /** @return plain lines; none if there is nothing to say */
    List<String> lines();
}
