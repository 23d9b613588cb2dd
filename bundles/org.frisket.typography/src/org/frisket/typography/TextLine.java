package org.frisket.typography;

/**
 * One line of set text.
 *
 * @param start  index of its first character in the text
 * @param end    index after its last character, without the line break
 * @param left   x of its left end in mm
 * @param width  from the left end to the last letter's advance in mm; blanks at the end do not count
 * @param baseline y of its baseline in mm
 */
public record TextLine(int start, int end, double left, double width, double baseline) {
}
