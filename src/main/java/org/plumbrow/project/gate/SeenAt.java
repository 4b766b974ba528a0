package org.plumbrow.project.gate;

import org.plumbrow.web.May;

/** The page on which people see, and put right, what a rule looks at. @param need what one may to open it */
public record SeenAt(String words, String path, May need) {}
