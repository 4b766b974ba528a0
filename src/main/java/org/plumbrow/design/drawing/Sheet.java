package org.plumbrow.design.drawing;

/**
 * A finished sheet, 17 by 11 inches in proportion.
 *
 * @param slug its name in an address, "one-line"
 * @param number as it stands in the title block, "E-1"
 * @param svg whole document
 */
public record Sheet(String slug, String title, String number, String svg) {}
