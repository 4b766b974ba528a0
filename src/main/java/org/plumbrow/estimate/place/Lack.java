package org.plumbrow.estimate.place;

/** What is not known. @param href where it is written @param link its name */
record Lack(String sentence, String href, String link) {}
