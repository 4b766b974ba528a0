/**
 * Drawings made from a design's data, and the packet that is printed. Start at {@link
 * org.plumbrow.design.drawing.Drawings}: a design in, sheets out, with cover and checks; each is drawn on a
 * {@code Canvas}, which writes itself as {@code Svg} and, bound by {@link org.plumbrow.design.drawing.Packet}, as {@code Pdf}. {@code Canvas}, {@code Letters}, {@code Frame}, {@code Symbols}, {@code Table} and
 * {@code Flow} are the drawing tools: lengths in points on a sheet of 17 by 11 inches. Rules: a drawing says nothing that
 * the data do not; no letter below 8 points; no two labels touch, which the letters' own measure decides; a thing that does
 * not fit goes on another sheet and is never made tiny. Reads no table and no clock.
 */
@NullMarked
package org.plumbrow.design.drawing;

import org.jspecify.annotations.NullMarked;
